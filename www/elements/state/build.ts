import type { Build, Figures, Lug, Pin, Value } from './kinds.js';
import { isRecord } from './paths.js';

/** The form of build file that this page writes. */
export const FORM = 1;
/** More lugs than a bench has room for; a file with more is not one of ours. */
const MOST_LUGS = 200;
const DEEPEST = 16;

/** What became of a file or link. */
export type Read =
  | { readonly build: Build }
  | { readonly refused: 'not_ours' }
  | { readonly refused: 'newer'; readonly form: number };

/** An empty bench. */
export const EMPTY: Build = { name: '', lugs: [], rest: {} };

/** A build from what a file or link holds: every object made anew, unknown keys kept, anything else refused. */
export function readBuild(given: unknown): Read {
  const whole = fresh(given, 0);
  if (!isRecord(whole)) return { refused: 'not_ours' };
  const { tagstrip: form, name, lugs, ...rest } = whole;
  if (typeof form !== 'number' || !Number.isInteger(form) || form < 1) return { refused: 'not_ours' };
  if (form > FORM) return { refused: 'newer', form };
  if (lugs !== undefined && !Array.isArray(lugs)) return { refused: 'not_ours' };
  const read = ((lugs ?? []) as readonly Value[]).map(readLug);
  if (read.length > MOST_LUGS || read.some((lug) => lug === null)) return { refused: 'not_ours' };
  return { build: { name: typeof name === 'string' ? name : '', lugs: apart(read.filter((lug) => lug !== null)), rest } };
}

function readLug(given: Value): Lug | null {
  if (!isRecord(given)) return null;
  const { id, calculator, inputs, position, pins, ...rest } = given;
  if (typeof id !== 'string' || typeof calculator !== 'string' || id === '') return null;
  if (inputs !== undefined && !isRecord(inputs)) return null;
  return {
    id,
    calculator,
    inputs: inputs ?? {},
    position: place(position),
    pins: (Array.isArray(pins) ? (pins as readonly Value[]) : []).flatMap(readPin),
    rest,
  };
}

function readPin(given: Value): readonly Pin[] {
  if (!isRecord(given) || !isRecord(given['inputs'])) return [];
  const name = given['name'];
  return [{ name: typeof name === 'string' ? name : '', inputs: given['inputs'], position: place(given['position']) }];
}

function place(value: Value | undefined): number {
  return typeof value === 'number' && Number.isInteger(value) && value >= 0 && value < 100 ? value : 0;
}

/** Two lugs of one name would be one lug to every link: the second gets a number. */
function apart(lugs: readonly Lug[]): readonly Lug[] {
  const taken = new Set<string>();
  return lugs.map((lug) => {
    const id = freeName(lug.id, taken);
    taken.add(id);
    return id === lug.id ? lug : { ...lug, id };
  });
}

/** `wanted`, or with a number where that is taken. */
export function freeName(wanted: string, taken: ReadonlySet<string>): string {
  if (!taken.has(wanted)) return wanted;
  for (let number = 2; ; number += 1) {
    if (!taken.has(`${wanted}-${number}`)) return `${wanted}-${number}`;
  }
}

/** Plain data made anew, so that nothing of a stranger's object is ever used; deeper than any build it is nothing. */
function fresh(given: unknown, depth: number): Value | undefined {
  if (given === null || typeof given === 'string' || typeof given === 'boolean') return given;
  if (typeof given === 'number') return Number.isFinite(given) ? given : null;
  if (typeof given !== 'object' || depth > DEEPEST) return undefined;
  if (Array.isArray(given)) return given.map((item) => fresh(item, depth + 1) ?? null);
  return Object.fromEntries(
    Object.entries(given).flatMap(([key, value]): [string, Value][] => {
      const made = key === '__proto__' ? undefined : fresh(value, depth + 1);
      return made === undefined ? [] : [[key, made]];
    }),
  );
}

/** A build as it is written; `inputs` says what stands in each lug. */
export function written(build: Build, inputs: (lug: Lug) => Figures = (lug) => lug.inputs): Figures {
  return {
    tagstrip: FORM,
    name: build.name,
    ...build.rest,
    lugs: build.lugs.map((lug) => ({
      id: lug.id,
      calculator: lug.calculator,
      inputs: inputs(lug),
      ...(lug.position === 0 ? {} : { position: lug.position }),
      ...(lug.pins.length === 0 ? {} : { pins: lug.pins.map(({ name, inputs: held, position }) => ({ name, inputs: held, position })) }),
      ...lug.rest,
    })),
  };
}
