import assert from 'node:assert/strict';
import test from 'node:test';
import { USUAL_WAY } from '../../words/index.js';
import { answeredOf, bareBuild, changesIn, withoutAnswered } from './answered.js';
import type { AnswerRow, Lug } from './kinds.js';

const row = (key: string, unit: string): AnswerRow => ({ key, shape: 'quantity', unit, label: key, help: '' });
const context = { words: undefined, answers: [row('plate_volts', 'V'), row('gains', '1')], inputs: {}, way: USUAL_WAY };
const lug = (answered: unknown): Lug => ({ id: 'a', calculator: 'stage', inputs: {}, position: 0, pins: [], rest: { fitted: true, answered: answered as null } });

test('an answer that moved stands beside the old one; one that reads the same does not', () => {
  const [change, ...more] = changesIn(context, { plate_volts: 248.1, gains: [1, 2], gone: 3 }, { plate_volts: 251.3, gains: [1, 2.0000001] });
  assert.deepEqual(more, []);
  assert.deepEqual([change?.was.replace('\u00a0', ' '), change?.now.replace('\u00a0', ' ')], ['248 V', '251 V']);
  assert.equal(changesIn(context, { plate_volts: 248 }, {}).length, 1, 'an answer that is gone is told too');
});

test('what a lug brought is believed only where it has the form, and a link leaves it out', () => {
  assert.deepEqual(answeredOf(lug({ release: '0.1.0', answers: { plate_volts: 248 } })), { release: '0.1.0', answers: { plate_volts: 248 } });
  for (const wrong of [null, 3, 'x', {}, { release: 1, answers: {} }, { release: '1', answers: [] }]) assert.equal(answeredOf(lug(wrong)), null);
  assert.deepEqual(withoutAnswered(lug({ release: '0.1.0', answers: {} })).rest, { fitted: true });
  assert.deepEqual(bareBuild({ name: '', lugs: [lug({})], rest: {} }).lugs[0]?.rest, { fitted: true });
});
