import type { Figures } from '../words/kinds.js';
import { coil } from './coil.js';
import type { Taste } from './draft.js';
import { filter } from './filter.js';
import { heater } from './heater.js';
import type { Drawing, Netlist } from './kinds.js';
import { lowpass } from './lowpass.js';
import { marking } from './marking.js';
import { rail } from './rail.js';
import { stage } from './stage.js';
import { supply } from './supply.js';
import { tank } from './tank.js';
import { transformer } from './transformer.js';
import { sheet } from './tube.js';
import { tuning } from './tuning.js';
import { voice } from './voice.js';

/** What the faces without a circuit are drawn from. */
export interface Given {
  readonly texts: ReadonlyMap<string, string>;
  readonly answers: Figures;
}

const CIRCUITS: Readonly<Record<string, (circuit: Netlist, taste: Taste) => Drawing>> = {
  filter, heater, lowpass, rail, stage, supply, tank, tuning, voice,
};
const FACES: Readonly<Record<string, (given: Given) => Drawing>> = { coil, marking, transformer, tube: sheet };
const NOTHING: Given = { texts: new Map(), answers: {} };

/** The drawing of a calculator: from the netlist of its answers, or, without a circuit, from what was typed and answered. */
export function draw(calculator: string, circuit: Netlist | null, taste: Taste = { boxes: false }, given: Given = NOTHING): Drawing | null {
  const face = Object.hasOwn(FACES, calculator) ? FACES[calculator] : undefined;
  if (face !== undefined) return face(given);
  const layout = Object.hasOwn(CIRCUITS, calculator) ? CIRCUITS[calculator] : undefined;
  return layout === undefined || circuit === null ? null : layout(circuit, taste);
}
