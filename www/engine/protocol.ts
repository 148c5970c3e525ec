import type { Source } from '../package/door.js';
import type { BareCalculator, BareOutcome, BareProblem, BareReading, Figures, Rendered } from '../package/kinds.js';

/** The values one preferred step away from a figure. */
export interface Steps {
  readonly value: number;
  readonly lower: number | null;
  readonly higher: number | null;
}

/** Every call of the engine, with what it gives. */
export interface Calls {
  catalogue: { args: []; gives: readonly BareCalculator[] };
  work: { args: [id: string, inputs: Figures, want: readonly string[]]; gives: BareOutcome };
  read: { args: [text: string, unit: string]; gives: BareReading };
  steps: { args: [text: string, unit: string, series: string]; gives: Steps };
  render: { args: [inputs: Figures, samples: Float32Array, rate: number, how: Figures]; gives: Rendered };
  mulaw: { args: [bytes: Uint8Array]; gives: Float32Array };
}

/** The name of a call. */
export type Name = keyof Calls;

/** A call on its way to a worker. */
export interface Asked {
  readonly number: number;
  readonly name: Name;
  readonly args: readonly unknown[];
}

/** What a worker is told before any call: the engine, compiled, or where it is. */
export interface Sent {
  readonly source: Source;
}

/** What comes back: what the call gives, what is wrong with its inputs, or that the engine is lost. */
export type Told =
  | { readonly number: number; readonly gives: unknown }
  | { readonly number: number; readonly problems: readonly BareProblem[] }
  | { readonly number: number; readonly lost: string };

/** What the engine refuses. */
export class Refused extends Error {
  readonly problems: readonly BareProblem[];

  constructor(problems: readonly BareProblem[]) {
    super('refused');
    this.problems = problems;
  }
}

/** The engine stopped; the next call has a new one. */
export class Lost extends Error {}

/** Carries calls to an engine. */
export interface Transport {
  /** Ends what is on its way; whoever waits is told that it is lost. */
  end?(why: string): void;
  call<N extends Name>(name: N, ...args: Calls[N]['args']): Promise<Calls[N]['gives']>;
}
