// The drawings against the netlists that the engine itself gives, over many inputs of every kind.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { before, test } from 'node:test';
import { fileURLToPath } from 'node:url';

import { build } from 'esbuild';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
let engine;
let draw;
let held;

before(async () => {
  engine = await import(new URL('../../dist/package/index.js', import.meta.url));
  await engine.init(await readFile(here('../../dist/package/tagstrip.wasm')));
  const made = await build({
    stdin: { contents: "export { draw } from './draw.js'; export { held } from './held.js';", resolveDir: here('../../www/drawings'), loader: 'ts' },
    bundle: true, format: 'esm', write: false, logLevel: 'warning',
  });
  const bundle = made.outputFiles[0].text;
  ({ draw, held } = await import(`data:text/javascript;base64,${Buffer.from(bundle).toString('base64')}`));
});

/** The same sequence every time (Park and Miller's generator, 1988). */
function chance(seed) {
  let state = seed;
  const next = () => (state = (state * 48271) % 2147483647) / 2147483647;
  return { of: (list) => list[Math.floor(next() * list.length)], yes: (share = 0.5) => next() < share };
}

function amplifier(luck) {
  return {
    tube: luck.of(['6SL7GT', '12AX7', '6J5', '6C4', { name: 'own', perveance: 1e-3, mu: 40 }]),
    supply_volts: luck.of([90, 250, 263]), plate_ohms: luck.of([47e3, 220e3]),
    cathode_ohms: luck.of([0, 1500, 2200]), cathode_farads: luck.of([0, 25e-6]), grid_volts: luck.of([0, 0, -2]),
    ...(luck.yes() ? { decoupling_ohms: 22e3, decoupling_farads: luck.of([0, 8e-6]) } : {}),
    load_farads: luck.of([0, 100e-12]),
  };
}

const MAKERS = {
  lowpass: (luck) => ({
    family: 'butterworth', order: luck.of([2, 3, 4, 5, 6, 7, 8, 9]), first: luck.of(['capacitor', 'coil']), series: luck.of(['exact', 'E12']),
  }),
  tank: (luck) => ({
    network: luck.of(['pi', 'pi-l', 'parallel-link']), tube_farads: luck.of([0, 8e-12]), antenna_reactance: luck.of([0, 20, -20]),
  }),
  tuning: (luck) => ({ target_hertz: luck.of([1.9e6, 3.7e6, 7.1e6, 14e6, 20e6]), stray_farads: luck.of([0, 20e-12, 500e-12]) }),
  stage: (luck) => ({ ...amplifier(luck), source_ohms: luck.of([0, 50e3]) }),
  voice: (luck) => ({
    ...amplifier(luck), microphone_ohms: luck.of([0, 50e3]), ...(luck.yes() ? { microphone_farads: 1.5e-9 } : {}),
    tone: luck.of(['none', 'two-knob']), level: luck.of([0, 0.6, 1]),
    positions: [20e-9, 470e-12, 1e-9, 4.7e-9, 10e-9, 47e-9].slice(0, luck.of([1, 2, 3, 4, 5, 6])).map((farads, k) => ({ label: `Way ${k + 1}`, farads })),
  }),
  supply: (luck) => {
    const circuit = luck.of(['half-wave', 'centre-tap', 'bridge', 'doubler']);
    const sections = Array.from({ length: luck.of([1, 2, 3, 4, 6]) }, (_, k) => {
      const series = k === 0 ? (circuit !== 'doubler' && luck.yes(0.3) ? 'choke' : 'none') : luck.of(['resistor', 'choke']);
      return { series, ohms: 200, henries: 8, farads: luck.of([10e-6, 40e-6]) };
    });
    return {
      rectifier_circuit: circuit, rectifier: luck.of(['silicon', '6X4', '5Y3GT', { perveance: 1e-3 }]), sections,
      loads: sections.map(() => ({ amps: luck.of([0, 5e-3]), ...(luck.yes(0.3) ? { ohms: 50e3 } : {}) })),
      ...(luck.yes() ? { bleeder_ohms: 100e3 } : {}), ...(luck.yes(0.2) ? { regulator: '0A2' } : {}),
    };
  },
  filter: (luck) => ({
    source_ohms: luck.of([0, 50e3]),
    branches: Array.from({ length: luck.of([1, 2, 3, 5, 8, 12]) }, () => {
      const branch = { place: luck.of(['series', 'shunt']), together: luck.of(['series', 'parallel']) };
      if (luck.yes()) branch.ohms = 10e3;
      if (luck.yes()) branch.farads = 10e-9;
      if (luck.yes(0.3) || Object.keys(branch).length === 2) branch.henries = luck.of([10e-3, 10]);
      return branch;
    }),
  }),
};

for (const [id, make] of Object.entries(MAKERS)) {
  test(`${id}: 300 netlists of the engine, each drawn as it is`, () => {
    const luck = chance(20251125);
    let drawn = 0;
    for (let round = 0; round < 300; round += 1) {
      const inputs = make(luck);
      let circuit;
      try {
        ({ circuit } = engine.work(id, inputs, { want: ['circuit'] }));
      } catch (error) {
        // Some combinations have no answer; they have no drawing either. Anything else is a fault of this test.
        assert.ok(error.problems?.every(({ code }) => code === 'no_solution'), JSON.stringify([inputs, error.problems ?? String(error)]));
        continue;
      }
      drawn += 1;
      assert.deepEqual(held(draw(id, circuit), circuit), [], JSON.stringify(inputs));
    }
    assert.ok(drawn > 200, `${drawn} drawn`);
  });
}

test('the first build, as it opens, is drawn as it is', () => {
  for (const id of Object.keys(MAKERS)) {
    const { circuit } = engine.work(id, {}, { want: ['circuit'] });
    assert.deepEqual(held(draw(id, circuit), circuit), [], id);
  }
});
