import { nodeHeading } from '../words/node-words.js';
import type { Given } from './draw.js';
import { area, Draft, EDGE, label } from './draft.js';
import type { CircuitPart, Drawing, Form } from './kinds.js';
import { triode, TRIODE } from './symbols.js';

/** The tube's middle, and the columns of its points: plate volts, grid volts, plate current. */
const TUBE = { x: 74, y: 92 };
const COLUMNS: readonly (readonly [key: string, middle: number, half: number])[] = [
  ['plate_volts', 158, 32], ['grid_volts', 220, 30], ['plate_amps', 284, 34],
];
const ROW = 44;
const FIRST = 62;
/** A figure alone: nothing of it is drawn but its label. */
const FIGURE: Form = { terminals: [], strokes: [], box: { x: -20, y: -9, width: 40, height: 18 } };

/** A tube with its electrodes named, and the points of its sheet in rows, each figure touchable. */
export function sheet(given: Given): Drawing {
  const draft = new Draft({ nodes: [], parts: [] }, { boxes: false });
  const { x, y } = TUBE;
  const name: CircuitPart = { reference: 'V1', role: 'tube', kind: 'triode', field: 'name', nodes: [], value: null };
  draft.wire('plate', x + TRIODE.plate.x, y + TRIODE.plate.y, x, 40);
  draft.wire('grid', x + TRIODE.grid.x, y, 8, y);
  draft.wire('cathode', x + TRIODE.cathode.x, y + TRIODE.cathode.y, x + TRIODE.cathode.x, y + 48);
  draft.put(name, triode(false, {}), x, y, 0, {
    label: label(64, y + 84, 'middle', 'over', 112),
    touch: [area(x - 32, y - 32, x + 34, y + 34), area(6, y + 34, 122, y + 106)],
  });
  draft.notes.push(
    { at: { x, y: 32 }, text: nodeHeading('plate'), align: 'middle' },
    { at: { x: 6, y: y - 8 }, text: nodeHeading('grid'), align: 'start' },
    { at: { x: x - 6, y: y + 52 }, text: nodeHeading('cathode'), align: 'start' },
  );
  COLUMNS.forEach(([key, middle]) => {
    draft.notes.push({ at: { x: middle, y: 32 }, text: HEADS[key] ?? '', align: 'middle' });
  });
  const rows = [...rowsOf(given, 'points'), ...rowsOf(given, 'cutoff')];
  rows.forEach((path, index) => {
    if (path.startsWith('cutoff')) draft.notes.push({ at: { x: 284, y: FIRST + ROW * index + 5 }, text: 'cut-off', align: 'middle' });
    for (const [key, middle, half] of COLUMNS) figure(draft, given, `${path}.${key}`, middle, half, FIRST + ROW * index);
  });
  return { panels: [draft.panel(12, Math.max(y + 112, FIRST + ROW * (rows.length - 1) + 34))], joins: [] };
}

const HEADS: Readonly<Record<string, string>> = { plate_volts: 'at plate', grid_volts: 'at grid', plate_amps: 'current' };

function rowsOf({ texts }: Given, list: string): readonly string[] {
  const rows = new Set<string>();
  for (const path of texts.keys()) {
    const row = new RegExp(`^${list}\\[\\d+\\]`).exec(path)?.[0];
    if (row !== undefined) rows.add(row);
  }
  return [...rows];
}

function figure(draft: Draft, { texts }: Given, field: string, middle: number, half: number, y: number): void {
  if (!texts.has(field)) return;
  const part: CircuitPart = { reference: field, role: field.replaceAll(/[[\].]+/g, '_').replace(/_(\d+)_/, (_, row: string) => `_${Number(row) + 1}_`), kind: 'figure', field, nodes: [], value: null };
  draft.put(part, FIGURE, middle, y, 0, {
    label: label(middle, y, 'middle', 'over', 2 * half - 4),
    touch: [area(middle - half, y - ROW / 2, Math.min(middle + half, EDGE), y + ROW / 2)],
  }, '');
}
