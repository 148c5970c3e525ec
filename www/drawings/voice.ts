import { amplifier, type Names } from './amplifier.js';
import { bank, couplings, pair, single } from './coupling.js';
import { Draft, EDGE, type Taste } from './draft.js';
import type { Drawing, Join, Netlist, Panel } from './kinds.js';
import { levelOnly, twoKnob } from './tone.js';

const NAMES: Names = { source: 'Mic', node: 'mic', ohms: 'R9', farads: 'C14', decoupling: 'R7' };

/** The microphone stage: one panel to the switch, one after it, and one for the switch where it has more than two ways. */
export function voice(circuit: Netlist, taste: Taste): Drawing {
  const first = new Draft(circuit, taste);
  const ways = couplings(first).length;
  const plate = amplifier(first, NAMES, ways > 2 ? 84 : 42);
  const panels: Panel[] = [];
  const joins: Join[] = [];
  let entry = plate.y;
  if (ways === 2) pair(first, plate);
  else if (ways === 1) single(first, plate, 'a');
  else first.wire('plate', plate.x, plate.y, EDGE, plate.y);
  panels.push(first.panel(0, plate.bottom));
  if (ways > 2) {
    const switches = new Draft(circuit, taste);
    const laid = bank(switches, entry);
    panels.push(switches.panel(laid.top, laid.bottom));
    joins.push({ letter: 'A', node: 'plate', y: entry });
    entry = laid.exit;
  }
  joins.push({ letter: ways > 2 ? 'B' : 'A', node: 'a', y: entry });
  const last = new Draft(circuit, taste);
  const laid = last.find('Bass') === undefined ? levelOnly(last, entry) : twoKnob(last, entry);
  panels.push(last.panel(laid.top, laid.bottom));
  return { panels, joins };
}
