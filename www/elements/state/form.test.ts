import assert from 'node:assert/strict';
import test from 'node:test';
import { bare, fill, sent } from './full.js';
import { asFigures, ownFigure, Readings } from './figures.js';
import { formOf } from './form.js';
import { leaves, rowFor } from './leaves.js';
import { canGrow, canShrink, grown, moved, shrunk } from './lists.js';
import { put, valueAt } from './paths.js';
import { ROWS, TABLE } from './rows.fixture.js';
import { isGiven } from './shown.js';

test('what was not typed stands as a person would write it', () => {
  const full = fill(TABLE, {});
  assert.equal(full['load_ohms'], '4.7k');
  assert.equal(full['series_ohms'], '0');
  assert.equal(full['corner'], '');
  assert.equal(valueAt(full, 'steps[0].farads'), '20 nF');
  assert.equal(valueAt(full, 'meter.ohms'), '10M');
  assert.equal(valueAt(full, 'meter.sensitivity'), undefined, 'the meter is of the other kind');
});

test('only what differs is kept, and comes back the same', () => {
  const typed = put(put(fill(TABLE, {}), 'load_ohms', '22Ok'), 'steps[0].farads', '.02');
  const kept = bare(TABLE, typed);
  assert.deepEqual(Object.keys(kept), ['load_ohms', 'steps']);
  assert.deepEqual(fill(TABLE, kept), typed);
  assert.deepEqual(bare(TABLE, fill(TABLE, {})), {});
});

test('keys that the calculator does not have are kept and not sent', () => {
  const inputs = { of_tomorrow: { a: 1 } };
  assert.deepEqual(bare(TABLE, fill(TABLE, inputs)), inputs);
  assert.equal(Object.hasOwn(sent(ROWS, fill(TABLE, inputs)), 'of_tomorrow'), false);
});

test('an emptied field goes to the engine where it is needed, and not where it may be absent', () => {
  const empty = put(put(fill(TABLE, {}), 'load_ohms', ''), 'corner', '');
  assert.equal(sent(ROWS, empty)['load_ohms'], '');
  assert.equal(Object.hasOwn(sent(ROWS, empty), 'corner'), false);
});

test('a field shows while its conditions hold, and a hidden one is neither shown nor sent', () => {
  const off = put(fill(TABLE, {}), 'series_farads', 'nonsense');
  const on = put(off, 'series_ohms', '1k');
  const paths = (full: typeof on): readonly string[] => leaves(ROWS, full).map(({ path }) => path);
  assert.equal(paths(off).includes('series_farads'), false);
  assert.equal(paths(on).includes('series_farads'), true);
  assert.equal(Object.hasOwn(sent(ROWS, off), 'series_farads'), false);
  assert.equal(sent(ROWS, on)['series_farads'], 'nonsense');
  assert.equal(paths(put(on, 'way', 'down')).includes('loud'), true);
  assert.deepEqual(['', '0', '0.00 V', '0k', '1k', '.02', 'brown black red'].map(isGiven), [false, false, false, false, true, true, true]);
});

test('exactly one of a group is in the form, with what goes with it', () => {
  const digital = fill(TABLE, {});
  const meter = (full: typeof digital): unknown => {
    const piece = formOf(ROWS, full).flatMap(({ pieces }) => pieces).find(({ path }) => path === 'meter');
    assert.ok(piece?.kind === 'record');
    const [choice] = piece.pieces;
    assert.ok(choice?.kind === 'one_of');
    return [choice.chosen, choice.pieces.map(({ path }) => path)];
  };
  assert.deepEqual(meter(digital), ['ohms', ['meter.ohms']]);
  const needle = fill(TABLE, { meter: { sensitivity: '20k' } });
  assert.deepEqual(meter(needle), ['sensitivity', ['meter.sensitivity', 'meter.range']]);
  assert.equal(valueAt(needle, 'meter.ohms'), undefined, 'the other’s own value does not stand in');
  assert.deepEqual(sent(ROWS, needle)['meter'], { sensitivity: '20k' });
});

test('a tube of the table and one’s own are two shapes of one field', () => {
  const own = fill(TABLE, { tube: { mu: '20' } });
  assert.deepEqual(own['tube'], { mu: '20', spread: '0.25' });
  assert.deepEqual(leaves(ROWS, own).filter(({ path }) => path.startsWith('tube')).map(({ path }) => path), ['tube.mu', 'tube.spread']);
  assert.deepEqual(leaves(ROWS, fill(TABLE, {})).filter(({ path }) => path.startsWith('tube')).map(({ value }) => value), ['6SL7GT']);
});

test('a list keeps to its bounds and its order is the person’s', () => {
  const row = rowFor(ROWS, 'steps')!;
  const two = grown(row, ['a'], 'b');
  assert.deepEqual(two, ['a', 'b']);
  assert.deepEqual(moved(two, 0, 1), ['b', 'a']);
  assert.deepEqual(moved(two, 0, -1), two);
  assert.deepEqual(moved(two, 1, 1), two);
  assert.equal(canGrow(row, ['a', 'b', 'c']), false);
  assert.deepEqual(grown(row, ['a', 'b', 'c'], 'd'), ['a', 'b', 'c']);
  assert.equal(canShrink(row, ['a']), false);
  assert.deepEqual(shrunk(row, ['a'], 0), ['a']);
  assert.deepEqual(shrunk(row, ['a', 'b', 'c'], 1), ['a', 'c']);
});

test('a row is found by any path', () => {
  assert.equal(rowFor(ROWS, 'steps[2].farads')?.unit, 'F');
  assert.equal(rowFor(ROWS, 'tube.mu')?.unit, '1');
  assert.equal(rowFor(ROWS, 'meter.range')?.unit, 'V');
  assert.equal(rowFor(ROWS, 'nothing.here'), undefined);
  assert.equal(ownFigure(ROWS, 'steps[0].farads'), 20e-9);
  assert.equal(ownFigure(ROWS, 'meter.ohms'), 10e6);
  assert.equal(ownFigure(ROWS, 'tube.mu'), null);
});

test('sentences get figures where the reader has read, and the text where it has not', () => {
  const readings = new Readings();
  readings.set('2k2', 'Ω', { value: 2200 });
  const full = put(put(fill(TABLE, {}), 'load_ohms', '2k2'), 'series_ohms', '22Ok');
  const figures = asFigures(full, leaves(ROWS, full), readings);
  assert.equal(figures['load_ohms'], 2200);
  assert.equal(figures['series_ohms'], '22Ok');
});
