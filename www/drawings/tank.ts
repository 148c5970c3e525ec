import { area, label, type Taste } from './draft.js';
import type { CircuitPart, Drawing, Netlist } from './kinds.js';
import { column, inPanels, series, source, standing, type Unit } from './ladder.js';
import { coupled } from './symbols.js';

/** A tank from the tube to the antenna: its parts in the order of the netlist, those to ground standing, the rest in line. */
export function tank(circuit: Netlist, taste: Taste): Drawing {
  let node = 'plate';
  let tagged = false;
  const units = circuit.parts.flatMap((part): Unit[] => {
    if (part.reference === 'Tube') return [source(part)];
    if (part.kind === 'coupled') {
      node = part.nodes[2] ?? node;
      return [windings(part)];
    }
    if (part.reference === 'Ra') return [radiator(part, node, circuit.parts.every(({ reference }) => reference !== 'Xa'))];
    if (part.nodes[1] === 'ground') {
      const unit = standing([part], node);
      if (node !== 'plate' || tagged) return [unit];
      tagged = true;
      return [withTag(unit, node)];
    }
    const from = node;
    node = part.nodes[1] ?? node;
    const unit = series(part);
    return [part.reference === 'Xa' ? withTag(unit, from) : unit];
  });
  return inPanels(circuit, taste, 'plate', units);
}

/** The same unit with the place of its node's answer at its beginning. */
function withTag(unit: Unit, node: string): Unit {
  return {
    ...unit,
    above: Math.max(unit.above, 40),
    draw: (draft, x, y) => {
      unit.draw(draft, x, y);
      draft.tag(node, x + 4, y - 4, 'above', 84);
    },
  };
}

/** The tank coil with the link in its field: one standing on the tank's wire, one on the link's. */
function windings(part: CircuitPart): Unit {
  const [plate = '', , link = ''] = part.nodes;
  return {
    width: 96, above: 36, below: 92, leaves: link,
    draw: (draft, x, y) => {
      const [left, right, middle] = [x + 22, x + 46, y + 36];
      draft.wire(plate, x, y, left, y, left, middle - 20);
      draft.wire(link, right, middle - 20, right, y, x + 96, y);
      draft.put(part, coupled(), (left + right) / 2, middle, 0, {
        label: label(right + 12, middle + 2, 'start', 'over', 50),
        touch: [area(left - 8, middle - 26, right + 46, middle + 26)],
      });
      for (const foot of [left, right]) {
        draft.wire('ground', foot, middle + 20, foot, middle + 30);
        draft.ground(foot, middle + 30);
      }
    },
  };
}

/** The antenna's resistance, with the ring where the antenna is joined. */
function radiator(part: CircuitPart, node: string, tagged: boolean): Unit {
  return {
    width: 98, above: tagged ? 40 : 36, below: 84, leaves: node,
    draw: (draft, x, y) => {
      draft.wire(node, x, y, x + 20, y);
      draft.rings.push({ node, at: { x: x + 20, y } });
      column(draft, [part], x + 20, y);
      if (tagged) draft.tag(node, x + 24, y - 4, 'above', 84);
    },
  };
}
