import { lengthWords } from './lengths.js';
import { show } from './quantity.js';
import { USUAL_WAY, type Way } from './way.js';

/** What the reader gave for a text. */
export interface BareReading {
  readonly value: number;
  readonly tolerance?: number | null;
  readonly notation?: string;
}

/**
 * The echo that a person checks: "250 mmf = 250 pF", ".02 = 0.02 µF = 20 nF", "yellow violet red gold = 4.7 kΩ, ±5 %".
 * A text that is already written so stands alone.
 */
export function readingWords(typed: string, unit: string, reading: BareReading, way: Way = USUAL_WAY): string {
  const text = typed.trim();
  const known = values(reading, unit, way);
  const said = known.some((value) => value === known.at(-1) && same(value) === same(text))
    ? known.slice(-1)
    : [text, ...known.filter((value) => same(value) !== same(text))];
  return said.join(' = ') + noted(reading, way);
}

/** The same as a sentence under an open field: "Read as 220 kΩ." */
export function readAs(unit: string, reading: BareReading, way: Way = USUAL_WAY): string {
  return `Read as ${values(reading, unit, way).join(' = ')}${noted(reading, way)}.`;
}

/** Ways of writing that a person should know were taken. */
const NOTES: Readonly<Record<string, string>> = {
  three_digit: 'as a code of three digits',
  bands: 'by its bands',
  gauge_awg: 'AWG',
  gauge_swg: 'SWG',
};

/** What stands behind a reading: its tolerance, and how it was taken where that is not plain. */
function noted({ tolerance, notation }: BareReading, way: Way): string {
  const note = notation !== undefined && Object.hasOwn(NOTES, notation) ? NOTES[notation] : undefined;
  return toleranceWords(tolerance, way) + (note === undefined ? '' : `, ${note}`);
}

/** ", ±10 %", or nothing. */
function toleranceWords(tolerance: number | null | undefined, way: Way): string {
  return typeof tolerance === 'number' ? `, ±${show(tolerance * 100, '%', { way })}` : '';
}

/** The figure in the ways that people know it by. */
function values({ value, notation }: BareReading, unit: string, way: Way): readonly string[] {
  const shown = show(value, unit, { digits: 6, way });
  if (unit === 'F' && value >= 1e-9 && value < 1e-6) return [show(value, 'F', { digits: 6, prefix: 'µ', way }), shown];
  if (unit === 'm') return way.length === 'inch' ? [shown, lengthWords(value, way)] : [shown];
  return notation === 'percent' ? [show(value * 100, '%', { digits: 6, way }), shown] : [shown];
}

/** A text without what does not change its reading, to see whether two say the same. */
function same(text: string): string {
  return text.replaceAll(/[\s\u00a0]/g, '').replaceAll('u', 'µ').replaceAll('μ', 'µ');
}
