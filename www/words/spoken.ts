import { NO_BREAK, split } from './quantity.js';
import { USUAL_WAY, type Way } from './way.js';

const PREFIXES: Readonly<Record<string, string>> = {
  f: 'femto', p: 'pico', n: 'nano', 'µ': 'micro', m: 'milli', k: 'kilo', M: 'mega', G: 'giga', T: 'tera',
};
const UNITS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  V: ['volt', 'volts'],
  A: ['ampere', 'amperes'],
  'Ω': ['ohm', 'ohms'],
  F: ['farad', 'farads'],
  H: ['henry', 'henries'],
  Hz: ['hertz', 'hertz'],
  m: ['metre', 'metres'],
  W: ['watt', 'watts'],
  VA: ['volt-ampere', 'volt-amperes'],
  s: ['second', 'seconds'],
  S: ['siemens', 'siemens'],
  dB: ['decibel', 'decibels'],
  '%': ['percent', 'percent'],
  '°': ['degree', 'degrees'],
  '°C': ['degree Celsius', 'degrees Celsius'],
  'V/Pa': ['volt per pascal', 'volts per pascal'],
  'Ω/V': ['ohm per volt', 'ohms per volt'],
};
/** Prefixes that run together with the unit: kilohm, megohm. */
const JOINED: Readonly<Record<string, string>> = { kiloohm: 'kilohm', megaohm: 'megohm' };

/** A figure with its unit in full words: "220 kilohms". */
export function spoken(value: number, unit: string, way: Way = USUAL_WAY): string {
  const { figure, unit: symbol } = split(value, unit, { digits: 6, way });
  const names = UNITS[unit];
  if (names === undefined) return symbol === '' ? figure : figure + NO_BREAK + symbol;
  const prefix = PREFIXES[symbol.slice(0, symbol.length - unit.length)] ?? '';
  let name = prefix + (figure === '1' ? names[0] : names[1]);
  for (const [apart, joined] of Object.entries(JOINED)) name = name.replace(apart, joined);
  return figure + NO_BREAK + name;
}

/** The name of a unit in full, for a sentence: "ohms". */
export function unitName(unit: string): string {
  return UNITS[unit]?.[1] ?? (unit === '1' || unit === '' ? 'a plain figure' : unit);
}
