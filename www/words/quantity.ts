import { USUAL_WAY, type Way } from './way.js';

/** How a figure is shown, where the usual way does not do. */
export interface Shown {
  /** Significant figures at most; whole units are never rounded away. */
  readonly digits?: number | undefined;
  /** A prefix to keep to, `''` for none. */
  readonly prefix?: string | undefined;
  /** With a plus sign where it is one. */
  readonly signed?: boolean | undefined;
  readonly way?: Way | undefined;
}

/** A figure and its unit apart, for where the unit is set smaller. */
export interface Split {
  readonly figure: string;
  readonly unit: string;
}

/** Keeps a figure and its unit on one line. */
export const NO_BREAK = '\u00a0';
const MINUS = '\u2212';
const NOTHING = '\u2013';

const PREFIXES: Readonly<Record<string, number>> = {
  f: -15, p: -12, n: -9, 'µ': -6, m: -3, '': 0, k: 3, M: 6, G: 9, T: 12,
};
const POWERS = Object.values(PREFIXES).sort((a, b) => a - b);
const PREFIX_OF = new Map(Object.entries(PREFIXES).map(([prefix, power]) => [power, prefix]));
/** Units that are written without a prefix, with their usual figures. */
const BARE: Readonly<Record<string, { digits?: number; decimals?: number; symbol?: string }>> = {
  '1': { symbol: '' },
  '': { symbol: '' },
  dB: { decimals: 1 },
  '%': { digits: 2 },
  '°': { decimals: 0 },
  '°C': { decimals: 0 },
  '1/m': { symbol: 'per metre' },
};
/** The prefixes that the trade uses with a unit, as powers of ten, where those are not all of them. */
const USED: Readonly<Record<string, readonly number[]>> = {
  F: [-12, -9, -6, 0],
  s: [-9, -6, -3, 0],
  m: [-6, -3, 0, 3],
};
/** From this many farads up they are no longer written in microfarads. */
const WHOLE_FARADS = 0.1;
const DIGITS = 3;
const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * A figure with its unit in engineering notation: `show_quantity(2200, 'Ω')` is "2.2 kΩ".
 *
 * `digits` are significant figures, 3 if not said; noughts at the end are left away. dB to one decimal place, degrees
 * whole, `1` without a unit. What is not a finite figure is a dash.
 */
export function show_quantity(value: number | null | undefined, unit: string, digits?: number, way?: Way): string {
  return show(value, unit, { digits, way });
}

/** The same with everything that can be said about how. */
export function show(value: number | null | undefined, unit: string, shown: Shown = {}): string {
  const { figure, unit: symbol } = split(value, unit, shown);
  return symbol === '' ? figure : figure + NO_BREAK + symbol;
}

/** The figure and its unit with prefix, apart. */
export function split(value: number | null | undefined, unit: string, shown: Shown = {}): Split {
  if (typeof value !== 'number' || !Number.isFinite(value)) return { figure: NOTHING, unit: '' };
  const bare = BARE[unit];
  const digits = Math.min(Math.max(Math.trunc(shown.digits ?? bare?.digits ?? DIGITS), 1), 15);
  const symbol = bare?.symbol ?? unit;
  if (bare !== undefined || shown.prefix !== undefined) {
    const prefix = bare === undefined ? (shown.prefix ?? '') : '';
    const scaled = value / 10 ** (PREFIXES[prefix] ?? 0);
    const fixed = shown.digits === undefined ? bare?.decimals : undefined;
    return { figure: written(scaled, fixed ?? decimals(scaled, digits), fixed !== undefined, shown), unit: prefix + symbol };
  }
  const power = engineering(value, digits, unit);
  const prefix = PREFIX_OF.get(power) ?? '';
  const scaled = value / 10 ** power;
  return { figure: written(scaled, decimals(scaled, digits), false, shown), unit: prefix + symbol };
}

/** The power of ten of the digit in front, after rounding. */
function exponent(value: number, digits: number): number {
  if (value === 0) return 0;
  const size = Math.abs(value);
  const power = Math.floor(Math.log10(size));
  const front = size / 10 ** power;
  // Only close to a power of ten can rounding, or the logarithm itself, change the digit in front.
  return front > 1.001 && front < 9.4 ? power : Number(value.toExponential(digits - 1).split('e')[1]);
}

function decimals(value: number, digits: number): number {
  return Math.max(0, Math.min(digits - 1 - exponent(value, digits), 20));
}

function engineering(value: number, digits: number, unit: string): number {
  const power = Math.floor(exponent(value, digits) / 3) * 3;
  const used = USED[unit] ?? POWERS;
  const least = used[0] ?? 0;
  if (value === 0 || power > 15 || power < least - 3) return 0;
  if (unit === 'F' && power > -6) return Math.abs(value) < WHOLE_FARADS ? -6 : 0;
  return used.reduce((found, each) => (each <= power ? each : found), least);
}

function written(value: number, places: number, fixed: boolean, { signed, way = USUAL_WAY }: Shown): string {
  const size = Math.abs(value);
  let text: string;
  if (size >= 1e9 || (size > 0 && size < 1e-4)) {
    const [mantissa = '', power = '0'] = size.toExponential(2).split('e');
    text = `${strip(mantissa)}${NO_BREAK}×${NO_BREAK}10${raised(Number(power))}`;
  } else {
    text = size.toFixed(places);
    if (!fixed) text = strip(text);
  }
  const [whole = '', part] = text.split('.');
  const comma = way.decimal === 'comma';
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, comma ? '\u202f' : ',');
  const joined = part === undefined ? grouped : `${grouped}${comma ? ',' : '.'}${part}`;
  if (!/[1-9]/.test(text)) return joined;
  return (value < 0 ? MINUS : signed === true ? '+' : '') + joined;
}

function strip(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

function raised(power: number): string {
  const figures = [...String(Math.abs(power))].map((digit) => SUPERSCRIPTS[Number(digit)] ?? '').join('');
  return (power < 0 ? '⁻' : '') + figures;
}
