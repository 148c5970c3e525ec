/** One thing to do; it is told whether a newer one of its name has come meanwhile. */
export type Job = () => Promise<void>;

/**
 * Does one job at a time, the most pressing first. A job of a name that is still waiting takes the place of the older
 * one: while a person types only the last text is worked.
 */
export class Runner {
  readonly #waiting = new Map<string, { readonly rank: number; readonly job: Job }>();
  #busy = false;

  /** `rank` 0 is what the person looks at; higher ones wait for it. */
  ask(name: string, rank: number, job: Job): void {
    this.#waiting.set(name, { rank, job });
    if (!this.#busy) void this.#run();
  }

  /** Forgets a job that has not begun. */
  forget(name: string): void {
    this.#waiting.delete(name);
  }

  async #run(): Promise<void> {
    this.#busy = true;
    for (let next = this.#next(); next !== undefined; next = this.#next()) {
      this.#waiting.delete(next.name);
      try {
        await next.job();
      } catch (fault) {
        // A job tells its own faults; what it did not expect must not hold up the rest.
        reportError(fault);
      }
    }
    this.#busy = false;
  }

  #next(): { readonly name: string; readonly job: Job } | undefined {
    let found: { readonly name: string; readonly rank: number; readonly job: Job } | undefined;
    for (const [name, { rank, job }] of this.#waiting) {
      if (found === undefined || rank < found.rank) found = { name, rank, job };
    }
    return found;
  }
}

function reportError(fault: unknown): void {
  if (typeof globalThis.reportError === 'function') globalThis.reportError(fault);
  else throw fault;
}
