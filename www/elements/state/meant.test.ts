import assert from 'node:assert/strict';
import test from 'node:test';
import type { InputRow } from './kinds.js';
import { meant } from './meant.js';

const row = (unit: string, usual_least: number, usual_most: number): InputRow => ({ key: 'x', shape: 'quantity', label: '', help: '', unit, usual_least, usual_most });

test('a bare figure far outside what is usual is asked about with the one prefix that brings it back, and no other is', () => {
  const coil = row('Hz', 1e6, 30e6);
  assert.equal(meant(coil, '3.7', 3.7), '3.7 MHz');
  assert.equal(meant(coil, '3700', 3700), '3700 kHz');
  assert.equal(meant(coil, '3.7 Hz', 3.7), null, 'a unit was written');
  assert.equal(meant(coil, '3700000', 3.7e6), null);
  assert.equal(meant(coil, '300000', 3e5), null, 'unusual, not far out');
  assert.equal(meant(row('Ω', 47e3, 470e3), '220', 220), '220k');
  assert.equal(meant(row('Ω', 500, 1e9), '1', 1), null, 'two prefixes fit');
  assert.equal(meant(row('1', 0, 1), '90', 90), null);
  assert.equal(meant({ key: 'x', shape: 'quantity', label: '', help: '', unit: 'V' }, '3', 3), null);
  assert.equal(meant(coil, '0', 0), null);
});
