import { text, texts } from '../words/plain.js';
import type { Given } from './draw.js';
import { area, Draft, label } from './draft.js';
import type { CircuitPart, Drawing, Form, Stroke } from './kinds.js';

/** The body's middle and half its size. */
const MIDDLE = { x: 160, y: 72 };
const HALF = { x: 92, y: 28 };
const BAND = 13;

/** The part that is read, with its bands in hatching and their names in words, or with its code printed on it. */
export function marking(given: Given): Drawing {
  const kind = given.texts.get('kind') ?? 'resistor';
  const bands = texts(given.answers, 'bands');
  const banded = kind === 'resistor' && bands.length > 0;
  const draft = new Draft({ nodes: [], parts: [] }, { boxes: false });
  const part: CircuitPart = { reference: 'marking', role: 'marking', kind: 'marking', field: 'text', nodes: [], value: null };
  const foot = banded ? 176 : 128;
  const form: Form = {
    terminals: [], strokes: body(kind, banded ? bands : []), box: { x: -150, y: -36, width: 300, height: 72 },
    ...(banded ? {} : { marks: [{ at: { x: 0, y: 8 }, text: printed(kind, given), align: 'middle' as const, printed: true as const }] }),
  };
  if (banded) names(draft, bands);
  draft.put(part, form, MIDDLE.x, MIDDLE.y, 0, {
    label: label(MIDDLE.x, foot + 10, 'middle', 'over', 280),
    touch: [area(8, 36, 312, foot + 28)],
  }, '');
  return { panels: [draft.panel(12, foot + 40)], joins: [] };
}

function printed(kind: string, { answers }: Given): string {
  const digits = text(answers, 'three_digit');
  const code = kind === 'resistor' || digits === '' ? text(answers, 'letter_code') : digits;
  return code + text(answers, 'tolerance_letter');
}

/** Middle of a band from the body's middle: the tolerance and what follows it stand a little apart. */
function place(index: number, count: number): number {
  const gap = 30;
  const apart = index >= (count > 4 ? 4 : count - 1) && count > 3 ? 14 : 0;
  return (index - (count - 1) / 2) * gap + apart - (count > 3 ? 7 : 0);
}

function body(kind: string, bands: readonly string[]): readonly Stroke[] {
  if (kind === 'capacitor') {
    const case_ = `M-62 -30H62Q70 -30 70 -22V18Q70 26 62 26H-62Q-70 26 -70 18V-22Q-70 -30 -62 -30Z`;
    return [{ d: 'M-40 26V42M40 26V42', weight: 'part' }, { d: case_, weight: 'envelope', fill: 'body' }];
  }
  const leads: Stroke = { d: `M-150 0H-${HALF.x}M${HALF.x} 0H150`, weight: 'part' };
  const outline = `M-${HALF.x} -20Q-${HALF.x} -${HALF.y} -${HALF.x - 8} -${HALF.y}H-64L-58 -23H58L64 -${HALF.y}H${HALF.x - 8}Q${HALF.x} -${HALF.y} ${HALF.x} -20V20` +
    `Q${HALF.x} ${HALF.y} ${HALF.x - 8} ${HALF.y}H64L58 23H-58L-64 ${HALF.y}H-${HALF.x - 8}Q-${HALF.x} ${HALF.y} -${HALF.x} 20Z`;
  const plain = `M-${HALF.x} -24H${HALF.x}V24H-${HALF.x}Z`;
  const painted = bands.flatMap((colour, index): Stroke[] => {
    const x = place(index, bands.length);
    const height = Math.abs(x) > 62 ? HALF.y : 23;
    return [{ d: `M${x - BAND / 2} -${height}h${BAND}v${2 * height}h-${BAND}Z`, weight: 'thin', fill: colour }];
  });
  return [leads, { d: kind === 'resistor' ? outline : plain, weight: 'envelope', fill: 'body' }, ...painted, ...leaders(bands)];
}

/** Lines from each band down to its name; names take turns in two rows, so that they never meet. */
function leaders(bands: readonly string[]): readonly Stroke[] {
  return bands.map((_, index) => {
    const x = place(index, bands.length);
    return { d: `M${x} ${HALF.y + 4}V${HALF.y + (index % 2 === 0 ? 14 : 34)}`, weight: 'iron' as const };
  });
}

function names(draft: Draft, bands: readonly string[]): void {
  bands.forEach((colour, index) => {
    draft.notes.push({
      at: { x: MIDDLE.x + place(index, bands.length), y: MIDDLE.y + HALF.y + (index % 2 === 0 ? 29 : 49) }, text: colour, align: 'middle',
    });
  });
}
