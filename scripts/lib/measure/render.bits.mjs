// One hash of three renderings: native, as WebAssembly in Node, and in Chromium.
import { run, wasmTests } from '../measuring/run.mjs';

const HASH = /render\.hash ([0-9a-f]+)/;
const CHECK = ['--test', 'engine', '--', '--nocapture', 'render::a_rendering_has_the_same_bits'];

export function measure() {
  const native = HASH.exec(run('cargo', ['test', '--quiet', '-p', 'tagstrip-core', ...CHECK]).text)?.[1];
  const rows = [{ name: 'render.bits_native', value: native ?? 'none', unit: 'hash', holds: native !== undefined }];
  for (const where of ['node', 'chromium']) {
    const hash = HASH.exec(wasmTests(CHECK, where).text)?.[1];
    rows.push({ name: `render.bits_${where}`, value: hash ?? 'none', unit: 'hash', bound: native ?? 'none', holds: hash !== undefined && hash === native });
  }
  return rows;
}
