import type { InputRow } from '../state/kinds.js';

/** A key of the open field: what stands on it, what it types, how it is called aloud. */
export interface Key {
  readonly face: string;
  readonly types: string;
  readonly name: string;
  /** Where the caret stands after it, from its end. */
  readonly back: number;
}

const NAMES: Readonly<Record<string, string>> = {
  k: 'kilo', M: 'mega', m: 'milli', 'µ': 'micro', n: 'nano', p: 'pico', '.': 'point', ',': 'comma', '−': 'minus', '%': 'percent',
};
const TYPES: Readonly<Record<string, string>> = { k: ' k', M: ' M', m: ' m', 'µ': ' µ', n: ' n', p: ' p' };

/** The prefixes that a unit is written with on the bench. */
const PREFIXES: Readonly<Record<string, readonly string[]>> = {
  'Ω': ['k', 'M'], F: ['p', 'n', 'µ'], H: ['µ', 'm'], V: ['m', 'k'], A: ['µ', 'm'], Hz: ['k', 'M'], W: ['m'], s: ['µ', 'm'], S: ['µ', 'm'], m: ['m'],
};
/** Parts that are sold with a tolerance. */
const MARKED = new Set(['Ω', 'F', 'H']);

/** The keys for what a field can take, and no others. */
export function keysFor(row: InputRow, percent: boolean, decimal: 'point' | 'comma'): readonly Key[] {
  const unit = row.unit ?? '1';
  const faces = [...(PREFIXES[unit] ?? []), decimal === 'comma' ? ',' : '.', ...(percent ? ['%'] : []), ...((row.least ?? 0) < 0 ? ['−'] : [])];
  const keys = faces.map((face): Key => ({ face, types: typed(face, unit), name: NAMES[face] ?? face, back: 0 }));
  return MARKED.has(unit) ? [...keys, { face: '± %', types: ' ± %', name: 'tolerance in percent', back: 2 }] : keys;
}

/** A prefix is typed so that it has one reading: behind ohms it stands alone, elsewhere with its unit. */
function typed(face: string, unit: string): string {
  if (unit === 'Ω') return face;
  const prefix = TYPES[face];
  if (prefix === undefined || PREFIXES[unit] === undefined) return face;
  return `${prefix}${unit}`;
}
