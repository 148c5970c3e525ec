// Texts for the reader and inputs for each calculator, made at random: no fault is the only right number.
import { atMost, run } from '../measuring/run.mjs';

const SHORT = ['--texts', '2e6', '--inputs', '2000'];
const LONG = ['--texts', '1e8', '--inputs', '1e6'];

export function measure(how) {
  const { code, text } = run('cargo', ['run', '--quiet', '--release', '-p', 'tagstrip-tools', '--bin', 'fuzz', '--', ...(how === 'long' ? LONG : SHORT)]);
  const rows = [...text.matchAll(/^fuzz\.(\w+) (.*)$/gm)].map(([, name, counts]) => {
    const faults = Number(/faults[ =:]*(\d+)/.exec(counts)?.[1] ?? Number.NaN);
    return atMost(`fuzz.${name}`, faults, 'faults', 0, counts);
  });
  if (rows.length === 0) throw new Error(`nothing was run, exit ${code}`);
  return rows;
}
