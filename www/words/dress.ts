import { cautionText } from './cautions.js';
import { answerWords, choiceWords, inputWords } from './fields.js';
import type { BareCaution, BareProblem, CalculatorWords, CurveWords, Figures } from './kinds.js';
import { wordsOf } from './known.js';
import { nullWords } from './nulls.js';
import { raised, spelled } from './plain.js';
import { problemText } from './problems.js';
import type { BareAnswer, BareCalculator, BareRow } from './rows.js';
import { told, USUAL_WAY, type Way } from './way.js';

/** A row of the catalogue's inputs with its words. */
export interface Row extends BareRow {
  readonly label: string;
  readonly help: string;
  /** The choices' own words, in the order of `choices`. */
  readonly choice_labels?: readonly string[];
  readonly fields?: readonly Row[];
  readonly item?: Row;
  readonly either?: readonly Row[];
}

/** A row of the catalogue's answers with its words. */
export interface Answer extends BareAnswer {
  readonly label: string;
  readonly help: string;
  readonly null_text?: string;
}

/** A calculator of the catalogue with its words. */
export interface Dressed extends BareCalculator {
  readonly title: string;
  readonly summary: string;
  readonly inputs: readonly Row[];
  readonly answers: readonly Answer[];
}

/** The whole catalogue with its words. */
export function dressCatalogue(catalogue: readonly BareCalculator[], way: Way = USUAL_WAY): readonly Dressed[] {
  return catalogue.map((calculator) => {
    const words = wordsOf(calculator.id);
    return {
      ...calculator,
      title: told(words?.title ?? raised(spelled(calculator.id)), way),
      summary: told(words?.summary ?? '', way),
      inputs: calculator.inputs.map((row) => dressRow(words, row, row.key ?? '', way)),
      answers: calculator.answers.map((answer) => dressAnswer(words, answer, way)),
    };
  });
}

function dressRow(words: CalculatorWords | undefined, row: BareRow, path: string, way: Way): Row {
  const { label, help } = inputWords(words, path);
  const under = (field: BareRow): Row => dressRow(words, field, field.key === undefined ? path : `${path}.${field.key}`, way);
  const { fields, item, either, ...rest } = row;
  return {
    ...rest,
    label: told(label, way),
    help: told(help, way),
    ...(row.choices === undefined ? {} : { choice_labels: row.choices.map((choice) => choiceWords(words, path, choice, way)) }),
    ...(fields === undefined ? {} : { fields: fields.map(under) }),
    ...(item === undefined ? {} : { item: dressRow(words, item, `${path}[]`, way) }),
    ...(either === undefined ? {} : { either: either.map(under) }),
  };
}

function dressAnswer(words: CalculatorWords | undefined, answer: BareAnswer, way: Way): Answer {
  const { label, help } = answerWords(words, answer.key);
  const null_text = answer.null_means === undefined ? {} : { null_text: told(nullWords(answer.null_means), way) };
  return { ...answer, label: told(label, way), help: told(help, way), ...null_text };
}

/** Cautions with their texts. */
export function dressCautions<C extends BareCaution>(cautions: readonly C[], inputs: Figures = {}, way: Way = USUAL_WAY): readonly (C & { readonly text: string })[] {
  return cautions.map((caution) => ({ ...caution, text: cautionText(caution, inputs, way) }));
}

/** Problems with their texts. */
export function dressProblems<P extends BareProblem>(
  problems: readonly P[],
  calculator: { readonly id: string; readonly inputs: readonly BareRow[] } | undefined,
  inputs: Figures = {},
  way: Way = USUAL_WAY,
): readonly (P & { readonly text: string })[] {
  const context = { words: wordsOf(calculator?.id ?? ''), rows: calculator?.inputs, inputs, way };
  return problems.map((problem) => ({ ...problem, text: problemText(problem, context) }));
}

/** The words of a curve; one without any is called by its name. */
export function curveWords(id: string, key: string): CurveWords {
  const name = raised(spelled(key));
  return wordsOf(id)?.curves[key] ?? { title: name, caption: `${name}.`, x: '', y: '' };
}

interface BareLine {
  readonly label: string;
  readonly figure?: number | null;
}

interface BareAxis {
  readonly unit: string;
  readonly scale: string;
}

/** Curves with their titles, axis labels and the names of their lines and marks. */
export function dressCurves<L extends BareLine, C extends { readonly key: string; readonly x: BareAxis; readonly y: BareAxis; readonly lines: readonly L[]; readonly marks: readonly BareLine[] }>(
  id: string,
  curves: readonly C[],
  way: Way = USUAL_WAY,
): readonly (Omit<C, 'x' | 'y'> & { readonly title: string; readonly x: BareAxis & { readonly label: string }; readonly y: BareAxis & { readonly label: string } })[] {
  return curves.map((curve) => {
    const words = curveWords(id, curve.key);
    const named = <N extends BareLine>(each: N): N & { readonly code: string } => ({ ...each, code: each.label, label: lineWords(words, each, way) });
    return {
      ...curve,
      title: told(words.title, way),
      x: { ...curve.x, label: told(words.x, way) },
      y: { ...curve.y, label: told(words.y, way) },
      lines: curve.lines.map(named),
      marks: curve.marks.map(named),
    };
  });
}

/** The name of a line or mark: "−1 V" for a grid line, "2 Clear" for a position of the switch. */
export function lineWords(words: CurveWords, { label, figure }: BareLine, way: Way = USUAL_WAY): string {
  if (words.positions === true && typeof figure === 'number') return `${figure} ${label}`.trim();
  const known = words.lines !== undefined && Object.hasOwn(words.lines, label) ? words.lines[label] : undefined;
  if (known === undefined) return label;
  return told(typeof known === 'string' ? known : known(typeof figure === 'number' ? figure : Number.NaN, way), way);
}
