// Builds the engine, the npm package and the site, in that order, and prints what each weighs.
import { copyFileSync, cpSync, mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';

import { buildEngine, buildParts } from './build-engine.mjs';
import { buildHosting } from './build-hosting.mjs';
import { buildOneFile } from './build-one-file.mjs';
import { buildPackage } from './build-package.mjs';
import { buildSite, words } from './build-site.mjs';
import { version } from './release.mjs';
import { report } from './sizes.mjs';

const root = new URL('../..', import.meta.url).pathname;
const dist = join(root, 'dist');

const say = (what) => { console.log(`   ${what}`); };

say('the engine, compiled to WebAssembly');
buildEngine(root);
rmSync(dist, { recursive: true, force: true });
mkdirSync(dist, { recursive: true });
say('the package');
await buildPackage(root, dist);
const made = await words(root, dist);
say('the site, with an engine for each shelf');
await buildSite(root, dist, made, await buildParts(root));
say('the one file and the zip');
await buildOneFile(root, dist, made);
buildHosting(dist, version(root), made);
for (const licence of ['LICENSE-MIT', 'LICENSE-APACHE']) copyFileSync(join(root, licence), join(dist, 'package', licence));
cpSync(join(root, 'README.md'), join(dist, 'README.md'));
report(dist);
