// One calculator's rows of the cases worked outside the project, through the built package in Node.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { shipped } from './package.mjs';
import { atMost, root, told } from './run.mjs';

/** Rows of `id`: how many, and how far the worst figure of each kind of tolerance is off. */
export async function computed(id) {
  const { work } = await shipped();
  const cases = JSON.parse(readFileSync(join(root, 'tests/vectors/computed.json'), 'utf8'));
  const rows = cases.filter(({ calculator, needs }) => calculator === id && needs === undefined);
  const [worst, short] = [{ relative: 0, db: 0 }, []];
  for (const { inputs, answers, tolerances } of rows) {
    const got = work(id, inputs).answers;
    for (const [key, want] of Object.entries(answers)) {
      const ours = [key.split('.').reduce((here, step) => here?.[step], got)].flat();
      [want].flat().forEach((figure, k) => {
        const off = Math.abs(ours[k] - figure);
        const { relative = 0, db = 0, absolute = 0 } = tolerances[key];
        if (!(off <= relative * Math.abs(figure) || off <= db || off <= absolute)) short.push(`${key} ${ours[k]} for ${figure}`);
        if (db > 0) worst.db = Math.max(worst.db, off);
        else if (figure !== 0) worst.relative = Math.max(worst.relative, off / Math.abs(figure));
      });
    }
  }
  return [
    told(`cases.${id}.rows`, rows.length, 'rows'),
    atMost(`cases.${id}.worst`, 100 * worst.relative, '%', 0.2),
    atMost(`cases.${id}.worst_level`, worst.db, 'dB', 0.1),
    atMost(`cases.${id}.fallen_short`, short.length, 'figures', 0, short[0]),
  ];
}
