import assert from 'node:assert/strict';
import test from 'node:test';
import type { Engine, Figures, InputRow, Outcome } from './kinds.js';
import { Keep, type Shelf } from './keep.js';
import { readPreferences, USUAL, writePreferences } from './preferences.js';
import { ROWS } from './rows.fixture.js';
import { Runner } from './runner.js';
import { waitingFor } from './stale.js';
import { evenStep, evenSteps, isPreferred, seriesOf, stepTexts } from './steps.js';
import { Works } from './works.js';
import { USUAL_WAY } from '../../words/index.js';

class Shelved implements Shelf {
  readonly held = new Map<string, string>();
  fault: DOMException | null = null;
  getItem(key: string): string | null {
    return this.held.get(key) ?? null;
  }
  setItem(key: string, value: string): void {
    if (this.fault !== null) throw this.fault;
    this.held.set(key, value);
  }
}

test('what is kept comes back, by the same tab or a later one', () => {
  const shelf = new Shelved();
  assert.deepEqual(new Keep(shelf, 'a').write({ name: 'n' }, 'speech', ['x', 'y', 'z']), { outcome: 'kept', overwrote: false });
  const kept = new Keep(shelf, 'b').read();
  assert.deepEqual([kept?.build, kept?.at, kept?.hashes], [{ name: 'n' }, 'speech', ['x', 'y']]);
});

test('two tabs never write over each other without a word, and the other’s build is put aside', () => {
  const shelf = new Shelved();
  const [one, other] = [new Keep(shelf, 'one'), new Keep(shelf, 'other')];
  one.write({ name: 'first' }, '', []);
  other.read();
  assert.equal(other.write({ name: 'second' }, '', []).overwrote, false, 'it had seen the first');
  assert.equal(one.write({ name: 'third' }, '', []).overwrote, true);
  assert.deepEqual(one.before()?.build, { name: 'second' });
  assert.equal(one.write({ name: 'fourth' }, '', []).overwrote, false);
});

test('a browser that keeps nothing, and one that is full, are told apart', () => {
  const full = new Shelved();
  full.fault = new DOMException('no room', 'QuotaExceededError');
  assert.equal(new Keep(full, 'a').write({}, '', []).outcome, 'full');
  full.fault = new DOMException('no', 'SecurityError');
  assert.equal(new Keep(full, 'a').write({}, '', []).outcome, 'refused');
  assert.equal(new Keep(null, 'a').write({}, '', []).outcome, 'refused');
  full.held.set('tagstrip.build', '{"build"');
  assert.equal(new Keep(full, 'a').read(), null, 'what was torn is passed over');
});

test('preferences are remembered, and only as far as they are known', () => {
  const shelf = new Shelved();
  writePreferences(shelf, { ...USUAL, tube: 'valve', theme: 'dark' });
  assert.deepEqual(readPreferences(shelf), { ...USUAL, tube: 'valve', theme: 'dark' });
  shelf.held.set('tagstrip.preferences', '{"tube":"lamp","mains":50,"more":1}');
  assert.deepEqual(readPreferences(shelf), { ...USUAL, mains: 50 });
  assert.deepEqual(readPreferences(null), USUAL);
});

test('while one job runs only the newest of a name waits, and what is looked at goes first', async () => {
  const runner = new Runner();
  const done: string[] = [];
  const job = (name: string) => async (): Promise<void> => {
    await Promise.resolve();
    done.push(name);
  };
  runner.ask('a', 0, job('a1'));
  runner.ask('pin', 2, job('pin'));
  for (const k of [2, 3, 4]) runner.ask('a', 0, job(`a${k}`));
  await new Promise((then) => { setTimeout(then, 5); });
  assert.deepEqual(done, ['a1', 'a4', 'pin']);
});

/** An engine whose answers are let go one by one. */
class Slow implements Engine {
  readonly waiting: { readonly inputs: Figures; readonly give: (outcome: Outcome) => void; readonly refuse: (fault: unknown) => void }[] = [];
  catalogue = (): Promise<never[]> => Promise.resolve([]);
  read = (): Promise<never> => Promise.reject(new Error('not asked'));
  steps = (): Promise<never> => Promise.reject(new Error('not asked'));
  work(_: string, inputs: Figures): Promise<Outcome> {
    return new Promise((give, refuse) => { this.waiting.push({ inputs, give, refuse }); });
  }
}

const lost = (fault: unknown): void => { throw fault; };
const soon = (): Promise<void> => new Promise((then) => { setTimeout(then, 1); });
const rows: readonly InputRow[] = ROWS.slice(0, 1);

test('the last good answers stay, with the inputs that they are for, until a text is read again', async () => {
  const engine = new Slow();
  const works = new Works(engine, () => {}, lost);
  const ask = (text: string): void => works.ask('lug', 0, { calculator: 'x', rows, full: { load_ohms: text }, position: 0, want: ['answers'] });
  ask('220k');
  await soon();
  engine.waiting[0]?.give({ answers: { plate: 135 } });
  await soon();
  ask('22Ok');
  await soon();
  engine.waiting[1]?.refuse({ problems: [{ field: 'load_ohms', code: 'letter_for_digit' }] });
  await soon();
  const stale = works.get('lug');
  assert.deepEqual([stale.outcome?.answers, stale.good, stale.problems.length], [{ plate: 135 }, { load_ohms: '220k' }, 1]);
  assert.deepEqual(waitingFor(undefined, null, stale.problems, stale.good, USUAL_WAY).map(({ value }) => value), ['220k']);
  ask('22k');
  await soon();
  engine.waiting[2]?.give({ answers: { plate: 60 } });
  await soon();
  assert.deepEqual([works.get('lug').outcome?.answers, works.get('lug').problems], [{ plate: 60 }, []]);
});

test('what an own tube lacks is told by the tube that the answers are still for', () => {
  const problems = ['tube.mu', 'tube.perveance'].map((field) => ({ field, code: 'empty' }));
  const parts = [{ reference: 'V1', role: 'tube', kind: 'triode', field: 'tube', nodes: [], value: null }];
  const waiting = waitingFor(undefined, { nodes: [], parts }, problems, { tube: '6SL7GT' }, USUAL_WAY);
  assert.deepEqual(waiting, [{ reference: 'V1', value: '6SL7GT' }]);
});

test('of many texts typed while the engine works only the last is worked', async () => {
  const engine = new Slow();
  const works = new Works(engine, () => {}, lost);
  for (const text of ['2', '22', '220', '220k']) works.ask('lug', 0, { calculator: 'x', rows, full: { load_ohms: text }, position: 0, want: [] });
  await soon();
  engine.waiting[0]?.give({});
  await soon();
  engine.waiting[1]?.give({});
  await soon();
  assert.deepEqual(engine.waiting.map(({ inputs }) => inputs['load_ohms']), ['2', '220k']);
});

test('values go in preferred steps where they spread by ratio, in round even ones where they do not', () => {
  const [ohms] = ROWS;
  assert.ok(ohms !== undefined && isPreferred(ohms));
  assert.deepEqual([seriesOf(ohms), seriesOf({ ...ohms, unit: 'F' })], ['E24', 'E12']);
  assert.deepEqual(stepTexts(undefined, ohms, '', '2k2', { value: 2200, lower: 2000, higher: 2400 }), { lower: '2k', higher: '2k4' });
  const knob: InputRow = { ...ohms, unit: '1', scale: 'linear', least: 0, most: 1, usual_least: 0, usual_most: 1 };
  assert.equal(isPreferred(knob), false);
  assert.deepEqual([evenStep(knob), evenSteps(knob, 0.45), evenSteps(knob, 0.47)], [
    0.05, { value: 0.45, lower: 0.4, higher: 0.5 }, { value: 0.47, lower: 0.45, higher: 0.5 },
  ]);
  assert.deepEqual([evenSteps(knob, 0).lower, evenSteps(knob, 1).higher], [null, null]);
  assert.equal(evenStep({ ...knob, usual_least: -10, usual_most: 10 }), 1);
});
