import { answeredOf, bareBuild, withAnswers } from './answered.js';
import { EMPTY, FORM, readBuild, written } from './build.js';
import type { Desk } from './desk.js';
import { withLug } from './edits.js';
import { fromHash, isLink, toHash } from './hash.js';
import type { Keep } from './keep.js';
import type { Build, Lug } from './kinds.js';
import { same } from './paths.js';

/** A letter pause in typing after which the build is kept; never more than half a second of typing is at stake. */
const KEEP_AFTER = 150;
const KEEP_WITHIN = 400;
/** Browsers refuse addresses that change too often. */
const LINK_AFTER = 350;

/** What the page should say of the session, by name; the words are in www/words. */
export type Notice = 'link_not_ours' | 'link_newer' | 'file_not_ours' | 'file_newer' | 'aside' | 'refused' | 'full' | 'other_tab' | 'overwrote';

/** Where the address of the page is read and written. */
export interface Address {
  hash(): string;
  /** Writes the build behind the address of the open lug's page. */
  write(hash: string, calculator: string): void;
}

/** Keeps the desk's build in the browser and in the address, and takes it from there. */
export class Session {
  readonly #desk: Desk;
  readonly #keep: Keep;
  readonly #address: Address;
  readonly #notice: (notice: Notice, form?: number) => void;
  /** The release that answers here; it is kept with the answers. */
  release = '';
  #hashes: readonly string[] = [];
  #keepTimer: ReturnType<typeof setTimeout> | undefined;
  #linkTimer: ReturnType<typeof setTimeout> | undefined;
  #waitingSince = 0;
  /** What was kept last has no answers yet for some lug. */
  #owing = false;
  #began = false;

  constructor(desk: Desk, keep: Keep, address: Address, notice: (notice: Notice, form?: number) => void) {
    this.#desk = desk;
    this.#keep = keep;
    this.#address = address;
    this.#notice = notice;
    desk.listen((news) => {
      if (this.#began && (news === 'edited' || news === 'typed' || (news === 'shown' && this.#owing))) this.#later();
    });
  }

  /**
   * Opens what the address holds, else what was kept, else a bench with the page's own calculator. A page that is a single
   * file is the page of none and of all: `null` opens the lug that was looked at last.
   */
  async begin(page: string | null): Promise<void> {
    const calculator = page ?? '';
    const hash = this.#address.hash();
    const kept = this.#keep.read();
    const read = readBuild(kept?.build ?? null);
    const own = 'build' in read ? { build: read.build, at: kept?.at ?? '' } : { build: EMPTY, at: '' };
    const foreign = isLink(hash) && kept?.hashes.includes(hash.slice(1)) !== true;
    const linked = foreign ? await this.#linked(hash, own.build) : null;
    const { build, at } = linked ?? own;
    this.#began = true;
    const looked = build.lugs.find((lug) => lug.id === at);
    const right = linked !== null || page === null ? looked : looked?.calculator === calculator ? looked : undefined;
    const other = right ?? build.lugs.find((lug) => lug.calculator === calculator);
    if (other !== undefined || calculator === '') {
      this.#desk.open(build, page === '' && linked === null ? '' : (other?.id ?? ''));
      return;
    }
    const more = withLug(build, calculator);
    this.#desk.open(more.build, more.id);
  }

  /** The address changed under the page: somebody put another link there. */
  async relink(hash: string): Promise<void> {
    if (!isLink(hash) || this.#hashes.includes(hash.slice(1))) return;
    const linked = await this.#linked(hash, this.#desk.build);
    if (linked !== null) this.#desk.open(linked.build, linked.at);
  }

  async #linked(hash: string, own: Build): Promise<{ readonly build: Build; readonly at: string } | null> {
    const read = await fromHash(hash);
    if (read === null || 'refused' in read) {
      this.#notice(read !== null && read.refused === 'newer' ? 'link_newer' : 'link_not_ours', read !== null && 'form' in read ? read.form : FORM);
      return null;
    }
    if (!same(written(bareBuild(read.build)), written(bareBuild(own))) && own.lugs.length > 0) this.#setAside(own, this.#desk.at);
    return { build: read.build, at: read.at ?? read.build.lugs[0]?.id ?? '' };
  }

  /** Opens the text of a file; the build that was on the bench is put aside. */
  openText(text: string): void {
    let given: unknown = null;
    try {
      given = JSON.parse(text);
    } catch {
      // Said below: it is no build.
    }
    const read = readBuild(given);
    if ('refused' in read) this.#notice(read.refused === 'newer' ? 'file_newer' : 'file_not_ours', 'form' in read ? read.form : FORM);
    else this.replace(read.build, '');
  }

  /** Another build on the bench; the one that was there is put aside. */
  replace(build: Build, at: string): void {
    if (this.#desk.build.lugs.length > 0) this.#setAside(this.#desk.build, this.#desk.at);
    this.#desk.open(build, at);
  }

  /** The build that was put aside comes back, and this one goes aside. */
  bringBack(): void {
    const aside = this.#keep.before();
    const read = readBuild(aside?.build ?? null);
    if ('build' in read) this.replace(read.build, aside?.at ?? '');
  }

  /** Takes what another tab has kept. */
  takeOther(): void {
    const kept = this.#keep.read();
    const read = readBuild(kept?.build ?? null);
    if ('build' in read) this.replace(read.build, this.#desk.at);
  }

  get hasAside(): boolean {
    return this.#keep.before() !== null;
  }

  /** The build with every value in it, as a file has it: it must mean the same when a later page opens it. */
  fileText(): string {
    const whole = (lug: Lug): Lug['inputs'] => this.#desk.full(lug.calculator, lug.inputs);
    return `${JSON.stringify(written(withAnswers(this.#desk, this.release), whole), null, 2)}\n`;
  }

  /** The text behind `#` that says everything. */
  async link(): Promise<string> {
    return toHash({ build: bareBuild(this.#desk.build), at: this.#desk.at });
  }

  /** Keeps at once what is on its way: the page is being left. */
  flush(): void {
    if (this.#keepTimer !== undefined) this.#keepNow();
  }

  #setAside(build: Build, at: string): void {
    this.#keep.setAside({ build: written(build), at, hashes: [], stamp: '' });
    this.#notice('aside');
  }

  #later(): void {
    const now = Date.now();
    if (this.#keepTimer === undefined) this.#waitingSince = now;
    clearTimeout(this.#keepTimer);
    const left = Math.max(0, this.#waitingSince + KEEP_WITHIN - now);
    this.#keepTimer = setTimeout(() => this.#keepNow(), Math.min(KEEP_AFTER, left));
    clearTimeout(this.#linkTimer);
    this.#linkTimer = setTimeout(() => void this.#linkNow(), LINK_AFTER);
  }

  #keepNow(): void {
    clearTimeout(this.#keepTimer);
    this.#keepTimer = undefined;
    const build = withAnswers(this.#desk, this.release);
    this.#owing = build.lugs.some((lug) => answeredOf(lug) === null);
    const { outcome, overwrote } = this.#keep.write(written(build), this.#desk.at, this.#hashes);
    if (outcome !== 'kept') this.#notice(outcome);
    else if (overwrote) this.#notice('overwrote');
  }

  async #linkNow(): Promise<void> {
    const hash = await this.link();
    if (hash === this.#hashes[0]) return;
    this.#hashes = [hash, ...this.#hashes].slice(0, 2);
    this.#keepNow();
    this.#address.write(hash, this.#desk.lug?.calculator ?? '');
  }
}
