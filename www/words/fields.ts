import type { CalculatorWords, FieldWords, Figures } from './kinds.js';
import { general, item, lowered, raised, spelled, text } from './plain.js';
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
  const which = itemName(words, path, inputs, way);
  if (path.endsWith(']')) return lowered(which);
  const named = told(phrase ?? `the ${lowered(label)}`, way);
  return which === '' ? named : `${named} of ${lowered(which)}`;
}

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
