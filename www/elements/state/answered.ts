import { answerWords, told } from '../../words/index.js';
import { answerLines, type CellContext } from './answer-cells.js';
import type { Desk } from './desk.js';
import type { Build, Figures, Lug } from './kinds.js';
import { isRecord, same } from './paths.js';

/** The key under which a lug keeps what it answered, in files and in the browser. */
const KEY = 'answered';

/** What a lug answered, and the release that answered. */
export interface Answered {
  readonly release: string;
  readonly answers: Figures;
}

/** One answer that is another now: "was 248 V, now 251 V". */
export interface Change {
  readonly label: string;
  readonly was: string;
  readonly now: string;
}

/** What a lug brought with it. */
export function answeredOf({ rest }: Lug): Answered | null {
  const given = rest[KEY];
  if (!isRecord(given) || typeof given['release'] !== 'string' || !isRecord(given['answers'])) return null;
  return { release: given['release'], answers: given['answers'] };
}

/** The lug without them: its inputs are others now, or the new answers were taken. */
export function withoutAnswered(lug: Lug): Lug {
  const { [KEY]: _, ...rest } = lug.rest;
  return KEY in lug.rest ? { ...lug, rest } : lug;
}

/** The build without any, as a link carries it. */
export const bareBuild = (build: Build): Build => ({ ...build, lugs: build.lugs.map(withoutAnswered) });

/**
 * The build with what each lug answered and which release did, as it is kept and saved. What a lug brought with it stays
 * until its inputs change, so that an answer that moved is told until somebody has seen it.
 */
export function withAnswers(desk: Desk, release: string): Build {
  return {
    ...desk.build,
    lugs: desk.build.lugs.map((lug) => {
      const { outcome, good, problems } = desk.works.get(lug.id);
      const current = problems.length === 0 && good !== null && same(good, desk.full(lug.calculator, lug.inputs));
      if (answeredOf(lug) !== null || !current || outcome?.answers === undefined || release === '') return lug;
      return { ...lug, rest: { ...lug.rest, [KEY]: { release, answers: outcome.answers } } };
    }),
  };
}

/** The answers that read otherwise than they did, as a person sees them. */
export function changesIn(context: CellContext, was: Figures, now: Figures): readonly Change[] {
  return context.answers.flatMap(({ key }): readonly Change[] => {
    if (!Object.hasOwn(was, key)) return [];
    const [before, after] = [was[key], now[key]].map((value) => answerLines(context, key, value).join(', ')) as [string, string];
    return before === after ? [] : [{ label: told(answerWords(context.words, key).label, context.way), was: before, now: after }];
  });
}
