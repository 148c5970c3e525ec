// Firefox, over WebDriver BiDi, which it speaks by itself.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import WebSocket from 'ws';

import { chord, click, strokes } from './keys.mjs';

const STARTS_WITHIN = 60_000;

export async function start({ forced = false } = {}) {
  const profile = mkdtempSync(join(tmpdir(), 'tagstrip-firefox-'));
  // Forced colours are a setting of the whole browser here.
  writeFileSync(join(profile, 'user.js'), forced ? 'user_pref("browser.display.document_color_use", 2);\n' : '');
  const binary = process.env.FIREFOX ?? '/usr/bin/firefox-esr';
  const firefox = spawn(binary, ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port=0', 'about:blank'], { stdio: ['ignore', 'ignore', 'pipe'] });
  const ended = new Promise((done) => { firefox.once('close', done); });
  const bidi = await connect(await addressOf(firefox));
  const { capabilities } = await bidi.send('session.new', { capabilities: {} });
  await bidi.send('session.subscribe', { events: ['log.entryAdded'] });
  return {
    version: capabilities.browserVersion,
    visit: (options) => visit(bidi, options),
    close: async () => {
      bidi.close();
      firefox.kill();
      await ended;
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

function addressOf(firefox) {
  return new Promise((found, failed) => {
    let said = '';
    const late = setTimeout(() => failed(new Error(`Firefox does not listen: ${said}`)), STARTS_WITHIN);
    firefox.once('error', failed);
    firefox.stderr.on('data', (piece) => {
      said = (said + piece).slice(-4000);
      const address = /BiDi listening on (ws:\S+)/.exec(said)?.[1];
      if (address === undefined) return;
      clearTimeout(late);
      found(`${address}/session`);
    });
  });
}

async function connect(address) {
  const socket = new WebSocket(address);
  await new Promise((ready, failed) => { socket.once('open', ready); socket.once('error', failed); });
  const waiting = new Map();
  const listeners = new Set();
  let count = 0;
  socket.on('message', (data) => {
    const said = JSON.parse(data);
    if (said.id === undefined) for (const listener of listeners) listener(said);
    else waiting.get(said.id)(said);
  });
  const send = (method, params = {}) => new Promise((done, failed) => {
    const id = (count += 1);
    waiting.set(id, (said) => {
      waiting.delete(id);
      if (said.type === 'success') done(said.result);
      else failed(new Error(`${method}: ${said.error}: ${said.message}`));
    });
    socket.send(JSON.stringify({ id, method, params }));
  });
  return { send, listeners, close: () => socket.close() };
}

async function visit(bidi, { width, height }) {
  const { userContext } = await bidi.send('browser.createUserContext');
  const { context } = await bidi.send('browsingContext.create', { type: 'tab', userContext });
  const told = [];
  const heard = ({ method, params }) => {
    if (method === 'log.entryAdded' && params.source.context === context && /error|warn/.test(params.level)) told.push(params.text);
  };
  bidi.listeners.add(heard);
  const size = (viewport) => bidi.send('browsingContext.setViewport', { context, viewport });
  const perform = (actions) => bidi.send('input.performActions', { context, actions });
  await size({ width, height });
  return {
    told,
    go: (url) => bidi.send('browsingContext.navigate', { context, url, wait: 'complete' }),
    reload: () => bidi.send('browsingContext.reload', { context, wait: 'complete' }),
    run: async (source, args) => {
      const functionDeclaration = `async () => JSON.stringify(await (${source})(...${JSON.stringify(args)}))`;
      const said = await bidi.send('script.callFunction', { target: { context }, awaitPromise: true, functionDeclaration });
      if (said.type !== 'success') throw new Error(said.exceptionDetails.text);
      return said.result.value === undefined ? undefined : JSON.parse(said.result.value);
    },
    press: (keys) => perform(strokes(keys)),
    chord: (modifier, key) => perform(chord(modifier, key)),
    tap: (x, y) => perform(click(x, y)),
    size,
    offline: (off) => bidi.send('emulation.setNetworkConditions', { contexts: [context], networkConditions: off ? { type: 'offline' } : null }),
    shot: async () => Buffer.from((await bidi.send('browsingContext.captureScreenshot', { context })).data, 'base64'),
    close: async () => {
      bidi.listeners.delete(heard);
      await bidi.send('browser.removeUserContext', { userContext });
    },
  };
}
