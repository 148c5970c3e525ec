import { on, same, stretches } from './geometry.js';
import type { Drawing, Netlist, Placed, Point, Wire } from './kinds.js';

/** A stretch of wire in one panel. */
interface Run {
  readonly panel: number;
  readonly node: string;
  readonly points: readonly Point[];
}

/**
 * Where drawing and netlist differ, a sentence each; nothing where they agree.
 *
 * Every part of the netlist is drawn once and as its kind, nothing else is drawn; each terminal lies on a wire of the
 * node that the netlist says; wires of different nodes nowhere touch; and all wire of a node hangs together, through
 * grounds, rings of supplies and the joins between panels.
 */
export function held(drawing: Drawing, circuit: Netlist): string[] {
  const found: string[] = [];
  const runs = drawing.panels.flatMap((panel, index) => panel.wires.map((wire) => ({ panel: index, ...wire })));
  const parts = drawing.panels.flatMap((panel, index) => panel.parts.map((part) => ({ panel: index, part })));
  for (const part of circuit.parts) {
    const drawn = parts.filter((each) => each.part.reference === part.reference);
    if (drawn.length !== 1) found.push(`${part.reference} is drawn ${drawn.length} times.`);
    for (const each of drawn) {
      if (each.part.kind !== part.kind) found.push(`${part.reference} is drawn as a ${each.part.kind}, not a ${part.kind}.`);
      found.push(...joined(each.part, each.panel, part.nodes, runs, drawing));
    }
  }
  for (const { part } of parts) {
    if (!circuit.parts.some(({ reference }) => reference === part.reference)) found.push(`${part.reference} is not in the netlist.`);
  }
  const names = new Set(circuit.nodes.map(({ name }) => name).concat(circuit.parts.flatMap(({ nodes }) => nodes)));
  for (const run of runs) if (!names.has(run.node)) found.push(`A wire is called ${run.node}; the netlist has no such node.`);
  return [...found, ...touching(runs), ...grounded(drawing, runs), ...loose(drawing, runs, parts)];
}

function nodesAt(point: Point, panel: number, runs: readonly Run[]): readonly string[] {
  const here = runs.filter((run) => run.panel === panel && stretches(run.points).some(([a, b]) => on(point, a, b)));
  return [...new Set(here.map(({ node }) => node))];
}

function joined(part: Placed, panel: number, nodes: readonly string[], runs: readonly Run[], drawing: Drawing): string[] {
  const found: string[] = [];
  if (part.terminals.length !== nodes.length) {
    found.push(`${part.reference} is drawn with ${part.terminals.length} terminals; the netlist has ${nodes.length}.`);
  }
  nodes.forEach((node, index) => {
    const terminal = part.terminals[index];
    if (terminal === undefined) return;
    const here = typeof terminal === 'string' ? [terminal] : nodesAt(terminal, panel, runs);
    const grounded = typeof terminal === 'object' && (drawing.panels[panel]?.grounds ?? []).some((ground) => same(ground, terminal));
    const all = grounded && !here.includes('ground') ? [...here, 'ground'] : here;
    if (all.length !== 1 || all[0] !== node) {
      found.push(`${part.reference} terminal ${index + 1} is drawn on ${all.join(' and ') || 'nothing'}; the netlist says ${node}.`);
    }
  });
  return found;
}

function touching(runs: readonly Run[]): string[] {
  const found = new Set<string>();
  for (const run of runs) {
    for (const point of run.points) {
      const here = nodesAt(point, run.panel, runs);
      if (here.length > 1) found.add(`Wires of ${[...here].sort().join(' and ')} touch.`);
    }
    for (const other of runs) {
      if (other.node > run.node && other.panel === run.panel && cross(run, other)) {
        found.add(`Wires of ${run.node} and ${other.node} cross.`);
      }
    }
  }
  return [...found];
}

function cross(one: Wire, other: Wire): boolean {
  return stretches(one.points).some(([a, b]) => stretches(other.points).some(([c, d]) => {
    const side = (p: Point, q: Point, r: Point) => Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }));
}

function grounded(drawing: Drawing, runs: readonly Run[]): string[] {
  return drawing.panels.flatMap((panel, index) => [
    ...panel.grounds.map((at) => ({ at, node: 'ground', what: 'A ground' })),
    ...panel.rings.map(({ at, node }) => ({ at, node, what: 'A ring' })),
  ].flatMap(({ at, node, what }) => {
    const here = nodesAt(at, index, runs);
    return here.length === 1 && here[0] === node ? [] : [`${what} stands on ${here.join(' and ') || 'nothing'}, not on ${node}.`];
  }));
}

/** Nodes whose wire is in more than one piece, or whose join between panels has no wire at an edge. */
function loose(drawing: Drawing, runs: readonly Run[], parts: readonly { panel: number; part: Placed }[]): string[] {
  const found: string[] = [];
  drawing.joins.forEach((join, index) => {
    const out = nodesAt({ x: 320, y: join.y }, index, runs);
    const into = nodesAt({ x: 0, y: join.y }, index + 1, runs);
    if (out.join() !== join.node || into.join() !== join.node) found.push(`The join ${join.letter} does not carry ${join.node}.`);
  });
  for (const node of new Set(runs.map((run) => run.node))) {
    if (node === 'ground') continue;
    const pieces = runs.filter((run) => run.node === node);
    const seen = new Set<Run>(pieces.slice(0, 1));
    const meet = (one: Run, other: Run): boolean => {
      if (one.panel === other.panel) {
        const touches = (a: Run, b: Run) => a.points.some((point) => stretches(b.points).some(([p, q]) => on(point, p, q)));
        return touches(one, other) || touches(other, one);
      }
      return drawing.joins.some((join, index) => join.node === node && [one, other].every((run) =>
        (run.panel === index && run.points.some(({ x, y }) => x === 320 && y === join.y)) ||
        (run.panel === index + 1 && run.points.some(({ x, y }) => x === 0 && y === join.y))));
    };
    for (let grown = true; grown; ) {
      grown = false;
      for (const piece of pieces) {
        if (!seen.has(piece) && [...seen].some((one) => meet(one, piece))) {
          seen.add(piece);
          grown = true;
        }
      }
    }
    if (seen.size < pieces.length) found.push(`The wire of ${node} is in pieces.`);
  }
  for (const { panel, part } of parts) {
    for (const { panel: where, part: other } of parts) {
      if (panel === where && part.reference < other.reference && same(part.at, other.at)) {
        found.push(`${part.reference} and ${other.reference} stand on one another.`);
      }
    }
  }
  return found;
}
