import { fetchWords, isAway } from '../../words/fetched.js';
import { wordsOf } from '../../words/index.js';
import { withoutAnswered } from './answered.js';
import { EMPTY } from './build.js';
import { dressed } from './dressing.js';
import * as edits from './edits.js';
import { Readings, type Said } from './figures.js';
import type { BareCalculator, BareCaution } from './from-words.js';
import { bare, fill, type Table } from './full.js';
import type { Build, Calculator, Engine, Figures, Lug, Pin, Sounding, Steps, Value, Want } from './kinds.js';
import { rowFor } from './leaves.js';
import { put } from './paths.js';
import { USUAL, type Preferences } from './preferences.js';
import { mendFor, Mends, type Mend, type MendOffer, type MendScene } from './mends.js';
import { ALWAYS, BESIDE, LATER, PINNED, pinName } from './wants.js';
import { problemsIn, Works, type Task } from './works.js';

/**
 * What a listener is told: something was done that must be kept (`edited`); a key was struck and its answer is on the
 * way (`typed`, to be kept too); a text was read (`read`); there is something new to look at (`shown`).
 */
export type News = 'edited' | 'typed' | 'read' | 'shown';
export type Listener = (news: News) => void;

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
  readonly #asked = new Map<string, Promise<void>>();
  readonly #more = new Set<Want>();
  readonly #later = new Set<Want>();
  #laterTimer: ReturnType<typeof setTimeout> | undefined;
  readonly #mends = new Mends(() => this.#tell('shown'));
  #bare: readonly BareCalculator[] = [];
  #full = new WeakMap<Figures, Figures>();

  constructor(engine: Engine) {
    this.#engine = engine;
    this.works = new Works(engine, () => this.#tell('shown'), (fault) => this.#lose(fault));
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
    this.#tell('shown');
  }

  /** Fetches the words of calculators, of all where none is named; what waited for these, and for no others, is worked. */
  async learn(ids?: readonly string[]): Promise<void> {
    if (ids?.some(isAway) === false) return;
    const waited = this.build.lugs.filter(({ calculator }) => isAway(calculator) && (ids?.includes(calculator) ?? true));
    try {
      await fetchWords(ids);
    } catch (fault) {
      if (this.lug !== undefined && isAway(this.lug.calculator)) this.#lose(fault);
      return;
    }
    if (this.#bare.length === 0) return;
    this.#dress();
    for (const lug of waited) lug.id === this.at ? this.workOpen() : this.#work(lug, 3, BESIDE);
    this.#tell('shown');
  }

  /** Where sound is worked; nothing where there is no such engine. */
  get sound(): Sounding | undefined { return this.#engine.sound?.(); }

  get lug(): Lug | undefined { return this.build.lugs.find((lug) => lug.id === this.at); }

  calculator(id: string): Calculator | undefined { return this.catalogue.find((each) => each.id === id); }

  table(id: string): Table {
    return { words: wordsOf(id), rows: this.calculator(id)?.inputs ?? [] };
  }

  /** Every input of a lug or pin as text. */
  full(calculator: string, inputs: Figures): Figures {
    const known = this.#full.get(inputs);
    if (known !== undefined) return known;
    const made = fill(this.table(calculator), inputs);
    if (this.calculator(calculator) !== undefined) this.#full.set(inputs, made);
    return made;
  }

  /** Another build takes the place of this one. */
  open(build: Build, at: string): void {
    this.build = build;
    this.at = build.lugs.some((lug) => lug.id === at) ? at : '';
    this.removed = null;
    this.workAll();
    this.#tell('edited');
  }

  choose(id: string): void {
    this.at = this.build.lugs.some((lug) => lug.id === id) ? id : '';
    this.workOpen();
    this.#tell('edited');
  }

  /** Puts a value into the open lug; nothing else of it changes. */
  type(path: string, value: Value | undefined): void {
    const lug = this.lug;
    if (lug === undefined) return;
    // The reader is asked before anything is worked: its echo is what a person looks for first.
    const row = typeof value === 'string' ? rowFor(this.table(lug.calculator).rows, path) : undefined;
    if (row?.shape === 'quantity') this.reading(value as string, row.unit ?? '1');
    this.fit(put(this.full(lug.calculator, lug.inputs), path, value), 'typed');
  }

  /** Gives the open lug a whole set of inputs. */
  fit(full: Figures, news: News = 'edited'): void {
    const lug = this.lug;
    if (lug === undefined) return;
    const inputs = bare(this.table(lug.calculator), full);
    this.#full.set(inputs, full);
    this.change({ ...lug, inputs }, news);
  }

  /** Changes a lug: its inputs, its position, its pins. */
  change(lug: Lug, news: News = 'edited'): void {
    const old = this.build.lugs.find((each) => each.id === lug.id);
    const other = old?.inputs !== lug.inputs || old.position !== lug.position;
    this.build = edits.withChanged(this.build, other ? withoutAnswered(lug) : lug);
    if (other) {
      this.#work(lug, 0, ALWAYS);
      this.#workMore();
    }
    if (old?.pins !== lug.pins) this.#workPins(lug);
    this.#tell(news);
  }

  add(calculator: string, inputs: Figures = {}): void {
    const { build, id } = edits.withLug(this.build, calculator, calculator, inputs);
    this.build = build;
    this.choose(id);
  }

  /** Takes a lug off the strip; it can be put back until the next one is. */
  remove(id: string): void {
    const after = edits.withoutLug(this.build, id);
    if (after === null) return;
    ({ build: this.build, removed: this.removed } = after);
    if (this.at === id) this.at = '';
    this.#tell('edited');
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
    this.#tell('edited');
  }

  nameBuild(name: string): void {
    this.build = { ...this.build, name };
    this.#tell('edited');
  }

  prefer(preferences: Preferences): void {
    this.preferences = preferences;
    this.#dress();
    this.#tell('shown');
  }

  /** The page shows more of the open lug from now on, such as its readings; or, `later`, paper may ask for it. */
  need(wants: readonly Want[], later = false): void {
    const more = later ? this.#later : this.#more;
    const missing = wants.filter((want) => !ALWAYS.includes(want) && !more.has(want));
    for (const want of missing) more.add(want);
    if (missing.length > 0) this.#workMore();
  }

  /** What the reader makes of a text; nothing until it has said so, and then every listener is told. */
  reading(text: string, unit: string): Said | undefined {
    const known = this.readings.get(text, unit);
    if (known === undefined && text !== '') this.#read(text, unit);
    return known;
  }

  /** The same for one who waits for it. */
  async whenRead(text: string, unit: string): Promise<void> {
    if (this.reading(text, unit) === undefined) await this.#asked.get(`${unit} ${text}`);
  }

  #read(text: string, unit: string): void {
    const name = `${unit} ${text}`;
    if (!this.#asked.has(name)) this.#asked.set(name, this.#reads(text, unit));
  }

  async #reads(text: string, unit: string): Promise<void> {
    try {
      this.readings.set(text, unit, await this.#engine.read(text, unit));
    } catch (fault) {
      const [problem] = problemsIn(fault) ?? [];
      if (problem !== undefined) this.readings.set(text, unit, { problem });
    }
    this.#asked.delete(`${unit} ${text}`);
    this.#tell('read');
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
    if (lug === undefined) return;
    const ask = (wants: ReadonlySet<Want>): void => {
      const task = wants.size === 0 ? null : this.#task(lug.calculator, lug, [...wants]);
      if (task !== null) this.works.askMore(lug.id, 1, task);
    };
    ask(this.#more);
    clearTimeout(this.#laterTimer);
    if (this.#later.size > 0) this.#laterTimer = setTimeout(() => { ask(this.#later); }, LATER);
  }

  #workPins(lug: Lug): void {
    for (const pin of lug.pins) {
      const task = this.#task(lug.calculator, pin, PINNED);
      if (task !== null) this.works.ask(pinName(lug, pin), 2, task);
    }
  }

  #task(calculator: string, { inputs, position }: Lug | Pin, want: readonly Want[]): Task | null {
    const rows = this.calculator(calculator)?.inputs;
    if (rows === undefined && isAway(calculator)) void this.learn([calculator]);
    return rows === undefined ? null : { calculator, rows, full: this.full(calculator, inputs), position, want };
  }

  #dress(): void {
    this.catalogue = dressed(this.#bare, this.preferences, this.readings);
    this.#full = new WeakMap();
  }

  #lose(fault: unknown): void {
    this.lost = true;
    if (typeof globalThis.reportError === 'function') globalThis.reportError(fault);
    this.#tell('shown');
  }

  #tell(news: News): void {
    for (const listener of this.#listeners) listener(news);
  }
}
