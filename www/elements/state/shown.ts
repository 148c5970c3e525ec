import type { Condition, Figures, InputRow } from './kinds.js';
import { valueAt } from './paths.js';

/** Whether a text stands for something: anything but nothing and nought. */
export function isGiven(value: unknown): boolean {
  if (typeof value === 'number') return value !== 0;
  if (typeof value === 'boolean') return value;
  if (typeof value === 'string') return value.trim() !== '' && (!/\d/.test(value) || /[1-9]/.test(value));
  return value !== null && value !== undefined;
}

function holds(condition: Condition, record: Figures): boolean {
  const value = valueAt(record, condition.path);
  if (condition.is !== undefined) return value === condition.is;
  if (condition.is_not !== undefined) return value !== condition.is_not;
  return isGiven(value);
}

/** Whether an input counts, seen from the record that it stands in: all of its conditions hold. */
export function isShown(row: InputRow, record: Figures): boolean {
  return (row.when ?? []).every((condition) => holds(condition, record));
}

/** The alternatives of one choice "exactly one of these", each with the inputs that go with it. */
export interface Alternative {
  readonly key: string;
  readonly keys: readonly string[];
}

/** The alternatives of group `name` among the rows of one record. */
export function alternatives(rows: readonly InputRow[], name: string): readonly Alternative[] {
  return rows
    .filter((row) => row.one_of === name)
    .map((row) => ({
      key: row.key ?? '',
      keys: rows
        .filter((other) => other === row || (row.together !== undefined && other.together === row.together && other.one_of === undefined))
        .map((other) => other.key ?? ''),
    }));
}

/** The alternative in use: the one given, else the one with a default. */
export function chosenOf(rows: readonly InputRow[], name: string, record: Figures): string {
  const among = rows.filter((row) => row.one_of === name);
  const given = among.find((row) => Object.hasOwn(record, row.key ?? ''));
  return (given ?? among.find((row) => row.default !== undefined) ?? among[0])?.key ?? '';
}
