// WebKit, over plain WebDriver. Its driver needs a screen, which xvfb is.
import { spawn } from 'node:child_process';

import { freePort } from './free-port.mjs';
import { chord, click, strokes } from './keys.mjs';

const BROWSER = process.env.WEBKIT ?? '/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser';
const STARTS_WITHIN = 30_000;

export async function start() {
  const port = await freePort();
  // A group of its own, so that the screen and the driver end together.
  const driver = spawn('xvfb-run', ['-a', '-s', '-screen 0 1600x1200x24', 'WebKitWebDriver', `--port=${port}`], { detached: true, stdio: 'ignore' });
  const ended = new Promise((done) => { driver.once('close', done); });
  const send = (method, path, body) => ask(`http://127.0.0.1:${port}${path}`, method, body);
  await ready(send, driver);
  // The driver holds one session at a time, and one visitor is one session.
  const asked = { alwaysMatch: { 'webkitgtk:browserOptions': { binary: BROWSER, args: ['--automation'] } } };
  const open = () => send('POST', '/session', { capabilities: asked });
  const first = await open();
  await send('DELETE', `/session/${first.sessionId}`);
  return {
    version: first.capabilities.browserVersion,
    visit: async (options) => visit(send, (await open()).sessionId, options),
    close: async () => {
      process.kill(-driver.pid);
      await ended;
    },
  };
}

async function ready(send, driver) {
  const until = Date.now() + STARTS_WITHIN;
  for (;;) {
    if (driver.exitCode !== null || Date.now() > until) throw new Error('WebKitWebDriver does not listen');
    const status = await send('GET', '/status').catch(() => undefined);
    if (status?.ready === true) return;
    await new Promise((wait) => setTimeout(wait, 100));
  }
}

async function ask(address, method, body) {
  const response = await fetch(address, { method, ...(body !== undefined && { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }) });
  const { value } = await response.json();
  if (!response.ok) throw new Error(`${method} ${address}: ${value.error}: ${value.message}`);
  return value;
}

async function visit(send, session, { width, height }) {
  const at = `/session/${session}`;
  const perform = async (actions) => {
    await send('POST', `${at}/actions`, { actions });
  };
  const run = async (source, args) => {
    const script = `const [given, done] = arguments;
      Promise.resolve((${source})(...given)).then((value) => done({ value }), (fault) => done({ fault: String(fault) }));`;
    const { value, fault } = await send('POST', `${at}/execute/async`, { script, args: [args] });
    if (fault !== undefined) throw new Error(fault);
    return value ?? undefined;
  };
  // The window has a bar above the page, and is never narrower than that bar.
  const size = async (wanted) => {
    await send('POST', `${at}/window/rect`, { x: 0, y: 0, width: wanted.width, height: wanted.height });
    const bar = await run('() => outerHeight - innerHeight', []);
    await send('POST', `${at}/window/rect`, { x: 0, y: 0, width: wanted.width, height: wanted.height + bar });
  };
  await size({ width, height });
  return {
    told: [],
    go: (url) => send('POST', `${at}/url`, { url }),
    reload: () => send('POST', `${at}/refresh`, {}),
    run,
    press: (keys) => perform(strokes(keys)),
    chord: (modifier, key) => perform(chord(modifier, key)),
    tap: (x, y) => perform(click(x, y)),
    size,
    shot: async () => Buffer.from(await send('GET', `${at}/screenshot`), 'base64'),
    close: () => send('DELETE', at),
  };
}
