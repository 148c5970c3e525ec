import { area, Draft, label, type Taste } from './draft.js';
import type { CircuitPart, Drawing, Join, Netlist, Panel } from './kinds.js';
import { HEAD, head } from './supply-head.js';

/** The main line, the left margin of a panel after the first, and the last place that a unit may reach. */
const LINE = 132;
const START = 12;
const LAST = 316;
/** Widths of what stands in the line and of what hangs from it. */
const SERIES = 84;
const SHUNT = 84;
const END = 26;

/** Something that takes a stretch of the main line. */
interface Unit {
  readonly width: number;
  readonly below: number;
  /** Node of the line where it ends. */
  readonly leaves: string;
  readonly draw: (draft: Draft, x: number) => void;
}

/** A supply from its winding to its last node: as many panels as it takes. */
export function supply(circuit: Netlist, taste: Taste): Drawing {
  const rows: Unit[][] = [[]];
  let used = HEAD;
  for (const unit of chain(circuit)) {
    if (used + unit.width > LAST) {
      rows.push([]);
      used = START;
    }
    rows.at(-1)?.push(unit);
    used += unit.width;
  }
  const joins: Join[] = [];
  let node = circuit.parts.find(({ role }) => role === 'rectifier')?.nodes.at(-1) ?? '';
  const panels = rows.map((row, index): Panel => {
    const draft = new Draft(circuit, taste);
    let x = HEAD;
    let below = 0;
    if (index === 0) below = head(draft, LINE) - LINE;
    else {
      x = START;
      joins.push({ letter: String.fromCharCode(64 + index), node, y: LINE });
      draft.wire(node, 0, LINE, START, LINE);
    }
    for (const unit of row) {
      unit.draw(draft, x);
      x += unit.width;
      node = unit.leaves;
    }
    if (index + 1 < rows.length) draft.wire(node, x, LINE, 320, LINE);
    return draft.panel(index === 0 ? 20 : LINE - 68, LINE + Math.max(below, ...row.map((unit) => unit.below)));
  });
  return { panels, joins };
}

const SECTION = /^(?:sections|loads)\[(\d+)\]/;

function chain(circuit: Netlist): readonly Unit[] {
  const units: Unit[] = [];
  const { parts } = circuit;
  const doubled = parts.filter(({ role }) => role === 'doubler_capacitor');
  const along = parts.filter(({ role }) => /^(filter|load|bleeder|regulator)/.test(role));
  const place = ({ field }: CircuitPart): number => Number(SECTION.exec(field)?.[1] ?? 99);
  let node = parts.find(({ role }) => role === 'rectifier')?.nodes.at(-1) ?? '';
  if (doubled.length === 2) units.push(stacked(doubled, node));
  const sorted = [...along].sort((a, b) => place(a) - place(b));
  let tagged = '';
  for (const part of sorted) {
    const inLine = part.role === 'filter_choke' || part.role === 'filter_resistor';
    if (inLine) {
      units.push(series(part));
      node = part.nodes[1] ?? node;
      continue;
    }
    units.push(hung(part, node, part.role === 'filter_capacitor' && tagged !== node));
    if (part.role === 'filter_capacitor') tagged = node;
  }
  units.push(end(node));
  return units;
}

function series(part: CircuitPart): Unit {
  return {
    width: SERIES, below: 28, leaves: part.nodes[1] ?? '',
    draw: (draft, x) => {
      const middle = x + SERIES / 2;
      draft.run(part, '', { x, y: LINE }, { x: x + SERIES, y: LINE }, { x: middle, y: LINE }, {
        label: label(middle, LINE + 24, 'middle', 'over', 76),
        touch: [area(middle - 40, LINE - 16, middle + 40, LINE + 46)],
      });
    },
  };
}

function hung(part: CircuitPart, node: string, tagged: boolean): Unit {
  return {
    width: SHUNT, below: 112, leaves: node,
    draw: (draft, x) => {
      draft.wire(node, x, LINE, x + SHUNT, LINE);
      const at = x + 22;
      draft.hang(part, node, at, LINE, LINE + 36, LINE + 72, {
        label: label(at + (part.kind === 'regulator' ? 24 : 16), LINE + 38, 'start', 'over', part.kind === 'regulator' ? 36 : 46),
        touch: [area(at - 21, LINE + 12, at + 62, LINE + 62)],
      });
      if (tagged) draft.tag(node, at + 7, LINE - 5, 'above', x === HEAD ? 62 : 74);
    },
  };
}

/** A doubler's two capacitors, one on the other, with the winding's other end between them. */
function stacked(pair: readonly CircuitPart[], node: string): Unit {
  return {
    width: SHUNT, below: 176, leaves: node,
    draw: (draft, x) => {
      draft.wire(node, x, LINE, x + SHUNT, LINE);
      const at = x + 22;
      const half = LINE + 72;
      draft.wire('middle', x, half, at, half);
      const [upper, lower] = pair;
      const around = (middle: number) => ({
        label: label(at + 16, middle + 2, 'start', 'over', 46),
        touch: [area(at - 21, middle - 24, at + 62, middle + 26)],
      });
      draft.run(upper, node, { x: at, y: LINE }, { x: at, y: half }, { x: at, y: LINE + 36 }, around(LINE + 36));
      draft.hang(lower, 'middle', at, half, half + 36, half + 72, around(half + 36));
      draft.tag(node, at + 7, LINE - 5, 'above', 62);
    },
  };
}

function end(node: string): Unit {
  return {
    width: END, below: 28, leaves: node,
    draw: (draft, x) => {
      draft.wire(node, x, LINE, x + END - 8, LINE);
      draft.rings.push({ node, at: { x: x + END - 8, y: LINE } });
    },
  };
}
