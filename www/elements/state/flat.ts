import type { Figures, Value } from './kinds.js';
import { isRecord } from './paths.js';

/** Marks a value that is not a text. */
const MARK = '~';
const DEEPEST = 16;
const MOST_ITEMS = 1000;

/**
 * Plain data as readable pairs: `lugs.0.inputs.plate_ohms=220k&lugs.0.position=~1`. A text stands as it is, anything
 * else as JSON behind `~`; a list's items are numbered, and a record's key that is a number gets a `~` too.
 */
export function flatten(whole: Figures): string {
  return pairs(whole, '').map(([path, value]) => `${path}=${value}`).join('&');
}

function pairs(value: Value, path: string): readonly (readonly [string, string])[] {
  const under = (key: string): string => (path === '' ? key : `${path}.${key}`);
  if (Array.isArray(value) && value.length > 0) {
    return (value as readonly Value[]).flatMap((item, k) => pairs(item, under(String(k))));
  }
  if (isRecord(value) && Object.keys(value).length > 0) {
    return Object.entries(value).flatMap(([key, inner]) => pairs(inner, under(keyText(key))));
  }
  if (typeof value === 'string') return [[path, escaped(value.startsWith(MARK) ? MARK + value : value)]];
  return [[path, escaped(MARK + JSON.stringify(value))]];
}

function keyText(key: string): string {
  return (/^(\d+$|~)/.test(key) ? MARK : '') + escaped(key).replaceAll('.', '%2E').replaceAll('=', '%3D');
}

function escaped(text: string): string {
  return encodeURIComponent(text).replaceAll('%20', '+').replace(/%(5B|5D|2C|2F|3A|40|24)/g, (code) => decodeURIComponent(code));
}

function unescaped(text: string): string {
  return decodeURIComponent(text.replaceAll('+', '%20'));
}

interface Branch {
  readonly kind: 'list' | 'record';
  readonly inner: Map<string, Branch | Value>;
}

/** The data again; nothing where the text is not of this form. */
export function unflatten(text: string): Figures | null {
  const root: Branch = { kind: 'record', inner: new Map() };
  try {
    for (const pair of text.split('&').filter((each) => each !== '')) {
      const cut = pair.indexOf('=');
      if (cut < 1 || !plant(root, pair.slice(0, cut).split('.'), scalar(unescaped(pair.slice(cut + 1))))) return null;
    }
  } catch {
    return null;
  }
  const made = grown(root);
  return isRecord(made) ? made : null;
}

function scalar(text: string): Value {
  if (!text.startsWith(MARK)) return text;
  return text.startsWith(MARK + MARK) ? text.slice(1) : (JSON.parse(text.slice(1)) as Value);
}

function plant(root: Branch, steps: readonly string[], value: Value): boolean {
  if (steps.length > DEEPEST) return false;
  let here = root;
  for (const [k, step] of steps.entries()) {
    if (here.kind === 'list' && Number(step) >= MOST_ITEMS) return false;
    const key = here.kind === 'list' ? step : unescaped(step.startsWith(MARK) ? step.slice(1) : step);
    const last = k === steps.length - 1;
    if (last) {
      if (here.inner.has(key)) return false;
      here.inner.set(key, value);
      continue;
    }
    const kind = /^\d+$/.test(steps[k + 1] ?? '') ? 'list' : 'record';
    const found = here.inner.get(key);
    if (found === undefined) here.inner.set(key, { kind, inner: new Map() });
    const next = here.inner.get(key);
    if (!isBranch(next) || next.kind !== kind) return false;
    here = next;
  }
  return true;
}

function isBranch(value: Branch | Value | undefined): value is Branch {
  return typeof value === 'object' && value !== null && 'inner' in value && (value as Branch).inner instanceof Map;
}

function grown(branch: Branch): Value {
  const entries = [...branch.inner].map(([key, value]): [string, Value] => [key, isBranch(value) ? grown(value) : value]);
  if (branch.kind === 'record') return Object.fromEntries(entries.filter(([key]) => key !== '__proto__'));
  const items: Value[] = [];
  for (const [key, value] of entries) items[Number(key)] = value;
  return Array.from(items, (item) => item ?? null);
}
