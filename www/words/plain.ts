import type { Figures, Value } from './kinds.js';
import { show } from './quantity.js';
import type { Way } from './way.js';

/** "C3", "C3 and C4", "C1, C3 and C4". */
export function list(words: readonly string[], last = 'and'): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}

/** The first letter raised. */
export function raised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The first letter lowered, unless the word is a name or sign: "Plate resistor" but "B+", "E12". */
export function lowered(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** "1 position", "2 positions". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** A code as words: what stands where a text is missing, so that nothing is ever silent. */
export function spelled(code: string): string {
  return code.replaceAll(/[_.[\]]+/g, ' ').trim();
}

/** A path with its item numbers taken out: `positions[1].farads` becomes `positions[].farads`. */
export function general(path: string): string {
  return path.replaceAll(/\[\d+\]/g, '[]');
}

/** The number of the item, from 1, that a path goes through; 0 where it goes through none. */
export function item(path: string): number {
  const found = /\[(\d+)\]/.exec(path);
  return found === null ? 0 : Number(found[1]) + 1;
}

/** The value at a path such as `positions[1].farads`. */
export function at(whole: Value | undefined, path: string): Value | undefined {
  let here: Value | undefined = whole;
  for (const step of path.split(/[.[\]]+/).filter((each) => each !== '')) {
    if (here === null || typeof here !== 'object' || here instanceof Float64Array) return undefined;
    here = Array.isArray(here) ? (here[Number(step)] as Value | undefined) : (here as Figures)[step];
  }
  return here;
}

/** The figure at a path, or nothing. */
export function figure(whole: Value | undefined, path: string): number | null {
  const found = at(whole, path);
  return typeof found === 'number' && Number.isFinite(found) ? found : null;
}

/** The text at a path, or an empty one. */
export function text(whole: Value | undefined, path: string): string {
  const found = at(whole, path);
  return typeof found === 'string' ? found : '';
}

/** The texts of a list at a path; a single text counts as one. */
export function texts(whole: Value | undefined, path: string): readonly string[] {
  const found = at(whole, path);
  if (typeof found === 'string') return found === '' ? [] : [found];
  return Array.isArray(found) ? found.filter((each): each is string => typeof each === 'string') : [];
}

/** An input as a sentence names it: a figure with its unit, a text as it was typed; nothing where it is not given. */
export function said(inputs: Value | undefined, path: string, unit: string, way?: Way, digits = 3): string {
  const found = at(inputs, path);
  if (typeof found === 'number') return show(found, unit, { digits, way });
  return typeof found === 'string' ? found.trim() : '';
}
