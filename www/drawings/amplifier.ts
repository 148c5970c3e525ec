import { area, Draft, EDGE, label } from './draft.js';
import type { Box, Netlist } from './kinds.js';
import { triode } from './symbols.js';

/** The column of the plate and tube, the grid's height, and the columns of what hangs on the grid's wire. */
const PLATE_X = 164;
const CATHODE_X = 152;
const GRID_LEAK_X = 108;
const SOURCE_X = 28;
/** Added below the supply where a decoupling resistor stands in its wire. */
const DECOUPLING = 72;
/** Added to the grid's legs where the source has a capacitor of its own. */
const OWN_CAPACITOR = 56;

/** Where the amplifier's plate wire is, for what follows it. */
export interface Plate {
  readonly y: number;
  readonly x: number;
  readonly bottom: number;
}

/** What the source of signal and the parts with a number of their own are called in a calculator. */
export interface Names {
  readonly source: string;
  readonly node: string;
  readonly ohms: string;
  readonly farads: string;
  readonly decoupling: string;
}

/**
 * One triode with everything from the supply and the source to its plate: drawn from the netlist `draft` holds, absent
 * parts closed up. `r3Room` is the width to the right of the plate resistor.
 */
export function amplifier(draft: Draft, names: Names, r3Room: number): Plate {
  const decoupler = draft.find(names.decoupling);
  const dy = decoupler === undefined ? 0 : DECOUPLING;
  const y = 104 + dy;
  supply(draft, decoupler === undefined ? 'supply' : 'decoupled', dy, r3Room, names);
  tube(draft, y);
  draft.tag('plate', PLATE_X - 5, y, 'left');
  const sourceFoot = source(draft, names, y + 56);
  const left = draft.find(names.farads) === undefined && draft.find('Bias') === undefined;
  const bottom = Math.max(cathode(draft, y, left), sourceFoot);
  return { x: PLATE_X, y, bottom };
}

function supply(draft: Draft, top: string, dy: number, r3Room: number, names: Names): void {
  const rail = draft.find('B+');
  if (rail !== undefined) {
    draft.put(rail, draft.form(rail), 112, 28, 0, {
      label: label(14, 28, 'start', 'row', 88),
      touch: [area(6, 4, 117, 44), area(6, 44, 90, 60)],
    });
  }
  draft.bolt = { x: 140, y: 24 };
  draft.wire('supply', 112, 28, PLATE_X, 28, PLATE_X, 40);
  const decoupler = draft.find(names.decoupling);
  if (decoupler !== undefined) {
    draft.run(decoupler, 'supply', { x: PLATE_X, y: 40 }, { x: PLATE_X, y: 104 }, { x: PLATE_X, y: 66 }, {
      label: label(PLATE_X + 13, 66, 'start', 'over', 110),
      touch: [area(PLATE_X - 14, 46, 290, 87)],
    });
    const smoothing = draft.find('C1');
    if (smoothing !== undefined) {
      draft.wire('decoupled', PLATE_X, 104, 64, 104, 64, 112);
      draft.hang(smoothing, 'decoupled', 64, 112, 128, 148, {
        label: label(80, 128, 'start', 'over', 64),
        touch: [area(46, 106, 146, 150)],
      });
    }
    draft.tag('decoupled', PLATE_X + 5, 104, 'right', 44);
  }
  const from = 40 + dy;
  if (dy > 0) draft.wire(top, PLATE_X, 104, PLATE_X, from);
  draft.run(draft.find('R3'), top, { x: PLATE_X, y: from }, { x: PLATE_X, y: 104 + dy }, { x: PLATE_X, y: 66 + dy }, {
    label: label(PLATE_X + 13, 66 + dy, 'start', 'over', r3Room),
    touch: [area(PLATE_X - 14, 45 + dy, PLATE_X + 13 + r3Room, 89 + dy)],
  });
}

function tube(draft: Draft, plate: number): void {
  const part = draft.find('V1');
  if (part === undefined) return;
  const y = plate + 56;
  const { twin, pins } = basing(draft.circuit);
  draft.wire('plate', PLATE_X, plate, PLATE_X, y - 14);
  draft.put(part, triode(twin, pins), PLATE_X, y, 0, {
    label: label(PLATE_X + 36, y + 23, 'start', 'row', 116),
    touch: [area(PLATE_X - 32, y - 32, PLATE_X + 34, y + 33), area(PLATE_X + 34, y + 8, EDGE - 2, y + 35)],
  }, twin ? `${part.reference}a` : part.reference);
}

function basing(circuit: Netlist): { twin: boolean; pins: { plate?: string; grid?: string; cathode?: string } } {
  const pins = circuit.tubes?.find(({ reference }) => reference === 'V1')?.pins ?? [];
  const found: { plate?: string; grid?: string; cathode?: string } = {};
  for (const name of ['plate', 'grid', 'cathode'] as const) {
    const pin = pins.find(({ electrode }) => electrode === `${name}_1` || electrode === name);
    if (pin !== undefined) found[name] = pin.pin;
  }
  return { twin: pins.some(({ electrode }) => electrode === 'plate_2'), pins: found };
}

/** What stands in the cathode; `left` where the resistor's label has room to its left, else it stands on the right. */
function cathode(draft: Draft, plate: number, left: boolean): number {
  const top = plate + 76;
  const y = plate + 106;
  const resistor = draft.find('R2');
  if (resistor === undefined) {
    draft.wire('ground', CATHODE_X, top, CATHODE_X, y);
    draft.ground(CATHODE_X, y);
    return y + 20;
  }
  const foot = y + 60;
  const x = left ? 216 : 232;
  draft.wire('cathode', CATHODE_X, top, CATHODE_X, y);
  draft.hang(resistor, 'cathode', CATHODE_X, y, y + 30, foot, left ? {
    label: label(CATHODE_X - 13, y + 35, 'end', 'over', 64),
    touch: [area(72, y + 13, CATHODE_X + 14, y + 57)],
  } : {
    label: label(CATHODE_X + 13, y + 34, 'start', 'over', 46),
    touch: [area(CATHODE_X - 14, y + 12, 212, y + 56)],
  });
  const bypass = draft.find('C2');
  if (bypass === undefined) {
    draft.tag('cathode', CATHODE_X + 24, y, 'right', 64, { x: CATHODE_X, y });
    return foot + 20;
  }
  draft.wire('cathode', CATHODE_X, y, x, y);
  draft.hang(bypass, 'cathode', x, y, y + 32, foot, {
    label: label(x + 16, y + 40, 'start', 'over', EDGE - 20 - x),
    touch: [area(x - 18, y + 14, EDGE - 2, y + 60)],
  });
  draft.tag('cathode', x + 5, y, 'right', 60);
  return foot + 20;
}

function source(draft: Draft, names: Names, grid: number): number {
  const own = draft.find(names.farads);
  const dy = own === undefined ? 0 : OWN_CAPACITOR;
  const foot = grid + 54 + dy;
  draft.wire('grid', GRID_LEAK_X, grid, PLATE_X - 19, grid);
  const leak = draft.find('R1');
  const bias = draft.find('Bias');
  const leakAt = { x: GRID_LEAK_X, y: grid + 26 + dy };
  const around = {
    label: label(GRID_LEAK_X - 12, leakAt.y + 3, 'end', 'over', 50),
    touch: [area(46, grid + 7 + dy, GRID_LEAK_X + 16, grid + 53 + dy)],
  };
  if (bias === undefined) {
    draft.hang(leak, 'grid', GRID_LEAK_X, grid, leakAt.y, foot, around);
  } else {
    const end = foot + 48;
    draft.run(leak, 'grid', { x: GRID_LEAK_X, y: grid }, { x: GRID_LEAK_X, y: end }, leakAt, around);
    draft.put(bias, draft.form(bias), GRID_LEAK_X, end, 0, {
      label: label(GRID_LEAK_X, end + 27, 'middle', 'over', 80),
      touch: [area(GRID_LEAK_X - 28, end - 8, GRID_LEAK_X + 28, end + 46)],
    });
  }
  const made = draft.find(names.source);
  if (made === undefined) return foot + 20;
  const middle = grid + 30 + dy;
  const symbol: Box = area(5, grid + 12 + dy, 45, foot + 8);
  draft.put(made, draft.form(made), SOURCE_X, middle, 0, {
    label: label(14, foot + 34, 'start', 'over', 56),
    touch: [symbol, area(5, foot + 8, 70, foot + 56)],
  });
  draft.wire('ground', SOURCE_X, middle + 14, SOURCE_X, foot);
  draft.ground(SOURCE_X, foot);
  const series = draft.find(names.ohms);
  const behind = own?.nodes[1] ?? made.nodes[0] ?? 'grid';
  if (own === undefined) {
    draft.wire(behind, SOURCE_X, middle - 14, SOURCE_X, grid);
  } else {
    draft.run(own, names.node, { x: SOURCE_X, y: middle - 14 }, { x: SOURCE_X, y: grid }, { x: SOURCE_X, y: grid + 36 }, {
      label: label(SOURCE_X + 16, grid + 37, 'start', 'over', 54),
      touch: [area(12, grid + 14, 99, grid + 58)],
    });
  }
  draft.run(series, 'grid', { x: SOURCE_X, y: grid }, { x: GRID_LEAK_X, y: grid }, { x: 68, y: grid }, {
    label: label(65, grid - 27, 'middle', 'over', 58),
    touch: [area(36, grid - 47, 96, grid + (own === undefined ? 5 : 8))],
  });
  return foot + (bias === undefined ? 56 : 104);
}
