import { answerWords, told } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import type { Face, Situation } from './from-words.js';
import { answerLines, BLANK, difference, type Cell, type CellContext } from './answer-cells.js';
import type { AnswerRow, Figures, Outcome, Value } from './kinds.js';
import { valueAt } from './paths.js';

/** One row of a table of answers. */
export interface TableRow {
  readonly key: string;
  readonly label: string;
  readonly cells: readonly Cell[];
  /** Why there is no figure, where there is none. */
  readonly why: string;
}

/** The head of a column for one position of the switch. */
export interface Column {
  readonly name: string;
  readonly value: string;
  readonly current: boolean;
}

/** A table of answers, ready to be set. */
export interface Table {
  readonly heading: string;
  readonly note: string;
  readonly columns: readonly Column[];
  readonly rows: readonly TableRow[];
}

/** A pinned state's answers under its name. */
export interface Pinned {
  readonly name: string;
  readonly outcome: Outcome | null;
}

/** The tables of a face with their figures; a row whose answers are all absent is left out, and a table without rows. */
export function answerTables(
  face: Face, context: CellContext, situation: Situation, columnsOf: (list: string) => readonly Column[], pins: readonly Pinned[],
): readonly Table[] {
  const answers = situation.outcome.answers ?? {};
  return face.tables
    .map(({ heading, note, columns: list, rows }) => ({ heading, note, rows, columns: list === undefined ? null : columnsOf(list) }))
    .map(({ heading, note, rows, columns }) => ({
      heading: told(heading, situation.way),
      note: told(note ?? '', situation.way),
      columns: columns ?? [],
      rows: rows.flatMap((row): readonly TableRow[] => {
        if (!Object.hasOwn(answers, row.answer)) return [];
        const label = told(row.label?.(situation) ?? answerWords(context.words, row.answer).label, situation.way);
        const cells = columns === null
          ? [cell(context, row.answer, row.answer, answers, pins)]
          : columns.map((_, k) => (row.againstFirst === true && k === 0 ? BLANK : cell(context, row.answer, `${row.answer}[${k}]`, answers, pins)));
        return [{ key: row.answer, label, cells, why: why(context.answers, row.answer, valueAt(answers, row.answer)) }];
      }),
    }))
    .filter(({ rows }) => rows.length > 0);
}

function cell(context: CellContext, key: string, path: string, answers: Figures, pins: readonly Pinned[]): Cell {
  const value = valueAt(answers, path);
  const against = pins.flatMap(({ name, outcome }) => {
    const gap = difference(context, key, value, valueAt(outcome?.answers ?? {}, path));
    return gap === null ? [] : [PAGE.against(gap, name)];
  });
  return { lines: answerLines(context, key, value), against, blank: false };
}

function why(rows: readonly AnswerRow[], key: string, value: Value | undefined): string {
  const missing = value === null || (Array.isArray(value) && value.some((item) => item === null));
  return missing ? (rows.find((row) => row.key === key)?.null_text ?? '') : '';
}

/** One figure of an answer for a tag or the strip, of the position switched in where it has one each. */
export function oneAnswer(answers: Figures, key: string, each: boolean | undefined, position: number): Value | undefined {
  const value = valueAt(answers, key);
  return each === true && Array.isArray(value) ? (value as readonly Value[])[position] : value;
}
