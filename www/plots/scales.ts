import type { Axis, Band, Curve, Line } from './kinds.js';
import { evens, placeOf, type Place } from './place.js';

/** A scale and what its ticks say. */
export interface Scale {
  readonly place: Place;
  readonly domain: readonly [number, number];
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
  /** The unit with the prefix that its ticks are counted in. */
  readonly unit: string;
}

const PREFIXES: readonly (readonly [number, string])[] = [
  [1e9, 'G'], [1e6, 'M'], [1e3, 'k'], [1, ''], [1e-3, 'm'], [1e-6, 'µ'], [1e-9, 'n'], [1e-12, 'p'],
];
/** Units that take no prefix. */
const BARE = new Set(['', '1', 'dB', '%', '°', '°C']);
/** Decibels below the top that are still of use in a picture. */
const DEPTH = 60;
const MINUS = '\u2212';

/** The horizontal scale over `span`, or over everything there is. */
export function across(curve: Curve, span: Band | null, room: readonly [number, number]): Scale {
  const all = curve.lines.flatMap((line) => [...line.x]).filter((value) => usable(value, curve.x));
  const [from, to] = span ?? [least(all), most(all)];
  const domain = spread(from, to, curve.x);
  return scale(domain, curve.x, room, Math.max(2, Math.floor(Math.abs(room[1] - room[0]) / 64)));
}

/** The vertical scale over what is seen of `lines` between the ends of the horizontal one, and a little more. */
export function up(curve: Curve, lines: readonly Line[], seen: readonly [number, number], room: readonly [number, number]): Scale {
  const values: number[] = [];
  for (const line of lines) {
    line.x.forEach((x, index) => {
      const y = line.y[index] ?? Number.NaN;
      if (x >= seen[0] && x <= seen[1] && usable(y, curve.y)) values.push(y);
    });
  }
  for (const mark of curve.marks) if (usable(mark.y, curve.y)) values.push(mark.y);
  let [low, high] = [least(values), most(values)];
  if (curve.y.unit === 'dB') low = Math.max(low, high - DEPTH);
  [low, high] = spread(low, high, curve.y);
  if (curve.y.scale !== 'log') {
    const margin = (high - low) * 0.08;
    // An axis that starts at nought, or a hair under it by rounding, starts there.
    low = Math.abs(low) < (high - low) * 0.01 ? Math.min(low, 0) : low - margin;
    high = high === 0 ? 0 : high + 1.9 * margin;
  }
  return scale([low, high], curve.y, room, Math.max(2, Math.floor(Math.abs(room[1] - room[0]) / 32)));
}

function usable(value: number, axis: Axis): boolean {
  return Number.isFinite(value) && (axis.scale !== 'log' || value > 0);
}

function least(values: readonly number[]): number {
  return values.reduce((one, other) => Math.min(one, other), Number.POSITIVE_INFINITY);
}

function most(values: readonly number[]): number {
  return values.reduce((one, other) => Math.max(one, other), Number.NEGATIVE_INFINITY);
}

/** Two ends that differ, whatever came. */
function spread(from: number, to: number, axis: Axis): [number, number] {
  const log = axis.scale === 'log';
  if (!Number.isFinite(from) || !Number.isFinite(to)) return log ? [1, 10] : [0, 1];
  const [low, high] = from <= to ? [from, to] : [to, from];
  if (high - low > Math.abs(high) * 1e-9) return [low, high];
  return log ? [low / 2, high * 2] : [low - Math.max(1, Math.abs(low) * 0.1), high + Math.max(1, Math.abs(high) * 0.1)];
}

function scale(domain: readonly [number, number], axis: Axis, room: readonly [number, number], count: number): Scale {
  const log = axis.scale === 'log';
  const place = placeOf(log, domain, room);
  if (log) {
    const ticks = logTicks(domain, count).map((value) => ({ value, text: short(value, axis.unit) }));
    return { place, domain, ticks, unit: axis.unit };
  }
  const values = evens(domain, Math.min(count, 6));
  const [factor, prefix] = common(Math.max(...domain.map(Math.abs)), axis.unit);
  const step = values.length > 1 ? Math.abs((values[1] ?? 0) - (values[0] ?? 0)) / factor : 1;
  const decimals = Math.max(0, Math.min(6, -Math.floor(Math.log10(step) + 1e-9)));
  const ticks = values.map((value) => ({ value, text: (value / factor).toFixed(decimals).replace('-', MINUS).replace(/^\u2212(0(\.0*)?)$/, '$1') }));
  return { place, domain, ticks, unit: prefix + (axis.unit === '1' ? '' : axis.unit) };
}

/** Decades, with threes between them where there is room, or ones, twos and fives where it is short. */
function logTicks([from, to]: readonly [number, number], count: number): readonly number[] {
  const decades = Math.log10(to / from);
  const steps = decades < 1.3 ? [1, 2, 5] : decades <= count / 2 + 0.5 ? [1, 3] : [1];
  const jump = steps.length === 1 ? Math.max(1, Math.ceil(decades / count)) : 1;
  const found: number[] = [];
  for (let power = Math.floor(Math.log10(from)); power <= Math.ceil(Math.log10(to)); power += 1) {
    if (jump > 1 && power % jump !== 0) continue;
    for (const step of steps) {
      const value = Number(`${step}e${power}`);
      if (value >= from * (1 - 1e-9) && value <= to * (1 + 1e-9)) found.push(value);
    }
  }
  return found;
}

function common(largest: number, unit: string): readonly [number, string] {
  if (BARE.has(unit) || !(largest > 0)) return [1, ''];
  if (unit === 'V' && largest >= 1 && largest < 1e4) return [1, ''];
  return PREFIXES.find(([factor]) => largest >= factor * 0.9999) ?? [1, ''];
}

function short(value: number, unit: string): string {
  if (BARE.has(unit)) return String(value).replace('-', MINUS);
  const [factor, prefix] = PREFIXES.find(([each]) => value >= each * 0.9999) ?? [1, ''];
  return `${Number((value / factor).toPrecision(3))}${prefix}`;
}
