// A Chromium that can be killed as a phone kills it, and started again on the same profile.
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';

import { ARGUMENTS } from './chromium.mjs';

export class Killable {
  #profile = mkdtempSync(join(tmpdir(), 'tagstrip-profile-'));
  #process;
  #ended;
  #browser;

  /** The profile's one context, in a process that runs. */
  async context() {
    if (this.#browser?.isConnected() !== true) await this.#start();
    return this.#browser.contexts()[0];
  }

  async #start() {
    const port = join(this.#profile, 'DevToolsActivePort');
    rmSync(port, { force: true });
    this.#process = spawn(process.env.CHROMIUM ?? '/usr/bin/chromium', [...ARGUMENTS, `--user-data-dir=${this.#profile}`, '--remote-debugging-port=0', 'about:blank'], { detached: true, stdio: 'ignore' });
    this.#ended = new Promise((done) => { this.#process.once('close', done); });
    for (let k = 0; k < 300 && !existsSync(port); k += 1) await new Promise((wait) => setTimeout(wait, 50));
    // The file is there a moment before it is full.
    await new Promise((wait) => setTimeout(wait, 50));
    this.#browser = await chromium.connectOverCDP(`http://127.0.0.1:${readFileSync(port, 'utf8').split('\n')[0]}`);
  }

  /** Ends every process of it at once, in the midst of whatever it does. */
  async kill() {
    process.kill(-this.#process.pid, 'SIGKILL');
    await this.#ended;
    await this.#browser.close().catch(() => undefined);
    this.#browser = undefined;
  }

  async close() {
    if (this.#browser !== undefined) await this.kill();
    rmSync(this.#profile, { recursive: true, force: true, maxRetries: 5 });
  }
}
