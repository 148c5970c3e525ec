import { figure } from '../words/plain.js';
import type { Given } from './draw.js';
import { area, Draft, EDGE, label } from './draft.js';
import type { CircuitPart, Drawing, Form } from './kinds.js';

/** The winding from its cold end to its hot one, and the pipe that it lies on. */
const [LEFT, RIGHT, MIDDLE, HALF] = [58, 262, 118, 30];
/** Turns drawn at most: beyond them a picture is no clearer. */
const MOST = 17;
/** Taps that have room for their figures, and the room between them. */
const APART = 50;
const FIGURE: Form = { terminals: [], strokes: [], box: { x: -20, y: -9, width: 40, height: 18 } };

/** The fields that say the same thing in several ways, each with its heading; the one in use is shown. */
const HEADS: readonly (readonly [heading: string, middle: number, fields: readonly string[]])[] = [
  ['form', 44, ['form_diameter']],
  ['wire', 122, ['wire.awg', 'wire.swg', 'wire.diameter']],
  ['winding', 200, ['turns', 'henries']],
  ['spacing', 278, ['pitch', 'turns_per_metre', 'winding_length']],
];
const NAMES: Readonly<Record<string, string>> = {
  form_diameter: 'form', 'wire.awg': 'AWG', 'wire.swg': 'SWG', 'wire.diameter': 'wire', turns: 'turns', henries: 'wanted', pitch: 'pitch',
  turns_per_metre: 'stock', winding_length: 'over',
};

/** A coil on its pipe, cold end to ground, with its taps where they lie. */
export function coil(given: Given): Drawing {
  const draft = new Draft({ nodes: [], parts: [] }, { boxes: false });
  const turns = figure(given.answers, 'turns') ?? 12;
  const drawn = Math.max(1, Math.min(MOST, Math.round(turns)));
  const step = (RIGHT - LEFT) / drawn;
  const winding: CircuitPart = { reference: 'L1', role: 'branch_coil', kind: 'coil', field: '', nodes: [], value: null };
  draft.put(winding, pipe(drawn, step), (LEFT + RIGHT) / 2, MIDDLE, 0, { label: label(LEFT - 34, MIDDLE - 42, 'start', 'row', 40), touch: [] });
  draft.wire('cold_end', LEFT, MIDDLE + HALF, LEFT, MIDDLE + 56);
  draft.ground(LEFT, MIDDLE + 56);
  draft.wire('hot_end', RIGHT, MIDDLE + HALF, RIGHT, MIDDLE + 44, EDGE - 14, MIDDLE + 44);
  draft.rings.push({ node: 'hot_end', at: { x: EDGE - 14, y: MIDDLE + 44 } });
  draft.notes.push(
    { at: { x: LEFT - 14, y: MIDDLE + 50 }, text: 'cold', align: 'end' },
    { at: { x: EDGE - 14, y: MIDDLE + 66 }, text: 'hot', align: 'end' },
  );
  for (const [, middle, fields] of HEADS) {
    const field = fields.find((each) => given.texts.has(each));
    if (field !== undefined) put(draft, field, NAMES[field] ?? '', middle, 38, 39);
  }
  taps(draft, given, turns);
  return { panels: [draft.panel(8, MIDDLE + 124)], joins: [] };
}

function put(draft: Draft, field: string, name: string, middle: number, y: number, half: number): void {
  const part: CircuitPart = { reference: name, role: field.replaceAll('.', '_'), kind: 'figure', field, nodes: [], value: null };
  draft.put(part, FIGURE, middle, y, 0, {
    label: label(middle, y, 'middle', 'over', 2 * half - 6),
    touch: [area(middle - half, y - 26, middle + half, y + 26)],
  });
}

/** Each tap's lead goes down from its turn; its figure stands below where it has room. */
function taps(draft: Draft, { texts }: Given, turns: number): void {
  let free = LEFT + 22;
  for (let index = 0; texts.has(`taps[${index}]`); index += 1) {
    const field = `taps[${index}]`;
    const turn = Number.parseFloat(texts.get(field) ?? '');
    if (!(turn > 0 && turn < turns)) continue;
    const x = Math.round(LEFT + ((RIGHT - LEFT) * turn) / turns);
    draft.wire(`tap_${index + 1}`, x, MIDDLE + HALF, x, MIDDLE + 62);
    draft.rings.push({ node: `tap_${index + 1}`, at: { x, y: MIDDLE + 62 } });
    if (x < free || x > EDGE - 30) continue;
    put(draft, field, `tap ${index + 1}`, x, MIDDLE + 94, APART / 2 - 1);
    free = x + APART;
  }
}

/** The pipe, open at its right end, and the turns in front of it. */
function pipe(drawn: number, step: number): Form {
  const half = (RIGHT - LEFT) / 2;
  const [left, right] = [-half - 26, half + 26];
  const body = `M${left} -${HALF - 4}H${right}M${left} ${HALF - 4}H${right}M${left} -${HALF - 4}a7 ${HALF - 4} 0 0 0 0 ${2 * (HALF - 4)}` +
    `M${right} -${HALF - 4}a7 ${HALF - 4} 0 0 0 0 ${2 * (HALF - 4)}a7 ${HALF - 4} 0 0 0 0 -${2 * (HALF - 4)}`;
  const front = Array.from({ length: drawn }, (_, k) => `M${round(-half + k * step)} ${HALF}L${round(-half + (k + 0.62) * step)} -${HALF}`).join('');
  const last = `M${round(half - step * 0.38)} -${HALF}L${half} ${HALF}`;
  return {
    terminals: [],
    strokes: [{ d: body, weight: 'iron' }, { d: `${front}${last}`, weight: 'part' }],
    box: { x: left - 8, y: -HALF - 2, width: right - left + 16, height: 2 * HALF + 4 },
  };
}

const round = (figure: number): number => Math.round(figure * 100) / 100;
