import { Lost, Refused, type Asked, type Calls, type Name, type Told, type Transport } from './protocol.js';

/** A call that takes longer than this is stuck: the worst answer known takes some hundredths of it. */
const STUCK_MILLISECONDS = 8000;

interface Waiting {
  readonly give: (value: unknown) => void;
  readonly refuse: (fault: Error) => void;
  readonly since: number;
}

/** Calls to a worker. One that is stuck or whose engine trapped is ended; the next call makes another. */
export class ByWorker implements Transport {
  readonly #make: () => Worker;
  #worker: Worker | undefined;
  readonly #waiting = new Map<number, Waiting>();
  #number = 0;
  #watch: ReturnType<typeof setTimeout> | undefined;

  readonly #patience: number;

  constructor(make: () => Worker, patience = STUCK_MILLISECONDS) {
    this.#make = make;
    this.#patience = patience;
  }

  call<N extends Name>(name: N, ...args: Calls[N]['args']): Promise<Calls[N]['gives']> {
    return new Promise((give, refuse) => {
      this.#number += 1;
      const asked: Asked = { number: this.#number, name, args };
      this.#waiting.set(asked.number, { give: give as (value: unknown) => void, refuse, since: Date.now() });
      try {
        this.#opened().postMessage(asked);
        this.#look();
      } catch (fault) {
        this.end(String(fault));
      }
    });
  }

  /** Makes the worker before the first call, so that it is ready by then. */
  begin(): this {
    try {
      this.#opened();
    } catch {
      // The first call meets the same and tells it.
    }
    return this;
  }

  /** Ends the worker; everything that waits is told. */
  end(why: string): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    clearTimeout(this.#watch);
    this.#watch = undefined;
    const waiting = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const { refuse } of waiting) refuse(new Lost(why));
  }

  #opened(): Worker {
    if (this.#worker === undefined) {
      const worker = this.#make();
      worker.addEventListener('message', ({ data }: MessageEvent<Told>) => this.#hear(data));
      worker.addEventListener('error', (event) => this.end(event.message));
      this.#worker = worker;
    }
    return this.#worker;
  }

  #hear(told: Told): void {
    const waiting = this.#waiting.get(told.number);
    this.#waiting.delete(told.number);
    if ('lost' in told) {
      waiting?.refuse(new Lost(told.lost));
      this.end(told.lost);
    } else if ('problems' in told) waiting?.refuse(new Refused(told.problems));
    else waiting?.give(told.gives);
  }

  #look(): void {
    this.#watch ??= setTimeout(() => {
      this.#watch = undefined;
      const oldest = Math.min(...[...this.#waiting.values()].map(({ since }) => since));
      if (Date.now() - oldest >= this.#patience) this.end('stuck');
      else if (this.#waiting.size > 0) this.#look();
    }, this.#patience);
  }
}
