import type { BareProblem, Mend } from './kinds.js';
import { list, spelled } from './plain.js';
import { spoken, unitName } from './spoken.js';
import { USUAL_WAY, type Way } from './way.js';

/** What is the matter with a text, as what follows the text in quotes. Mends are added to it. */
const REASONS: Readonly<Record<string, (unit: string) => string>> = {
  unknown_word: (unit) => `has something in it that is not known here as a figure in ${unitName(unit)}.`,
  too_far: () => 'is further out than any part or reading goes.',
};

/** The reader's codes that have a text. */
export const READER_CODES: readonly string[] = ['empty', ...Object.keys(REASONS)];

/** Why a text is not read, and what to write: “22Ok” has the letter O in it. Write 220k for 220 kilohms. */
export function unreadText(problem: BareProblem, typed: string, unit: string, way: Way = USUAL_WAY): string {
  const mends = problem.mends ?? [];
  const mend = mendsText(mends, unit, way);
  if (problem.code === 'empty') return mend === '' ? 'Nothing is written here yet. Write a figure.' : `Nothing is written here yet. ${mend}`;
  const reason = Object.hasOwn(REASONS, problem.code) ? REASONS[problem.code] : undefined;
  const what = typed === '' ? 'This' : `“${typed}”`;
  const why = reason === undefined ? `is not read: ${spelled(problem.code)}.` : reason(unit);
  return mend === '' ? `${what} ${why}` : `${what} ${why} ${mend}`;
}

/** "Write 220k for 220 kilohms.", with more than one mend "Write 1234 for 1,234 ohms or 1.234 for 1.234 ohms." */
export function mendsText(mends: readonly Mend[], unit: string, way: Way = USUAL_WAY): string {
  if (mends.length === 0) return '';
  return `Write ${list(mends.map(({ text, value }) => `${text} for ${spoken(value, unit, way)}`), 'or')}.`;
}

/** The word on the button that mends a text. */
export function mendButton(mend: Mend): string {
  return `Use ${mend.text}`;
}
