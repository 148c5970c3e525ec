import { readBuild } from '../state/build.js';
import { flatten, unflatten } from '../state/flat.js';
import type { Figures, Lug, Value } from '../state/kinds.js';
import { isRecord } from '../state/paths.js';

/** Attributes that say something else than an input. */
const OWN = new Set(['calculator', 'position', 'theme', 'home', 'id', 'class', 'style', 'slot', 'part', 'lang', 'dir', 'title', 'hidden', 'is', 'role', 'tabindex']);

/**
 * What an element's attributes say: `plate_ohms="220k"`, `meter.range="250 V"`, `positions.0.farads=".02"`; a value behind
 * `~` is JSON, such as `~true`. Which of them are inputs the calculator's table says later; the rest is passed over.
 */
export function lugOf(element: Element): Lug | null {
  const calculator = element.getAttribute('calculator') ?? '';
  const given = [...element.attributes].filter(({ name }) => !OWN.has(name) && !/^(data-|aria-|on)/.test(name) && !name.includes(':'));
  const pairs = given.map(({ name, value }) => `${name}=${encodeURIComponent(value)}`);
  return lugFrom(calculator, unflatten(pairs.join('&')) ?? {}, Number(element.getAttribute('position') ?? '1') - 1);
}

/** A lug from what a stranger gave: every object made anew, or nothing. */
export function lugFrom(calculator: string, inputs: unknown, position: unknown): Lug | null {
  const read = readBuild({ tagstrip: 1, lugs: [{ id: calculator, calculator, inputs, position }] });
  return 'build' in read ? (read.build.lugs[0] ?? null) : null;
}

/** The attributes that say the inputs, as markup: ` plate_ohms="220k"`. */
export function attributesOf(inputs: Figures): string {
  if (Object.keys(inputs).length === 0) return '';
  return flatten(inputs).split('&').filter((pair) => pair !== '').map((pair) => {
    const cut = pair.indexOf('=');
    return ` ${pair.slice(0, cut)}="${quoted(decodeURIComponent(pair.slice(cut + 1).replaceAll('+', '%20')))}"`;
  }).join('');
}

/** A text between quotes in markup. */
export function quoted(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** Only what the calculator has: a page's other attributes are no inputs. */
export function known(inputs: Figures, keys: ReadonlySet<string>): Figures {
  return Object.fromEntries(Object.entries(inputs).filter(([key, value]: [string, Value]) => keys.has(key) && (typeof value !== 'object' || isRecord(value) || Array.isArray(value))));
}
