import { Draft, type Taste } from './draft.js';
import type { Drawing, Netlist } from './kinds.js';
import { inPanels, loaded, series, source, standing, type Unit } from './ladder.js';

/** A low-pass ladder: the transmitter, its parts in the order of the netlist, the antenna's side. */
export function lowpass(circuit: Netlist, taste: Taste): Drawing {
  const draft = new Draft(circuit, taste);
  let node = draft.find('Source')?.nodes[0] ?? 'source';
  const first = node;
  const units = circuit.parts.map((part): Unit => {
    if (part.reference === 'Source') return source(part);
    if (part.reference === 'RL') return loaded(part, node);
    if (part.nodes[1] === 'ground') return standing([part], node);
    node = part.nodes[1] ?? node;
    return series(part);
  });
  return inPanels(circuit, taste, first, units);
}
