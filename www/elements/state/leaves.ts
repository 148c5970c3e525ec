import { choiceWords } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { general } from './paths.js';
import type { CalculatorWords, Way } from './from-words.js';
import { optionOf } from './full.js';
import type { Figures, InputRow, Value } from './kinds.js';
import { isRecord, joined } from './paths.js';
import { isShown } from './shown.js';

/** One field that holds a value of its own. */
export interface Leaf {
  readonly path: string;
  readonly row: InputRow;
  readonly value: Value;
  /** The heading that it stands under. */
  readonly group: string;
}

/** Every field with a value of its own, in the order of the table, those that do not count now left out. */
export function leaves(rows: readonly InputRow[], full: Figures): readonly Leaf[] {
  return rows.flatMap((row) => {
    const key = row.key ?? '';
    if (!Object.hasOwn(full, key) || !isShown(row, full)) return [];
    return leaf(row, full[key] ?? '', key, row.group ?? '');
  });
}

function leaf(row: InputRow, value: Value, path: string, group: string): readonly Leaf[] {
  if (row.shape === 'list' && Array.isArray(value) && row.item !== undefined) {
    return (value as readonly Value[]).flatMap((item, k) => leaf(row.item as InputRow, item, `${path}[${k}]`, group));
  }
  if (row.shape === 'record' && isRecord(value)) {
    return (row.fields ?? []).flatMap((field) => {
      const key = field.key ?? '';
      if (!Object.hasOwn(value, key) || !isShown(field, value)) return [];
      return leaf(field, value[key] ?? '', joined(path, key), group);
    });
  }
  const option = row.shape === 'either' ? optionOf(row, value) : undefined;
  if (option !== undefined && option.shape !== 'choice') return leaf(option, value, path, group);
  return [{ path, row, value, group }];
}

/** What stands in the drawing for each field: the text as typed, a choice in its words. */
export function textsOf(words: CalculatorWords | undefined, rows: readonly InputRow[], full: Figures, all: readonly Leaf[], way: Way): ReadonlyMap<string, string> {
  return new Map([...ownTexts(rows, full), ...all.map(({ path, row, value }) => [path, leafText(words, path, row, value, way)] as const)]);
}

/** A tube of the person's own stands in the drawing by the name that it was given. */
function ownTexts(rows: readonly InputRow[], full: Figures): readonly (readonly [string, string])[] {
  return rows.flatMap((row) => {
    const value = full[row.key ?? ''];
    if (row.shape !== 'either' || !isRecord(value)) return [];
    const name = value['name'];
    return [[row.key ?? '', typeof name === 'string' && name.trim() !== '' ? name.trim() : PAGE.own] as const];
  });
}

/** The text of one field. */
export function leafText(words: CalculatorWords | undefined, path: string, row: InputRow, value: Value, way: Way): string {
  if (typeof value !== 'string') return typeof value === 'boolean' ? (value ? PAGE.yes : PAGE.no) : '';
  return row.shape === 'choice' || row.shape === 'either' ? choiceWords(words, path, value, way) : value;
}

/** The catalogue's row at a path, whatever stands there. */
export function rowFor(rows: readonly InputRow[], path: string): InputRow | undefined {
  let here: readonly InputRow[] = rows;
  let found: InputRow | undefined;
  for (const step of general(path).split('.')) {
    const name = step.replaceAll('[]', '');
    found = here.find((row) => row.key === name);
    for (let k = 0; k < step.split('[]').length - 1; k += 1) found = found?.item;
    if (found === undefined) return undefined;
    here = [...(found.fields ?? []), ...(found.either ?? []).flatMap((option) => option.fields ?? [])];
  }
  return found;
}
