// `coil` against the coils summed ring by ring outside the project: every row, each key within its own tolerance.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { shipped } from '../measuring/package.mjs';
import { atMost, root, told } from '../measuring/run.mjs';

export async function measure() {
  const { work } = await shipped();
  const rows = JSON.parse(readFileSync(join(root, 'tests/vectors/computed.json'), 'utf8')).filter(({ calculator }) => calculator === 'coil');
  const off = rows.flatMap(({ inputs, answers }) => {
    const ours = work('coil', inputs, { want: ['answers'] }).answers;
    return Object.entries(answers).flatMap(([key, wanted]) => [wanted].flat().map((want, k) => 100 * Math.abs([ours[key]].flat()[k] / want - 1)));
  });
  return [told('cases.coil_rows', rows.length, 'rows'), atMost('cases.coil_worst', Math.max(...off), '%', 0.6, `of ${off.length} figures`)];
}
