import assert from 'node:assert/strict';
import test from 'node:test';
import { readBuild, written } from './build.js';
import { EXAMPLE } from './example.js';
import { flatten, unflatten } from './flat.js';
import { fromHash, toBase64Url, toHash } from './hash.js';
import type { Build, Figures, Value } from './kinds.js';

const AWKWARD = ['', '~', '~~x', 'a=b&c', '+', '%', '.02', '4k7 ±5 %', '1 1/2"', '“Ω”', '[0]', '#18', 'ж', '__proto__', '0', '\u0000'];

/** A small generator with a fixed seed, so that a run that fails fails again. */
function random(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

function value(next: () => number, depth: number): Value {
  const kind = Math.floor(next() * (depth > 3 ? 4 : 6));
  if (kind === 0) return AWKWARD[Math.floor(next() * AWKWARD.length)] ?? '';
  if (kind === 1) return Math.round(next() * 1e6) / 1e3;
  if (kind === 2) return next() < 0.5;
  if (kind === 3) return null;
  const size = Math.floor(next() * 4);
  if (kind === 4) return Array.from({ length: size }, () => value(next, depth + 1));
  return record(next, size, depth);
}

function record(next: () => number, size: number, depth: number): Figures {
  const keys = Array.from({ length: size }, (_, k) => (next() < 0.3 ? (AWKWARD[Math.floor(next() * AWKWARD.length)] ?? '') : `key_${k}`));
  return Object.fromEntries(keys.filter((key) => key !== '__proto__' && key !== '').map((key) => [key, value(next, depth + 1)]));
}

test('pairs give back any plain data', () => {
  const next = random(7);
  for (let k = 0; k < 3000; k += 1) {
    const whole = { ...record(next, Math.floor(next() * 4), 0), last: 'text' };
    assert.deepEqual(unflatten(flatten(whole)), whole, flatten(whole));
  }
});

test('a link gives back the build and the lug, short or long', async () => {
  const long: Build = { ...EXAMPLE, lugs: Array.from({ length: 12 }, (_, k) => ({ ...EXAMPLE.lugs[0]!, id: `speech-${k}` })) };
  for (const build of [EXAMPLE, long]) {
    const at = build.lugs[0]?.id ?? '';
    const hash = await toHash({ build, at });
    const read = await fromHash(`#${hash}`);
    assert.ok(read !== null && 'build' in read);
    assert.deepEqual(written(read.build), written(build));
    assert.equal(read.at, at);
    assert.match(hash, /^[\w\-.~!$&'()*+,;=:@/?%[\]]*$/, 'only what an address carries');
  }
  assert.ok((await toHash({ build: long, at: '' })).length < 900, 'twelve alike lugs pack well');
});

test('a short link can be read by a person', async () => {
  const build: Build = { name: '', lugs: [{ id: 'rc', calculator: 'filter', inputs: { load_ohms: '4k7' }, position: 0, pins: [], rest: {} }], rest: {} };
  assert.equal(await toHash({ build, at: 'rc' }), '1&name=&lugs.0.id=rc&lugs.0.calculator=filter&lugs.0.inputs.load_ohms=4k7&at=rc');
});

test('unknown keys live through reading and writing, on the build, on a lug and in its inputs', () => {
  const given = {
    tagstrip: 1, name: 'n', state: { cold: true }, on_hand: ['6J5'],
    lugs: [{ id: 'a', calculator: 'of_tomorrow', inputs: { ohms: { from: 'b.c', times: 2 } }, fitted: false, colour: 'none' }],
  };
  const read = readBuild(given);
  assert.ok('build' in read);
  assert.deepEqual(written(read.build), given);
});

test('a later form is refused by its number, nonsense as nonsense, and nothing of it is used', async () => {
  assert.deepEqual(readBuild({ tagstrip: 2, lugs: 'whatever comes then' }), { refused: 'newer', form: 2 });
  for (const given of [null, 7, 'x', [], {}, { tagstrip: 0 }, { tagstrip: 1.5 }, { tagstrip: 1, lugs: [{}] }, { tagstrip: 1, lugs: [{ id: '', calculator: 'x' }] }, { tagstrip: 1, lugs: {} }]) {
    assert.deepEqual(readBuild(given), { refused: 'not_ours' }, JSON.stringify(given));
  }
  const later = await fromHash('#2zAAAA');
  assert.ok(later !== null && 'refused' in later && later.refused === 'newer');
  for (const hash of ['#', '#main', '#1', '#1z', '#1z!!!!', '#1&x', '#1&=1', '#1&a=~{', '#1&lugs.0.id=a', '#1&a=%zz', '#1&a=1&a=2', '#1&a=1&a.b=2', '#1&lugs.999999999.id=a']) {
    const read = await fromHash(hash);
    assert.ok(read !== null && 'refused' in read, hash);
  }
});

test('a small link cannot unpack to a large one', async () => {
  const bytes = await new Response(new Blob([`{"name":"${'a'.repeat(4_000_000)}"}`]).stream().pipeThrough(new CompressionStream('deflate-raw'))).arrayBuffer();
  const read = await fromHash(`#1z${toBase64Url(new Uint8Array(bytes))}`);
  assert.ok(read !== null && 'refused' in read);
});

test('what a stranger’s file holds is made anew and cannot reach a prototype', () => {
  const given: unknown = JSON.parse('{"tagstrip":1,"__proto__":{"bad":1},"lugs":[{"id":"a","calculator":"v","inputs":{"__proto__":{"bad":1}}}]}');
  const read = readBuild(given);
  assert.ok('build' in read);
  assert.equal(({} as { bad?: number }).bad, undefined);
  assert.deepEqual(Object.keys(read.build.lugs[0]?.inputs ?? { x: 1 }), []);
  assert.equal(unflatten('__proto__.bad=1')?.['bad'], undefined);
});

test('two lugs of one name are told apart', () => {
  const lug = { id: 'a', calculator: 'v', inputs: {} };
  const read = readBuild({ tagstrip: 1, lugs: [lug, lug, { ...lug, id: 'a-2' }] });
  assert.ok('build' in read);
  assert.deepEqual(read.build.lugs.map(({ id }) => id), ['a', 'a-2', 'a-2-2']);
});
