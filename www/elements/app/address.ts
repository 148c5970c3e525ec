import type { Address } from '../state/session.js';

/** The page's address: each calculator has its own, and the build stands behind `#`. */
export class PageAddress implements Address {
  /** Where the site begins; nothing for a page that is a single file. */
  readonly #root: URL | null;

  constructor(root: string | null) {
    const whole = root !== null && /^https?:$/.test(location.protocol);
    this.#root = whole ? new URL(root.endsWith('/') ? root : `${root}/`, location.href) : null;
    if (this.#root !== null) this.#root.hash = '';
  }

  hash(): string {
    return location.hash;
  }

  /** Where a release stands for good; nothing for a page that is a single file. */
  published(release: string): string {
    if (this.#root === null || release === '') return '';
    const place = `v/${release}/`;
    return this.#root.href.endsWith(`/${place}`) ? this.#root.href : new URL(place, this.#root).href;
  }

  /** The address of a calculator's page; of the build's own where none is said. */
  of(calculator: string): string {
    if (this.#root === null) return '#';
    return calculator === '' ? this.#root.href : new URL(`${calculator}/`, this.#root).href;
  }

  write(hash: string, calculator: string): void {
    this.#set('replaceState', hash, calculator);
  }

  /** A step in the browser's history, so that its way back leads to the lug before. */
  go(calculator: string): void {
    this.#set('pushState', location.hash.slice(1), calculator);
  }

  #set(how: 'pushState' | 'replaceState', hash: string, calculator: string): void {
    const base = this.#root === null ? location.href.replace(/#.*$/, '') : this.of(calculator);
    try {
      history[how]({ tagstrip: true, at: this.at }, '', hash === '' ? base : `${base}#${hash}`);
    } catch {
      // A sandboxed or single-file page may not change its address; the state is kept elsewhere too.
    }
  }

  /** The lug that the present entry of the history is for. */
  at = '';
}
