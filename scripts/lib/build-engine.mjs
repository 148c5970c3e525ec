// Compiles the engine and makes its JavaScript side, beside the package's sources.
import { execFileSync } from 'node:child_process';
import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { transform } from 'esbuild';

const TARGET = 'wasm32-unknown-unknown';

/** The shelves whose calculators are compiled by themselves too, so that a page need not wait for the others. */
const SHELVES = ['audio', 'networks', 'power'];

/** Leaves `tagstrip.js`, its types and `tagstrip.wasm` in www/package/wasm. */
export function buildEngine(root) {
  const out = join(root, 'www/package/wasm');
  bound(root, out, []);
  renewable(out);
}

/** Engines of one shelf each, with the calculators that are in them; the loader of the whole serves them too. */
export async function buildParts(root) {
  const whole = join(root, 'www/package/wasm');
  const loader = await import(pathToFileURL(join(whole, 'tagstrip.js')).href);
  const { pack, unpack } = await packing(root);
  const opened = (bytes) => {
    loader.renew(new WebAssembly.Module(bytes));
    return unpack(loader.catalogue());
  };
  const answersOf = (calculators) => JSON.stringify(calculators.map(({ id }) => unpack(loader.work(id, ...pack([{}, WORKED])))));
  const parts = SHELVES.map((shelf) => {
    const out = join(targetOf(root), 'parts', shelf);
    bound(root, out, ['--no-default-features', '--features', shelf]);
    const bytes = readFileSync(join(out, 'tagstrip.wasm'));
    const own = opened(bytes);
    return { shelf, bytes, ids: own.map(({ id }) => id), answers: answersOf(own) };
  });
  const catalogue = opened(readFileSync(join(whole, 'tagstrip.wasm')));
  for (const { shelf, ids, answers } of parts) {
    const all = answersOf(catalogue.filter(({ id }) => ids.includes(id)));
    if (all !== answers) throw new Error(`the engine of ${shelf} answers otherwise than the whole`);
  }
  return { parts, catalogue };
}

/** What the engine of a shelf must answer as the whole does. */
const WORKED = ['answers', 'cautions', 'parts'];

/** How values cross to the engine, from the package's own source. */
async function packing(root) {
  const { code } = await transform(readFileSync(join(root, 'www/package/crossing.ts'), 'utf8'), { loader: 'ts' });
  return import(`data:text/javascript,${encodeURIComponent(code)}`);
}

const targetOf = (root) => process.env.CARGO_TARGET_DIR ?? join(root, 'target');

/** Compiles the engine with some features and binds it. */
function bound(root, out, features) {
  const target = targetOf(root);
  const run = (command, args) => execFileSync(command, args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
  run('cargo', ['build', '--quiet', '--profile', 'engine', '--package', 'tagstrip-web', '--target', TARGET, ...features]);
  rmSync(out, { recursive: true, force: true });
  run(join(target, 'tools/bindings'), [
    '--target', 'web', '--remove-name-section', '--remove-producers-section',
    '--out-dir', out, '--out-name', 'tagstrip',
    join(target, TARGET, 'engine/tagstrip_web.wasm'),
  ]);
  renameSync(join(out, 'tagstrip_bg.wasm'), join(out, 'tagstrip.wasm'));
  rmSync(join(out, 'tagstrip_bg.wasm.d.ts'));
}

/**
 * The generated loader loads once and for all, and fetches by itself. Ours takes a compiled module and may be called
 * again: an instance that trapped is thrown away. One module then serves the page, a worker and Node.
 */
function renewable(out) {
  cut(join(out, 'tagstrip.js'), 'async function __wbg_load(', `/** A fresh instance; the one before is let go. */
export function renew(module) {
    __wbg_finalize_init(new WebAssembly.Instance(module, __wbg_get_imports()), module);
}
`);
  cut(join(out, 'tagstrip.d.ts'), 'export type InitInput', `/** A fresh instance; the one before is let go. */
export function renew(module: WebAssembly.Module): void;
`);
}

function cut(file, from, instead) {
  const [kept, ...rest] = readFileSync(file, 'utf8').split(from);
  if (rest.length !== 1) throw new Error(`${file} has ${rest.length} of "${from}", not one: the generator has changed`);
  writeFileSync(file, kept + instead);
}
