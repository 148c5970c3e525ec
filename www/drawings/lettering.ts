import type { Box, Label } from './kinds.js';
import { fit, type Fitted, type Measure } from './measure.js';

/** A line of a part's label, set. */
export interface Line extends Fitted {
  readonly x: number;
  readonly y: number;
  /** Reference in ink, value in bold touch on its wash, or a note in the second ink. */
  readonly look: 'reference' | 'value' | 'note';
  /** The wash behind a value, or the text's own box. */
  readonly box: Box;
}

const SIZE = 14;
/** The wash stands off the text by this at each side, and by these above and below its baseline. */
const PAD = 3.5;
const ABOVE = 12.6;
const BELOW = 5.4;
/** Between a reference and the wash in a row. */
const GAP = 6;

function alone({ x, y, align, room }: Label, value: string, measure: Measure): readonly Line[] {
  const text = fit(value, SIZE, 700, room - 2 * PAD, measure);
  const whole = text.width + 2 * PAD;
  const left = align === 'start' ? x : align === 'end' ? x - whole : x - whole / 2;
  const box = { x: left, y: y + 5 - ABOVE, width: whole, height: ABOVE + BELOW };
  return [{ ...text, x: left + PAD, y: y + 5, look: 'value', box }];
}

/** A part's label as lines: reference, value as typed, and one note if there is one. */
export function lettering(label: Label, reference: string, value: string, note: string, measure: Measure): readonly Line[] {
  const { x, y, align, set, room } = label;
  if (reference === '') return alone(label, value, measure);
  const name = fit(reference, SIZE, 400, room, measure);
  const left = (width: number): number => (align === 'start' ? x : align === 'end' ? x - width : x - width / 2);
  const line = (text: Fitted, at: number, baseline: number, look: Line['look']): Line => {
    const washed = look === 'value';
    const pad = washed ? PAD : 0;
    return {
      ...text, x: at + pad, y: baseline, look,
      box: { x: at, y: baseline - (washed ? ABOVE : 10.6), width: text.width + 2 * pad, height: washed ? ABOVE + BELOW : 13.6 },
    };
  };
  if (value === '') return [line(name, left(name.width), set === 'row' ? y + 5 : y - 7, 'reference')];
  if (set === 'row') {
    const most = room - name.width - GAP - 2 * PAD;
    const text = fit(value, SIZE, 700, most, measure);
    const start = left(name.width + GAP + text.width + 2 * PAD);
    const lines = [line(name, start, y + 5, 'reference'), line(text, start + name.width + GAP, y + 5, 'value')];
    if (note !== '') {
      const small = fit(note, 13, 400, room, measure);
      lines.push(line(small, left(small.width), y + 23, 'note'));
    }
    return lines;
  }
  const text = fit(value, SIZE, 700, room - 2 * PAD, measure);
  const width = text.width + 2 * PAD;
  if (label.value !== undefined) {
    return [line(name, left(name.width), y + 5, 'reference'), line(text, label.value.x - width / 2, label.value.y + 5, 'value')];
  }
  const three = set === 'three' && note !== '';
  const [one, two, last] = three ? [y - 15, y + 4.5, y + 22] : [y - 7, y + 12.5, y + 30];
  // A reference stands over the value's text, not over the edge of its wash.
  const over = align === 'start' ? left(name.width) + PAD : align === 'end' ? left(name.width) - PAD : left(name.width);
  const lines = [line(name, over, one, 'reference'), line(text, left(width), two, 'value')];
  if (note !== '') {
    const small = fit(note, 13, 400, room, measure);
    lines.push(line(small, align === 'start' ? left(small.width) + PAD : align === 'end' ? left(small.width) - PAD : left(small.width), last, 'note'));
  }
  return lines;
}
