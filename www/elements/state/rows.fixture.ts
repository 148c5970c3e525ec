import type { Table } from './full.js';
import type { InputRow } from './kinds.js';

const words = { label: '', help: '' };
const quantity = (key: string, more: Partial<InputRow> = {}): InputRow => ({
  key, shape: 'quantity', unit: 'Ω', least: 1e-3, most: 1e9, scale: 'log', ...words, ...more,
});

/** A table with a field of every shape, for the tests of the form's logic: no calculator's own. */
export const ROWS: readonly InputRow[] = [
  quantity('load_ohms', { default: 4700, group: 'ends' }),
  quantity('series_ohms', { default: 0, zero: 'none', group: 'ends' }),
  quantity('series_farads', { default: 0, zero: 'none', unit: 'F', group: 'ends', when: [{ path: 'series_ohms', given: true }] }),
  quantity('corner', { unit: 'Hz', optional: true, together: 'wish', group: 'wish' }),
  { key: 'solve', shape: 'text', most: 40, optional: true, together: 'wish', group: 'wish', ...words },
  { key: 'way', shape: 'choice', choices: ['up', 'down'], default: 'up', ...words },
  { key: 'loud', shape: 'flag', default: false, when: [{ path: 'way', is_not: 'up' }], ...words },
  {
    key: 'steps', shape: 'list', count_least: 1, count_most: 3, default: [{ name: 'a', farads: 20e-9 }], ...words,
    item: { shape: 'record', ...words, fields: [{ key: 'name', shape: 'text', most: 9, default: '', ...words }, quantity('farads', { unit: 'F' })] },
  },
  {
    key: 'tube', shape: 'either', default: '6SL7GT', ...words,
    either: [
      { shape: 'choice', choices: ['6J5', '6SL7GT'], ...words },
      { shape: 'record', ...words, fields: [quantity('mu', { unit: '1' }), quantity('spread', { unit: '1', default: 0.25 })] },
    ],
  },
  {
    key: 'meter', shape: 'record', ...words,
    fields: [
      quantity('ohms', { one_of: 'meter', default: 10e6 }),
      quantity('sensitivity', { one_of: 'meter', together: 'needle', optional: true, unit: 'Ω/V' }),
      quantity('range', { together: 'needle', optional: true, unit: 'V' }),
    ],
  },
];

export const TABLE: Table = { words: undefined, rows: ROWS };
