import { choiceWords, phraseOf } from './fields.js';
import type { BareProblem, CalculatorWords, Figures } from './kinds.js';
import { at, list, raised, spelled } from './plain.js';
import { show } from './quantity.js';
import { reasonWords } from './reasons.js';
import { rowAt, type BareRow } from './rows.js';
import { READER_CODES, unreadText } from './unread.js';
import { USUAL_WAY, type Way } from './way.js';

/** What a problem's text is made from, besides the problem. */
export interface ProblemContext {
  readonly words?: CalculatorWords | undefined;
  /** The calculator's rows in the catalogue. */
  readonly rows?: readonly BareRow[] | undefined;
  /** What was typed, so that a text can be quoted. */
  readonly inputs?: Figures | undefined;
  readonly way?: Way | undefined;
}

interface Scene {
  readonly problem: BareProblem;
  readonly phrase: string;
  readonly row: BareRow | undefined;
  readonly typed: string;
  readonly context: ProblemContext;
  readonly f: (value: number | undefined) => string;
}

const MAKERS: Readonly<Record<string, (scene: Scene) => string>> = {
  missing: (scene) => `${raised(scene.phrase)} has nothing in it yet. ${asked(scene)}`,
  unknown: ({ problem, context }) =>
    `${context.words?.title ?? 'This calculator'} has no input called “${problem.field}”. Leave it out or look at its spelling.`,
  wrong_shape: (scene) => `${raised(scene.phrase)} takes something else. ${asked(scene)}`,
  not_a_figure: (scene) => `${raised(scene.phrase)} takes a figure with an end. ${asked(scene)}`,
  too_small: range,
  too_large: range,
  not_whole: ({ phrase, f, problem }) => `${raised(phrase)} must be a whole number from ${f(problem.least)} to ${f(problem.most)}.`,
  not_a_choice: ({ phrase, row, typed, problem, context }) => {
    const choices = (row?.choices ?? row?.either?.flatMap((option) => option.choices ?? []) ?? []).map((choice) =>
      choiceWords(context.words, problem.field, choice, context.way),
    );
    const which = choices.length === 0 ? 'Choose from its list.' : `Choose ${list(choices, 'or')}.`;
    return typed === '' ? `${raised(phrase)} takes one of its list. ${which}` : `“${typed}” is not in the list for ${phrase}. ${which}`;
  },
  too_long: ({ phrase, problem }) => `${raised(phrase)} has room for ${problem.most ?? 'fewer'} characters. Shorten it.`,
  too_few: counts,
  too_many: counts,
  count_differs: ({ phrase, problem, context }) =>
    `${raised(phrase)} must be as many as ${other(problem, context)}: ${problem.least ?? 'the same number'}.`,
  one_of: ({ phrase, problem, context }) => `Give ${phrase} or ${other(problem, context)}, not both.`,
  together: ({ phrase, problem, context }) =>
    `${raised(other(problem, context))} needs ${phrase} with it. Give both, or neither.`,
  not_below: ({ phrase, problem, context, f }) =>
    `${raised(phrase)} must stay under ${other(problem, context)}, ${f(problem.most)}.`,
  no_solution: ({ problem, context }) => reasonWords(problem.about ?? '', problem.node, context.way),
  no_calculator: ({ problem }) => `There is no calculator called “${problem.about ?? ''}”. The catalogue has their names.`,
  empty_branch: ({ phrase }) => `${raised(phrase)} has no part in it. Give it a resistor, a capacitor or a coil, or take it out.`,
  no_such_part: ({ typed, problem, phrase }) => {
    const named = typed === '' ? (problem.about ?? '') : typed;
    const what = named === '' ? `${raised(phrase)} is not in the circuit.` : `“${named}” is no part of this circuit.`;
    return `${what} Write a branch and what is in it, such as branches[0].farads for the capacitor of the first branch.`;
  },
  silent: () => 'There is no sound in the clip. Choose another, or record one nearer to the microphone.',
  no_such_position: ({ phrase, problem }) => {
    const { least, most } = problem;
    if (problem.field === 'position') return `The switch has no such position. Write ${least ?? 1} to ${most ?? 1}.`;
    const there = least === undefined || most === undefined || least > most ? 'Add a position first.' : `Write ${least === most ? least : `${least} to ${most}`}.`;
    return `${raised(phrase)} names no position that could be lifted against the first. ${there}`;
  },
  unknown_unit: () => 'No such unit is read here. The catalogue has the unit of each input.',
};

/** The codes of the check that have a text; the reader's have theirs in `unread`. */
export const PROBLEM_CODES: readonly string[] = Object.keys(MAKERS);

/** A problem for people: what is so, and what to do. */
export function problemText(problem: BareProblem, context: ProblemContext = {}): string {
  const row = rowAt(context.rows ?? [], problem.field);
  const found = at(context.inputs, problem.field);
  const typed = typeof found === 'string' ? found.trim() : '';
  // `too_long` is a name that is too long where a length is given, else a text that the reader refuses.
  if (READER_CODES.includes(problem.code) && !(problem.code === 'too_long' && problem.most !== undefined)) {
    return unreadText(problem, typed, row?.unit ?? '', context.way);
  }
  const phrase = problem.field === '' ? 'the whole' : phraseOf(context.words, problem.field, context.inputs, context.way);
  const f = (value: number | undefined): string => bound(value, row, context);
  const scene: Scene = { problem, phrase, row, typed, context, f };
  const maker = Object.hasOwn(MAKERS, problem.code) ? MAKERS[problem.code] : undefined;
  return maker === undefined ? `${raised(phrase)}: ${spelled(problem.code)}.` : maker(scene);
}

function range({ problem, phrase, row, f }: Scene): string {
  const none = row?.zero === undefined ? '' : ', or be 0 for none';
  return `${raised(phrase)} must lie between ${f(problem.least)} and ${f(problem.most)}${none}.`;
}

function counts({ problem, phrase }: Scene): string {
  if (problem.field === 'clip.samples') return 'There is nothing in the clip. Choose another.';
  const { least, most } = problem;
  const span = least === most ? `${least ?? 1}` : `from ${least ?? 1} to ${most ?? 'more'}`;
  return `${raised(phrase)} must number ${span}.`;
}

function other(problem: BareProblem, { words, inputs, way }: ProblemContext): string {
  return phraseOf(words, problem.about ?? '', inputs, way);
}

function bound(value: number | undefined, row: BareRow | undefined, { way = USUAL_WAY }: ProblemContext): string {
  return show(value, row?.unit ?? '1', { digits: 6, way });
}

/** What would do, by the field's shape. */
function asked({ row, problem, context, f }: Scene): string {
  switch (row?.shape) {
    case 'quantity':
      return `Write a figure from ${f(row.least)} to ${f(row.most)}${row.zero === undefined ? '' : ', or 0 for none'}.`;
    case 'choice': {
      const choices = (row.choices ?? []).map((choice) => choiceWords(context.words, problem.field, choice, context.way));
      return `Choose ${list(choices, 'or')}.`;
    }
    case 'flag':
      return 'It is yes or no.';
    case 'list':
      return 'Give a list, also for one alone.';
    case 'record':
      return 'Give its fields by name.';
    case 'either':
      return 'Choose from its list, or give its fields by name.';
    default:
      return 'Write it out.';
  }
}
