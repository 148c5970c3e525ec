import { amplifier, type Names } from './amplifier.js';
import { single } from './coupling.js';
import { Draft, type Taste } from './draft.js';
import type { Drawing, Netlist } from './kinds.js';
import { output } from './output.js';

const NAMES: Names = { source: 'Vin', node: 'source', ohms: 'R6', farads: '', decoupling: 'R4' };

/** One triode between its source and its load: the amplifier, and what it feeds. */
export function stage(circuit: Netlist, taste: Taste): Drawing {
  const first = new Draft(circuit, taste);
  const plate = amplifier(first, NAMES, 42);
  single(first, plate, 'output');
  const last = new Draft(circuit, taste);
  const bottom = output(last, 'R5', 'C4', 0, plate.y, [64, 164]);
  return {
    panels: [first.panel(0, plate.bottom), last.panel(plate.y - 44, bottom)],
    joins: [{ letter: 'A', node: 'output', y: plate.y }],
  };
}
