import type { Measure } from './measure.js';
import type { TagText } from './tag.js';
import type { Placed } from './kinds.js';

/** What a drawing shows beside the circuit itself. */
export interface State {
  /** Field path to the text as it was typed. */
  readonly texts: ReadonlyMap<string, string>;
  /** Node to its answer. */
  readonly tags: ReadonlyMap<string, TagText>;
  /** Field path to where a linked value comes from: "from supply". */
  readonly linked: ReadonlyMap<string, string>;
  /** Reference to what the part is called aloud. */
  readonly labels: ReadonlyMap<string, string>;
  readonly open: string | null;
  readonly refused: ReadonlySet<string>;
  readonly stale: boolean;
  /** Nodes with more than 60 V to ground. */
  readonly live: ReadonlySet<string>;
  readonly measure: Measure;
  /** What a part's figure looks like where nothing was typed. */
  readonly figure: (part: Placed) => string;
  readonly touch: (part: Placed) => void;
  /** A node's answer was touched. */
  readonly probe: (node: string) => void;
  readonly danger: () => void;
  /** The bolt's name aloud; empty where nothing is live. */
  readonly dangerName: string;
}

/** What stands at a part: its text as typed, else its figure; also of a coil or capacitor that is worked out and not typed. */
export function textOf(part: Placed, state: State): string {
  // A part that no one typed is an answer, and stands there as one.
  if (part.field === '') return ['resistor', 'capacitor', 'coil'].includes(part.kind) ? state.figure(part) : '';
  return state.texts.get(part.field) ?? state.texts.get(part.reference) ?? state.figure(part);
}

/** The line under a value: where it comes from, or a knob's resistance. */
export function noteOf(part: Placed, state: State): string {
  const from = state.linked.get(part.field);
  if (from !== undefined) return from;
  return part.kind === 'potentiometer' ? (state.texts.get(`${part.field}_ohms`) ?? '') : '';
}

/** Whether this part's field, or one that opens with it, is the open or a refused one. */
export function fieldsOf(part: Placed): readonly string[] {
  return part.kind === 'potentiometer' ? [part.field, `${part.field}_ohms`] : [part.field];
}
