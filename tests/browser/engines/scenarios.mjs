// What every engine must do, for every calculator of the catalogue and for the page as a whole. Each gives nothing where it
// passes and throws where it does not; none knows a calculator's name but the one that the keyboard sets up.
import assert from 'node:assert/strict';

import * as look from './access.mjs';

/** Texts that no unit reads, and what a person might have meant by none of them. */
const NO_FIGURE = 'x2';
/** Longer than the page waits before it keeps and links what was typed. */
const KEPT = 700;

const input = (path) => `ts-form >> ts-field[data-path="${path}"] >> #value`;
const answers = (page) => page.textOf('ts-calculator >> ts-answers');
const formThere = (page) => page.run(() => globalThis.seen.until('the form', () => globalThis.seen.all('ts-form >> ts-field').length > 0));

/** Texts to try in a field for another answer than the present one. */
function others({ shape, value, least = 0, most = Infinity }) {
  if (shape === 'text') return ['220', '2k2', 'brown black red gold'];
  const figure = /[\d.]+/.exec(value)?.[0];
  if (figure === undefined) return [];
  const inRange = (factor) => value.replace(figure, String(Number((Number(figure) * factor).toPrecision(3))));
  return most <= 1 && least === 0 ? [inRange(0.5)] : [inRange(0.8), inRange(1.25)];
}

/** Types into one field after another until the answers change; the field that did it, and its text. */
async function changed(page) {
  const before = await answers(page);
  for (const field of await page.fields()) {
    for (const text of others(field)) {
      await page.fill(input(field.path), text);
      const { text: now, invalid } = await page.fieldAt(field.path);
      assert.equal(now, text, `${field.path} does not hold what was typed`);
      if (invalid !== 'true' && (await answers(page)) !== before) return field.path;
    }
  }
  throw new Error('no typed value changes an answer');
}

/** The life of one calculator's page: it answers, follows a value, refuses in words, keeps what was typed. */
export const calculator = (page, address, id) => calculatorAt(page, `${address}${id}/`);

/** The same, wherever it stands. */
export async function calculatorAt(page, url) {
  await page.open(url);
  assert.ok((await page.textOf('ts-lead')).length > 10, 'no lead');
  assert.ok((await answers(page)).length > 10, 'no answers');
  await formThere(page);
  const path = await changed(page);
  await page.fill(input(path), NO_FIGURE);
  const refused = await page.fieldAt(path);
  assert.equal(refused.invalid, 'true', `${path} takes “${NO_FIGURE}”`);
  assert.equal(refused.text, NO_FIGURE);
  assert.match(refused.said, /Not read\. .{12,}/);
  assert.match(await page.textOf('ts-lead'), /Last good answers/);
  await page.run((ms) => globalThis.seen.wait(ms), KEPT);
  await page.reload();
  await formThere(page);
  await page.settled();
  const again = await page.fieldAt(path);
  assert.deepEqual([again.text, again.invalid], [NO_FIGURE, 'true'], 'after a reload');
}

const focusedPath = (page) => page.run(() => {
  const at = globalThis.seen.focused();
  const host = at?.getRootNode().host;
  return { name: at?.localName ?? '', path: host?.path ?? '', label: (at?.getAttribute('aria-label') ?? at?.innerText ?? '').trim() };
});

/** Tab until the focus is where it is wanted; a person would not press it more often than the page is long. */
async function tabTo(page, what, test) {
  for (let k = 0; k < 260; k += 1) {
    const at = await focusedPath(page);
    if (test(at)) return;
    await page.press(['Tab']);
  }
  throw new Error(`Tab does not lead to ${what}`);
}

/** A whole voice stage, from the first key to the answers, by keyboard alone: every kind of control is met once. */
export async function keyboardAlone(page, address) {
  await page.open(`${address}voice/`);
  await formThere(page);
  const set = async (path, text) => {
    await tabTo(page, path, (at) => at.path === path && at.name === 'input');
    await page.chord('Control', 'a');
    await page.press([...text]);
  };
  const before = await answers(page);
  await set('supply_volts', '280 V');
  await set('plate_ohms', '150k');
  await set('cathode_ohms', '1.5k');
  await set('positions[0].farads', '.022uF');
  await page.settled();
  const fields = await page.fields();
  for (const [path, text] of [['supply_volts', '280 V'], ['plate_ohms', '150k'], ['cathode_ohms', '1.5k'], ['positions[0].farads', '.022uF']]) {
    assert.equal(fields.find((field) => field.path === path)?.value, text, path);
  }
  assert.notEqual(await answers(page), before);
  // A choice, by the arrow keys; then a button of the list, by Enter.
  await tabTo(page, 'a choice', (at) => at.name === 'select' && at.path === 'noise');
  const noise = await page.run(() => globalThis.seen.focused().value);
  await page.press(['ArrowDown']);
  await page.settled();
  assert.notEqual(await page.run(() => globalThis.seen.all('ts-form >> ts-field[data-path="noise"]')[0].value), noise, 'the noise');
}

/** "Ready without a network" is said when every file is kept, each with its bytes, and not before; then the network goes. */
export async function keptOnDevice(page, address, goOffline) {
  await page.open(`${address}stage/`);
  const missing = await page.run(async (root) => {
    const { seen } = globalThis;
    await seen.until('the notice', () => /Kept on this device/.test(seen.textOf('ts-notice')), 60_000);
    const listed = [...(await (await fetch(`${root}service-worker.js`)).text()).matchAll(/"?([\w./-]+)"?:"([0-9a-f]{64})"/g)];
    const [name] = await caches.keys();
    const cache = await caches.open(name);
    const wrong = [];
    for (const [, path, hash] of listed) {
      const kept = await (await cache.match(`${root}${path}`))?.arrayBuffer();
      const bytes = kept === undefined ? [] : [...new Uint8Array(await crypto.subtle.digest('SHA-256', kept))];
      if (bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('') !== hash) wrong.push(path);
    }
    return listed.length < 10 ? ['the list'] : wrong;
  }, address);
  assert.deepEqual(missing, [], 'said to be kept, and not there');
  await goOffline();
  await page.reload();
  await formThere(page);
  await page.fill(input('plate_ohms'), '100k');
  assert.match(await page.textOf('ts-lead'), /times/);
}

/** However many keys a value has, its result is read out once, when it has come to rest. */
export async function announcedOnce(page, address) {
  await page.open(`${address}stage/`);
  await formThere(page);
  await page.run(async () => {
    const { seen } = globalThis;
    const region = seen.all('ts-app >> [aria-live]')[0];
    seen.aloud = [];
    new MutationObserver(() => seen.aloud.push(region.textContent.trim())).observe(region, { childList: true, characterData: true, subtree: true });
    seen.silent = async () => {
      for (let before = -1; before < seen.aloud.length; await seen.wait(2000)) before = seen.aloud.length;
    };
    await seen.until('a first word', () => region.textContent.trim() !== '');
    await seen.silent();
    seen.aloud.length = 0;
  });
  // The keys come from within: a driver's own may be further apart than the rest that lets a result be read out.
  const aloud = await page.run(async (path) => {
    const { seen } = globalThis;
    const field = seen.all(path)[0];
    for (const text of ['1', '10', '100', '100k']) {
      field.value = text;
      field.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
      await seen.wait(100);
    }
    await seen.until('a word read out', () => seen.aloud.length > 0);
    await seen.silent();
    return seen.aloud;
  }, input('plate_ohms'));
  assert.equal(aloud.length, 1, `read out: ${JSON.stringify(aloud)}`);
  assert.match(aloud[0], /^Gain.*times/);
}

/** A build sent by link is made anew: what stands in it under a prototype's name reaches nothing, and is told of nobody. */
export async function strangeLink(page, address) {
  const link = '1&name=x&__proto__.polluted=1&lugs.0.id=a&lugs.0.calculator=stage&lugs.0.inputs.__proto__.polluted=1&lugs.0.inputs.plate_ohms=100k'
    + '&lugs.1.id=%3Cimg%20src%3Dx%3E&lugs.1.calculator=stage&at=a';
  await page.open(`${address}stage/#${link}`);
  assert.equal(await page.run(() => String({}.polluted)), 'undefined');
  assert.match(await page.textOf('ts-drawing'), /100k/);
  assert.match(await page.textOf('ts-strip'), /<img src=x>/);
}

/** A message from a stranger's window changes nothing. */
export async function strangeMessage(page, address) {
  await page.open(`${address}stage/`);
  await formThere(page);
  await page.settled();
  const [lead, before] = [await page.textOf('ts-lead'), await answers(page)];
  await page.run(async () => {
    for (const data of [{ tagstrip: 1, lugs: [] }, 'come in', { number: 1, gives: [] }, null]) postMessage(data, '*');
    await globalThis.seen.wait(200);
  });
  assert.deepEqual([await page.textOf('ts-lead'), await answers(page)], [lead, before]);
}

/** axe, targets and width in the two fullest states of a page. */
export async function access(page, address, id, theme) {
  for await (const state of look.states(page, address, id)) {
    if (!/unfolded|refused/.test(state)) continue;
    await look.inTheme(page, theme);
    assert.deepEqual(await look.axe(page), [], state);
    assert.deepEqual(await look.tooSmall(page), [], state);
    assert.equal(await look.tooWide(page), 0, `${state}: too wide`);
  }
}
