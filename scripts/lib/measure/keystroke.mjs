// From a key to its echo and to the answer on the screen, in a Chromium whose page is slowed four times. Chromium slows the
// page but not its worker: a phone that is slow in both adds three times what `speed` says of the engine.
import { join } from 'node:path';
import { serveFolder } from '../static-server.mjs';
import { browser } from '../measuring/browser.mjs';
import { atMost, built, quantile, root, told } from '../measuring/run.mjs';

const SLOW = 4;
// Every prefix is a value of its own, so that each key has another echo and another answer.
const TEXTS = ['150k', '91k', '270k', '365k', '330k', '82k', '180k', '511k', '390k', '68k', '120k', '75k', '237k', '100k', '221k', '43k', '160k', '36k'];

export async function measure() {
  built();
  const server = await serveFolder(join(root, 'dist/site'));
  const chromium = await browser();
  try {
    const page = await (await chromium.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true })).newPage();
    await page.goto(`${server.address}voice/`);
    await page.locator('ts-answers').first().waitFor();
    await page.locator('ts-drawing [data-field="plate_ohms"]').first().click();
    await page.locator('ts-open-field input.text').click();
    await page.evaluate(watch);
    // The service worker keeps the site meanwhile; a person has typed nothing by then.
    await page.waitForTimeout(3000);
    const wire = await page.context().newCDPSession(page);
    await wire.send('Emulation.setCPUThrottlingRate', { rate: SLOW });
    const times = [];
    for (const text of TEXTS) {
      await page.keyboard.press('ControlOrMeta+a');
      for (const [k, key] of [...text].entries()) times.push({ typed: text.slice(0, k + 1), ...(await struck(page, key)) });
    }
    return rows(times);
  } finally {
    await chromium.close();
    await server.close();
  }
}

async function struck(page, key) {
  await page.evaluate(() => globalThis.strike());
  await page.keyboard.press(key);
  await page.waitForFunction(() => globalThis.struck.answer !== undefined, undefined, { timeout: 5000, polling: 50 }).catch(() => undefined);
  // As long as a quick typist's next key, and never in step with the screen.
  await page.waitForTimeout(60 + (key.charCodeAt(0) * 7) % 17);
  return page.evaluate(() => globalThis.struck);
}

function rows(all) {
  const lost = all.filter(({ echo, answer }) => echo === undefined || answer === undefined);
  const times = all.filter(({ echo, answer }) => echo !== undefined && answer !== undefined);
  const p95 = (name) => quantile(times.map((time) => time[name]), 0.95);
  const of = `p95 of ${times.length} keys at ${SLOW} times slower`;
  return [
    atMost('keystroke.without_echo_or_answer', lost.length, `of ${all.length} keys`, 0, lost.map(({ typed }) => typed).join(' ')),
    atMost('keystroke.echo', p95('echo'), 'ms', 16, `${of}, from the key to the sentence in the page`),
    told('keystroke.echo_painted', p95('echoPainted'), 'ms', `${of}, to the frame that shows it`),
    atMost('keystroke.answer', p95('answer'), 'ms', 50, `${of}, to the frame that shows it`),
    told('keystroke.answer_median', quantile(times.map(({ answer }) => answer), 0.5), 'ms'),
  ];
}

/** Runs in the page: keeps when the key came, when the echo and the answers changed, and when a frame had shown them. */
function watch() {
  const text = (node) => {
    if (node.nodeType === Node.TEXT_NODE) return node.data;
    if (node.localName === 'style') return '';
    return [...(node.shadowRoot ?? node).childNodes].map(text).join('');
  };
  const inside = (selector) => {
    const look = (from) => {
      const found = from.querySelector(selector);
      if (found) return found;
      for (const each of from.querySelectorAll('*')) {
        const deeper = each.shadowRoot ? look(each.shadowRoot) : null;
        if (deeper) return deeper;
      }
      return null;
    };
    return look(document);
  };
  const [field, answers] = [inside('ts-open-field'), inside('ts-answers')];
  const echo = () => text(field.shadowRoot.querySelector('.echo') ?? field);
  const state = { echo: '', answers: '', key: undefined };
  const painted = (done) => requestAnimationFrame(() => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => done(performance.now());
    port2.postMessage(undefined);
  });
  const look = () => {
    const { key } = state;
    if (key === undefined) return;
    const now = performance.now();
    const mine = globalThis.struck;
    if (mine.echo === undefined && echo() !== state.echo) {
      mine.echo = now - key;
      painted((at) => { mine.echoPainted = at - key; });
    }
    if (mine.changed === undefined && text(answers) !== state.answers) {
      mine.changed = now - key;
      painted((at) => { mine.answer = at - key; });
    }
  };
  const observer = new MutationObserver(look);
  const observe = (node) => {
    observer.observe(node, { childList: true, characterData: true, subtree: true, attributes: false });
    for (const each of node.querySelectorAll('*')) if (each.shadowRoot) observe(each.shadowRoot);
  };
  observe(field.shadowRoot);
  observe(answers.shadowRoot);
  globalThis.strike = () => {
    Object.assign(state, { echo: echo(), answers: text(answers), key: undefined });
    globalThis.struck = {};
  };
  window.addEventListener('keydown', (event) => { if (!event.ctrlKey && !event.metaKey) state.key = event.timeStamp; }, true);
}
