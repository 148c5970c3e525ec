import { labelOf } from '../../words/index.js';
import { lowered } from '../../words/plain.js';
import type { CalculatorWords, Circuit, Way } from './from-words.js';
import type { BareProblem, Figures } from './kinds.js';
import { valueAt } from './paths.js';

/** What greyed answers wait for: a part or a field, and the text that they still stand for. */
export interface Waiting {
  readonly reference: string;
  readonly value: string;
}

/** How a field is called beside the drawing: its part's reference, else its label. */
export function calledBy(
  words: CalculatorWords | undefined, circuit: Circuit | null | undefined, path: string, way: Way,
): string {
  const part = circuit?.parts.find((each) => each.field === path);
  return part?.reference ?? lowered(labelOf(words, path, {}, way));
}

/** The fields that the last good answers wait for, each once, with the text that those answers are for. */
export function waitingFor(
  words: CalculatorWords | undefined,
  circuit: Circuit | null | undefined,
  problems: readonly BareProblem[],
  good: Figures | null,
  way: Way,
): readonly Waiting[] {
  const fields = [...new Set(problems.map((problem) => problem.field).filter((field) => field !== ''))];
  return fields.map((field) => {
    const held = good === null ? undefined : valueAt(good, field);
    return { reference: calledBy(words, circuit, field, way), value: typeof held === 'string' ? held : '' };
  });
}
