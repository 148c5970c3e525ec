import { dressCatalogue, wordsOf } from '../../words/index.js';
import { EMPTY } from './build.js';
import * as edits from './edits.js';
import { ownFigure, Readings, valueOf, type Said } from './figures.js';
import type { BareCalculator, BareCaution, CalculatorWords } from './from-words.js';
import { bare, fill, type Table } from './full.js';
import type { Build, Calculator, Engine, Figures, Lug, Netlist, Pin, Steps, Value, Want } from './kinds.js';
import { leaves, rowFor } from './leaves.js';
import { put } from './paths.js';
import { USUAL, type Preferences } from './preferences.js';
import { mendFor, Mends, type Mend, type MendOffer } from './mends.js';
import { problemsIn, Works, type Task } from './works.js';

/** What is on screen of every open lug, whatever else is looked at. */
const ALWAYS: readonly Want[] = ['answers', 'cautions', 'curves', 'circuit', 'parts'];
const BESIDE: readonly Want[] = ['answers', 'cautions'];
const PINNED: readonly Want[] = ['answers', 'curves'];

/** What a mend is looked for in. */
interface MendScene {
  readonly stale: boolean;
  readonly calculator: Calculator;
  readonly full: Figures;
  readonly words: CalculatorWords;
  readonly circuit: Netlist | null;
}

/** What a listener is told: something to look at, or something that must be kept too. */
export type Listener = (edited: boolean) => void;

/** The one state of the page: the build, the lug looked at, and what is known of each. */
export class Desk {
  build: Build = EMPTY;
  /** The lug that is open; empty for the build itself. */
  at = '';
  preferences: Preferences = USUAL;
  catalogue: readonly Calculator[] = [];
  removed: edits.Removed | null = null;
  /** The engine does not come. */
  lost = false;
  readonly readings = new Readings();
  readonly works: Works;
  readonly #engine: Engine;
  readonly #listeners = new Set<Listener>();
  readonly #asked = new Set<string>();
  readonly #more = new Set<Want>();
  readonly #mends = new Mends(() => this.#tell(false));
  #bare: readonly BareCalculator[] = [];
  #full = new WeakMap<Figures, Figures>();

  constructor(engine: Engine) {
    this.#engine = engine;
    this.works = new Works(engine, () => this.#tell(false), (fault) => this.#lose(fault));
  }

  listen(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Fetches the catalogue, then works what is on the strip. */
  async begin(): Promise<void> {
    try {
      this.#bare = await this.#engine.catalogue();
      this.#dress();
      this.workAll();
    } catch (fault) {
      this.#lose(fault);
    }
    this.#tell(false);
  }

  get lug(): Lug | undefined {
    return this.build.lugs.find((lug) => lug.id === this.at);
  }

  calculator(id: string): Calculator | undefined {
    return this.catalogue.find((each) => each.id === id);
  }

  table(id: string): Table {
    return { words: wordsOf(id), rows: this.calculator(id)?.inputs ?? [] };
  }

  /** Every input of a lug or pin as text. */
  full(calculator: string, inputs: Figures): Figures {
    const known = this.#full.get(inputs);
    if (known !== undefined) return known;
    const made = fill(this.table(calculator), inputs);
    if (this.catalogue.length > 0) this.#full.set(inputs, made);
    return made;
  }

  /** Another build takes the place of this one. */
  open(build: Build, at: string): void {
    this.build = build;
    this.at = build.lugs.some((lug) => lug.id === at) ? at : '';
    this.removed = null;
    this.workAll();
    this.#tell(true);
  }

  choose(id: string): void {
    this.at = this.build.lugs.some((lug) => lug.id === id) ? id : '';
    this.workOpen();
    this.#tell(true);
  }

  /** Puts a value into the open lug; nothing else of it changes. */
  type(path: string, value: Value | undefined): void {
    const lug = this.lug;
    if (lug === undefined) return;
    // The reader is asked before anything is worked: its echo is what a person looks for first.
    const row = typeof value === 'string' ? rowFor(this.table(lug.calculator).rows, path) : undefined;
    if (row?.shape === 'quantity') this.reading(value as string, row.unit ?? '1');
    this.fit(put(this.full(lug.calculator, lug.inputs), path, value));
  }

  /** Gives the open lug a whole set of inputs. */
  fit(full: Figures): void {
    const lug = this.lug;
    if (lug === undefined) return;
    const inputs = bare(this.table(lug.calculator), full);
    this.#full.set(inputs, full);
    this.change({ ...lug, inputs });
  }

  /** Changes a lug: its inputs, its position, its pins. */
  change(lug: Lug): void {
    const old = this.build.lugs.find((each) => each.id === lug.id);
    this.build = edits.withChanged(this.build, lug);
    if (old?.inputs !== lug.inputs || old.position !== lug.position) {
      this.#work(lug, 0, ALWAYS);
      this.#workMore();
    }
    if (old?.pins !== lug.pins) this.#workPins(lug);
    this.#tell(true);
  }

  add(calculator: string): void {
    const { build, id } = edits.withLug(this.build, calculator);
    this.build = build;
    this.choose(id);
  }

  /** Takes a lug off the strip; it can be put back until the next one is. */
  remove(id: string): void {
    const after = edits.withoutLug(this.build, id);
    if (after === null) return;
    ({ build: this.build, removed: this.removed } = after);
    if (this.at === id) this.at = '';
    this.#tell(true);
  }

  putBack(): void {
    if (this.removed !== null) this.open(edits.withLugBack(this.build, this.removed), this.at);
  }

  rename(id: string, wanted: string): void {
    const name = edits.nameFor(this.build, id, wanted);
    this.build = edits.withName(this.build, id, name);
    if (name !== id) this.works.rename(id, name);
    if (this.at === id) this.at = name;
    // What was on its way to the old name is asked for again.
    this.workAll();
    this.#tell(true);
  }

  nameBuild(name: string): void {
    this.build = { ...this.build, name };
    this.#tell(true);
  }

  prefer(preferences: Preferences): void {
    this.preferences = preferences;
    this.#dress();
    this.#tell(false);
  }

  /** The page shows more of the open lug from now on: its readings, its wiring. */
  need(wants: readonly Want[]): void {
    const missing = wants.filter((want) => !ALWAYS.includes(want) && !this.#more.has(want));
    for (const want of missing) this.#more.add(want);
    if (missing.length > 0) this.#workMore();
  }

  /** What the reader makes of a text; nothing until it has said so, and then every listener is told. */
  reading(text: string, unit: string): Said | undefined {
    const known = this.readings.get(text, unit);
    if (known === undefined && text !== '') void this.#read(text, unit);
    return known;
  }

  async #read(text: string, unit: string): Promise<void> {
    const name = `${unit} ${text}`;
    if (this.#asked.has(name)) return;
    this.#asked.add(name);
    try {
      this.readings.set(text, unit, await this.#engine.read(text, unit));
    } catch (fault) {
      const [problem] = problemsIn(fault) ?? [];
      if (problem === undefined) this.#asked.delete(name);
      else this.readings.set(text, unit, { problem });
    }
    this.#tell(false);
  }

  /** The values that ▼ and ▲ lead to. */
  async steps(text: string, unit: string, series: string): Promise<Steps> {
    return this.#engine.steps(text, unit, series);
  }

  /** A value that takes a caution of the open lug away, once it has been found. */
  mendOffer(caution: BareCaution, { stale, calculator, full, words, circuit }: MendScene): MendOffer | null {
    if (caution.severity !== 'limit' || stale) return null;
    const table = { words, rows: calculator.inputs };
    const look = (): Promise<Mend | null> => mendFor(this.#engine, calculator.id, table, full, caution.code, () => this.#mends.isFor(full));
    return this.#mends.get(caution.code, full, look, (path) => circuit?.parts.find((part) => part.field === path)?.reference ?? '');
  }

  /** Works every lug anew, the open one first. */
  workAll(): void {
    this.workOpen();
    for (const lug of this.build.lugs) if (lug.id !== this.at) this.#work(lug, 3, BESIDE);
  }

  workOpen(): void {
    const lug = this.lug;
    if (lug === undefined) return;
    this.#work(lug, 0, ALWAYS);
    this.#workMore();
    this.#workPins(lug);
  }

  #work(lug: Lug, rank: number, want: readonly Want[]): void {
    const task = this.#task(lug.calculator, lug, want);
    if (task !== null) this.works.ask(lug.id, rank, task);
  }

  #workMore(): void {
    const lug = this.lug;
    if (lug === undefined || this.#more.size === 0) return;
    const task = this.#task(lug.calculator, lug, [...this.#more]);
    if (task !== null) this.works.askMore(lug.id, 1, task);
  }

  #workPins(lug: Lug): void {
    for (const pin of lug.pins) {
      const task = this.#task(lug.calculator, pin, PINNED);
      if (task !== null) this.works.ask(pinName(lug, pin), 2, task);
    }
  }

  #task(calculator: string, { inputs, position }: Lug | Pin, want: readonly Want[]): Task | null {
    const rows = this.calculator(calculator)?.inputs;
    return rows === undefined ? null : { calculator, rows, full: this.full(calculator, inputs), position, want };
  }

  #dress(): void {
    this.catalogue = dressCatalogue(this.#bare, this.preferences) as readonly Calculator[];
    this.#full = new WeakMap();
    for (const { id, inputs } of this.catalogue) this.#seed(leaves(inputs, fill(this.table(id), {})), inputs);
  }

  /** The calculators' own values need no reader: their figures are in the catalogue. */
  #seed(all: ReturnType<typeof leaves>, rows: Table['rows']): void {
    for (const { path, row, value } of all) {
      const figure = row.shape === 'quantity' ? ownFigure(rows, path) : null;
      if (typeof value !== 'string' || figure === null) continue;
      if (valueOf(this.readings.get(value, row.unit ?? '1')) === null) this.readings.set(value, row.unit ?? '1', { value: figure });
    }
  }

  #lose(fault: unknown): void {
    this.lost = true;
    if (typeof globalThis.reportError === 'function') globalThis.reportError(fault);
    this.#tell(false);
  }

  #tell(edited: boolean): void {
    for (const listener of this.#listeners) listener(edited);
  }
}

/** What a pin's work is kept under. */
export function pinName(lug: Lug, pin: Pin): string {
  return `${lug.id} pin ${pin.name}`;
}
