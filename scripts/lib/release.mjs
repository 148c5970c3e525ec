// A release is a folder of files and the service worker that knows each of them by its hash.
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { build } from 'esbuild';

import { filesUnder } from './sizes.mjs';

/** SHA-256 in hexadecimal. */
export const hash = (content) => createHash('sha256').update(content).digest('hex');

/** The release's number. */
export const version = (root) => /^version = "(.*)"$/m.exec(readFileSync(join(root, 'Cargo.toml'), 'utf8'))[1];

/** What is kept on the device: all that the site's own pages ask for, not what is there for other pages or for hosts. */
const kept = (name) => !/^(_headers|service-worker\.js|element\.js|frame\/.*|v\/.*|(.*\/)?\.htaccess)$/.test(name);

/** Writes the service worker for the files that stand in `site`. */
export async function sealRelease(root, site) {
  const names = filesUnder(site).map((file) => relative(site, file)).filter(kept);
  const files = Object.fromEntries(names.map((name) => [name, hash(readFileSync(join(site, name)))]));
  const source = join(root, 'www/pages/service-worker.ts');
  const release = hash(JSON.stringify(files) + readFileSync(source, 'utf8')).slice(0, 12);
  await build({
    entryPoints: [source],
    outfile: join(site, 'service-worker.js'),
    define: { RELEASE: JSON.stringify(release), FILES: JSON.stringify(files) },
    bundle: true,
    format: 'iife',
    target: 'es2022',
    minify: true,
    legalComments: 'none',
  });
  return release;
}
