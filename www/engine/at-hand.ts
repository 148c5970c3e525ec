import { Lost, type Calls, type Name, type Transport } from './protocol.js';

/** Milliseconds that a call may take here; what takes longer goes to the worker, so that the next key is heard. */
const QUICK = 50;
/** So many calls in a row must have been slow: the first ones of all are, while the browser compiles. */
const IN_A_ROW = 4;
/** When the page has its first answers it has time to make a second engine. */
const AFTER = 700;
/** A key's text is read and its echo written in fewer turns than this; the work of the same key begins after them. */
const TURNS = 16;

/**
 * A second engine in the page itself, for what is quick: a message to the worker and back waits behind the frames that
 * show the key. Both give the same bits. It is made once the worker has answered, and dropped if it is ever lost.
 */
export class AtHand {
  readonly #make: () => Transport;
  readonly #ids: readonly string[] | undefined;
  /** How many calls of each kind in a row were slow. */
  readonly #slow = new Map<string, number>();
  #transport: Transport | undefined;
  #asked = false;

  /** `ids` are the calculators that it has, where those are not all. */
  constructor(make: () => Transport, ids?: readonly string[]) {
    this.#make = make;
    this.#ids = ids;
  }

  /** Makes it, a little later, the first time that it is called. */
  warm(): void {
    if (this.#asked) return;
    this.#asked = true;
    setTimeout(() => void this.#open(), AFTER);
  }

  async #open(): Promise<void> {
    const transport = this.#make();
    try {
      await transport.call('read', '1', 'Ω');
      this.#transport = transport;
    } catch {
      // Where it cannot be had, the worker does all.
    }
  }

  takes<N extends Name>(name: N, first: unknown): boolean {
    if (name === 'work' && this.#ids?.includes(String(first)) === false) return false;
    return this.#transport !== undefined && (this.#slow.get(kindOf(name, first)) ?? 0) < IN_A_ROW;
  }

  /** The call, or `Lost` where this engine is gone; the worker is then asked as if this had not been. */
  async call<N extends Name>(name: N, ...args: Calls[N]['args']): Promise<Calls[N]['gives']> {
    const transport = this.#transport;
    if (transport === undefined) throw new Lost('not made');
    if (name === 'work') for (let turn = 0; turn < TURNS; turn += 1) await undefined;
    const began = performance.now();
    try {
      return await transport.call(name, ...args);
    } catch (fault) {
      if (fault instanceof Lost) this.#transport = undefined;
      throw fault;
    } finally {
      const kind = kindOf(name, args[0]);
      this.#slow.set(kind, performance.now() - began > QUICK ? (this.#slow.get(kind) ?? 0) + 1 : 0);
    }
  }
}

/** Calls are quick or slow by name, the work by its calculator. */
function kindOf(name: Name, first: unknown): string {
  return name === 'work' ? `work ${String(first)}` : name;
}
