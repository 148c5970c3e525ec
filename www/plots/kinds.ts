/** One axis as the engine tells it. */
export interface Axis {
  readonly label: string;
  readonly unit: string;
  readonly scale: string;
}

/** One line; `code` is what it is, where its label is a text for people. */
export interface Line {
  readonly label: string;
  readonly code?: string;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** A single point with a name. */
export interface Mark {
  readonly label: string;
  readonly x: number;
  readonly y: number;
}

/** Lines over one pair of axes. */
export interface Curve {
  readonly key: string;
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly lines: readonly Line[];
  readonly marks: readonly Mark[];
}

/** What a line does in its picture. */
export type Duty = 'current' | 'other' | 'family' | 'limit';

/** A stretch along the horizontal axis. */
export type Band = readonly [from: number, to: number];

/** The engine's name of a line: its code, or its label where there is none. */
export function codeOf(line: Line): string {
  return line.code ?? line.label;
}
