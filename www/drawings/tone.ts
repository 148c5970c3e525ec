import { area, Draft, EDGE, label } from './draft.js';
import { output } from './output.js';
import { potentiometer } from './symbols.js';

/** Columns: the wire up from the switch, bass, the capacitors on its wiper, node B, treble, level. */
const RISER = 18;
const BASS = 76;
const CAPACITORS = 116;
const MIX = 192;
const B = 216;
const TREBLE = 252;
const LEVEL = 124;

/** The two knobs, the level and the load; the wire from the switch enters at `entry`. */
export function twoKnob(draft: Draft, entry: number): { top: number; bottom: number } {
  const y = entry - 72;
  draft.wire('a', 0, entry, RISER, entry, RISER, y, BASS, y);
  draft.wire('a', BASS, y, TREBLE, y);
  draft.wire('a', TREBLE, y, TREBLE, y + 14);
  bass(draft, y);
  wipers(draft, y + 100);
  treble(draft, y);
  draft.wire('b', B, y + 100, B, y + 214, LEVEL, y + 214, LEVEL, y + 224);
  return { top: y - 16, bottom: level(draft, y + 242) };
}

/** The level alone, fed straight from the switch. */
export function levelOnly(draft: Draft, entry: number): { top: number; bottom: number } {
  draft.wire('a', 0, entry, LEVEL, entry, LEVEL, entry + 18);
  return { top: entry - 24, bottom: level(draft, entry + 36) };
}

function bass(draft: Draft, y: number): void {
  const at = (height: number) => ({ x: BASS, y: y + height });
  draft.run(draft.find('R4'), 'a', at(0), at(56), at(28), {
    label: label(BASS - 13, y + 29, 'end', 'over', 40),
    touch: [area(20, y + 6, BASS + 14, y + 50)],
  });
  const knob = draft.find('Bass');
  if (knob !== undefined) {
    draft.wire('bass_top', BASS, y + 56, BASS, y + 82);
    draft.put(knob, draft.form(knob), BASS, y + 100, 0, {
      label: label(BASS - 13, y + 100, 'end', 'three', 60),
      touch: [area(4, y + 76, BASS + 22, y + 126)],
    });
    draft.wire('bass_bottom', BASS, y + 118, BASS, y + 144);
  }
  draft.hang(draft.find('R5'), 'bass_bottom', BASS, y + 144, y + 172, y + 202, {
    label: label(BASS - 13, y + 173, 'end', 'over', 56),
    touch: [area(4, y + 150, BASS + 14, y + 196)],
  });
}

function wipers(draft: Draft, y: number): void {
  draft.wire('bass_top', BASS, y - 44, CAPACITORS, y - 44);
  draft.run(draft.find('C5'), 'bass_top', { x: CAPACITORS, y: y - 44 }, { x: CAPACITORS, y }, { x: CAPACITORS, y: y - 24 }, {
    label: label(130, y - 28, 'start', 'over', 48),
    touch: [area(102, y - 52, 181, y - 8)],
  });
  draft.run(draft.find('C6'), 'bass_wiper', { x: CAPACITORS, y }, { x: CAPACITORS, y: y + 44 }, { x: CAPACITORS, y: y + 20 }, {
    label: label(130, y + 26, 'start', 'over', 56),
    touch: [area(102, y + 10, 190, y + 52)],
  });
  draft.wire('bass_bottom', CAPACITORS, y + 44, BASS, y + 44);
  draft.wire('bass_wiper', BASS + 16, y, CAPACITORS, y);
  draft.run(draft.find('R6'), 'bass_wiper', { x: CAPACITORS, y }, { x: B, y }, { x: MIX, y }, {
    label: label(208, y - 30, 'middle', 'over', 48),
    touch: [area(182, y - 50, 234, y - 5), area(173, y - 8, 211, y + 9)],
  });
  draft.wire('b', B, y, TREBLE - 16, y);
}

function treble(draft: Draft, y: number): void {
  const at = (height: number) => ({ x: TREBLE, y: y + height });
  draft.run(draft.find('C7'), 'a', at(14), at(66), at(28), {
    label: label(TREBLE + 14, y + 31, 'start', 'over', 50),
    touch: [area(TREBLE - 15, y + 8, EDGE - 2, y + 54)],
  });
  const knob = draft.find('Treble');
  if (knob !== undefined) {
    draft.wire('treble_top', TREBLE, y + 66, TREBLE, y + 82);
    draft.put(knob, potentiometer(draft.taste.boxes, 'left'), TREBLE, y + 100, 0, {
      label: label(TREBLE + 13, y + 100, 'start', 'three', 52),
      touch: [area(TREBLE - 17, y + 74, EDGE - 2, y + 127)],
    });
    draft.wire('treble_bottom', TREBLE, y + 118, TREBLE, y + 140);
  }
  draft.hang(draft.find('C8'), 'treble_bottom', TREBLE, y + 140, y + 156, y + 182, {
    label: label(TREBLE + 14, y + 159, 'start', 'over', 50),
    touch: [area(TREBLE - 15, y + 136, EDGE - 2, y + 182)],
  });
}

function level(draft: Draft, y: number): number {
  const knob = draft.find('Level');
  if (knob === undefined) return y;
  draft.put(knob, draft.form(knob), LEVEL, y, 0, {
    label: label(LEVEL - 13, y + 1, 'end', 'three', 84),
    touch: [area(28, y - 26, LEVEL + 20, y + 28)],
  });
  draft.wire('ground', LEVEL, y + 18, LEVEL, y + 30);
  draft.ground(LEVEL, y + 30);
  return output(draft, 'R8', 'C13', LEVEL + 16, y);
}
