// Compiles the engine and makes its JavaScript side, beside the package's sources.
import { execFileSync } from 'node:child_process';
import { renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const TARGET = 'wasm32-unknown-unknown';

/** Leaves `tagstrip.js`, its types and `tagstrip.wasm` in www/package/wasm. */
export function buildEngine(root) {
  const target = process.env.CARGO_TARGET_DIR ?? join(root, 'target');
  const out = join(root, 'www/package/wasm');
  const run = (command, args) => execFileSync(command, args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
  run('cargo', ['build', '--quiet', '--release', '--package', 'tagstrip-web', '--target', TARGET]);
  rmSync(out, { recursive: true, force: true });
  run(join(target, 'tools/bindings'), [
    '--target', 'web', '--remove-name-section', '--remove-producers-section',
    '--out-dir', out, '--out-name', 'tagstrip',
    join(target, TARGET, 'release/tagstrip_web.wasm'),
  ]);
  renameSync(join(out, 'tagstrip_bg.wasm'), join(out, 'tagstrip.wasm'));
}
