import { wordsOf } from '../../words/index.js';
import { freeName } from './build.js';
import type { Build, Lug, Pin } from './kinds.js';

/** Names of lugs are part of links: no point, no bracket, and short enough for the strip. */
const LONGEST_NAME = 24;

/** A lug that was taken off, to be put back. */
export interface Removed {
  readonly lug: Lug;
  readonly index: number;
}

/** The build with one more lug at its end, and that lug's name. A switch stands at its second position, which has something to say against the first. */
export function withLug(build: Build, calculator: string, wanted = calculator, inputs: Lug['inputs'] = {}): { readonly build: Build; readonly id: string } {
  const id = freeName(wanted, new Set(build.lugs.map((lug) => lug.id)));
  const position = wordsOf(calculator)?.face.switch === undefined ? 0 : 1;
  const lug: Lug = { id, calculator, inputs, position, pins: [], rest: { fitted: true } };
  return { build: { ...build, lugs: [...build.lugs, lug] }, id };
}

/** The build without a lug, and what is needed to put it back. */
export function withoutLug(build: Build, id: string): { readonly build: Build; readonly removed: Removed } | null {
  const index = build.lugs.findIndex((lug) => lug.id === id);
  const lug = build.lugs[index];
  if (lug === undefined) return null;
  return { build: { ...build, lugs: build.lugs.filter((each) => each !== lug) }, removed: { lug, index } };
}

/** The build with a lug where it was. */
export function withLugBack(build: Build, { lug, index }: Removed): Build {
  const lugs = [...build.lugs];
  lugs.splice(index, 0, { ...lug, id: freeName(lug.id, new Set(lugs.map((each) => each.id))) });
  return { ...build, lugs };
}

/** The build with a lug changed. */
export function withChanged(build: Build, lug: Lug): Build {
  return { ...build, lugs: build.lugs.map((each) => (each.id === lug.id ? lug : each)) };
}

/** The name that a lug gets when `wanted` is asked for: cleaned, and with a number where it is taken. */
export function nameFor(build: Build, id: string, wanted: string): string {
  const cleaned = wanted.trim().replaceAll(/[.[\]"]+/g, '-').slice(0, LONGEST_NAME);
  const others = new Set(build.lugs.map((lug) => lug.id).filter((other) => other !== id));
  return cleaned === '' ? id : freeName(cleaned, others);
}

/** The build with a lug under another name. */
export function withName(build: Build, id: string, name: string): Build {
  return { ...build, lugs: build.lugs.map((lug) => (lug.id === id ? { ...lug, id: name } : lug)) };
}

/** The lug with its present state pinned. */
export function withPin(lug: Lug, wanted: string): Lug {
  const name = freeName(wanted, new Set(lug.pins.map((pin) => pin.name)));
  const pin: Pin = { name, inputs: lug.inputs, position: lug.position };
  return { ...lug, pins: [...lug.pins, pin] };
}

/** The lug with a pin under another name. */
export function withPinNamed(lug: Lug, index: number, name: string): Lug {
  return { ...lug, pins: lug.pins.map((pin, k) => (k === index ? { ...pin, name } : pin)) };
}

/** The lug without a pin. */
export function withoutPin(lug: Lug, index: number): Lug {
  return { ...lug, pins: lug.pins.filter((_, k) => k !== index) };
}

/** The lug with a pin's values for its own. */
export function withPinTaken(lug: Lug, index: number): Lug {
  const pin = lug.pins[index];
  return pin === undefined ? lug : { ...lug, inputs: pin.inputs, position: pin.position };
}
