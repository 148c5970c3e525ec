import type { Value } from './kinds.js';
import { isRecord } from './paths.js';

const BUILD = 'tagstrip.build';
const BEFORE = 'tagstrip.before';
/** The link may lag one step behind what is kept. */
const HASHES = 2;

/** What is kept of a session. */
export interface Kept {
  readonly build: Value;
  readonly at: string;
  /** The last links written for it, newest first: by these a reload is told from a link that somebody sent. */
  readonly hashes: readonly string[];
  /** Which page wrote it, and its how manieth time. */
  readonly stamp: string;
}

/** How a try to keep something went. */
export type Outcome = 'kept' | 'refused' | 'full';

/** As much of the browser's storage as is needed. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem'>;

/** Keeps the build over reloads and crashes, and never writes over another tab's without keeping that too. */
export class Keep {
  #seen = '';
  #count = 0;
  readonly #shelf: Shelf | null;
  readonly #writer: string;

  constructor(shelf: Shelf | null, writer: string) {
    this.#shelf = shelf;
    this.#writer = writer;
  }

  /** What was kept last, by any tab. */
  read(): Kept | null {
    const kept = this.#load(BUILD);
    if (kept !== null) this.#seen = kept.stamp;
    return kept;
  }

  /** The build that a link, a file or another tab took the place of. */
  before(): Kept | null {
    return this.#load(BEFORE);
  }

  /** Puts a build aside, for `before`. */
  setAside(kept: Kept): Outcome {
    return this.#save(BEFORE, kept);
  }

  /** Keeps a build. `overwrote` says that another tab's was put aside for it. */
  write(build: Value, at: string, hashes: readonly string[]): { readonly outcome: Outcome; readonly overwrote: boolean } {
    const there = this.#load(BUILD);
    const overwrote = there !== null && there.stamp !== this.#seen;
    if (overwrote) this.setAside(there);
    this.#count += 1;
    const kept = { build, at, hashes: hashes.slice(0, HASHES), stamp: `${this.#writer} ${this.#count}` };
    const outcome = this.#save(BUILD, kept);
    if (outcome === 'kept') this.#seen = kept.stamp;
    return { outcome, overwrote };
  }

  #load(key: string): Kept | null {
    try {
      const given: unknown = JSON.parse(this.#shelf?.getItem(key) ?? 'null');
      if (!isRecord(given)) return null;
      const { build, at, hashes, stamp } = given;
      const list = Array.isArray(hashes) ? hashes.filter((hash): hash is string => typeof hash === 'string') : [];
      return {
        build: build ?? null,
        at: typeof at === 'string' ? at : '',
        hashes: list,
        stamp: typeof stamp === 'string' ? stamp : '',
      };
    } catch {
      return null;
    }
  }

  #save(key: string, kept: Kept): Outcome {
    if (this.#shelf === null) return 'refused';
    try {
      this.#shelf.setItem(key, JSON.stringify(kept));
      return 'kept';
    } catch (fault) {
      return fault instanceof DOMException && fault.name === 'QuotaExceededError' ? 'full' : 'refused';
    }
  }
}

/** The browser's storage, where it lets us. */
export function shelf(): Shelf | null {
  try {
    const store = globalThis.localStorage;
    store.setItem('tagstrip.try', '1');
    store.removeItem('tagstrip.try');
    return store;
  } catch {
    return null;
  }
}

/** Whether a storage event is about the kept build. */
export function isAboutBuild(event: StorageEvent): boolean {
  return event.key === BUILD || event.key === null;
}
