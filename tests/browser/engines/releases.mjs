// Releases to update between: the built site with another script and other pages, and ways to interrupt the change.
import { cpSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { hash, sealRelease } from '../../../scripts/lib/release.mjs';
import { filesUnder } from '../../../scripts/lib/sizes.mjs';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

/** Another release of the built site: every page says its name, and the script has other bytes and another address. */
export async function release(site, scratch, name) {
  const made = join(scratch, name);
  cpSync(site, made, { recursive: true });
  const files = filesUnder(made);
  const script = files.find((file) => /\/page-\w+\.js$/.test(file));
  const body = `${readFileSync(script, 'utf8')}\ndocument.documentElement.dataset.script = '${name}';\n`;
  const renamed = script.replace(/page-\w+/, `page-${hash(body).slice(0, 12)}`);
  writeFileSync(script, body);
  renameSync(script, renamed);
  for (const file of files.filter((each) => /\.(html|js)$/.test(each) && each !== script)) {
    const text = readFileSync(file, 'utf8').replaceAll(basename(script), basename(renamed));
    writeFileSync(file, file.endsWith('.html') ? text.replace('<html ', `<html data-page="${name}" `) : text);
  }
  await sealRelease(ROOT, made);
  return made;
}

/** The release with one byte flipped in one of its files. */
export function withByteFlipped(from, to, random) {
  cpSync(from, to, { recursive: true });
  const files = filesUnder(to).filter((file) => !/(_headers|service-worker\.js)$/.test(file));
  const file = files[Math.floor(random() * files.length)];
  const bytes = readFileSync(file);
  bytes[Math.floor(random() * bytes.length)] ^= 1 << Math.floor(random() * 8);
  writeFileSync(file, bytes);
  return basename(file);
}

/** The new release as a slow upload leaves it for a while: some files new, some still old, some not there yet. */
export function halfDeployed(old, fresh, to, random) {
  cpSync(old, to, { recursive: true });
  const worker = join(fresh, 'service-worker.js');
  for (const file of filesUnder(fresh)) if (file === worker || random() < 0.5) cpSync(file, join(to, file.slice(fresh.length + 1)), { recursive: true });
  for (const file of filesUnder(to)) if (!file.endsWith('service-worker.js') && random() < 0.1) rmSync(file);
}

/** Odds that are the same in every run (Marsaglia's xorshift, 2003; from memory). */
export function odds(seed) {
  let state = seed >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}
