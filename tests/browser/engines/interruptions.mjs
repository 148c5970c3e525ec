// Updates that are interrupted: whatever happens to them, a page is whole, of one release, and has its answers.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { serveFolder } from '../../../scripts/lib/static-server.mjs';
import { Killable } from './killable.mjs';
import { halfDeployed, odds, release, withByteFlipped } from './releases.mjs';

const UNDER = '/club/tagstrip/';
/** An update takes about this long on a small machine; an interruption falls somewhere within. */
const UPDATE = 900;
const wait = (ms) => new Promise((done) => setTimeout(done, ms));

export const KINDS = ['killed', 'cut', 'flipped', 'half', 'full'];

/**
 * Plays `rounds` interrupted updates from one release to another and back. Gives how many of each kind there were, and in
 * words what went wrong: a page of two releases, a page without answers, a release that could not be had afterwards;
 * and how many pages came only when loaded anew.
 */
export async function interrupt(site, rounds, seed = 1) {
  const scene = new Scene(odds(seed));
  await scene.begin(site);
  const faults = [];
  const counts = Object.fromEntries(KINDS.map((kind) => [kind, 0]));
  try {
    for (let k = 0; k < rounds; k += 1) {
      const kind = KINDS[k % KINDS.length];
      counts[kind] += 1;
      const fault = await scene.round(kind).catch((thrown) => String(thrown).split('\n')[0]);
      if (fault !== undefined) faults.push(`${k} ${kind}: ${fault}`);
    }
  } finally {
    await scene.end();
  }
  return { counts, faults, anew: scene.anew };
}

class Scene {
  #random;
  #scratch = mkdtempSync(join(tmpdir(), 'tagstrip-update-'));
  #releases = {};
  #served;
  #server;
  #now = 'one';
  #browser = new Killable();
  /** How often a page had to be loaded anew. */
  anew = 0;

  constructor(random) {
    this.#random = random;
  }

  async begin(site) {
    for (const name of ['one', 'two']) this.#releases[name] = await release(site, this.#scratch, name);
    this.#served = this.#releases.one;
    await this.#serve(0);
    const page = await this.#page();
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      while (registration.active?.state !== 'activated') await new Promise((then) => { setTimeout(then, 20); });
    });
    await page.close();
  }

  async end() {
    await this.#browser.close();
    await this.#server.close();
    rmSync(this.#scratch, { recursive: true, force: true });
  }

  async #serve(port) {
    this.#server = await serveFolder(() => this.#served, { under: UNDER, port });
  }

  /**
   * The voice page, opened. Chromium now and then stops a worker in the moment at which its last page is closed and the
   * next one opened, with the new page's request in its hands: the worker takes it and does not run again. A person
   * loads the page anew, and so does this, once, and counts it.
   */
  async #page(again = true) {
    const page = await (await this.#browser.context()).newPage();
    try {
      await page.goto(`${this.#server.address}voice/`, { timeout: 15_000 });
    } catch (fault) {
      // Left open it would keep the next release waiting, and one fault would look like several.
      await page.close();
      if (!again || fault.name !== 'TimeoutError') throw fault;
      this.anew += 1;
      return this.#page(false);
    }
    return page;
  }

  /** One interrupted update; what is wrong with what is there after it. */
  async round(kind) {
    const target = this.#now === 'one' ? 'two' : 'one';
    const after = await this.#interrupted(kind, this.#releases[target]);
    const wrong = await this.#look();
    await after();
    if (wrong !== undefined) return wrong;
    // Then everything is well again, and the new release must come in whole.
    this.#served = this.#releases[target];
    return this.#comesIn(target);
  }

  /** Plays the interruption; gives what undoes it. */
  async #interrupted(kind, fresh) {
    const page = await this.#page();
    const begin = () => page.evaluate(() => { void navigator.serviceWorker.getRegistration().then((one) => one?.update()).catch(() => undefined); });
    const nothing = async () => undefined;
    this.#served = fresh;
    if (kind === 'killed') {
      await begin();
      await wait(this.#random() * UPDATE);
      await this.#browser.kill();
      return nothing;
    }
    if (kind === 'cut') {
      const port = Number(new URL(this.#server.address).port);
      await begin();
      await wait((this.#random() * UPDATE) / 3);
      await this.#server.close();
      await wait(300);
      await page.close();
      return () => this.#serve(port);
    }
    if (kind === 'full') {
      const wire = await page.context().newCDPSession(page);
      const origin = new URL(this.#server.address).origin;
      const used = await page.evaluate(async () => (await navigator.storage.estimate()).usage ?? 0);
      await wire.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: Math.round(used + this.#random() * 400_000) });
      await begin();
      await wait(UPDATE);
      return async () => {
        await wire.send('Storage.overrideQuotaForOrigin', { origin });
        await page.close();
      };
    }
    const spoilt = join(this.#scratch, 'spoilt');
    rmSync(spoilt, { recursive: true, force: true });
    if (kind === 'flipped') withByteFlipped(fresh, spoilt, this.#random);
    else halfDeployed(this.#releases[this.#now], fresh, spoilt, this.#random);
    this.#served = spoilt;
    await begin();
    await wait(UPDATE);
    await page.close();
    return nothing;
  }

  /** A page as a person opens it now: blank, mixed, or (nothing) as it should be. */
  async #look() {
    const page = await this.#page();
    try {
      const seen = await this.#seen(page);
      if (seen.lead === '') return `blank: ${JSON.stringify(seen)}`;
      return seen.page === seen.script && seen.page !== undefined ? undefined : `mixed: ${JSON.stringify(seen)}`;
    } finally {
      await page.close();
    }
  }

  async #seen(page) {
    await page.locator('ts-answers table').first().waitFor({ timeout: 15_000 }).catch(() => undefined);
    return page.evaluate(() => {
      const { page: name, script } = document.documentElement.dataset;
      return { page: name, script, lead: document.querySelector('ts-app')?.shadowRoot?.querySelector('ts-calculator')?.shadowRoot?.querySelector('ts-lead')?.shadowRoot?.textContent?.trim() ?? '' };
    });
  }

  async #comesIn(target) {
    const end = Date.now() + 20_000;
    let last;
    while (Date.now() < end) {
      const page = await this.#page();
      last = await this.#seen(page);
      if (last.page !== last.script) return `mixed on the way: ${JSON.stringify(last)}`;
      if (last.page !== target) {
        await page.evaluate(async () => {
          const registration = await navigator.serviceWorker.getRegistration();
          await registration?.update().catch(() => undefined);
          for (let k = 0; k < 150 && registration?.waiting === null && registration.installing !== null; k += 1) await new Promise((then) => { setTimeout(then, 20); });
        });
      }
      await page.close();
      if (last.page === target) {
        this.#now = target;
        return undefined;
      }
      await wait(50);
    }
    return `${target} does not come in: ${JSON.stringify(last)}`;
  }
}
