import { answerFigure, wordsOf } from '../../words/index.js';
import { oneAnswer } from './answer-tables.js';
import type { Desk } from './desk.js';
import type { Lug } from './kinds.js';

/** What is the matter with a lug, if anything. */
export type LugState = 'limit' | 'refused' | null;

/** The lead answer of a lug in brief, and what is the matter with it. */
export function lugLine(desk: Desk, lug: Lug): { readonly figure: string; readonly state: LugState } {
  const { outcome, problems } = desk.works.get(lug.id);
  const words = wordsOf(lug.calculator);
  const row = desk.calculator(lug.calculator)?.answers.find(({ key }) => key === words?.face.lug.answer);
  const over = outcome?.cautions?.some(({ severity }) => severity === 'limit') === true;
  const state = problems.length > 0 ? 'refused' : over ? 'limit' : null;
  if (words === undefined || row === undefined || outcome?.answers === undefined) return { figure: '', state };
  const { answer, each } = words.face.lug;
  const value = oneAnswer(outcome.answers, answer, each, lug.position);
  const { figure, unit } = answerFigure(words, answer, value, row.unit ?? '1', {}, desk.preferences);
  return { figure: unit === '' ? figure : `${figure}\u00a0${unit}`, state };
}
