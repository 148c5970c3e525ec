// Supplies: whole cases, random ones against sixteen times the steps, speed, energy, and the rectifier sheets.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { atMost, built, must, quantile, root, told } from '../measuring/run.mjs';
import { venv } from '../measuring/venv.mjs';

const [WARM, ROUNDS] = [200, 1000];

export async function measure(how) {
  const ways = { cases, random, energy, speed };
  const wanted = how === undefined ? Object.keys(ways) : how.split('+');
  const rows = [];
  for (const name of wanted) rows.push(...(await ways[name]()));
  return rows;
}

const sweep = (name) => must('cargo', ['run', '--quiet', '--release', '-p', 'tagstrip-tools', '--bin', 'supply', '--', name]);

export function figure(text, name) {
  const found = new RegExp(`${name} (-?[\\d.e-]+)`).exec(text);
  if (found === null) throw new Error(`no ${name}`);
  return Number(found[1]);
}

async function cases() {
  built();
  const { init, work } = await import(pathToFileURL(join(root, 'dist/package/index.js')).href);
  await init(readFileSync(join(root, 'dist/package/tagstrip.wasm')));
  const rows = JSON.parse(readFileSync(join(root, 'tests/vectors/computed.json'), 'utf8')).filter(({ calculator }) => calculator === 'supply');
  const worst = { volts: 0, ripple: 0, amps: 0 };
  let short = 0;
  for (const { inputs, answers, tolerances } of rows) {
    const got = work('supply', inputs).answers;
    for (const [key, want] of Object.entries(answers)) {
      [want].flat().forEach((figure, k) => {
        const off = Math.abs([got[key]].flat()[k] - figure);
        const { relative = 0, absolute = 0 } = tolerances[key];
        if (off > relative * Math.abs(figure) && off > absolute) short += 1;
        const sort = key.endsWith('amps') ? 'amps' : key.includes('ripple') ? 'ripple' : 'volts';
        if (off > absolute) worst[sort] = Math.max(worst[sort], (100 * off) / Math.abs(figure));
      });
    }
  }
  return [
    told('cases.supply.rows', rows.length, 'rows'),
    atMost('cases.supply.fallen_short', short, 'figures', 0),
    atMost('cases.supply.volts', worst.volts, '%', 0.5),
    atMost('cases.supply.ripple', worst.ripple, '%', 3, 'of what is over a millivolt apart'),
    atMost('cases.supply.amps', worst.amps, '%', 2),
  ];
}

function random() {
  const text = sweep('random');
  const within = figure(text, 'supply.random.within_percent');
  return [
    { name: 'supply.random', value: within, unit: '% within', bound: 99.9, holds: within >= 99.9, remark: '2,000 supplies against 16 times the steps' },
    atMost('supply.random.unconverged', figure(text, 'supply.random.unconverged'), 'supplies', 0),
    atMost('supply.random.jumps', figure(text, 'supply.random.jumps'), 'answers', 0, 'every input of each moved by 1e-7'),
  ];
}

function energy() {
  const text = sweep('energy');
  return [
    atMost('supply.energy', figure(text, 'supply.energy.worst_percent'), '%', 0.1, 'of the power in, over the random set'),
    atMost('supply.energy.raised_by_load', figure(text, 'supply.energy.raised_by_load'), 'nodes', 0),
  ];
}

async function speed() {
  built();
  const { init, work } = await import(pathToFileURL(join(root, 'dist/package/index.js')).href);
  await init(readFileSync(join(root, 'dist/package/tagstrip.wasm')));
  const times = (count, options) => Array.from({ length: count }, (_, round) => {
    const inputs = threeSections(round);
    const start = performance.now();
    work('supply', inputs, options);
    return performance.now() - start;
  });
  times(WARM);
  const node = times(ROUNDS);
  const pictures = times(20, { want: ['curves'] });
  const native = figure(sweep('speed'), 'supply.speed.native_best_tenth');
  const scipy = must(venv(), [join(root, 'scripts/lib/measure/supply_scipy.py')]);
  const integrated = figure(scipy, 'supply.speed.scipy_milliseconds');
  return [
    atMost('supply.speed', quantile(node, 0.5), 'ms', 0.5, `three filter sections, median of ${ROUNDS} in Node, answers and cautions`),
    atMost('supply.speed.worst', Math.max(...node), 'ms', 2),
    atMost('supply.speed.pictures', quantile(pictures, 0.5), 'ms', 60, 'start, ripple, charging and regulation together'),
    atMost('supply.speed.wasm_over_native', quantile(node, 0.1) / native, 'times', 1.5, 'of the best tenths'),
    told('supply.speed.scipy', integrated, 'ms', 'LSODA to the same error in volts, started from a settled state and ten cycles long'),
  ];
}

/** As the native run has it. */
function threeSections(round) {
  const section = (series, ohms, henries, farads) => ({ series, ohms, henries, farads });
  return {
    secondary_volts: 320 + round / 40, mains_hertz: 50, winding_ohms: 120, rectifier_circuit: 'bridge', rectifier: 'silicon',
    sections: [{ series: 'none', farads: 32e-6 }, section('choke', 200, 10, 32e-6), section('resistor', 1e3, 0, 47e-6), section('resistor', 2.2e3, 0, 22e-6)],
    loads: [0.01, 0.03, 0.015, 0.005].map((amps) => ({ amps })),
  };
}
