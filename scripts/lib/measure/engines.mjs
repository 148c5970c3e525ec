// The same scenarios in the three engines, over every calculator, and the bit hash in each: `tests/browser/engines.test.mjs`,
// counted; with `engines=bits` the hash alone, with `engines=scenarios` the scenarios alone.
import { ENGINES } from '../../../tests/browser/engines/index.mjs';
import { bitsIn } from '../measuring/bits-in-engine.mjs';
import { built, root, run } from '../measuring/run.mjs';

export async function measure(how) {
  built();
  const rows = [];
  for (const name of Object.keys(ENGINES)) {
    if (how !== 'bits') {
      const { text } = run('node', ['--test', '--test-reporter=spec', 'tests/browser/engines.test.mjs'], { env: { TAGSTRIP_ENGINE: name }, cwd: root });
      const marks = (mark) => text.split('\nℹ tests')[0].split('\n').filter((line) => line.startsWith(`  ${mark} `)).length;
      const [passed, failed] = [marks('✔'), marks('✖')];
      rows.push({ name: `engines.${name}`, value: passed, unit: 'scenarios', bound: passed + failed, holds: failed === 0 && passed > 0 });
    }
    if (how !== 'scenarios') {
      const hash = await bitsIn(name);
      rows.push({ name: `engines.bits.${name}`, value: hash ?? 'none', unit: 'hash', bound: nativeHash(), holds: hash !== undefined && hash === nativeHash() });
    }
  }
  return rows;
}

let native;
function nativeHash() {
  native ??= /bits\.hash ([0-9a-f]+)/.exec(run('cargo', ['test', '--quiet', '-p', 'tagstrip-core', '--test', 'engine', '--', '--nocapture', 'bits::']).text)?.[1] ?? 'none';
  return native;
}
