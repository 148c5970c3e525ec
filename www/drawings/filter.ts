import { Draft, type Taste } from './draft.js';
import type { CircuitPart, Drawing, Netlist } from './kinds.js';
import { beside, inPanels, loaded, series, source, standing, type Unit } from './ladder.js';

/** A ladder from its source to its load, generated from its branches. */
export function filter(circuit: Netlist, taste: Taste): Drawing {
  const draft = new Draft(circuit, taste);
  return inPanels(circuit, taste, draft.find('Source')?.nodes[0] ?? 'source', ladder(draft));
}

function ladder(draft: Draft): readonly Unit[] {
  const units: Unit[] = [];
  const { parts } = draft.circuit;
  const emf = draft.find('Source');
  let node = emf?.nodes[0] ?? 'source';
  if (emf !== undefined) units.push(source(emf));
  const inner = draft.find('Rs');
  if (inner !== undefined) {
    units.push(series(inner));
    node = inner.nodes[1] ?? node;
  }
  for (const branch of branches(parts)) {
    const grounded = branch.at(-1)?.nodes[1] === 'ground';
    const apart = branch.length > 1 && branch.every((part) => part.nodes.join() === branch[0]?.nodes.join());
    if (grounded) {
      if (apart) units.push(...branch.map((part) => standing([part], node)));
      else units.push(standing(branch, node));
    } else {
      if (apart) units.push(beside(branch));
      else units.push(...branch.map(series));
      node = branch.at(-1)?.nodes[1] ?? node;
    }
  }
  const load = draft.find('RL');
  if (load !== undefined) units.push(loaded(load, node));
  return units;
}

function branches(parts: readonly CircuitPart[]): readonly (readonly CircuitPart[])[] {
  const found = new Map<string, CircuitPart[]>();
  for (const part of parts) {
    const path = /^branches\[\d+\]/.exec(part.field)?.[0];
    if (path !== undefined) found.set(path, [...(found.get(path) ?? []), part]);
  }
  return [...found.values()];
}
