import { inputWords, typedText } from '../../words/index.js';
import type { CalculatorWords } from './from-words.js';
import type { Figures, InputRow, Value } from './kinds.js';
import { isRecord, joined, same } from './paths.js';
import { alternatives, chosenOf, isShown } from './shown.js';

/** What a whole set of inputs is made with. */
export interface Table {
  readonly words: CalculatorWords | undefined;
  readonly rows: readonly InputRow[];
}

/**
 * Every input as text: what was typed, and the calculator's own values for the rest, written as a person would. A
 * needed input without a value of its own is an empty text; keys that the calculator does not have are kept.
 */
export function fill(table: Table, inputs: Figures): Figures {
  return fillRecord(table.words, table.rows, inputs, '');
}

function fillRecord(words: CalculatorWords | undefined, rows: readonly InputRow[], given: Figures, path: string): Figures {
  const filled: [string, Value][] = [];
  for (const row of rows) {
    const key = row.key ?? '';
    const here = joined(path, key);
    const own = Object.hasOwn(given, key) ? given[key] : undefined;
    if (own !== undefined && own !== null) filled.push([key, asText(words, row, own, here)]);
    else if (!spokenFor(rows, row, given)) filled.push([key, start(words, row, here)]);
  }
  const known = new Set(rows.map((row) => row.key));
  return Object.fromEntries([...filled, ...Object.entries(given).filter(([key]) => !known.has(key))]);
}

/** Another of the same "exactly one of" is given, so this one's own value does not stand in. */
function spokenFor(rows: readonly InputRow[], row: InputRow, given: Figures): boolean {
  const group = row.one_of ?? mateGroup(rows, row);
  if (group === undefined) return false;
  const chosen = chosenOf(rows, group, given);
  const mine = alternatives(rows, group).find((alternative) => alternative.keys.includes(row.key ?? ''));
  return mine !== undefined && mine.key !== chosen;
}

function mateGroup(rows: readonly InputRow[], row: InputRow): string | undefined {
  if (row.together === undefined) return undefined;
  return rows.find((other) => other.together === row.together && other.one_of !== undefined)?.one_of;
}

function asText(words: CalculatorWords | undefined, row: InputRow, value: Value, path: string): Value {
  switch (row.shape) {
    case 'quantity':
      return typeof value === 'number' ? figureText(words, row, value, path) : value;
    case 'list':
      return Array.isArray(value) && row.item !== undefined
        ? (value as readonly Value[]).map((item, k) => asText(words, row.item as InputRow, item, `${path}[${k}]`))
        : value;
    case 'record':
      return isRecord(value) ? fillRecord(words, row.fields ?? [], value, path) : value;
    case 'either': {
      const option = optionOf(row, value);
      return option === undefined ? value : asText(words, option, value, path);
    }
    default:
      return value;
  }
}

/** A figure as it would be typed. */
export function figureText(words: CalculatorWords | undefined, row: InputRow, value: number, path: string): string {
  return typedText(value, row.unit ?? '1', inputWords(words, path).percent === true);
}

/** The shape that a value of several shapes has. */
export function optionOf(row: InputRow, value: Value | undefined): InputRow | undefined {
  const fits = (option: InputRow): boolean => {
    if (option.shape === 'record') return isRecord(value);
    if (option.shape === 'list') return Array.isArray(value);
    if (option.shape === 'flag') return typeof value === 'boolean';
    return typeof value === 'string' || typeof value === 'number';
  };
  return (row.either ?? []).find(fits);
}

/** The value that stands in where nothing was typed, as text. */
export function start(words: CalculatorWords | undefined, row: InputRow, path: string): Value {
  if (row.default !== undefined && row.default !== null) return asText(words, row, row.default, path);
  switch (row.shape) {
    case 'record':
      return row.optional === true ? '' : fillRecord(words, row.fields ?? [], {}, path);
    case 'list':
      return [];
    case 'flag':
      return false;
    default:
      return '';
  }
}

/** A new item of a list, as text. */
export function newItem(words: CalculatorWords | undefined, row: InputRow, path: string): Value {
  return row.item === undefined ? '' : start(words, row.item, path);
}

/** Every calculator's own values as texts, made once for each table of rows. */
const OWN = new WeakMap<readonly InputRow[], Figures>();

/** Only what differs from the calculator's own values; a list is kept whole or not at all. */
export function bare(table: Table, full: Figures): Figures {
  let usual = OWN.get(table.rows);
  if (usual === undefined) {
    usual = fill(table, {});
    OWN.set(table.rows, usual);
  }
  return bareRecord(table.rows, full, usual);
}

function bareRecord(rows: readonly InputRow[], full: Figures, usual: Figures): Figures {
  const kept = Object.entries(full).flatMap(([key, value]): [string, Value][] => {
    const row = rows.find((each) => each.key === key);
    const other = Object.hasOwn(usual, key) ? usual[key] : undefined;
    if (row?.shape === 'record' && isRecord(value) && isRecord(other)) {
      const inside = bareRecord(row.fields ?? [], value, other);
      return Object.keys(inside).length === 0 ? [] : [[key, inside]];
    }
    return same(value, other) ? [] : [[key, value]];
  });
  return Object.fromEntries(kept);
}

/** What goes to the engine: what counts now, without optional inputs that are empty. */
export function sent(rows: readonly InputRow[], full: Figures): Figures {
  return Object.fromEntries(
    Object.entries(full).flatMap(([key, value]): [string, Value][] => {
      const row = rows.find((each) => each.key === key);
      if (row === undefined) return [];
      if (!isShown(row, full)) return [];
      if (value === '' && (row.optional === true || row.one_of !== undefined)) return [];
      return [[key, sentValue(row, value)]];
    }),
  );
}

function sentValue(row: InputRow, value: Value): Value {
  if (row.shape === 'record' && isRecord(value)) return sent(row.fields ?? [], value);
  if (row.shape === 'list' && Array.isArray(value) && row.item !== undefined) {
    return (value as readonly Value[]).map((item) => sentValue(row.item as InputRow, item));
  }
  if (row.shape === 'either') {
    const option = optionOf(row, value);
    return option === undefined ? value : sentValue(option, value);
  }
  return value;
}
