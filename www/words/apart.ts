import { CALCULATORS } from './calculators.js';
import type { CalculatorWords } from './kinds.js';

/**
 * The way to each calculator's words. The site's build makes this module anew from the list in `calculators`, each way an
 * import of its own, so that a page fetches the words that it shows and the others behind its first answers.
 */
export const WAYS: ReadonlyMap<string, () => Promise<CalculatorWords>> = new Map(CALCULATORS.map((words) => [words.id, () => Promise.resolve(words)]));
