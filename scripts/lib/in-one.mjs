// What carries everything inside itself: bundling into one classic script, and packing bytes into text.
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

const sources = await build({ entryPoints: [new URL('../../www/engine/packed.ts', import.meta.url).pathname], bundle: true, format: 'esm', write: false });
const { toLetters } = await import(`data:text/javascript;base64,${Buffer.from(sources.outputFiles[0].contents).toString('base64')}`);

/** Bytes as a page can hold them in its markup: gzip, then letters. `www/engine/packed.ts` has the way back. */
export const packed = (bytes) => toLetters(gzipSync(bytes, { level: 9 }));

/** A hash as a policy or an `integrity` attribute writes it. */
export const integrity = (content, kind = 'sha256') => `${kind}-${createHash(kind).update(content).digest('base64')}`;

/** One script that needs nothing beside it. */
export async function inOne(root, entry, more = {}) {
  const made = await build({
    entryPoints: [join(root, entry)], bundle: true, format: 'iife', target: 'es2022', minify: true, legalComments: 'none', write: false, charset: 'utf8',
    // Nothing is looked for beside such a script: what it needs it is given.
    define: { 'import.meta.url': '"about:blank"', ...more.define },
    ...(more.plugins && { plugins: more.plugins }),
    ...(more.loader && { loader: more.loader }),
  });
  return made.outputFiles[0].text.trim();
}
