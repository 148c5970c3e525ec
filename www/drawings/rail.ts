import { area, Draft, label, type Taste } from './draft.js';
import type { CircuitPart, Drawing, Netlist } from './kinds.js';
import { inPanels, loaded, series, standing, type Unit } from './ladder.js';

/** Width of the load, so that the usual rail is one panel. */
const LOAD = 88;

/** A supply, its dropper, and what stands on the rail. */
export function rail(circuit: Netlist, taste: Taste): Drawing {
  const draft = new Draft(circuit, taste);
  const part = (reference: string, unit: (found: CircuitPart) => Unit): Unit[] => {
    const found = draft.find(reference);
    return found === undefined ? [] : [unit(found)];
  };
  const stands = (found: CircuitPart): Unit => standing([found], 'output');
  return inPanels(circuit, taste, 'supply', [
    ...part('B+', supply), ...part('R1', series), ...part('V1', stands), ...part('C1', stands),
    ...part('RL', (found) => loaded(found, 'output', LOAD)),
  ]);
}

function supply(found: CircuitPart): Unit {
  const width = 52;
  return {
    width, above: 56, below: 48, leaves: 'supply',
    draw: (draft, x, y) => {
      const ring = x + 6;
      draft.wire('supply', ring, y, x + width, y);
      draft.put(found, draft.form(found), ring, y, 0, {
        label: label(x - 8, y - 36, 'start', 'over', 56), touch: [area(x - 14, y - 57, x + width - 1, y + 10)],
      });
      draft.bolt = { x: x + 22, y: y + 34 };
    },
  };
}
