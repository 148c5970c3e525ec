// The package as it ships, in Node.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { built, root } from './run.mjs';

/** The built package, begun. */
export async function shipped() {
  built();
  const made = await import(pathToFileURL(join(root, 'dist/package/index.js')).href);
  await made.init(readFileSync(join(root, 'dist/package/tagstrip.wasm')));
  return made;
}

/** Repeatable chances from 0 to 1 (mulberry32, from memory). */
export function chances(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A random single-layer coil, bare or enamelled, close or spaced, as builders wind them; without its turns. */
export function randomMake(chance) {
  const by = (least, most) => least * (most / least) ** chance();
  const wire = by(0.2e-3, 5e-3);
  const overall = chance() < 0.5 ? wire : wire * (1 + by(0.02, 0.2));
  // Forms from four times the wire up: thinner ones are no coils any more.
  const form = Math.max(4 * wire, by(6e-3, 150e-3));
  const spacing = chance() < 0.3 ? { close: true } : { pitch: overall * by(1.02, 4) };
  return { form_diameter: form, wire: { diameter: wire, overall_diameter: overall }, ...spacing, hertz: by(0.5e6, 30e6), taps: [] };
}
