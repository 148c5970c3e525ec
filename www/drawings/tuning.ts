import { Draft, type Taste } from './draft.js';
import type { CircuitPart, Drawing, Netlist } from './kinds.js';
import { inPanels, series, standing, type Unit } from './ladder.js';

/** A tuned circuit: the coil, what stands beside it, and the variable capacitor at the end, behind one in series where it takes one. */
export function tuning(circuit: Netlist, taste: Taste): Drawing {
  const draft = new Draft(circuit, taste);
  const beside = ['L1', 'Cs', 'C2'].flatMap((reference) => draft.find(reference) ?? []);
  const [inLine, variable] = [draft.find('C3'), draft.find('C1')];
  const units: Unit[] = beside.map((part, index) => (index === 0 ? hot(part) : standing([part], 'tank')));
  if (inLine !== undefined) units.push(series(inLine));
  if (variable !== undefined) units.push(standing([variable], variable.nodes[0] ?? 'tank'));
  return inPanels(circuit, taste, 'tank', units);
}

/** The coil, with the place of the answer at its hot end. */
function hot(part: CircuitPart): Unit {
  const unit = standing([part], 'tank');
  return {
    ...unit,
    above: 40,
    draw: (draft, x, y) => {
      unit.draw(draft, x, y);
      draft.tag('tank', x + 24, y - 4, 'above', 100);
    },
  };
}
