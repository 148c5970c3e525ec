import { open, type Source } from '../package/door.js';
import { answer } from './answer.js';
import { Lost, Refused, type Calls, type Name, type Transport } from './protocol.js';

/** Calls where the page itself runs, for places that have no worker. */
export class Direct implements Transport {
  readonly #source: () => Source | Promise<Source>;
  #opened: Promise<void> | undefined;

  constructor(source: () => Source | Promise<Source>) {
    this.#source = source;
  }

  async call<N extends Name>(name: N, ...args: Calls[N]['args']): Promise<Calls[N]['gives']> {
    this.#opened ??= Promise.resolve(this.#source()).then(open);
    try {
      await this.#opened;
    } catch (fault) {
      this.#opened = undefined;
      throw new Lost(String(fault));
    }
    const told = answer({ number: 0, name, args });
    if ('lost' in told) throw new Lost(told.lost);
    if ('problems' in told) throw new Refused(told.problems);
    return told.gives as Calls[N]['gives'];
  }
}
