import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { mock, test } from 'node:test';

import { ByWorker } from './by-worker.js';
import { Direct } from './direct.js';
import { Parted } from './parted.js';
import { Engine, Lost, pageEngine, Refused } from './index.js';
import type { Asked, Told, Transport } from './protocol.js';

/** A worker that answers as it is told to, or never. */
class Actor extends EventTarget {
  ended = false;
  readonly asked: Asked[] = [];
  readonly #answer: (asked: Asked) => Told | undefined;

  constructor(answer: (asked: Asked) => Told | undefined) {
    super();
    this.#answer = answer;
  }

  postMessage(asked: Asked): void {
    this.asked.push(structuredClone(asked));
    const told = this.#answer(asked);
    if (told !== undefined) queueMicrotask(() => { if (!this.ended) this.dispatchEvent(new MessageEvent('message', { data: told })); });
  }

  terminate(): void {
    this.ended = true;
  }
}

/** Actors in the order in which they are made. */
function troupe(...answers: ((asked: Asked) => Told | undefined)[]) {
  const made: Actor[] = [];
  const make = (): Worker => {
    const actor = new Actor(answers[made.length] ?? (() => undefined));
    made.push(actor);
    return actor as unknown as Worker;
  };
  return { made, make };
}

const obliging = ({ number }: Asked): Told => ({ number, gives: { answers: { number } } });
const silent = (): undefined => undefined;

test('answers come to the call that asked, whatever their order', async () => {
  const late: Told[] = [];
  const { make, made } = troupe((asked) => { late.push(obliging(asked)); return undefined; });
  const engine = new Engine(new ByWorker(make));
  const calls = [engine.work('stage', {}, []), engine.work('filter', {}, []), engine.read('1k', 'Ω')];
  for (const told of late.reverse()) made[0]?.dispatchEvent(new MessageEvent('message', { data: told }));
  assert.deepEqual(await Promise.all(calls), [1, 2, 3].map((number) => ({ answers: { number } })));
  assert.equal(made.length, 1);
});

test('a stuck worker is ended, its callers told, and the next call has another', async () => {
  mock.timers.enable({ apis: ['setTimeout', 'Date'] });
  try {
    const { make, made } = troupe(silent, obliging);
    const engine = new Engine(new ByWorker(make));
    const stuck = engine.work('stage', {}, []);
    const told = assert.rejects(stuck, Lost);
    mock.timers.tick(60_000);
    await told;
    assert.equal(made[0]?.ended, true);
    assert.deepEqual(await engine.work('stage', {}, []), { answers: { number: 2 } });
    assert.equal(made.length, 2);
    assert.equal(made[1]?.ended, false);
  } finally {
    mock.timers.reset();
  }
});

test('a call that is answered in time ends nothing, however many follow', async () => {
  mock.timers.enable({ apis: ['setTimeout', 'Date'] });
  try {
    const { make, made } = troupe(obliging);
    const engine = new Engine(new ByWorker(make));
    for (let k = 0; k < 20; k += 1) {
      await engine.work('stage', {}, []);
      mock.timers.tick(5000);
    }
    assert.equal(made.length, 1);
    assert.equal(made[0]?.ended, false);
  } finally {
    mock.timers.reset();
  }
});

test('a worker whose engine trapped, or that fell over, is thrown away', async () => {
  const { make, made } = troupe(({ number }) => ({ number, lost: 'unreachable' }), silent, obliging);
  const engine = new Engine(new ByWorker(make));
  await assert.rejects(engine.work('stage', {}, []), Lost);
  assert.equal(made[0]?.ended, true);
  const fallen = engine.work('stage', {}, []);
  made[1]?.dispatchEvent(Object.assign(new Event('error'), { message: 'fell over' }));
  await assert.rejects(fallen, Lost);
  assert.deepEqual(await engine.work('stage', {}, []), { answers: { number: 3 } });
  assert.equal(made.length, 3);
});

test('problems of the inputs are no fault of the worker', async () => {
  const problems = [{ field: 'plate_ohms', code: 'too_small' }];
  const { make, made } = troupe(({ number }) => ({ number, problems }));
  const engine = new Engine(new ByWorker(make));
  await assert.rejects(engine.work('stage', {}, []), (fault) => fault instanceof Refused && fault.problems[0]?.code === 'too_small');
  assert.equal(made[0]?.ended, false);
});

test('where no worker ever answers, the page works by itself; where one did, it does not', async () => {
  const direct = { call: async () => 'direct' } as unknown as Transport;
  const broken = new Engine(new ByWorker(() => { throw new Error('no workers here'); }), () => direct);
  assert.equal(await broken.work('stage', {}, []), 'direct');
  const reader = ({ number, name }: Asked): Told => (name === 'read' ? { number, gives: 'worker' } : { number, lost: 'trap' });
  const { make } = troupe(reader, reader);
  const good = new Engine(new ByWorker(make), () => direct);
  assert.equal(await good.read('1k', 'Ω'), 'worker');
  await assert.rejects(good.work('stage', {}, []), Lost);
  assert.equal(await good.read('1k', 'Ω'), 'worker');
});

const bytes = new Uint8Array(await readFile('www/package/wasm/tagstrip.wasm'));

test('without workers the real engine answers in the page, and refuses with codes', async () => {
  const engine = new Engine(new Direct(() => bytes));
  const { answers } = await engine.work('stage', {}, ['answers']);
  assert.equal(typeof (answers as Record<string, unknown>)['plate_volts'], 'number');
  await assert.rejects(engine.work('stage', { plate_ohms: '1O0k' }, ['answers']), (fault) =>
    fault instanceof Refused && fault.problems[0]?.field === 'plate_ohms');
  assert.deepEqual(await engine.steps('220k', 'Ω', 'E24'), { value: 220e3, lower: 200e3, higher: 240e3 }, 'IEC 60063');
});

test('an engine that was thrown out of a call in its middle answers the next one the same as before', async () => {
  const engine = new Engine(new Direct(() => bytes));
  const before = await engine.work('voice', {}, ['answers']);
  for (let k = 0; k < 50; k += 1) {
    const trap = { get supply_volts(): number { throw new RangeError('thrown through the engine'); } };
    await assert.rejects(engine.work('voice', trap, ['answers']));
  }
  assert.deepEqual(await engine.work('voice', {}, ['answers']), before);
});

test('a source that does not arrive is said, and asked for again by the next call', async () => {
  let asks = 0;
  const engine = new Engine(new Direct(() => {
    asks += 1;
    return asks === 1 ? new Response('', { status: 503 }) : bytes;
  }));
  await assert.rejects(engine.read('1k', 'Ω'), Lost);
  assert.equal((await engine.read('1k', 'Ω')).value, 1000);
});

test('pageEngine takes the direct way where there is no Worker', async () => {
  assert.equal(typeof Worker, 'undefined');
  const engine = pageEngine({ worker: () => { throw new Error('never'); }, source: () => bytes });
  assert.ok((await engine.catalogue()).length >= 5);
});

test('a part answers for its own calculators, and the whole is made only when another is wanted', async () => {
  let made = 0;
  const named = (name: string): Transport => ({ call: (call, ...args) => Promise.resolve(`${name} ${call} ${String(args[0])}` as never) });
  const parted = new Parted({ part: named('part'), ids: ['voice'], whole: () => { made += 1; return named('whole'); }, catalogue: () => Promise.resolve([]) });
  assert.equal(await parted.call('work', 'voice', {}, []), 'part work voice');
  assert.equal(await parted.call('read', '4k7', 'Ω'), 'part read 4k7');
  assert.deepEqual(await parted.call('catalogue'), []);
  assert.equal(made, 0);
  assert.equal(await parted.call('work', 'coil', {}, []), 'whole work coil');
  assert.equal(await parted.call('work', 'tank', {}, []), 'whole work tank');
  assert.equal(made, 1);
});
