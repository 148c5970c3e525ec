import assert from 'node:assert/strict';
import test from 'node:test';
import { lengthWords } from './lengths.js';
import { show, show_quantity, split } from './quantity.js';
import { spoken } from './spoken.js';
import { USUAL_WAY } from './way.js';

// Expected texts follow the SI brochure (9th edition, 3 and 5.4): prefix by threes, a space before the unit, a true minus;
// farads as the trade writes them, in pF, nF and µF.
const ROWS: readonly (readonly [number | null, string, string])[] = [
  [2200, 'Ω', '2.2 kΩ'],
  [220e3, 'Ω', '220 kΩ'],
  [1e-3, 'Ω', '1 mΩ'],
  [1e9, 'Ω', '1 GΩ'],
  [470e-12, 'F', '470 pF'],
  [0.02e-6, 'F', '20 nF'],
  [25e-6, 'F', '25 µF'],
  [4700e-6, 'F', '4,700 µF'],
  [0.1, 'F', '0.1 F'],
  [1e-14, 'F', '0.01 pF'],
  [999.6, 'V', '1 kV'],
  [999.4, 'V', '999 V'],
  [-1.28, 'V', '−1.28 V'],
  [0, 'V', '0 V'],
  [0.58e-3, 'A', '580 µA'],
  [1885e3, 'Hz', '1.89 MHz'],
  [7.93, 'dB', '7.9 dB'],
  [-7.25, 'dB', '−7.3 dB'],
  [-0.01, 'dB', '0.0 dB'],
  [104.2, '%', '104 %'],
  [0.43, '%', '0.43 %'],
  [89.6, '°', '90 °'],
  [3700, '1', '3,700'],
  [0.25, '1', '0.25'],
  [1e-6, '1', '1 × 10⁻⁶'],
  [12000, 's', '12,000 s'],
  [0.0381, 'm', '38.1 mm'],
  [20e3, 'Ω/V', '20 kΩ/V'],
  [null, 'V', '–'],
  [Number.NaN, 'V', '–'],
  [Number.POSITIVE_INFINITY, 'Hz', '–'],
];

const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

test('figures with their units', () => {
  for (const [value, unit, text] of ROWS) assert.equal(spaced(show_quantity(value, unit)), text);
});

test('a figure and its unit never part at the end of a line', () => {
  for (const [value, unit] of ROWS) assert.doesNotMatch(show_quantity(value, unit), / /);
});

test('a kept prefix, a sign, a comma', () => {
  const way = { ...USUAL_WAY, decimal: 'comma' as const };
  assert.equal(spaced(show(0.58e-3, 'A', { prefix: 'm' })), '0.58 mA');
  assert.equal(spaced(show(7.93, 'dB', { signed: true })), '+7.9 dB');
  assert.equal(spaced(show(0, 'dB', { signed: true })), '0.0 dB');
  assert.equal(spaced(show_quantity(1234.5, '1', 5, way)), '1\u202f234,5');
  assert.deepEqual(split(263, 'V'), { figure: '263', unit: 'V' });
});

test('whatever finite figure comes, it reads back as itself to the figures asked for', () => {
  const powers: Record<string, number> = { f: -15, p: -12, n: -9, 'µ': -6, m: -3, k: 3, M: 6, G: 9, T: 12 };
  for (let exponent = -16; exponent <= 15; exponent += 1) {
    for (const mantissa of [1, 1.005, 2.2, 4.99, 9.994, 9.996]) {
      for (const unit of ['V', 'F', 'Hz', 's', 'm', 'Ω', '1']) {
        const value = mantissa * 10 ** exponent;
        const text = show_quantity(value, unit, 4);
        const [figure = '', symbol = ''] = text.split(/\u00a0(?=\D*$)/);
        const prefix = symbol.slice(0, symbol.length - (unit === '1' ? 0 : unit.length));
        const plain = figure.replaceAll(',', '').replace(/\u00a0×\u00a010(.*)$/, (_, power: string) => `e${lowered(power)}`);
        const back = Number(plain) * 10 ** (powers[prefix] ?? 0);
        assert.ok(Math.abs(back / value - 1) < (plain.includes('e') ? 6e-3 : 6e-4), `${value} ${unit} became ${text}`);
      }
    }
  }
});

function lowered(power: string): string {
  return [...power].map((each) => ('⁰¹²³⁴⁵⁶⁷⁸⁹'.includes(each) ? '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(each) : '-')).join('');
}

test('in full words', () => {
  assert.equal(spaced(spoken(220e3, 'Ω')), '220 kilohms');
  assert.equal(spaced(spoken(1e6, 'Ω')), '1 megohm');
  assert.equal(spaced(spoken(470e-12, 'F')), '470 picofarads');
  assert.equal(spaced(spoken(1, 'V')), '1 volt');
});

test('lengths follow the person', () => {
  assert.equal(spaced(lengthWords(0.0381)), '38.1 mm');
  assert.equal(spaced(lengthWords(0.0381, { ...USUAL_WAY, length: 'inch' })), '1.5 in');
});
