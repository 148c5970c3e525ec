// The same scenarios in the three engines, over every calculator, and the bit hashes in each: `tests/browser/engines.test.mjs`,
// counted; with `engines=bits` the hashes alone, with `engines=scenarios` the scenarios alone.
import { ENGINES } from '../../../tests/browser/engines/index.mjs';
import { bitsIn } from '../measuring/bits-in-engine.mjs';
import { built, root, run } from '../measuring/run.mjs';

/** In tests/bits.rs and tests/render.rs: each test compares its hash with the one it holds, as it does natively. */
const HASHES = 2;

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
      const equal = await bitsIn(name, HASHES);
      rows.push({ name: `engines.bits.${name}`, value: equal, unit: 'hashes equal to the native ones, of evaluations and of renderings', bound: HASHES, holds: equal === HASHES });
    }
  }
  return rows;
}
