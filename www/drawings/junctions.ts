import { on, same, stretches } from './geometry.js';
import type { Panel, Point, Wire } from './kinds.js';

/** Where three or more ends of one node meet: those places carry a dot. */
export function junctions(panel: Panel): readonly { readonly node: string; readonly at: Point }[] {
  const found: { node: string; at: Point }[] = [];
  for (const wire of panel.wires) {
    for (const at of wire.points) {
      if (found.some((dot) => dot.node === wire.node && same(dot.at, at))) continue;
      if (degree(at, wire.node, panel.wires) >= 3) found.push({ node: wire.node, at });
    }
  }
  return found;
}

function degree(point: Point, node: string, wires: readonly Wire[]): number {
  let count = 0;
  for (const wire of wires) {
    if (wire.node !== node) continue;
    for (const [a, b] of stretches(wire.points)) {
      if (!on(point, a, b) || same(a, b)) continue;
      count += same(point, a) || same(point, b) ? 1 : 2;
    }
  }
  return count;
}
