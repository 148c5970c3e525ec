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
  const fields = [...new Set(problems.map((problem) => heldAt(problem.field, good)).filter((field) => field !== ''))];
  return fields.map((field) => {
    const held = good === null ? undefined : valueAt(good, field);
    return { reference: calledBy(words, circuit, field, way), value: typeof held === 'string' ? held : '' };
  });
}

/** A field that the good inputs did not have yet is told by the one it lies in, if that was a text: an own tube's mu by the tube. */
function heldAt(field: string, good: Figures | null): string {
  const outer = field.slice(0, Math.max(0, field.lastIndexOf('.')));
  return good !== null && outer !== '' && valueAt(good, field) === undefined && typeof valueAt(good, outer) === 'string' ? outer : field;
}
