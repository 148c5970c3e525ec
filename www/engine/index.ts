import type { BareCalculator, BareOutcome, BareReading, Figures } from '../package/kinds.js';
import { AtHand } from './at-hand.js';
import { ByWorker } from './by-worker.js';
import { Lost, type Calls, type Name, type Steps, type Transport } from './protocol.js';

export { Lost, Refused, type Steps } from './protocol.js';

/** The engine as the page speaks to it: every call is a promise, whichever way it goes. */
export class Engine {
  #transport: Transport;
  readonly #fallback: (() => Transport) | undefined;
  readonly #atHand: AtHand | undefined;
  #answered = false;
  #bare: Promise<readonly BareCalculator[]> | undefined;

  /** `fallback` takes over if the first way is lost before it ever answered; `atHand` answers what is quick. */
  constructor(transport: Transport, fallback?: () => Transport, atHand?: AtHand) {
    this.#transport = transport;
    this.#fallback = fallback;
    this.#atHand = atHand;
  }

  catalogue(): Promise<readonly BareCalculator[]> {
    this.#bare ??= this.#try((transport) => transport.call('catalogue'));
    this.#bare.catch(() => (this.#bare = undefined));
    return this.#bare;
  }

  work(id: string, inputs: Figures, want: readonly string[]): Promise<BareOutcome> {
    return this.#quick('work', id, inputs, want);
  }

  read(text: string, unit: string): Promise<BareReading> {
    return this.#quick('read', text, unit);
  }

  steps(text: string, unit: string, series: string): Promise<Steps> {
    return this.#quick('steps', text, unit, series);
  }

  async #quick<N extends Name>(name: N, ...args: Calls[N]['args']): Promise<Calls[N]['gives']> {
    if (this.#atHand?.takes(name, args[0]) === true) {
      try {
        return await this.#atHand.call(name, ...args);
      } catch (fault) {
        if (!(fault instanceof Lost)) throw fault;
      }
    }
    const given = await this.#try((transport) => transport.call(name, ...args));
    if (name === 'work') this.#atHand?.warm();
    return given;
  }

  async #try<T>(call: (transport: Transport) => Promise<T>): Promise<T> {
    const transport = this.#transport;
    try {
      const given = await call(transport);
      this.#answered = true;
      return given;
    } catch (fault) {
      if (!(fault instanceof Lost) || this.#answered || this.#fallback === undefined) throw fault;
      if (this.#transport === transport) this.#transport = this.#fallback();
      return call(this.#transport);
    }
  }
}

/** A way that is fetched when it is first taken. */
class Fetched implements Transport {
  readonly #fetch: () => Promise<Transport>;
  #way: Promise<Transport> | undefined;

  constructor(fetch: () => Promise<Transport>) {
    this.#fetch = fetch;
  }

  async call<N extends Name>(name: N, ...args: Calls[N]['args']): Promise<Calls[N]['gives']> {
    this.#way ??= this.#fetch();
    try {
      await this.#way;
    } catch (fault) {
      this.#way = undefined;
      throw new Lost(String(fault));
    }
    return (await this.#way).call(name, ...args);
  }
}

/** The engine of a page: in a worker where there can be one, else in the page. */
export function pageEngine(worker: () => Worker, wasm: () => URL): Engine {
  const direct = (): Transport => new Fetched(async () => new (await import('./direct.js')).Direct(wasm));
  return typeof Worker === 'undefined' ? new Engine(direct()) : new Engine(new ByWorker(worker), direct, new AtHand(direct));
}
