import assert from 'node:assert/strict';
import test from 'node:test';
import { bandsWords } from './bands.js';
import { readAs, readingWords } from './readings.js';
import type { Mend } from './kinds.js';
import { unreadText } from './unread.js';
import { typedText, writtenLike } from './written.js';

const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

test('a step is written the way the person wrote', () => {
  const rows: readonly (readonly [number, string, number, string, string])[] = [
    [2400, '2k2', 2200, 'Ω', '2k4'],
    [240e3, '220k', 220e3, 'Ω', '240k'],
    [430e-12, '470 mmf', 470e-12, 'F', '430 mmf'],
    [0.018e-6, '.02', 0.02e-6, 'F', '.018'],
    [27e-6, '25 MFD', 25e-6, 'F', '27 MFD'],
    [0.22e-6, '.2uF', 0.2e-6, 'F', '.22uF'],
    [1600, '1,5k', 1500, 'Ω', '1,6k'],
    [1e6, '910k', 910e3, 'Ω', '1M'],
    [910e3, '1M', 1e6, 'Ω', '910k'],
    [1e-6, '.91', 0.91e-6, 'F', '1 µF'],
    [110e-9, '104', 100e-9, 'F', '110 nF'],
    [5100, 'yellow violet red', 4700, 'Ω', '5.1k'],
  ];
  for (const [next, typed, was, unit, text] of rows) assert.equal(writtenLike(next, typed, was, unit), text);
});

test('a default as a person would type it', () => {
  assert.equal(typedText(220e3, 'Ω'), '220k');
  assert.equal(typedText(4.7, 'Ω'), '4.7');
  assert.equal(typedText(4.7e-9, 'F'), '4.7 nF');
  assert.equal(typedText(0.2, '1', true), '20 %');
  assert.equal(typedText(-1.5, 'V'), '-1.5 V');
  assert.equal(typedText(4700e-6, 'F'), '4700 µF');
});

test('an echo says what was understood', () => {
  const rows: readonly (readonly [string, string, number, string])[] = [
    ['250 mmf', 'F', 250e-12, '250 mmf = 250 pF'],
    ['.02', 'F', 0.02e-6, '.02 = 0.02 µF = 20 nF'],
    ['0.02 uF', 'F', 0.02e-6, '0.02 uF = 20 nF'],
    ['4k7', 'Ω', 4700, '4k7 = 4.7 kΩ'],
    ['220 kΩ', 'Ω', 220e3, '220 kΩ'],
    ['1 1/2"', 'm', 0.0381, '1 1/2" = 38.1 mm'],
  ];
  for (const [typed, unit, value, text] of rows) assert.equal(spaced(readingWords(typed, unit, { value })), text);
  assert.equal(spaced(readingWords('brown black red gold', 'Ω', { value: 1000, tolerance: 0.05 })), 'brown black red gold = 1 kΩ, ±5 %');
  assert.equal(spaced(readAs('Ω', { value: 220e3 })), 'Read as 220 kΩ.');
});

test('a text that is not read says why, and what to write', () => {
  const said = (code: string, typed: string, unit: string, mends: readonly Mend[]): string => spaced(unreadText({ field: '', code, mends }, typed, unit));
  assert.equal(
    said('letter_for_digit', '22Ok', 'Ω', [{ text: '220k', value: 220e3 }]),
    '“22Ok” has the letter O in it. Write 220k for 220 kilohms.',
  );
  assert.equal(
    said('which_comma', '1,234', 'Ω', [{ text: '1234', value: 1234 }, { text: '1.234', value: 1.234 }]),
    '“1,234” has a comma that may mark decimals or thousands. Write 1234 for 1.234 kilohms or 1.234 for 1.234 ohms.',
  );
  assert.equal(said('empty', '', 'Ω', []), 'Nothing is written here yet. Write one figure in ohms.');
});

test('colour bands read aloud', () => {
  // IEC 60062: two figures and a factor up to four bands, three from five on.
  const rows: readonly (readonly [string, number | null, string])[] = [
    ['yellow violet red gold', 0.05, 'yellow 4, violet 7, red × 100, gold ±5 %'],
    ['brown black black red brown', 0.01, 'brown 1, black 0, black 0, red × 100, brown ±1 %'],
    ['red violet silver silver', 0.1, 'red 2, violet 7, silver × 0.01, silver ±10 %'],
    ['orange orange orange', null, 'orange 3, orange 3, orange × 1,000'],
  ];
  for (const [bands, tolerance, text] of rows) assert.equal(spaced(bandsWords(bands.split(' '), tolerance)), text);
});
