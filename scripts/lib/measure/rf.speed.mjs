// Every calculator of coils and networks on random usual inputs, through the package in Node: any answer, wishes included.
import { chances, randomMake, shipped } from '../measuring/package.mjs';
import { atMost, quantile, told } from '../measuring/run.mjs';

const IDS = ['coil', 'tuning', 'tank', 'lowpass'];
const [WARM, ROUNDS] = [300, 2000];

export async function measure() {
  const { work, catalogue } = await shipped();
  const there = catalogue().filter(({ id }) => IDS.includes(id));
  return there.flatMap((calculator) => {
    const chance = chances(3);
    const times = [];
    let refused = 0;
    for (let round = 0; round < WARM + ROUNDS; round += 1) {
      const inputs = calculator.id === 'coil' && round % 2 === 0 ? wish(chance) : usual(calculator.inputs, chance);
      const start = performance.now();
      try {
        work(calculator.id, inputs);
      } catch (fault) {
        if (!Array.isArray(fault.problems)) throw fault;
        refused += 1;
        continue;
      }
      if (round >= WARM) times.push(performance.now() - start);
    }
    return [
      atMost(`rf.speed_${calculator.id}`, quantile(times, 0.99), 'ms', 1, `99 in 100 of ${times.length} answered, ${refused} refused; the rest is the machine's own pauses`),
      told(`rf.speed_${calculator.id}_median`, quantile(times, 0.5), 'ms'),
      told(`rf.speed_${calculator.id}_slowest`, Math.max(...times), 'ms'),
    ];
  });
}

/** A coil for a wanted inductance, with taps' bands, a link and a measurement: all that is searched for at once. */
function wish(chance) {
  const { taps, ...make } = randomMake(chance);
  return {
    ...make, taps, henries: 1e-6 * 100 ** chance(), tap_use: 'shorted', link_turns: 3, measured_hertz: 3e6, measured_farads: 100e-12,
    bands: [{ hertz: 14e6, farads: 50e-12 }, { hertz: 7e6, farads: 100e-12 }, { hertz: 3.5e6, farads: 100e-12 }],
  };
}

/** Inputs within the usual ranges: one of each group, what is optional now and then. */
function usual(rows, chance) {
  const picked = {};
  for (const row of rows) {
    if (row.one_of !== undefined) picked[row.one_of] ??= pick(rows.filter(({ one_of }) => one_of === row.one_of), chance).key;
    if (row.together !== undefined) picked[row.together] ??= chance() < 0.5 ? 'given' : 'none';
  }
  const given = rows.filter((row) => (row.one_of === undefined ? row.together === undefined ? !row.optional || chance() < 0.5 : picked[row.together] === 'given' : picked[row.one_of] === row.key));
  return Object.fromEntries(given.map((row) => [row.key, one(row, chance)]));
}

const pick = (items, chance) => items[Math.floor(items.length * chance())];

function one(row, chance) {
  if (row.shape === 'choice') return pick(row.choices, chance);
  if (row.shape === 'flag') return true;
  if (row.shape === 'list') return Array.from({ length: row.count_least + Math.floor(3 * chance()) }, () => one(row.item, chance)).slice(0, row.count_most);
  if (row.shape === 'record') return usual(row.fields, chance);
  if (row.shape === 'either') return one(pick(row.either, chance), chance);
  if (row.shape === 'text') return '';
  const [least, most] = [row.usual_least ?? row.least, row.usual_most ?? row.most];
  if (row.whole) return Math.round(least + (most - least) * chance());
  return row.scale === 'log' && least > 0 ? least * (most / least) ** chance() : least + (most - least) * chance();
}
