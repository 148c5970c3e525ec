/** The types of www/words that the state is made of, in one place. */
export type {
  BareCalculator, BareCaution, BareProblem, BareReading as Reading, CalculatorWords, Circuit, Face, Figures, PartRow, Row,
  Situation, Value, Way,
} from '../../words/index.js';

/** A tube in its socket, seen from below. */
export interface Tube {
  readonly reference: string;
  readonly type?: string;
  readonly base?: string;
  readonly pins?: readonly { readonly pin: string; readonly electrode: string; readonly node: string | null }[];
}
