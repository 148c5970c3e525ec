// The npm package as npm packs it: in Node, through a bundler, and under TypeScript, each in a project of its own.
import assert from 'node:assert/strict';
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { build } from 'esbuild';

const root = new URL('..', import.meta.url).pathname;
const made = join(root, 'dist/package');
const skip = existsSync(join(made, 'index.js')) ? false : 'the package is not built yet';
let project;

before(() => {
  if (skip) return;
  project = mkdtempSync(join(tmpdir(), 'tagstrip-package-'));
  const [{ filename }] = JSON.parse(execFileSync('npm', ['pack', '--json', '--pack-destination', project, made], { encoding: 'utf8' }));
  mkdirSync(join(project, 'node_modules/tagstrip'), { recursive: true });
  execFileSync('tar', ['-xzf', join(project, filename), '-C', join(project, 'node_modules/tagstrip'), '--strip-components=1']);
  writeFileSync(join(project, 'package.json'), '{"type":"module"}');
});
after(() => { if (project) rmSync(project, { recursive: true, force: true }); });

const put = (name, text) => writeFileSync(join(project, name), text);
const node = (file) => execFileSync(process.execPath, [file], { cwd: project, encoding: 'utf8' });
const example = () => /```js\n([\s\S]*?)```/.exec(readFileSync(join(made, 'README.md'), 'utf8'))[1];

test('the README’s example runs in Node as it stands, and is short', { skip }, () => {
  assert.ok(example().trim().split('\n').filter((line) => line.trim() !== '').length <= 10);
  put('example.js', example());
  const said = node('example.js');
  assert.match(said, /stage: Stage/);
  // No load line of 263 V and 220 kΩ rests elsewhere than between ground and the supply.
  const volts = Number(/^([\d.]+)\u00a0V /m.exec(said)?.[1]);
  assert.ok(volts > 10 && volts < 263, said);
  assert.match(said, /Danger: /);
});

test('a bundler takes it, with the engine as bytes', { skip }, async () => {
  put('bundled.js', `import engine from 'tagstrip/tagstrip.wasm';
import { catalogue, init, InputError, work } from 'tagstrip';
await init(engine);
try { work('stage', { plate_ohms: '4k7k', nothing: 1 }); } catch (fault) {
  console.log(fault instanceof InputError, fault.problems.map(({ field }) => field).sort().join(), catalogue().length > 0);
}`);
  await build({ absWorkingDir: project, entryPoints: ['bundled.js'], outfile: 'out/bundled.mjs', bundle: true, format: 'esm', platform: 'node', target: 'node20', loader: { '.wasm': 'binary' }, logLevel: 'error' });
  assert.equal(node('out/bundled.mjs').trim(), 'true nothing,plate_ohms true');
  await build({ absWorkingDir: project, entryPoints: ['bundled.js'], outfile: 'out/page.js', bundle: true, format: 'esm', platform: 'browser', target: 'es2022', loader: { '.wasm': 'binary' }, logLevel: 'error' });
});

test('its types hold, whichever way TypeScript looks for them', { skip }, () => {
  put('typed.ts', `import { catalogue, init, read_quantity, work, type Outcome } from 'tagstrip';
await init(new Uint8Array());
const outcome: Outcome = work('stage', { plate_ohms: '220k' }, { want: ['answers', 'curves'] });
const first: string | undefined = catalogue()[0]?.title ?? outcome.cautions?.[0]?.text;
// @ts-expect-error a want that there is not
work('stage', {}, { want: ['colour'] });
export const value: number = read_quantity('4k7', 'Ω').value + (first?.length ?? 0);
`);
  symlinkSync(join(root, 'node_modules/typescript'), join(project, 'node_modules/typescript'));
  for (const [module, resolution] of [['nodenext', 'nodenext'], ['esnext', 'bundler']]) {
    const { status, stdout } = spawnSync(process.execPath, ['node_modules/typescript/bin/tsc', '--noEmit', '--strict', '--target', 'es2022', '--module', module, '--moduleResolution', resolution, 'typed.ts'], { cwd: project, encoding: 'utf8' });
    assert.equal(status, 0, stdout.slice(0, 2000));
  }
});

test('it carries what it says and nothing of its making', { skip }, () => {
  const { exports, files, types } = JSON.parse(readFileSync(join(project, 'node_modules/tagstrip/package.json'), 'utf8'));
  for (const path of [types, exports['.'].default, exports['./tagstrip.wasm']]) assert.ok(existsSync(join(project, 'node_modules/tagstrip', path)), path);
  assert.ok(files.length > 0);
  assert.ok(!/\bfrom ?["'](?!\.)/.test(readFileSync(join(made, 'index.js'), 'utf8')), 'it imports something');
});
