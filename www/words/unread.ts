import type { BareProblem, Mend } from './kinds.js';
import { list, spelled } from './plain.js';
import { spoken, unitName } from './spoken.js';
import { USUAL_WAY, type Way } from './way.js';

interface Unread {
  /** What is the matter, as what follows the text in quotes. */
  readonly why: (typed: string, unit: string) => string;
  /** What to do where the reader has no text to offer. */
  readonly then: (unit: string) => string;
  /** What its offers are, where that takes more than to name them. */
  readonly mend?: (texts: readonly string[]) => string;
}

const figure = (unit: string): string => `Write one figure${unit === '' ? '' : ` in ${unitName(unit)}`}.`;

const REASONS: Readonly<Record<string, Unread>> = {
  too_long: { why: () => 'is longer than any figure with its unit.', then: figure },
  no_figure: { why: () => 'has no figure in it.', then: figure },
  too_far: { why: () => 'lies further out than any part or reading goes.', then: figure },
  over_nought: { why: () => 'is a fraction over nought, which is no figure.', then: figure },
  letter_for_digit: {
    why: (typed) => `has the letter ${/[oO]/.exec(typed)?.[0] ?? /[lI|]/.exec(typed)?.[0] ?? 'O'} in it.`,
    then: () => 'Write a digit there.',
  },
  two_numbers: { why: () => 'holds more than one figure.', then: figure },
  tapped_winding: {
    why: () => 'names a winding with a tap in its middle.',
    then: figure,
    mend: ([side = '', whole = '']) => `Write ${side} where the volts from the tap to one end are asked, ${whole} where those from end to end are.`,
  },
  two_points: { why: () => 'has more than one decimal point in a figure.', then: () => 'Leave one.' },
  which_comma: {
    why: () => 'has a comma that may mark decimals or thousands.',
    then: () => 'Write a point for decimals, and no mark for thousands.',
  },
  which_prefix: {
    why: (typed) => `has an ${/m/i.exec(typed)?.[0] ?? 'M'} with two readings.`,
    then: () => 'Write k for thousands, mega or milli in full.',
  },
  which_unit: { why: () => 'may be in more than one unit.', then: () => 'Write the unit behind it.' },
  which_gauge: { why: () => 'does not say which wire gauge.', then: () => 'Write AWG or SWG behind it.' },
  which_reference: { why: () => 'does not say what its decibels are counted from.', then: () => 'Write re 1 V/Pa behind it, or re 1 V/µbar for an old sheet.' },
  which_code: {
    why: () => 'may be a code of three digits or a plain figure.',
    then: () => 'Write the unit behind it.',
  },
  doubled_prefix: { why: () => 'has two prefixes in a row.', then: () => 'Leave one.' },
  prefix_not_here: {
    why: (_, unit) => `has a prefix that ${unit === '' ? 'the unit is' : `${unitName(unit)} are`} not written with.`,
    then: figure,
  },
  wrong_unit: { why: (_, unit) => `is in a unit other than ${unit === '' ? 'the one asked for' : unitName(unit)}.`, then: figure },
  unknown_word: { why: () => 'has a word in it that is not known here.', then: figure },
  unknown_mark: { why: () => 'has a sign in it that is not known here.', then: figure },
  unknown_colour: {
    why: () => 'has a word among its colours that is no colour.',
    then: () => 'The colours are black, brown, red, orange, yellow, green, blue, violet, grey, white, gold and silver.',
  },
  wrong_bands: {
    why: () => 'names bands that no part has in this order and number.',
    then: () => 'Begin at the end nearest to a band.',
  },
  no_such_gauge: { why: () => 'is a number that the wire gauge does not have.', then: () => 'Write the diameter instead.' },
  bad_tolerance: { why: () => 'has a tolerance that cannot be one.', then: () => 'Write it in percent, such as ±10\u00a0%.' },
};

const EMPTY = 'Nothing is written here yet.';

/** The reader's codes that have a text. */
export const READER_CODES: readonly string[] = ['empty', ...Object.keys(REASONS)];

/** Why a text is not read, and what to write: “22Ok” has the letter O in it. Write 220k for 220 kilohms. */
export function unreadText(problem: BareProblem, typed: string, unit: string, way: Way = USUAL_WAY): string {
  const mend = mendsText(problem.mends ?? [], unit, way);
  if (problem.code === 'empty') return `${EMPTY} ${mend === '' ? figure(unit) : mend}`;
  const reason = Object.hasOwn(REASONS, problem.code) ? REASONS[problem.code] : undefined;
  const what = typed === '' ? 'The text' : `“${typed}”`;
  if (reason === undefined) return `${what} is not read: ${spelled(problem.code)}. ${mend}`.trim();
  const offers = (problem.mends ?? []).map(({ text }) => text);
  const how = mend === '' ? reason.then(unit) : (offers.length === 2 ? reason.mend?.(offers) : undefined) ?? mend;
  return `${what} ${reason.why(typed, unit)} ${how}`;
}

/** "Write 220k for 220 kilohms.", with more than one mend "Write 1234 for 1,234 ohms or 1.234 for 1.234 ohms." */
export function mendsText(mends: readonly Mend[], unit: string, way: Way = USUAL_WAY): string {
  if (mends.length === 0) return '';
  return `Write ${list(mends.map(({ text, value }) => `${text} for ${spoken(value, unit, way)}`), 'or')}.`;
}

/** The word on the button that mends a text. */
export function mendButton({ text }: Pick<Mend, 'text'>): string {
  return `Use ${text}`;
}
