import type {
  BareCalculator, BareCaution, BareProblem, Circuit, Figures, PartRow, Reading, Row, Tube, Value,
} from './from-words.js';
import type { Transport } from '../../engine/index.js';

/** A condition under which an input counts; its path is relative to the record that the input stands in. */
export interface Condition {
  readonly path: string;
  readonly is?: string;
  readonly is_not?: string;
  readonly given?: true;
}

/** A row of the catalogue's inputs, with everything that a form needs. */
export interface InputRow extends Row {
  readonly optional?: boolean;
  readonly group?: string;
  readonly scale?: 'log' | 'linear';
  readonly usual_least?: number;
  readonly usual_most?: number;
  readonly count_least?: number;
  readonly count_most?: number;
  readonly when?: readonly Condition[];
  readonly one_of?: string;
  readonly together?: string;
  readonly fields?: readonly InputRow[];
  readonly item?: InputRow;
  readonly either?: readonly InputRow[];
}

/** A row of the catalogue's answers. */
export interface AnswerRow {
  readonly key: string;
  readonly shape: string;
  readonly unit?: string;
  readonly count_of?: string;
  readonly optional?: boolean;
  readonly label: string;
  readonly help: string;
  readonly null_text?: string;
}

/** A calculator of the catalogue with its words. */
export interface Calculator {
  readonly id: string;
  readonly group: string;
  readonly title: string;
  readonly summary: string;
  readonly inputs: readonly InputRow[];
  readonly answers: readonly AnswerRow[];
}

/** One axis of a curve. */
export interface Axis {
  readonly unit: string;
  readonly scale: string;
}

/** One line of a curve. */
export interface CurveLine {
  readonly label: string;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** Lines over one pair of axes, as the engine gives them. */
export interface Curve {
  readonly key: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly lines: readonly CurveLine[];
  readonly marks: readonly { readonly label: string; readonly code?: string; readonly x: number; readonly y: number }[];
}

/** What to expect at a point with the meter in place. */
export interface TestPoint {
  readonly name: string;
  readonly pin?: string | null;
  readonly unit: string;
  readonly nominal: number;
  readonly least: number;
  readonly most: number;
  readonly usual_least: number;
  readonly usual_most: number;
}

/** One join. */
export interface WiringStep {
  readonly from: string;
  readonly to: string;
  readonly part?: string | null;
  readonly step: number;
}

/** What the page looks at of a netlist, with the sockets that its tubes stand in. */
export interface Netlist extends Circuit {
  readonly tubes?: readonly Tube[];
}

/** Everything that can be asked of a calculator. */
export interface Outcome {
  readonly answers?: Figures;
  readonly cautions?: readonly BareCaution[];
  readonly curves?: readonly Curve[];
  readonly parts?: readonly PartRow[];
  readonly test_points?: readonly TestPoint[];
  readonly wiring?: readonly WiringStep[];
  readonly circuit?: Netlist | null;
}

/** What of an outcome is asked for. */
export type Want = keyof Outcome;

/** The values one preferred step away. */
export interface Steps {
  readonly value: number;
  readonly lower: number | null;
  readonly higher: number | null;
}

/** What the page needs of the engine. A refusal is thrown as `{problems}`. */
export interface Engine {
  catalogue(): Promise<readonly BareCalculator[]>;
  work(id: string, inputs: Figures, want: readonly Want[]): Promise<Outcome>;
  read(text: string, unit: string): Promise<Reading>;
  steps(text: string, unit: string, series: string): Promise<Steps>;
  /** Where sound is worked, apart from the rest. */
  sound?(): Sounding;
}

/** Carries sound to an engine and back. */
export type Sounding = Transport;

/** A state kept to compare with. */
export interface Pin {
  readonly name: string;
  readonly inputs: Figures;
  readonly position: number;
}

/** One calculator in use. */
export interface Lug {
  readonly id: string;
  readonly calculator: string;
  /** What was typed, and only what differs from the calculator's own values. */
  readonly inputs: Figures;
  /** The position of the switch that is looked at, from 0. */
  readonly position: number;
  readonly pins: readonly Pin[];
  /** What a later or another page wrote and this one does not know. */
  readonly rest: Figures;
}

/** Everything that is kept. */
export interface Build {
  readonly name: string;
  readonly lugs: readonly Lug[];
  readonly rest: Figures;
}

/** Why a text stands as it is: read, or refused with what to do. */
export interface Refusal {
  readonly problem: BareProblem;
  readonly text: string;
}

export type { Value, Figures, BareProblem };
