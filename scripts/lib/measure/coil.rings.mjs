// 10,000 random coils against the sum of their rings by scipy, and whether the answer jumps where the method changes.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { chances, randomMake, shipped } from '../measuring/package.mjs';
import { atMost, quantile, root } from '../measuring/run.mjs';
import { venv } from '../measuring/venv.mjs';

const [COILS, STEPS] = [10_000, 2_000];

export async function measure() {
  const { work } = await shipped();
  const chance = chances(20);
  const henries = (inputs) => work('coil', inputs, { want: ['answers'] }).answers.henries;
  const coils = Array.from({ length: COILS }, () => ({ ...randomMake(chance), turns: Math.round(3 * 50 ** chance()) }));
  const ours = coils.map(henries);
  const told = spawnSync(venv(), [join(root, 'scripts/lib/measure/coil_rings.py')], { input: JSON.stringify(coils), encoding: 'utf8', maxBuffer: 1 << 28 });
  if (told.status !== 0) throw new Error(told.stderr.trim().split('\n').at(-1));
  const off = JSON.parse(told.stdout).map((rings, k) => 100 * Math.abs(ours[k] / rings - 1));
  return [
    atMost('coil.rings_worst', Math.max(...off), '%', 0.5, `of ${COILS} coils of 3 to 150 turns; 99 in 100 within ${quantile(off, 0.99).toPrecision(2)} %`),
    atMost('coil.rings_median', quantile(off, 0.5), '%', 0.5),
    atMost('coil.jump', Math.max(...Array.from({ length: STEPS }, () => jump(chance, henries))), 'times the step', 50, `${STEPS} steps of 1e-7 across the borders of the method`),
  ];
}

/** How far the answer moves, over how far an input did: by turns, by wire or by pitch about a border of the method. */
function jump(chance, henries) {
  const make = randomMake(chance);
  const turns = 8 + 8 * chance();
  const at = [
    (share) => ({ ...make, turns: [10, 11, 12][Math.floor(turns) % 3] * share }),
    (share) => thick(make, 0.09, turns, share),
    (share) => thick(make, 0.11, turns, share),
    (share) => wide(make, 0.3, turns, share),
    (share) => wide(make, 0.5, turns, share),
  ][Math.floor(5 * chance())];
  const [before, after] = [henries(at(1 - 0.5e-7)), henries(at(1 + 0.5e-7))];
  return Math.abs(after / before - 1) / 1e-7;
}

/** Bare wire of a share of the mean diameter. */
function thick(make, share, turns, by) {
  const mean = make.form_diameter;
  const wire = share * mean * by;
  return { form_diameter: mean - wire, wire: { diameter: wire }, pitch: 1.5 * share * mean, turns: 30 + turns, hertz: make.hertz, taps: [] };
}

function wide(make, share, turns, by) {
  const mean = make.form_diameter;
  const wire = 0.02 * mean;
  return { form_diameter: mean - wire, wire: { diameter: wire }, pitch: share * mean * by, turns: 30 + turns, hertz: make.hertz, taps: [] };
}
