import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { test } from 'node:test';
import * as door from './door.js';

await door.open(new Uint8Array(await readFile('www/package/wasm/tagstrip.wasm')));

const labels = (positions: readonly { label: string; farads: number }[]): readonly string[] =>
  (door.work('voice', { positions }, ['curves']).curves?.[0]?.lines ?? []).map(({ label }) => label);

test('texts come back as they were, whatever letters they have', () => {
  const names = ['Ω', '𝄞 two halves', 'nought \u0000 within', '', 'e\u0301'];
  assert.deepEqual(labels(names.map((label, k) => ({ label, farads: 1e-9 * (k + 1) }))), names);
  assert.deepEqual(labels([{ label: 'half \ud834 alone', farads: 1e-9 }, { label: 'next', farads: 2e-9 }]), ['half \ufffd alone', 'next']);
});

test('what is no value of the engine is refused, and the next call is as before', () => {
  const before = door.work('stage', {});
  let deep: unknown = 1;
  for (let k = 0; k < 40; k += 1) deep = { deep };
  for (const wrong of [() => 1, Symbol('x'), 10n, [1], 'x', Number.NaN, { tube: () => 1 }, { deep }, { plate_ohms: 1n }]) {
    assert.throws(() => door.work('stage', wrong as unknown as Parameters<typeof door.work>[1]), door.Refusal, String(typeof wrong));
  }
  const around: Record<string, unknown> = {};
  around['around'] = around;
  assert.throws(() => door.work('stage', around as unknown as Parameters<typeof door.work>[1]), door.Refusal);
  assert.deepEqual(door.work('stage', {}), before);
});

test('numbers come back to the last bit, also those that JSON does not have', () => {
  const outcome = door.work('filter', {}, ['curves']);
  for (const { lines } of outcome.curves ?? []) for (const { x, y } of lines) assert.ok(x instanceof Float64Array && y instanceof Float64Array && x.length === y.length && x.length > 1);
  assert.throws(() => door.work('stage', { plate_ohms: Number.POSITIVE_INFINITY }), (fault) => fault instanceof door.Refusal && fault.problems[0]?.field === 'plate_ohms');
});
