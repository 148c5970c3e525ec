import assert from 'node:assert/strict';
import test from 'node:test';
import { gzipSync } from 'node:zlib';
import { fromLetters, toLetters, unpacked } from './packed.js';

test('bytes come back from their letters, whatever their number', () => {
  for (let length = 0; length < 40; length += 1) {
    const bytes = Uint8Array.from({ length }, (_, k) => (k * 91 + length * 37) % 256);
    const letters = toLetters(bytes);
    assert.deepEqual(fromLetters(letters), bytes);
    assert.doesNotMatch(letters, /[\s"&'<>\\`]/);
  }
  for (const value of [0, 255]) assert.deepEqual(fromLetters(toLetters(new Uint8Array(9).fill(value))), new Uint8Array(9).fill(value));
});

test('what was packed is unpacked, and what was cut is refused', async () => {
  const body = Buffer.from('The plate rests at 166 V. '.repeat(500));
  const letters = toLetters(gzipSync(body));
  assert.deepEqual(Buffer.from(await unpacked(`\n${letters}\n`)), body);
  await assert.rejects(unpacked(letters.slice(0, -20)));
});
