import type { Plate } from './amplifier.js';
import { area, Draft, EDGE, label } from './draft.js';
import type { CircuitPart, Point } from './kinds.js';
import { selector } from './symbols.js';

/** Column of the wire that feeds the capacitors, of the capacitors, of the throws and of the switch's common. */
const BUS = 232;
const CAPACITOR = 250;
const THROW = 269;
/** Column of a capacitor without a switch. */
const SINGLE = 268;
const COMMON = 297;
/** Half the distance of the two capacitors of a two-way switch. */
const APART = 24;

/** The coupling capacitors of a netlist in order of its switch, or the one there is. */
export function couplings(draft: Draft): readonly CircuitPart[] {
  return draft.circuit.parts.filter(({ kind, field }) => kind === 'capacitor' && /^(positions\[|coupling_farads)/.test(field));
}

/** One capacitor in the wire from the plate to the panel's right edge. */
export function single(draft: Draft, plate: Plate, node: string): void {
  const [only] = couplings(draft);
  const { x, y } = plate;
  draft.run(only, node, { x, y }, { x: EDGE, y }, { x: SINGLE, y }, {
    label: label(SINGLE, y - 40, 'middle', 'over', 90),
    touch: [area(SINGLE - 46, y - 61, EDGE - 2, y + 14)],
  });
}

/** Two capacitors and their switch, whose common leaves at the right edge. */
export function pair(draft: Draft, plate: Plate): void {
  const { x, y } = plate;
  const [first, second] = couplings(draft);
  draft.wire('plate', x, y, BUS, y);
  draft.wire('plate', BUS, y - APART, BUS, y);
  draft.wire('plate', BUS, y, BUS, y + APART);
  const legs = [
    { part: first, y: y - APART, label: label(CAPACITOR + 2, y - 56, 'middle', 'over', 58) },
    { part: second, y: y + APART, label: label(200, y + APART + 24, 'start', 'row', 116) },
  ];
  const touches = [
    [area(219, y - 78, 288, y - 37), area(236, y - 37, 277, y - 2)],
    [area(236, y + 3, 277, y + 37), area(198, y + 34, EDGE - 2, y + 64)],
  ];
  legs.forEach((leg, index) => {
    draft.run(leg.part, 'plate', { x: BUS, y: leg.y }, { x: THROW, y: leg.y }, { x: CAPACITOR, y: leg.y }, {
      label: leg.label,
      touch: touches[index] ?? [],
    });
  });
  const throws = [y - APART, y + APART].map((height) => ({ x: THROW, y: height }));
  make(draft, { x: COMMON, y }, throws, {
    label: label(298, y - 31, 'middle', 'over', 28, { x: 302, y: y + 23 }),
    touch: [area(278, y - 37, EDGE - 2, y + 34)],
  });
  draft.wire('a', COMMON, y, EDGE, y);
}

/** Pitch of the capacitors where there are more than two. */
const PITCH = 48;

/** Three to six capacitors under one another, in a panel of their own; gives the height where the common leaves. */
export function bank(draft: Draft, entry: number): { exit: number; bottom: number; top: number } {
  const all = couplings(draft);
  const first = entry - 40;
  const heights = all.map((_, index) => first + PITCH * index);
  const last = heights.at(-1) ?? first;
  const exit = first + PITCH / 2 * (all.length - 1);
  draft.wire('plate', 0, entry, 44, entry);
  const stops = [...new Set([...heights, entry])].sort((a, b) => a - b);
  stops.slice(1).forEach((stop, index) => draft.wire('plate', 44, stops[index] ?? stop, 44, stop));
  all.forEach((part, index) => {
    const y = heights[index] ?? first;
    draft.run(part, 'plate', { x: 44, y }, { x: 196, y }, { x: 72, y }, {
      label: label(86, y - 15, 'start', 'row', 108),
      touch: [area(50, y - 27, 202, y + 15)],
    });
  });
  make(draft, { x: 260, y: exit }, heights.map((y) => ({ x: 196, y })), {
    label: label(284, exit - 30, 'middle', 'over', 44),
    touch: [area(250, exit - 56, EDGE - 2, exit + 12)],
  });
  draft.wire('a', 260, exit, EDGE, exit);
  return { exit, bottom: last + 24, top: first - 28 };
}

function make(draft: Draft, at: Point, throws: readonly Point[], around: Parameters<Draft['put']>[5]): void {
  const part = draft.find('S1');
  if (part === undefined) return;
  const closed = typeof part.value === 'number' ? part.value - 1 : null;
  const local = throws.map(({ x, y }) => ({ x: x - at.x, y: y - at.y }));
  draft.put(part, selector(local, closed), at.x, at.y, 0, around);
}
