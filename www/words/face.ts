import type { Situation } from './kinds.js';

/** One row of an answer table. */
export interface FaceRow {
  readonly answer: string;
  /** Where the usual label does not do: "Out, from 30 mV". */
  readonly label?: (situation: Situation) => string;
  /** The first column says nothing, since the others are measured against it. */
  readonly againstFirst?: true;
}

/** One table of answers, or of one column for each position of the switch. */
export interface FaceTable {
  readonly heading: string;
  /** A note under the heading. */
  readonly note?: string;
  /** The input list that has a column for each item; the answers are then lists as long. */
  readonly columns?: string;
  readonly rows: readonly FaceRow[];
}

/** A tag in the drawing: an answer standing at a node. */
export interface FaceTag {
  readonly node: string;
  readonly answer: string;
  /** The answer is a list, and the tag shows the entry of the position switched in. */
  readonly each?: true;
  /** A second line under the figure: another answer, and the words round it. */
  readonly second?: { readonly answer: string; readonly words: (figure: string) => string };
}

/** A plot, in the order of the page. */
export interface FacePicture {
  readonly curve: string;
  /** Hatched bands along the axis. */
  readonly bands?: readonly (readonly [from: number, to: number])[];
  /** A line for each item of this input list: the one switched in is the live one. */
  readonly lines?: string;
  /** The last line is the live one. */
  readonly live?: 'last';
  /** A mark of the curve from which on the ground is forbidden. */
  readonly limit?: string;
  /** Where the cursor stands before it is moved. */
  readonly cursor?: number;
  /** How far the axis goes, in its unit, where the curve goes further than is of use. */
  readonly span?: readonly [from: number, to: number];
}

/** A value handed on to another calculator with one press. */
export interface FaceHand {
  /** The answer that is handed on: no button where it is absent; one for each different entry where it is a list. */
  readonly answer: string;
  readonly unit: string;
  /** What it is called on the button; entries of a list are called L1, L2 … */
  readonly name: string;
  /** The calculator that takes it, and the input that it becomes there. */
  readonly to: string;
  readonly as: string;
  /** Inputs of the other and what they take here, an input or an answer. */
  readonly along: Readonly<Record<string, string>>;
  /** Inputs of the other that are always the same. */
  readonly fixed: Readonly<Record<string, readonly never[]>>;
}

/** What a calculator shows where: the whole of what a page needs to know about one in particular. */
export interface Face {
  /** The input list whose items are the positions of the one switch, if there is one. */
  readonly switch?: string;
  /** A clip of speech can be heard through it. */
  readonly listen?: true;
  /** The answer that stands beside the calculator's name on the strip, an entry for each position where `each` is set. */
  readonly lug: { readonly answer: string; readonly each?: true };
  readonly tables: readonly FaceTable[];
  readonly tags: readonly FaceTag[];
  readonly pictures: readonly FacePicture[];
  readonly hands?: readonly FaceHand[];
  /** The answer nearest to a part, by its field's path; it stands beside the folded lead while the field is open. */
  readonly near: Readonly<Record<string, string>>;
  /** Fields that open together with a part's own: a pot's resistance with its knob. */
  readonly beside: Readonly<Record<string, readonly string[]>>;
}
