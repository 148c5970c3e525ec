import { inputWords, typedText } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import type { Table } from './full.js';
import type { CalculatorWords } from './from-words.js';
import type { BareProblem, Calculator, Engine, Figures, InputRow, Netlist } from './kinds.js';
import { sent } from './full.js';
import { put, valueAt } from './paths.js';
import { seriesOf } from './steps.js';
import { rowFor } from './leaves.js';
import { problemsIn } from './works.js';

/** Which value to move for a rating that is exceeded, and which way: what a builder would try first. */
const REMEDIES: Readonly<Record<string, readonly (readonly [path: string, way: 'up' | 'down'])[]>> = {
  plate_dissipation: [['cathode_ohms', 'up'], ['plate_ohms', 'up'], ['supply_volts', 'down']],
  plate_volts_over: [['supply_volts', 'down']],
  supply_over: [['supply_volts', 'down']],
  cathode_amps_over: [['cathode_ohms', 'up'], ['plate_ohms', 'up']],
  peak_over: [['winding_ohms', 'up'], ['sections[0].farads', 'down']],
  plate_ohms_under: [['winding_ohms', 'up']],
  first_capacitor_over: [['sections[0].farads', 'down']],
  choke_under_critical: [['sections[0].henries', 'up'], ['bleeder_ohms', 'down']],
  grid_leak_over: [['grid_ohms', 'down']],
};
/** Twelve steps a decade: three decades are more than any mend should need. */
const MOST_STEPS = 36;
const REST = 400;

/** A value that brings a rating back, as a person would type it. */
export interface Mend {
  readonly code: string;
  readonly path: string;
  readonly text: string;
}

/**
 * The nearest preferred value of one part that takes the caution `code` away without another rating being exceeded,
 * found by working the whole circuit at each; nothing where no one part does it.
 */
export async function mendFor(
  engine: Engine, id: string, table: Table, full: Figures, code: string, current: () => boolean,
): Promise<Mend | null> {
  for (const [path, way] of REMEDIES[code] ?? []) {
    const row = rowFor(table.rows, path);
    const typed = valueAt(full, path);
    if (row === undefined || typeof typed !== 'string') continue;
    const text = await along(engine, id, table, full, { code, path, way, row, typed }, current);
    if (!current()) return null;
    if (text !== null) return { code, path, text };
  }
  return null;
}

interface Way {
  readonly code: string;
  readonly path: string;
  readonly way: 'up' | 'down';
  readonly row: InputRow;
  readonly typed: string;
}

async function along(engine: Engine, id: string, table: Table, full: Figures, { code, path, way, row, typed }: Way, current: () => boolean): Promise<string | null> {
  const percent = inputWords(table.words, path).percent === true;
  let text = typed;
  try {
    for (let k = 0; k < MOST_STEPS && current(); k += 1) {
      const steps = await engine.steps(text, row.unit ?? '1', row.unit === 'V' ? 'E24' : seriesOf(row) === 'E24' ? 'E12' : 'E6');
      const value = way === 'up' ? steps.higher : steps.lower;
      if (value === null || value < (row.least ?? 0) || value > (row.most ?? Infinity)) return null;
      text = typedText(value, row.unit ?? '1', percent);
      const outcome = await engine.work(id, sent(table.rows, put(full, path, text)), ['cautions']);
      const over = (outcome.cautions ?? []).filter(({ severity }) => severity === 'limit').map((caution) => caution.code);
      if (!over.includes(code)) return text;
    }
  } catch (fault) {
    // A value on the way that has no answer ends the search; anything else is the engine's to tell.
    const problems: readonly BareProblem[] | null = problemsIn(fault);
    if (problems === null) throw fault;
  }
  return null;
}

/** What a mend is looked for in. */
export interface MendScene {
  readonly stale: boolean;
  readonly calculator: Calculator;
  readonly full: Figures;
  readonly words: CalculatorWords;
  readonly circuit: Netlist | null;
}

/** A mend as a button. */
export interface MendOffer {
  readonly path: string;
  readonly text: string;
  readonly words: string;
}

/** The mends found for one set of inputs; another set forgets them. */
export class Mends {
  #full: Figures | null = null;
  readonly #found = new Map<string, MendOffer | null>();
  readonly #told: () => void;

  constructor(told: () => void) {
    this.#told = told;
  }

  isFor(full: Figures): boolean {
    return this.#full === full;
  }

  get(code: string, full: Figures, look: () => Promise<Mend | null>, calledIn: (path: string) => string): MendOffer | null {
    if (this.#full !== full) {
      this.#full = full;
      this.#found.clear();
    }
    const known = this.#found.get(code);
    if (known !== undefined) return known;
    this.#found.set(code, null);
    void this.#look(code, full, look, calledIn);
    return null;
  }

  async #look(code: string, full: Figures, look: () => Promise<Mend | null>, calledIn: (path: string) => string): Promise<void> {
    // Not while a person types: the search works the whole circuit many times over.
    await new Promise((then) => { setTimeout(then, REST); });
    if (!this.isFor(full)) return;
    const mend = await look();
    if (mend === null || !this.isFor(full)) return;
    this.#found.set(code, { path: mend.path, text: mend.text, words: PAGE.putIn(mend.text, calledIn(mend.path)) });
    this.#told();
  }
}
