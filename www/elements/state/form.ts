import type { Figures, InputRow, Value } from './kinds.js';
import { optionOf } from './full.js';
import { isRecord, joined } from './paths.js';
import { alternatives, chosenOf, isShown } from './shown.js';

/** One piece of the plain form, in the order of the page. */
export type Piece =
  | { readonly kind: 'field'; readonly path: string; readonly row: InputRow; readonly value: Value }
  | { readonly kind: 'list'; readonly path: string; readonly row: InputRow; readonly items: readonly (readonly Piece[])[] }
  | { readonly kind: 'record'; readonly path: string; readonly row: InputRow; readonly pieces: readonly Piece[] }
  | { readonly kind: 'either'; readonly path: string; readonly row: InputRow; readonly chosen: InputRow; readonly value: Value; readonly pieces: readonly Piece[] }
  | { readonly kind: 'one_of'; readonly path: string; readonly rows: readonly InputRow[]; readonly chosen: string; readonly pieces: readonly Piece[] };

/** The pieces under one heading. */
export interface Group {
  readonly key: string;
  readonly pieces: readonly Piece[];
}

/** The whole form, generated from the table: what does not count now is left out. */
export function formOf(rows: readonly InputRow[], full: Figures): readonly Group[] {
  const keys = [...new Set(rows.map((row) => row.group ?? ''))];
  return keys
    .map((key) => ({ key, pieces: piecesOf(rows.filter((row) => (row.group ?? '') === key), full, '', rows) }))
    .filter(({ pieces }) => pieces.length > 0);
}

function piecesOf(rows: readonly InputRow[], record: Figures, path: string, all = rows): readonly Piece[] {
  const done = new Set<string>();
  return rows.flatMap((row): readonly Piece[] => {
    const key = row.key ?? '';
    if (done.has(key) || !isShown(row, record)) return [];
    if (row.one_of !== undefined) {
      const options = alternatives(all, row.one_of);
      for (const option of options) for (const each of option.keys) done.add(each);
      return [oneOf(all, row.one_of, record, path)];
    }
    return [pieceOf(row, Object.hasOwn(record, key) ? (record[key] ?? '') : '', joined(path, key))];
  });
}

function oneOf(rows: readonly InputRow[], group: string, record: Figures, path: string): Piece {
  const chosen = chosenOf(rows, group, record);
  const keys = alternatives(rows, group).find((option) => option.key === chosen)?.keys ?? [];
  const shown = rows.filter((row) => keys.includes(row.key ?? ''));
  return {
    kind: 'one_of',
    path,
    rows: rows.filter((row) => row.one_of === group),
    chosen,
    pieces: shown.map((row) => pieceOf(row, record[row.key ?? ''] ?? '', joined(path, row.key ?? ''))),
  };
}

function pieceOf(row: InputRow, value: Value, path: string): Piece {
  if (row.shape === 'list' && row.item !== undefined) {
    const item = row.item;
    const items = Array.isArray(value) ? (value as readonly Value[]) : [];
    return { kind: 'list', path, row, items: items.map((each, k) => itemPieces(item, each, `${path}[${k}]`)) };
  }
  if (row.shape === 'record') {
    return { kind: 'record', path, row, pieces: piecesOf(row.fields ?? [], isRecord(value) ? value : {}, path) };
  }
  if (row.shape === 'either') {
    const chosen = optionOf(row, value) ?? row.either?.[0] ?? row;
    const inside = chosen.shape === 'record' ? piecesOf(chosen.fields ?? [], isRecord(value) ? value : {}, path) : [];
    return { kind: 'either', path, row, chosen, value, pieces: inside };
  }
  return { kind: 'field', path, row, value };
}

function itemPieces(item: InputRow, value: Value, path: string): readonly Piece[] {
  return item.shape === 'record' ? piecesOf(item.fields ?? [], isRecord(value) ? value : {}, path) : [pieceOf(item, value, path)];
}
