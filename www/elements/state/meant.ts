import type { Desk } from './desk.js';
import { valueOf } from './figures.js';
import type { InputRow } from './kinds.js';

/** So many times outside what is usual, a figure without a prefix has probably lost one. */
const FAR = 20;
/** Prefixes as they are typed, and their powers. */
const PREFIXES: readonly (readonly [string, number])[] = [['k', 1e3], ['M', 1e6], ['m', 1e-3], ['µ', 1e-6], ['n', 1e-9], ['p', 1e-12]];

/** A bare figure far outside what is usual here, with the prefix that brings it back: "3.7" of a coil's hertz is "3.7 MHz". */
export function meant(row: InputRow, text: string, value: number | null): string | null {
  const { unit = '1', usual_least: least, usual_most: most } = row;
  if (value === null || value <= 0 || unit === '1' || least === undefined || most === undefined || least <= 0) return null;
  if (!/^\s*\d+(?:[.,]\d+)?\s*$/.test(text) || (value * FAR >= least && value <= most * FAR)) return null;
  const fits = PREFIXES.filter(([, power]) => value * power >= least && value * power <= most);
  // Two that fit would be a guess.
  const [only] = fits;
  if (only === undefined || fits.length > 1) return null;
  return unit === 'Ω' ? `${text.trim()}${only[0]}` : `${text.trim()} ${only[0]}${unit}`;
}

/** The same for a field as it stands or is being typed. */
export function meantIn(desk: Desk | null, row: InputRow, text: string): string | null {
  return desk === null || row.shape !== 'quantity' ? null : meant(row, text, valueOf(desk.reading(text, row.unit ?? '1')));
}
