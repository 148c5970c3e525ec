// The npm package: one module, its types, the engine.
import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';

import { version } from './release.mjs';

export async function buildPackage(root, dist) {
  const out = join(dist, 'package');
  mkdirSync(out, { recursive: true });
  await build({
    entryPoints: [join(root, 'www/package/index.ts')],
    outfile: join(out, 'index.js'),
    bundle: true,
    format: 'esm',
    target: 'es2022',
    platform: 'neutral',
    minify: true,
    legalComments: 'none',
  });
  copyFileSync(join(root, 'www/package/wasm/tagstrip.wasm'), join(out, 'tagstrip.wasm'));
  copyFileSync(join(root, 'www/package/README.md'), join(out, 'README.md'));
  execFileSync('npx', ['tsc', '-p', join(root, 'www/package/tsconfig.json'), '--outDir', join(out, 'types')], {
    cwd: root,
    stdio: 'inherit',
  });
  writeFileSync(join(out, 'index.d.ts'), "export * from './types/package/index.js';\n");
  writeFileSync(join(out, 'package.json'), `${JSON.stringify(describe(root), null, 2)}\n`);
}

function describe(root) {
  return {
    name: 'tagstrip',
    version: version(root),
    description: 'What a home-built vacuum-tube station does, worked out before it is soldered',
    license: 'MIT OR Apache-2.0',
    type: 'module',
    sideEffects: false,
    exports: { '.': { types: './index.d.ts', default: './index.js' }, './tagstrip.wasm': './tagstrip.wasm' },
    types: './index.d.ts',
    files: ['index.js', 'index.d.ts', 'types', 'tagstrip.wasm', 'README.md', 'LICENSE-MIT', 'LICENSE-APACHE'],
    engines: { node: '>=20' },
  };
}
