import type { Taste } from './draft.js';
import { filter } from './filter.js';
import type { Drawing, Netlist } from './kinds.js';
import { stage } from './stage.js';
import { voice } from './voice.js';

const LAYOUTS: Readonly<Record<string, (circuit: Netlist, taste: Taste) => Drawing>> = { filter, stage, voice };

/** The schematic of a calculator from the netlist of its answers; none for a calculator without a circuit. */
export function draw(calculator: string, circuit: Netlist, taste: Taste = { boxes: false }): Drawing | null {
  const layout = Object.hasOwn(LAYOUTS, calculator) ? LAYOUTS[calculator] : undefined;
  return layout === undefined ? null : layout(circuit, taste);
}
