import type { Value } from './kinds.js';
import { same } from './paths.js';

/** Values made once and kept while what they were made from stays the same objects: what did not change is not drawn again. */
export class Memo {
  readonly #held = new Map<string, { readonly from: readonly unknown[]; readonly made: unknown }>();

  /** The value held under this name where the new one says the same, so that nothing thinks it changed. */
  settle<T extends Value>(name: string, made: T): T {
    const held = this.#held.get(name);
    if (held !== undefined && same(held.made as T, made)) return held.made as T;
    this.#held.set(name, { from: [], made });
    return made;
  }

  get<T>(name: string, from: readonly unknown[], make: () => T): T {
    const held = this.#held.get(name);
    if (held !== undefined && held.from.length === from.length && held.from.every((each, k) => each === from[k])) return held.made as T;
    const made = make();
    this.#held.set(name, { from, made });
    return made;
  }
}
