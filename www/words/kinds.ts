import type { Face } from './face.js';
import type { Way } from './way.js';

/** Anything that crosses the door. */
export type Value = null | number | boolean | string | Float64Array | readonly Value[] | { readonly [key: string]: Value };

/** A record of such values. */
export type Figures = { readonly [key: string]: Value };

/** How bad a caution is. */
export type Severity = 'danger' | 'limit' | 'note';

/** One caution as the engine gives it. */
export interface BareCaution {
  readonly code: string;
  readonly severity: Severity;
  readonly about: string | null;
  readonly figures: Figures;
}

/** One problem as the engine gives it. */
export interface BareProblem {
  readonly field: string;
  readonly code: string;
  readonly least?: number;
  readonly most?: number;
  readonly about?: string;
  /** The node that a solver stopped at. */
  readonly node?: string;
  readonly mends?: readonly Mend[];
}

/** A text that would be read, and what it would be read as. */
export interface Mend {
  readonly text: string;
  readonly value: number;
}

/** One part of the netlist that the answers came from. */
export interface CircuitPart {
  readonly reference: string;
  readonly role: string;
  readonly kind: string;
  readonly field: string;
  readonly nodes: readonly string[];
  readonly value: Value;
}

/** The netlist that the answers came from. */
export interface Circuit {
  readonly nodes: readonly { readonly name: string; readonly volts: number | null }[];
  readonly parts: readonly CircuitPart[];
}

/** One row of the list of parts to buy. */
export interface PartRow {
  readonly reference: string;
  readonly kind: string;
  readonly role: string;
  readonly field: string;
  readonly value: Value;
  readonly tolerance: number | null;
  readonly watts: number | null;
  readonly volts: number | null;
  readonly amps: number | null;
  readonly gap?: number | null;
  readonly rule: string;
}

/** What of an outcome the words look at. */
export interface BareOutcome {
  readonly answers?: Figures;
  readonly cautions?: readonly BareCaution[];
  readonly parts?: readonly PartRow[];
  readonly circuit?: Circuit | null;
}

/** What a person sees of one field: an input, an answer, or a field inside one. */
export interface FieldWords {
  /** Its name, without a full stop. */
  readonly label: string;
  /** One or two sentences: what it is and what to put there. */
  readonly help: string;
  /** How a sentence calls it, with its article, where that is not "the" and the label: `B+`, `the Level knob`. */
  readonly phrase?: string;
  /** A prefix that its figures always carry, such as `m` for plate current; `''` for none. */
  readonly prefix?: string;
  /** Shown as a percentage although it is a fraction. */
  readonly percent?: true;
  /** Shown with its sign, also where that is plus. */
  readonly signed?: true;
}

/** The lead answer: its label, figure and unit apart, and one sentence. */
export interface Lead {
  readonly label: string;
  readonly figure: string;
  readonly unit: string;
  readonly sentence: string;
}

/** What a lead answer or an added sentence is made from. */
export interface Situation {
  /** By key: SI figures where they are known, else the text as typed. */
  readonly inputs: Figures;
  readonly outcome: BareOutcome;
  /** The switch position in use, from 0. */
  readonly position: number;
  readonly way: Way;
}

/** A curve's texts. */
export interface CurveWords {
  readonly title: string;
  readonly caption: string;
  readonly x: string;
  readonly y: string;
  /** Lines and marks that have a code for a name; any other name is the person's own. A figure tells like lines apart. */
  readonly lines?: Readonly<Record<string, string | ((figure: number, way: Way) => string)>>;
  /** Every line is a position of the switch, numbered by its figure. */
  readonly positions?: true;
}

/** "How this was worked". */
export interface HowWorked {
  readonly method: string;
  readonly holdsFor: string;
  readonly checkedAgainst: string;
  readonly source: string;
}

/** Every text of one calculator. */
export interface CalculatorWords {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  /** What stands on its page where scripts do not run. */
  readonly paragraph: string;
  readonly groups: Readonly<Record<string, string>>;
  /** By path with `[]` for an item of a list: `positions[].farads`, `tube.perveance`. */
  readonly inputs: Readonly<Record<string, FieldWords>>;
  /** By path: the choices' own words. */
  readonly choices: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly answers: Readonly<Record<string, FieldWords>>;
  readonly curves: Readonly<Record<string, CurveWords>>;
  readonly how: HowWorked;
  readonly face: Face;
  lead(situation: Situation): Lead;
  /** Sentences that stand under the answers: facts of the trade with the person's own numbers. */
  remarks?(situation: Situation): readonly string[];
}
