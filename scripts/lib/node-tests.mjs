// Runs the tests that need no browser: `*.test.ts` beside their sources, bundled to a folder of their own, and tests/*.test.mjs.
// Arguments narrow the run to files whose path contains one of them.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';

const root = new URL('../..', import.meta.url).pathname;
const wanted = process.argv.slice(2);
const chosen = (files) => files.filter((file) => wanted.length === 0 || wanted.some((part) => file.includes(part)));
const under = (folder, ending) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending))
    .map((name) => join(folder, name));

const typed = chosen([...under('www', '.test.ts'), ...under('tests', '.test.ts')]);
const plain = chosen(under('tests', '.test.mjs').filter((file) => !file.startsWith('tests/browser/')));
const made = mkdtempSync(join(tmpdir(), 'tagstrip-tests-'));
try {
  await build({
    absWorkingDir: root,
    entryPoints: typed,
    outdir: made,
    outbase: '.',
    outExtension: { '.js': '.mjs' },
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    sourcemap: 'inline',
    logLevel: 'warning',
  });
  const files = [...typed.map((file) => join(made, file.replace(/\.ts$/, '.mjs'))), ...plain];
  const run = spawnSync(process.execPath, ['--enable-source-maps', '--test', '--test-reporter=spec', ...files], {
    cwd: root,
    stdio: 'inherit',
  });
  process.exitCode = run.status ?? 1;
} finally {
  rmSync(made, { recursive: true, force: true });
}
