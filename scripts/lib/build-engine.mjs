// Compiles the engine and makes its JavaScript side, beside the package's sources.
import { execFileSync } from 'node:child_process';
import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const TARGET = 'wasm32-unknown-unknown';

/** Leaves `tagstrip.js`, its types and `tagstrip.wasm` in www/package/wasm. */
export function buildEngine(root) {
  const target = process.env.CARGO_TARGET_DIR ?? join(root, 'target');
  const out = join(root, 'www/package/wasm');
  const run = (command, args) => execFileSync(command, args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
  run('cargo', ['build', '--quiet', '--profile', 'engine', '--package', 'tagstrip-web', '--target', TARGET]);
  rmSync(out, { recursive: true, force: true });
  run(join(target, 'tools/bindings'), [
    '--target', 'web', '--remove-name-section', '--remove-producers-section',
    '--out-dir', out, '--out-name', 'tagstrip',
    join(target, TARGET, 'engine/tagstrip_web.wasm'),
  ]);
  renameSync(join(out, 'tagstrip_bg.wasm'), join(out, 'tagstrip.wasm'));
  rmSync(join(out, 'tagstrip_bg.wasm.d.ts'));
  renewable(out);
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
