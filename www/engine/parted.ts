import type { BareCalculator } from '../package/kinds.js';
import type { Calls, Name, Transport } from './protocol.js';

/** An engine with the calculators of one shelf, and the one with all. */
export interface Parts {
  readonly part: Transport;
  readonly ids: readonly string[];
  readonly whole: () => Transport;
  /** Every calculator's inputs and answers, which no part knows. */
  readonly catalogue: () => Promise<readonly BareCalculator[]>;
}

/** Answers from the part that a page begins with; the whole is fetched when a calculator of another shelf is wanted. */
export class Parted implements Transport {
  readonly #parts: Parts;
  #whole: Transport | undefined;

  constructor(parts: Parts) {
    this.#parts = parts;
  }

  async call<N extends Name>(name: N, ...args: Calls[N]['args']): Promise<Calls[N]['gives']> {
    if (name === 'catalogue') return (await this.#parts.catalogue()) as Calls[N]['gives'];
    const { part, ids, whole } = this.#parts;
    if (PART_CALLS.includes(name) || (name === 'work' && ids.includes(String(args[0])))) return part.call(name, ...args);
    this.#whole ??= whole();
    return this.#whole.call(name, ...args);
  }
}

/** What every part can do. */
const PART_CALLS: readonly Name[] = ['read', 'steps'];
