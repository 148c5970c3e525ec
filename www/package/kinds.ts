import type { Answer, BareCalculator, BareCaution, BareOutcome as Told, BareProblem, BareReading, Dressed, Figures, Row, Value } from '../words/index.js';

export type { Answer, BareCalculator, BareProblem, BareReading, Dressed, Figures, Row, Value };

/** One axis of a curve. */
export interface Axis {
  readonly unit: string;
  readonly scale: 'log' | 'linear';
}

/** One line of a curve. */
export interface Line {
  readonly label: string;
  readonly figure?: number | null;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** Lines over one pair of axes. */
export interface Curve<A extends Axis = Axis> {
  readonly key: string;
  readonly x: A;
  readonly y: A;
  readonly lines: readonly Line[];
  readonly marks: readonly { readonly label: string; readonly x: number; readonly y: number }[];
}

/** What a meter should read at one point. */
export interface TestPoint {
  readonly name: string;
  readonly pin: string | null;
  readonly unit: string;
  readonly nominal: number;
  readonly least: number;
  readonly most: number;
  readonly usual_least: number;
  readonly usual_most: number;
}

/** One join, in pins and terminals. */
export interface WiringStep {
  readonly from: string;
  readonly to: string;
  readonly part: string | null;
  readonly step: number;
}

/** What the engine gives, in codes and figures. */
export interface BareOutcome extends Told {
  readonly curves?: readonly Curve[];
  readonly test_points?: readonly TestPoint[];
  readonly wiring?: readonly WiringStep[];
}

/** A problem with its sentence. */
export type Problem = BareProblem & { readonly text: string };

/** What `work` can be asked for. */
export type Want = 'answers' | 'cautions' | 'curves' | 'parts' | 'test_points' | 'wiring' | 'circuit';

/** A caution with its sentence. */
export type Caution = BareCaution & { readonly text: string };

/** A curve with its title and the names of its axes. */
export type TitledCurve = Curve<Axis & { readonly label: string }> & { readonly title: string };

/** What `work` gives: of each only what was asked for. */
export interface Outcome extends Omit<BareOutcome, 'cautions' | 'curves'> {
  readonly cautions?: readonly Caution[];
  readonly curves?: readonly TitledCurve[];
}

/** What a text was read as. */
export interface Reading {
  readonly value: number;
  /** As a fraction, where one was written. */
  readonly tolerance?: number;
  /** The echo to check it by. */
  readonly reading: string;
}

/** Sound: samples of any scale, so many a second. */
export interface Clip {
  readonly samples: Float32Array | readonly number[];
  readonly rate: number;
}

/** How a clip is sent through a circuit. */
export interface RenderHow {
  /** The position of the switch, from 1. */
  readonly position?: number;
  /** How much of the clip is taken: 20 at most, and if left out. */
  readonly seconds?: number;
  /** The tube as a straight line and no grid current: five times as quick, for a first look. */
  readonly linear?: boolean;
}

/** A clip at the load. */
export interface Rendered {
  /** Volts at the load beyond its dc point. */
  readonly samples: Float32Array;
  /** Samples a second: 48000. */
  readonly rate: number;
  readonly peak_volts: number;
  /** Whether a grid reached its cathode's volts, where its current begins to bend the wave. */
  readonly grid_current: boolean;
  /** As the ear weighs it (A), dB against 1 V rms. */
  readonly loudness_db: number;
  /** One-third octaves, and the level in each, dB against 1 V rms. */
  readonly bands_hertz: Float64Array;
  readonly bands_db: Float64Array;
}
