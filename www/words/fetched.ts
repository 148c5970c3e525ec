import { WAYS } from './apart.js';
import { learn, wordsOf } from './known.js';

const coming = new Map<string, Promise<void>>();

/** Whether a calculator has words that are not at hand yet. */
export const isAway = (id: string): boolean => WAYS.has(id) && wordsOf(id) === undefined;

/** Fetches the words of calculators; of all where none is named. One that has none is passed over. */
export async function fetchWords(ids: readonly string[] = [...WAYS.keys()]): Promise<void> {
  await Promise.all(ids.filter(isAway).map((id) => {
    const way = WAYS.get(id);
    const under = coming.get(id) ?? way?.().then((words) => { learn([words]); }).finally(() => { coming.delete(id); });
    if (under !== undefined) coming.set(id, under);
    return under;
  }));
}
