import { area, Draft, label, type Taste } from './draft.js';
import type { CircuitPart, Drawing, Netlist } from './kinds.js';
import { inPanels, series, type Unit } from './ladder.js';

/** A winding, what is in line, and the heaters: side by side, or in a string with the first next to ground. */
export function heater(circuit: Netlist, taste: Taste): Drawing {
  const draft = new Draft(circuit, taste);
  const winding = draft.find('T1');
  const line = ['RW', 'RL', 'R1'].flatMap((reference) => draft.find(reference) ?? []);
  const heaters = circuit.parts.filter(({ role }) => role === 'heater');
  const inString = heaters.some(({ nodes }, index) => index > 0 && nodes[1] !== 'ground');
  const top = heaters.at(-1)?.nodes[0] ?? 'winding';
  const units: Unit[] = [...(winding === undefined ? [] : [fed(winding)]), ...line.map(series)];
  if (inString) units.push(...heaters.slice(1).reverse().map(series));
  const hung = inString ? heaters.slice(0, 1) : heaters;
  units.push(...hung.map((each, index) => hanging(each, each.nodes[0] ?? top, index + 1 === hung.length)));
  return inPanels(circuit, taste, 'winding', units);
}

function fed(part: CircuitPart): Unit {
  const width = 62;
  return {
    width, above: 40, below: 128, leaves: 'winding',
    draw: (draft, x, y) => {
      const column = x + 14;
      draft.wire('winding', x + width, y, column, y, column, y + 16);
      draft.put(part, draft.form(part), column, y + 36, 90, {
        label: label(x - 8, y + 96, 'start', 'over', 64), touch: [area(x - 14, y + 14, x + 44, y + 118)],
      });
      draft.wire('ground', column, y + 56, column, y + 64);
      draft.ground(column, y + 64);
      draft.bolt = { x: x + 52, y: y - 12 };
    },
  };
}

/** A heater from the wire to ground, its name below it. */
function hanging(part: CircuitPart, node: string, ends: boolean): Unit {
  const width = 78;
  return {
    width, above: 36, below: 128, leaves: node,
    draw: (draft, x, y) => {
      const column = x + width / 2;
      draft.wire(node, x, y, ends ? column : x + width, y);
      draft.hang(part, node, column, y, y + 32, y + 64, {
        label: label(column, y + 96, 'middle', 'over', width - 6), touch: [area(x + 1, y + 8, x + width - 1, y + 118)],
      });
    },
  };
}
