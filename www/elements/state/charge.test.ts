import assert from 'node:assert/strict';
import test from 'node:test';
import type { BareCaution } from '../../words/kinds.js';
import { withSupplies } from './charge.js';

const stage: BareCaution = { code: 'danger_volts', severity: 'danger', about: null, figures: { volts: 250, own_seconds: 75, least_wait_seconds: 75 } };
const note: BareCaution = { code: 'cut_off', severity: 'note', about: null, figures: {} };
const supply = (seconds: number | null): BareCaution => ({ code: 'danger_supply', severity: 'danger', about: null, figures: { wait_seconds: seconds } });
const waitOf = (supplies: readonly BareCaution[]) => withSupplies([stage, note], supplies).map(({ figures }) => figures?.['wait_seconds']);

test('a stage tells the longest wait of the supplies beside it, and that there is none where one has no bleeder', () => {
  assert.deepEqual(waitOf([]), [undefined, undefined]);
  assert.deepEqual(waitOf([supply(240), supply(90)]), [240, undefined]);
  assert.deepEqual(waitOf([supply(60)]), [75, undefined], 'never shorter than its own parts need');
  assert.deepEqual(waitOf([supply(60), supply(null)]), [null, undefined]);
  assert.deepEqual(withSupplies([supply(60)], [supply(null)])[0]?.figures, { wait_seconds: 60 }, 'a supply knows its own');
});
