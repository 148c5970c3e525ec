import type { BareProblem, Engine, Figures, InputRow, Outcome, Want } from './kinds.js';
import { sent } from './full.js';
import { Runner } from './runner.js';

/** What is known of one set of inputs. */
export interface Work {
  /** The last good outcome, if there ever was one. */
  readonly outcome: Outcome | null;
  /** The inputs, whole, that it is for. */
  readonly good: Figures | null;
  readonly position: number;
  /** What is wrong with the inputs now; empty where the outcome is theirs. */
  readonly problems: readonly BareProblem[];
}

/** Nothing known yet. */
export const UNKNOWN: Work = { outcome: null, good: null, position: 0, problems: [] };

/** What is to be worked. */
export interface Task {
  readonly calculator: string;
  readonly rows: readonly InputRow[];
  readonly full: Figures;
  readonly position: number;
  readonly want: readonly Want[];
}

/** The problems in a refusal of the engine; nothing where the fault is of another kind. */
export function problemsIn(fault: unknown): readonly BareProblem[] | null {
  if (Array.isArray(fault)) return fault as readonly BareProblem[];
  if (typeof fault !== 'object' || fault === null) return null;
  const problems = (fault as { problems?: unknown }).problems;
  return Array.isArray(problems) ? (problems as readonly BareProblem[]) : null;
}

/** Keeps the work on each lug and pin, and asks the engine for one thing at a time. */
export class Works {
  readonly #works = new Map<string, Work>();
  readonly #asked = new Map<string, number>();
  readonly #runner = new Runner();
  readonly #engine: Engine;
  readonly #told: () => void;
  readonly #lost: (fault: unknown) => void;
  #count = 0;

  constructor(engine: Engine, told: () => void, lost: (fault: unknown) => void) {
    this.#engine = engine;
    this.#told = told;
    this.#lost = lost;
  }

  get(name: string): Work {
    return this.#works.get(name) ?? UNKNOWN;
  }

  /** The answers of `name` for a task are to come; a newer ask takes its place. */
  ask(name: string, rank: number, task: Task): void {
    this.#count += 1;
    const mark = this.#count;
    this.#asked.set(name, mark);
    this.#runner.forget(`${name} more`);
    this.#runner.ask(name, rank, async () => {
      await this.#work(name, mark, task);
    });
  }

  /** More of what the last good outcome is made of: parts, readings, wiring. */
  askMore(name: string, rank: number, task: Task): void {
    const mark = this.#asked.get(name);
    this.#runner.ask(`${name} more`, rank, async () => {
      if (this.#asked.get(name) !== mark || this.get(name).problems.length > 0) return;
      try {
        const more = await this.#engine.work(task.calculator, sent(task.rows, task.full), task.want);
        const work = this.get(name);
        if (this.#asked.get(name) !== mark) return;
        this.#works.set(name, { ...work, outcome: { ...work.outcome, ...more } });
        this.#told();
      } catch (fault) {
        if (problemsIn(fault) === null) this.#lost(fault);
      }
    });
  }

  /** What was known under one name is known under another. */
  rename(from: string, to: string): void {
    const work = this.#works.get(from);
    if (work !== undefined) this.#works.set(to, work);
    this.drop(from);
  }

  drop(name: string): void {
    this.#works.delete(name);
    this.#asked.delete(name);
  }

  async #work(name: string, mark: number, task: Task): Promise<void> {
    const { calculator, rows, full, position, want } = task;
    try {
      const outcome = await this.#engine.work(calculator, sent(rows, full), want);
      if (this.#stillWanted(name, mark)) this.#works.set(name, { outcome, good: full, position, problems: [] });
    } catch (fault) {
      const problems = problemsIn(fault);
      if (problems === null) this.#lost(fault);
      else if (this.#stillWanted(name, mark)) this.#works.set(name, { ...this.get(name), problems });
    }
    this.#told();
  }

  /** An answer to an older text is still shown while the newer one is worked, but never after it. */
  #stillWanted(name: string, mark: number): boolean {
    const last = this.#asked.get(name);
    return last !== undefined && mark <= last;
  }
}
