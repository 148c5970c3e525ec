import type { Netlist } from './kinds.js';

/**
 * The netlist with its switch in another position than the one it was worked in. For dc the throws trade places: the
 * one that makes now stands at the switch's common, the other floats where this one did.
 */
export function switched(circuit: Netlist | null | undefined, position: number): Netlist | null {
  if (circuit === null || circuit === undefined) return null;
  const arm = circuit.parts.find((part) => part.kind === 'switch');
  if (arm === undefined || arm.value === position + 1) return circuit;
  const [common, ...throws] = arm.nodes;
  const [old, now] = [typeof arm.value === 'number' ? throws[arm.value - 1] : undefined, throws[position]];
  const volts = (name: string | undefined): number | null => circuit.nodes.find((node) => node.name === name)?.volts ?? null;
  const [floating, making] = [volts(now), volts(common)];
  return {
    ...circuit,
    parts: circuit.parts.map((part) => (part === arm ? { ...part, value: position + 1 } : part)),
    nodes: circuit.nodes.map((node) => (node.name === now ? { ...node, volts: making } : node.name === old ? { ...node, volts: floating } : node)),
  };
}
