import { area, Draft, EDGE, label } from './draft.js';

/**
 * The end of a chain: what loads it, standing to ground, and the ring where the next stage is fed. `from` is where the
 * output's wire begins, `y` its height, and `columns` where the load and its capacitance stand.
 */
export function output(draft: Draft, load: string, capacitance: string, from: number, y: number, columns: readonly [number, number] = [176, 244]): number {
  const [one, other] = columns;
  const ring = EDGE - 16;
  draft.wire('output', from, y, ring, y);
  draft.rings.push({ node: 'output', at: { x: ring, y } });
  const foot = y + 58;
  draft.hang(draft.find(load), 'output', one, y, y + 28, foot, {
    label: label(one + 13, y + 30, 'start', 'over', other - one - 28),
    touch: [area(one - 16, y + 6, other - 13, y + 52)],
  });
  draft.hang(draft.find(capacitance), 'output', other, y, y + 28, foot, {
    label: label(other + 15, y + 30, 'start', 'over', 58),
    touch: [area(other - 13, y + 6, other + 74, y + 52)],
  });
  draft.tag('output', ring - 28, y - 4, 'above', 84);
  return foot + 20;
}
