import type { Reading } from './from-words.js';
import type { BareProblem, Figures, InputRow, Value } from './kinds.js';
import type { Leaf } from './leaves.js';
import { isRecord, joined, stepsOf, valueAt } from './paths.js';

/** What the reader said of a text, for ever the same. */
export type Said = Reading | { readonly problem: BareProblem };

/** The reader's answers so far, by unit and text. */
export class Readings {
  readonly #said = new Map<string, Said>();

  /** How many texts have been read: it tells whether there is anything new. */
  get count(): number {
    return this.#said.size;
  }

  get(text: string, unit: string): Said | undefined {
    return this.#said.get(`${unit} ${text}`);
  }

  set(text: string, unit: string, said: Said): void {
    this.#said.set(`${unit} ${text}`, said);
  }
}

/** The figure that a text was read as, if it was. */
export function valueOf(said: Said | undefined): number | null {
  return said !== undefined && 'value' in said ? said.value : null;
}

/** The inputs with figures where the texts have been read: what sentences are made from. */
export function asFigures(full: Figures, all: readonly Leaf[], readings: Readings): Figures {
  const read = new Map<string, number>();
  for (const { path, row, value } of all) {
    if (row.shape !== 'quantity' || typeof value !== 'string' || value === '') continue;
    const figure = valueOf(readings.get(value, row.unit ?? '1'));
    if (figure !== null) read.set(path, figure);
  }
  return record(full, '', read);
}

function record(from: Figures, path: string, read: ReadonlyMap<string, number>): Figures {
  return Object.fromEntries(Object.entries(from).map(([key, value]) => [key, inside(value, joined(path, key), read)]));
}

function inside(value: Value, path: string, read: ReadonlyMap<string, number>): Value {
  if (typeof value === 'string') return read.get(path) ?? value;
  if (Array.isArray(value)) return (value as readonly Value[]).map((item, k) => inside(item, `${path}[${k}]`, read));
  return isRecord(value) ? record(value, path, read) : value;
}

/** The calculator's own figure at a path, where it has one. */
export function ownFigure(rows: readonly InputRow[], path: string): number | null {
  const [first, ...others] = stepsOf(path);
  const row = rows.find((each) => each.key === first);
  if (row === undefined) return null;
  if (row.default === undefined || row.default === null) {
    return row.fields !== undefined && others.length > 0 ? ownFigure(row.fields, others.join('.')) : null;
  }
  const found = isRecord(row.default) || Array.isArray(row.default) ? valueAt({ own: row.default }, `own.${others.join('.')}`) : row.default;
  return typeof found === 'number' ? found : null;
}
