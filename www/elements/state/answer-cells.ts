import { answerFigure, answerUnit, answerWords, choiceWords, told } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { show } from '../../words/quantity.js';
import type { CalculatorWords, Way } from './from-words.js';
import type { AnswerRow, Figures, Value } from './kinds.js';
import { isRecord } from './paths.js';

/** An answer as it stands in a table: lines of figure and unit; a difference for each pin. */
export interface Cell {
  readonly lines: readonly string[];
  /** The answers of a state pinned, and how far this one is from it. */
  readonly against: readonly string[];
  /** Nothing to say here, since others are measured against it. */
  readonly blank: boolean;
}

export const BLANK: Cell = { lines: ['–'], against: [], blank: true };

/** What a cell is made with. */
export interface CellContext {
  readonly words: CalculatorWords | undefined;
  readonly answers: readonly AnswerRow[];
  readonly inputs: Figures;
  readonly way: Way;
}

/** Figure and unit in one, never parted at a line's end. */
export function answerText(context: CellContext, key: string, value: Value | undefined): string {
  const { words, inputs, way } = context;
  const unit = context.answers.find((row) => row.key === key.replace(/\[\d+\]$/, ''))?.unit ?? '1';
  if (typeof value === 'string') return told(choiceWords(words, key, value), way);
  if (typeof value === 'boolean') return value ? PAGE.yes : PAGE.no;
  const { figure, unit: symbol } = answerFigure(words, key, value, unit, inputs, way);
  return symbol === '' ? figure : `${figure}\u00a0${symbol}`;
}

/** An answer of any shape as lines. */
export function answerLines(context: CellContext, key: string, value: Value | undefined): readonly string[] {
  if (Array.isArray(value)) {
    const items = value as readonly Value[];
    if (items.length === 0) return ['–'];
    if (key.startsWith('harmonics')) return items.map((item, k) => `${ordinal(k + 2)} ${answerText(context, key, item)}`);
    if (key.startsWith('heater_')) return items.map((item, k) => `V${k + 1} ${answerText(context, key, item)}`);
    if (items.every((item) => typeof item === 'string')) return [items.map((item) => answerText(context, key, item)).join(', ')];
    const each = context.answers.find((row) => row.key === key)?.count_of;
    if (each === 'sections' && items.length > 1) return items.map((item, k) => `${k + 1}: ${answerText(context, key, item)}`);
    return items.some(isRecord) ? items.flatMap((item) => answerLines(context, key, item)) : items.map((item) => answerText(context, key, item));
  }
  if (isRecord(value)) {
    return Object.entries(value).map(([name, inner]) => `${name} ${isRecord(inner) ? recordText(context, key, inner) : answerText(context, `${key}.${name}`, inner)}`);
  }
  return [answerText(context, key, value)];
}

function recordText({ words, inputs, way }: CellContext, key: string, record: Figures): string {
  return Object.entries(record)
    .map(([name, value]) => {
      const path = `${key}.${name}`;
      const { signed } = answerWords(words, path);
      const unit = name.endsWith('_percent') ? '%' : answerUnit(words, path, '1', inputs);
      return show(typeof value === 'number' ? value : null, unit, { signed, way });
    })
    .join(', ');
}

/** How far an answer is from a pinned one, with its sign: "−12 V". Nothing where it is the same or there is no figure. */
export function difference(context: CellContext, key: string, now: Value | undefined, then: Value | undefined): string | null {
  if (typeof now !== 'number' || typeof then !== 'number') return null;
  const { words, inputs, way } = context;
  const { percent, prefix } = answerWords(words, key);
  const unit = answerUnit(words, key, context.answers.find((row) => row.key === key)?.unit ?? '1', inputs);
  const [from, by] = percent === true ? [100, '%'] : [1, unit];
  const gap = now - then;
  if (Math.abs(gap) <= 1e-9 * Math.max(Math.abs(now), Math.abs(then))) return null;
  return show(gap * from, by, { signed: true, prefix, way, digits: by === 'dB' ? undefined : 2 });
}

function ordinal(number: number): string {
  return number === 2 ? '2nd' : number === 3 ? '3rd' : `${number}th`;
}
