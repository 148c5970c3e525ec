import type { InputRow, Value } from './kinds.js';

/** The list with one more item at its end; as it is where it is full. */
export function grown(row: InputRow, items: readonly Value[], item: Value): readonly Value[] {
  return canGrow(row, items) ? [...items, item] : items;
}

/** The list without one item; as it is where none can go. */
export function shrunk(row: InputRow, items: readonly Value[], index: number): readonly Value[] {
  return canShrink(row, items) ? items.filter((_, k) => k !== index) : items;
}

/** The list with an item one place on. */
export function moved(items: readonly Value[], index: number, by: 1 | -1): readonly Value[] {
  const [one, other] = [items[index], items[index + by]];
  if (one === undefined || other === undefined) return items;
  return items.map((item, k) => (k === index ? other : k === index + by ? one : item));
}

export function canGrow(row: InputRow, items: readonly Value[]): boolean {
  return items.length < (row.count_most ?? Infinity);
}

export function canShrink(row: InputRow, items: readonly Value[]): boolean {
  return items.length > (row.count_least ?? 0);
}
