import type { CalculatorWords, FieldWords, Figures, Value } from './kinds.js';
import { general, item, lowered, raised, spelled, text } from './plain.js';
import { split, type Split } from './quantity.js';
import { markedUnit } from './units.js';
import { told, USUAL_WAY, type Way } from './way.js';

/** The words of the input at a path; a field without words is called by its name. */
export function inputWords(words: CalculatorWords | undefined, path: string): FieldWords {
  return words?.inputs[general(path)] ?? bare(path);
}

/** The words of an answer; one without words is called by its name. */
export function answerWords(words: CalculatorWords | undefined, path: string): FieldWords {
  return words?.answers[general(path)] ?? bare(path);
}

/** A choice for people. */
export function choiceWords(words: CalculatorWords | undefined, path: string, choice: string, way: Way = USUAL_WAY): string {
  const known = words?.choices[general(path)]?.[choice];
  return known === undefined ? choice : told(known, way);
}

/** The label of an input, with the item that it is in: "Position 2, Clear: coupling capacitor". */
export function labelOf(words: CalculatorWords | undefined, path: string, inputs: Figures = {}, way: Way = USUAL_WAY): string {
  const label = told(inputWords(words, path).label, way);
  const which = itemName(words, path, inputs, way);
  return which === '' || path.endsWith(']') ? which || label : `${which}: ${lowered(label)}`;
}

/** An input as a sentence calls it, with its article: "the plate resistor", "B+", "the coupling capacitor of position 2". */
export function phraseOf(words: CalculatorWords | undefined, path: string, inputs: Figures = {}, way: Way = USUAL_WAY): string {
  const { label, phrase } = inputWords(words, path);
  const which = lowered(itemName(words, path, inputs, way)).replace(/, (.*)$/, ' ($1)');
  if (path.endsWith(']')) return which;
  const named = told(phrase ?? `the ${lowered(label)}`, way);
  return which === '' ? named : `${named} of ${which}`;
}

/**
 * An answer's figure and unit, apart, the way that answer is shown; a text as it is. `unit` is the catalogue's, which
 * for a marking is only known from the kind of part.
 */
export function answerFigure(
  words: CalculatorWords | undefined, path: string, value: Value | undefined, unit: string, inputs: Figures = {}, way: Way = USUAL_WAY,
): Split {
  if (typeof value === 'string') return { figure: choiceWords(words, path, value, way), unit: '' };
  const figure = typeof value === 'number' ? value : null;
  const { percent, prefix, signed } = answerWords(words, path);
  if (percent === true) return split(figure === null ? null : figure * 100, '%', { way });
  return split(figure, answerUnit(words, path, unit, inputs), { prefix, signed, way });
}

/** The unit of an answer: the catalogue's, but for a value whose unit hangs on an input. */
export function answerUnit(words: CalculatorWords | undefined, path: string, unit: string, inputs: Figures = {}): string {
  if (words?.id === 'marking' && /(^|\.)value$/.test(path)) return markedUnit(text(inputs, 'kind'));
  if (words?.id === 'filter' && path === 'solved') return SOLVED[text(inputs, 'solve').split('.').at(-1) ?? ''] ?? unit;
  return unit;
}

const SOLVED: Readonly<Record<string, string>> = {
  ohms: 'Ω', source_ohms: 'Ω', load_ohms: 'Ω', farads: 'F', henries: 'H',
};

function itemName(words: CalculatorWords | undefined, path: string, inputs: Figures, way: Way): string {
  const number = item(path);
  if (number === 0) return '';
  const start = path.slice(0, path.indexOf(']') + 1);
  const kind = told(inputWords(words, start).label, way);
  const name = text(inputs, `${start}.label`).trim();
  return name === '' ? `${kind} ${number}` : `${kind} ${number}, ${name}`;
}

function bare(path: string): FieldWords {
  const name = raised(spelled(general(path)));
  return { label: name === '' ? 'Value' : name, help: '' };
}
