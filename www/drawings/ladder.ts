import { area, Draft, label, type Around, type Taste } from './draft.js';
import type { CircuitPart, Drawing, Join, Netlist, Panel } from './kinds.js';

/** Left margin, and the last place of a panel that a unit may reach. */
const START = 16;
const LAST = 314;
/** Widths of a part in line, of parts in line beside one another, of a standing part, and of the load with the ring. */
const SERIES = 72;
const BESIDE = 92;
const SHUNT = 86;
const LOAD = 108;
/** Heights: between parts beside one another in line, and between standing ones in a chain. */
const RISE = 72;
const DROP = 56;

/** Something that takes a stretch of the ladder's wire: how wide it is, how far it reaches, and how it is drawn. */
export interface Unit {
  readonly width: number;
  readonly above: number;
  readonly below: number;
  /** Node of the wire where the unit ends. */
  readonly leaves: string;
  readonly draw: (draft: Draft, x: number, y: number) => void;
}

/** A ladder laid out unit by unit from the node `first`: as many panels as it takes. */
export function inPanels(circuit: Netlist, taste: Taste, first: string, units: readonly Unit[]): Drawing {
  const rows: Unit[][] = [[]];
  let used = START;
  for (const unit of units) {
    if (used + unit.width > LAST) {
      rows.push([]);
      used = START;
    }
    rows.at(-1)?.push(unit);
    used += unit.width;
  }
  const y = 24 + Math.max(0, ...units.map(({ above }) => above));
  const joins: Join[] = [];
  let node = first;
  const panels = rows.map((row, index): Panel => {
    const draft = new Draft(circuit, taste);
    let x = START;
    if (index > 0) {
      joins.push({ letter: String.fromCharCode(64 + index), node, y });
      draft.wire(node, 0, y, START, y);
    }
    for (const unit of row) {
      unit.draw(draft, x, y);
      x += unit.width;
      node = unit.leaves;
    }
    if (index + 1 < rows.length) draft.wire(node, x, y, 320, y);
    const above = Math.max(36, ...row.map((unit) => unit.above));
    return draft.panel(y - above - 16, y + Math.max(...row.map((unit) => unit.below)));
  });
  return { panels, joins };
}

/** What feeds the ladder, standing at its beginning. */
export function source(part: CircuitPart): Unit {
  const node = part.nodes[0] ?? 'source';
  return {
    width: 52, above: 40, below: 128, leaves: node,
    draw: (draft, x, y) => {
      draft.wire(node, x + 52, y, x + 16, y, x + 16, y + 26);
      draft.put(part, draft.form(part), x + 16, y + 40, 0, {
        label: label(x + 16, y + 98, 'middle', 'over', 62),
        touch: [area(x - 8, y + 24, x + 38, y + 100)],
      });
      draft.wire('ground', x + 16, y + 54, x + 16, y + 66);
      draft.ground(x + 16, y + 66);
    },
  };
}

/** Label and touch area of a part in line, with its middle at `x`. */
function inLine(x: number, y: number): Around {
  return { label: label(x, y - 36, 'middle', 'over', 68), touch: [area(x - 35, y - 57, x + 35, y + 12)] };
}

/** A part in line. */
export function series(part: CircuitPart): Unit {
  return {
    width: SERIES, above: 56, below: 28, leaves: part.nodes[1] ?? '',
    draw: (draft, x, y) => {
      draft.run(part, '', { x, y }, { x: x + SERIES, y }, { x: x + SERIES / 2, y }, inLine(x + SERIES / 2, y));
    },
  };
}

/** Parts in line beside one another. */
export function beside(parts: readonly CircuitPart[]): Unit {
  const [before = '', after = ''] = parts[0]?.nodes ?? [];
  return {
    width: BESIDE, above: 56 + RISE * (parts.length - 1), below: 28, leaves: after,
    draw: (draft, x, y) => {
      const [left, right] = [x + 8, x + BESIDE - 8];
      draft.wire(before, x, y, left, y);
      draft.wire(after, right, y, x + BESIDE, y);
      parts.forEach((part, index) => {
        const height = y - RISE * index;
        if (index > 0) {
          draft.wire(before, left, height + RISE, left, height);
          draft.wire(after, right, height + RISE, right, height);
        }
        const middle = (left + right) / 2;
        draft.run(part, '', { x: left, y: height }, { x: right, y: height }, { x: middle, y: height }, inLine(middle, height));
      });
    },
  };
}

/** Parts from the wire to ground, one under the other. */
export function standing(parts: readonly CircuitPart[], node: string): Unit {
  return {
    width: SHUNT, above: 36, below: 84 + DROP * (parts.length - 1), leaves: node,
    draw: (draft, x, y) => {
      draft.wire(node, x, y, x + SHUNT, y);
      column(draft, parts, x + 20, y);
    },
  };
}

/** Parts one under the other, from `y` down to ground. */
export function column(draft: Draft, parts: readonly CircuitPart[], x: number, y: number): void {
  let top = y;
  parts.forEach((part, index) => {
    const middle = y + 32 + DROP * index;
    const last = index + 1 === parts.length;
    const foot = last ? middle + 30 : middle + DROP / 2;
    draft.run(part, '', { x, y: top }, { x, y: foot }, { x, y: middle }, {
      label: label(x + 15, middle + 1, 'start', 'over', 50),
      touch: [area(x - 16, middle - 25, x + 66, middle + 25)],
    });
    top = foot;
    if (last) draft.ground(x, foot);
  });
}

/** The load at the end, with the ring where it goes on and the place of its answer. */
export function loaded(load: CircuitPart, node: string, width = LOAD): Unit {
  return {
    width, above: 36, below: 84, leaves: node,
    draw: (draft, x, y) => {
      draft.wire(node, x, y, x + width - 10, y);
      draft.rings.push({ node, at: { x: x + width - 10, y } });
      column(draft, [load], x + 20, y);
      draft.tag(node, x + width - 46, y - 4, 'above', 84);
    },
  };
}
