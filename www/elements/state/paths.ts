import type { Figures, Value } from './kinds.js';

/** A path such as `positions[1].farads` as its steps; items of lists are figures. */
export function stepsOf(path: string): readonly (string | number)[] {
  const steps = path.split(/[.[\]]+/).filter((step) => step !== '');
  return steps.map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}

/** A path one field further in. */
export function joined(path: string, key: string): string {
  return path === '' ? key : `${path}.${key}`;
}

/** Whether a value is a record. */
export function isRecord(value: unknown): value is Figures {
  return typeof value === 'object' && value !== null && !Array.isArray(value) && !ArrayBuffer.isView(value);
}

/** The value at a path, own keys only. */
export function valueAt(whole: Value | undefined, path: string): Value | undefined {
  let here: Value | undefined = whole;
  for (const step of stepsOf(path)) {
    if (typeof step === 'number') here = Array.isArray(here) ? (here[step] as Value | undefined) : undefined;
    else here = isRecord(here) && Object.hasOwn(here, step) ? here[step] : undefined;
  }
  return here;
}

/** The same record with `value` at `path`; `undefined` takes the key out. Nothing of the old record is changed. */
export function put(whole: Figures, path: string, value: Value | undefined): Figures {
  const result = set(whole, stepsOf(path), value);
  return isRecord(result) ? result : whole;
}

function set(here: Value | undefined, steps: readonly (string | number)[], value: Value | undefined): Value | undefined {
  const [step, ...others] = steps;
  if (step === undefined) return value;
  if (typeof step === 'number') {
    const items = Array.isArray(here) ? [...(here as readonly Value[])] : [];
    items[step] = set(items[step], others, value) ?? null;
    return items;
  }
  const record = isRecord(here) ? here : {};
  const next = set(Object.hasOwn(record, step) ? record[step] : undefined, others, value);
  const kept = Object.entries(record).filter(([key]) => key !== step);
  if (next === undefined) return Object.fromEntries(kept);
  if (!Object.hasOwn(record, step)) return Object.fromEntries([...kept, [step, next]]);
  return Object.fromEntries(Object.entries(record).map(([key, old]) => [key, key === step ? next : old]));
}

/** Whether two values say the same. */
export function same(one: Value | undefined, other: Value | undefined): boolean {
  if (one === other) return true;
  if (Array.isArray(one)) {
    return Array.isArray(other) && one.length === other.length && one.every((item, k) => same(item as Value, other[k] as Value));
  }
  if (!isRecord(one) || !isRecord(other)) return false;
  const keys = Object.keys(one);
  return keys.length === Object.keys(other).length && keys.every((key) => Object.hasOwn(other, key) && same(one[key], other[key]));
}

/** A path with its item numbers taken out: `positions[1].farads` becomes `positions[].farads`. */
export function general(path: string): string {
  return path.replaceAll(/\[\d+\]/g, '[]');
}
