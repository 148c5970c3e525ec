import { inputWords, typedText, writtenLike } from '../../words/index.js';
import type { CalculatorWords } from './from-words.js';
import type { InputRow, Steps } from './kinds.js';

/** How many steps cross the usual range of a value that is not spread by ratio. */
const ACROSS = 20;
const FALLBACK_SPAN = 20;

/** The series whose values are sold: resistors come in 24 a decade, capacitors and coils in 12. */
export function seriesOf(row: InputRow): string {
  return row.unit === 'F' || row.unit === 'H' ? 'E12' : 'E24';
}

/** Whether a value goes in preferred steps; else it goes in even ones. */
export function isPreferred(row: InputRow): boolean {
  return row.scale !== 'linear' && (row.least ?? 0) > 0;
}

/** The texts that ▼ and ▲ lead to; nothing where there is no further step. */
export interface StepTexts {
  readonly lower: string | null;
  readonly higher: string | null;
}

/** The even step of a value that is not spread by ratio: a round twentieth of where it usually lies. */
export function evenStep(row: InputRow): number {
  const least = row.usual_least ?? row.least ?? 0;
  const most = row.usual_most ?? row.most ?? least + FALLBACK_SPAN;
  const wanted = (most - least) / ACROSS;
  const power = 10 ** Math.floor(Math.log10(wanted));
  const round = [5, 2, 1].find((figure) => figure * power <= wanted * (1 + 1e-9)) ?? 1;
  return round * power;
}

/** The steps of a value by even ones, from its figure. */
export function evenSteps(row: InputRow, value: number): Steps {
  const step = evenStep(row);
  const [least, most] = [row.least ?? -Infinity, row.most ?? Infinity];
  // A value between two steps goes to the nearer one on that side, as on a dial.
  const at = value / step;
  const down = Math.ceil(at - 1e-6) - 1;
  const up = Math.floor(at + 1e-6) + 1;
  const round = (count: number): number => Number((count * step).toPrecision(12));
  return {
    value,
    lower: value > least ? Math.max(round(down), least) : null,
    higher: value < most ? Math.min(round(up), most) : null,
  };
}

/** The texts of steps, written the way the value was typed; a step out of range is none. */
export function stepTexts(words: CalculatorWords | undefined, row: InputRow, path: string, typed: string, steps: Steps): StepTexts {
  const percent = inputWords(words, path).percent === true;
  const inRange = (value: number): boolean => value >= (row.least ?? -Infinity) && value <= (row.most ?? Infinity);
  const text = (value: number | null): string | null => {
    if (value === null || !inRange(value)) return null;
    if (percent || value === 0 || steps.value === 0) return typedText(value, row.unit ?? '1', percent);
    return writtenLike(value, typed, steps.value, row.unit ?? '1');
  };
  return { lower: text(steps.lower), higher: text(steps.higher) };
}
