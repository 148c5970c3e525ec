import type { Source } from '../package/door.js';
import type { BareCalculator, BareOutcome, BareReading, Figures } from '../package/kinds.js';
import { AtHand } from './at-hand.js';
import { ByWorker } from './by-worker.js';
import { Parted } from './parted.js';
import { Lost, type Calls, type Name, type Steps, type Transport } from './protocol.js';

export { Lost, Refused, type Steps, type Transport } from './protocol.js';

/** The engine as the page speaks to it: every call is a promise, whichever way it goes. */
export class Engine {
  #transport: Transport;
  readonly #fallback: (() => Transport) | undefined;
  #atHand: AtHand | undefined;
  readonly #sound: (() => Transport) | undefined;
  #sounding: Transport | undefined;
  #answered = false;
  #bare: Promise<readonly BareCalculator[]> | undefined;

  /** `fallback` takes over if the first way is lost before it ever answered; `atHand` answers what is quick, `sound` what is long. */
  constructor(transport: Transport, fallback?: () => Transport, atHand?: AtHand, sound?: () => Transport) {
    this.#sound = sound;
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

  /** What is done with sound goes its own way, so that no key waits for it; made when it is first wanted. */
  sound(): Transport {
    this.#sounding ??= this.#sound?.() ?? this.#transport;
    return this.#sounding;
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
      if (this.#transport === transport) {
        this.#transport = this.#fallback();
        // One page holds one engine.
        this.#atHand = undefined;
      }
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

/** Twenty seconds of sound on a slow phone. */
const LONG_MILLISECONDS = 60_000;

/** An engine as built: compiled or where it is, and a worker that has been sent it. */
export interface Built {
  readonly source: () => Source | Promise<Source>;
  readonly worker: () => Worker;
}

/** The files of a part, its calculators, and the catalogue of all. */
export interface BuiltPart extends Built {
  readonly ids: readonly string[];
  readonly catalogue: () => Promise<readonly BareCalculator[]>;
}

/** The engine of a page: in a worker where there can be one, else in the page; a part of it first where there is one. */
export function pageEngine(whole: Built, part?: BuiltPart): Engine {
  const direct = ({ source }: Built) => (): Transport => new Fetched(async () => new (await import('./direct.js')).Direct(source));
  if (typeof Worker === 'undefined') return new Engine(direct(whole)());
  const all = (): Transport => new ByWorker(whole.worker);
  const sound = (): Transport => new ByWorker(whole.worker, LONG_MILLISECONDS);
  if (part === undefined) return new Engine(all(), direct(whole), new AtHand(direct(whole)), sound);
  const { ids, catalogue } = part;
  const parted = new Parted({ part: new ByWorker(part.worker).begin(), ids, whole: all, catalogue });
  return new Engine(parted, direct(whole), new AtHand(direct(part), ids), sound);
}
