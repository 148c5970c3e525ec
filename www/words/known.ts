import type { CalculatorWords } from './kinds.js';

const KNOWN = new Map<string, CalculatorWords>();

/** Puts the words of calculators at hand. */
export function learn(words: readonly CalculatorWords[]): void {
  for (const each of words) KNOWN.set(each.id, each);
}

/** The words of a calculator, if it has any and they are at hand. */
export function wordsOf(id: string): CalculatorWords | undefined {
  return KNOWN.get(id);
}
