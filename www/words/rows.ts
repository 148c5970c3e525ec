import type { Value } from './kinds.js';

/** A row of the catalogue's inputs without its words; a row inside a list or a choice of shapes has no key. */
export interface BareRow {
  readonly key?: string;
  readonly shape: string;
  readonly unit?: string;
  readonly least?: number;
  readonly most?: number;
  readonly zero?: string;
  readonly default?: Value;
  readonly choices?: readonly string[];
  readonly fields?: readonly BareRow[];
  readonly item?: BareRow;
  readonly either?: readonly BareRow[];
}

/** A row of the catalogue's answers without its words. */
export interface BareAnswer {
  readonly key: string;
  readonly shape: string;
  readonly unit?: string;
  readonly null_means?: string;
}

/** A calculator as the engine describes it. */
export interface BareCalculator {
  readonly id: string;
  readonly group: string;
  readonly inputs: readonly BareRow[];
  readonly answers: readonly BareAnswer[];
}

/** The row at a path such as `positions[1].farads`, or nothing. */
export function rowAt(rows: readonly BareRow[], path: string): BareRow | undefined {
  let here: BareRow | undefined = { shape: 'record', fields: rows };
  for (const step of path.split(/[.[\]]+/).filter((each) => each !== '')) {
    if (here === undefined) return undefined;
    here = /^\d+$/.test(step) ? listed(here) : named(here, step);
  }
  return here;
}

/** Every path of the rows, items of lists as `[]`, with its row. */
export function allRows(rows: readonly BareRow[], start = ''): readonly (readonly [path: string, row: BareRow])[] {
  return rows.flatMap((row) => under(row, row.key === undefined ? start : start === '' ? row.key : `${start}.${row.key}`));
}

function under(row: BareRow, path: string): readonly (readonly [string, BareRow])[] {
  const item = row.item === undefined ? [] : under(row.item, `${path}[]`);
  const options = (row.either ?? []).flatMap((option) => (option.fields === undefined ? [] : allRows(option.fields, path)));
  return [[path, row], ...allRows(row.fields ?? [], path), ...item, ...options];
}

function named(row: BareRow, key: string): BareRow | undefined {
  const fields = [...(row.fields ?? []), ...(row.either ?? []).flatMap((option) => option.fields ?? [])];
  return fields.find((field) => field.key === key);
}

function listed(row: BareRow): BareRow | undefined {
  return row.item ?? row.either?.find((option) => option.item !== undefined)?.item;
}
