// 10,000 wanted inductances to whole turns, each against every number of turns there is room for, and back.
import { chances, randomMake, shipped } from '../measuring/package.mjs';
import { atMost } from '../measuring/run.mjs';

const [WISHES, MAKES] = [10_000, 200];
const MOST = 160;

export async function measure() {
  const { work } = await shipped();
  const chance = chances(7);
  let [wrong, back] = [0, 0];
  for (let k = 0; k < MAKES; k += 1) {
    const make = randomMake(chance);
    const henries = (turns) => work('coil', { ...make, turns }, { want: ['answers'] }).answers.henries;
    const all = Array.from({ length: MOST }, (_, n) => henries(n + 1));
    for (let wish = 0; wish < WISHES / MAKES; wish += 1) {
      const wanted = all[0] * (all[MOST - 2] / all[0]) ** chance();
      const { answers } = work('coil', { ...make, henries: wanted }, { want: ['answers'] });
      const off = all.map((each) => Math.abs(each - wanted));
      const best = Math.min(...off);
      if (Math.abs((off[answers.turns - 1] ?? Infinity) - best) > 1e-12 * wanted) wrong += 1;
      back = Math.max(back, Math.abs(henries(answers.exact_turns) / wanted - 1));
    }
  }
  return [
    atMost('coil.solve_wrong', wrong, `of ${WISHES}`, 0, `each held against all of 1 to ${MOST} turns`),
    atMost('coil.solve_back', back, 'relative', 1e-9, 'the exact turns give the wanted inductance again'),
  ];
}
