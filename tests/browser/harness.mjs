// What the tests of the page share: the built site on a server, a Chromium, and hands to touch it with.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

import { chromium } from 'playwright-core';

import { serveFolder } from '../../scripts/lib/static-server.mjs';
import { lettered } from './gallery/face.mjs';

const ARGUMENTS = [
  '--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
  '--disable-component-update', '--disable-sync', '--disable-dev-shm-usage',
];

export const SITE = process.env.TAGSTRIP_SITE ?? fileURLToPath(new URL('../../dist/site', import.meta.url));
export const PHONE = { width: 360, height: 740 };
export const NARROW = { width: 320, height: 640 };
export const TABLET = { width: 768, height: 1024 };
export const WIDE = { width: 1440, height: 900 };

/** Chromium as it runs in a container, lettering in the face that is being looked at. */
export function browser() {
  return chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ARGUMENTS, env: lettered() });
}

/** The built site in a subfolder, as it must work. Tells every path that was asked for. */
export async function serveSite(folder = SITE) {
  const asked = [];
  const server = await serveFolder(folder, { under: '/club/tagstrip/', heard: (path) => asked.push(path) });
  return { ...server, asked };
}

/**
 * A new browser profile with one page. Whatever the page says is wrong is collected in `faults`, and every request
 * that left for another host in `strayed`: both must stay empty.
 */
export async function visitor(chromiumBrowser, server, options = {}) {
  const context = await chromiumBrowser.newContext({ viewport: PHONE, hasTouch: true, ...options });
  const faults = [];
  const strayed = [];
  const host = new URL(server.address).origin;
  context.on('request', (request) => {
    if (!request.url().startsWith(host) && !/^(data|blob):/.test(request.url())) strayed.push(request.url());
  });
  context.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text());
  });
  context.on('weberror', (error) => faults.push(String(error.error())));
  const page = await context.newPage();
  return { context, page, faults, strayed, close: () => context.close() };
}

/**
 * Opens the page of a calculator, or the build's own with '', and waits until it has answered and all of it is there: what
 * comes in behind the first answers moves the headings below, and a press would meet another one.
 */
export async function open(page, server, calculator, hash = '') {
  await page.goto(`${server.address}${calculator === '' ? '' : `${calculator}/`}${hash}`);
  await page.locator('ts-form ts-field, ts-build ts-share').first().waitFor({ state: 'attached' });
  await settled(page);
}

/** Waits until the page shows answers (or the build) and has nothing more to work. */
export async function settled(page) {
  await page.locator('ts-calculator ts-lead, ts-build ts-share').first().waitFor();
  let before = '';
  for (let still = 0; still < 3; ) {
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
    await page.waitForTimeout(30);
    const now = await textOf(page, 'ts-app');
    still = now === before ? still + 1 : 0;
    before = now;
  }
}

/** Touches a part of the drawing by what it stands for, and gives the field that opened. */
export async function touchPart(page, field) {
  await page.locator(`ts-drawing [data-field="${field}"]`).first().click();
  const panel = page.locator('ts-open-field');
  await panel.waitFor();
  return panel;
}

/** Types a text into the first box of the open field in place of what is there, key by key. */
export async function type(page, text) {
  const input = page.locator('ts-open-field input.text').first();
  await input.click();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
  await settled(page);
  return input;
}

/** What stands in an element, shadow roots included, as one line of text. */
export const textOf = (page, selector) => page.locator(selector).first().evaluate((element) => {
  const parts = [];
  const walk = (node) => {
    if (node.nodeType === Node.TEXT_NODE) parts.push(node.data);
    else if (node.localName === 'slot') node.assignedNodes({ flatten: true }).forEach(walk);
    else if (node.localName !== 'style' && node.localName !== 'script') (node.shadowRoot ?? node).childNodes.forEach(walk);
    if (node.nodeType === Node.ELEMENT_NODE && /^(p|li|div|h\d|td|th|tr|button|text)$/.test(node.localName)) parts.push(' ');
  };
  walk(element);
  return parts.join('').replace(/\s+/g, ' ').trim();
});

const axeSource = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Everything axe finds on the page as it stands; none is the only right number. */
export async function axe(page, where) {
  // Past the page's own policy, as a reader's tool is: axe is put in through the debugger, not through the page.
  if (!(await page.evaluate(() => globalThis.axe !== undefined))) await page.evaluate(axeSource);
  const found = await page.evaluate(async () => {
    const { violations } = await globalThis.axe.run(document, { resultTypes: ['violations'] });
    return violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ target, failureSummary }) => `${target.flat().join(' ')} (${failureSummary})`).join('; ')}`);
  });
  assert.deepEqual(found, [], where);
}

/** Nothing stands out to the right of the screen. */
export async function fits(page, where) {
  const over = await page.evaluate(() => document.scrollingElement.scrollWidth - document.scrollingElement.clientWidth);
  assert.ok(over <= 0, `${where}: ${over} px too wide`);
}
