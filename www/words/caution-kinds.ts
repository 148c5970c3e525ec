import type { Hazard } from './danger.js';
import type { BareCaution, Figures, Severity } from './kinds.js';
import type { Way } from './way.js';

/** A figure against its rating, for the gauge in the box. */
export interface Gauge {
  readonly value: number;
  readonly rating: number;
  readonly unit: string;
}

/** A caution for people. */
export interface CautionWords {
  readonly severity: Severity;
  /** With the kind in words: "Danger: 263 V at B+". */
  readonly heading: string;
  readonly text: string;
  readonly gauge?: Gauge;
  /** For a danger: what has to be done before a hand goes near. */
  readonly hazard: Hazard;
}

/** What a caution's text is made from. */
export interface CautionContext {
  readonly figures: Figures;
  readonly about: BareCaution['about'];
  /** What was typed or is linked. */
  readonly inputs: Figures;
  /** A figure of the caution with its unit; a dash where it is missing. */
  readonly f: (name: string, unit: string, digits?: number) => string;
  readonly way: Way;
}

/** What one code says. */
export interface CautionText {
  readonly heading: string;
  readonly text: string;
  /** The figure and its rating by name, with their unit. */
  readonly gauge?: readonly [value: string, rating: string, unit: string];
  /** Stored charge where not told. */
  readonly hazard?: Hazard;
}

/** The maker of one code's text. */
export type CautionMaker = (context: CautionContext) => CautionText;
