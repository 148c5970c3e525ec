// What a person typed survives a reload, a crash and being sent on; where nothing is kept, the page says so.
import assert from 'node:assert/strict';
import { after, afterEach, before, beforeEach, test } from 'node:test';

import { browser, open, serveSite, settled, textOf, touchPart, type, visitor } from './harness.mjs';

/** Longer than the page waits before it writes the link. */
const WRITTEN = 900;
let chromium;
let server;
let guest;

before(async () => { [chromium, server] = await Promise.all([browser(), serveSite()]); });
after(async () => { await chromium?.close(); await server?.close(); });
beforeEach(async () => { guest = await visitor(chromium, server); });
afterEach(async () => {
  const { faults } = guest;
  await guest.close();
  assert.deepEqual(faults, []);
});

async function plateOf(page, calculator, text) {
  await open(page, server, calculator);
  await touchPart(page, 'plate_ohms');
  await type(page, text);
}

test('the state is in the link: another person sees the same', async () => {
  const { page } = guest;
  await plateOf(page, 'voice', '91k');
  await page.waitForTimeout(WRITTEN);
  const link = page.url();
  assert.ok(link.length < 2000, `${link.length} letters`);
  const lead = await textOf(page, 'ts-answers');
  const other = await visitor(chromium, server);
  await other.page.goto(link);
  await settled(other.page);
  assert.match(await textOf(other.page, 'ts-drawing'), /R3 91k/);
  assert.equal(await textOf(other.page, 'ts-answers'), lead);
  await other.close();
});

test('a page that crashes half a second after a key comes back with that key', async () => {
  const { page, context } = guest;
  await plateOf(page, 'stage', '82k');
  await page.waitForTimeout(500);
  const crashed = page.waitForEvent('crash');
  (await context.newCDPSession(page)).send('Page.crash').catch(() => undefined);
  await crashed;
  const again = await context.newPage();
  await open(again, server, 'stage');
  assert.match(await textOf(again, 'ts-drawing'), /R3 82k/);
});

test('a text that is not read is kept over a reload as it was typed', async () => {
  const { page } = guest;
  await plateOf(page, 'stage', '1O0k');
  await page.waitForTimeout(WRITTEN);
  await page.reload();
  await settled(page);
  assert.equal(await page.locator('ts-form ts-field[data-path="plate_ohms"] input').inputValue(), '1O0k');
});

test('a link that is no build changes nothing and says so', async () => {
  const { page } = guest;
  await page.goto(`${server.address}stage/#1&name=&lugs.0=broken%ZZ`);
  await settled(page);
  assert.match(await textOf(page, 'ts-app'), /The link does not hold a build/);
  assert.match(await textOf(page, 'ts-drawing'), /R3 220k/);
});

test('two tabs on one build: each says that there is another, and what one overwrites is put aside, not lost', async () => {
  const { page, context } = guest;
  await plateOf(page, 'stage', '82k');
  await page.waitForTimeout(WRITTEN);
  const other = await context.newPage();
  await open(other, server, 'stage');
  assert.match(await textOf(other, 'ts-drawing'), /R3 82k/);
  await touchPart(other, 'plate_ohms');
  await type(other, '91k');
  await page.locator('ts-notice').filter({ hasText: 'open in another tab' }).waitFor();
  // The first tab goes on typing without having looked at what the other did.
  await page.locator('ts-open-field input.text').click();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('68k');
  await page.locator('ts-notice').filter({ hasText: 'put aside' }).waitFor();
  // The open field lies over it.
  await page.locator('ts-open-field').getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await settled(page);
  assert.match(await textOf(page, 'ts-drawing'), /R3 91k/);
});

test('where the browser keeps nothing, the page says so, and works', async () => {
  const { page } = guest;
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });
  });
  await plateOf(page, 'stage', '100k');
  assert.match(await textOf(page, 'ts-app'), /keeps nothing/);
  assert.match(await textOf(page, 'ts-drawing'), /R3 100k/);
});

test('a build is saved to a file, and opened from it by somebody else', async () => {
  const { page } = guest;
  await plateOf(page, 'voice', '68k');
  await page.keyboard.press('Escape');
  await page.locator('ts-strip').getByRole('link', { name: 'build' }).click();
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save to a file' }).click()]);
  const path = await download.path();
  const other = await visitor(chromium, server);
  await open(other.page, server, '');
  await other.page.locator('input[type=file]').setInputFiles({ name: 'build.json', mimeType: 'application/json', buffer: await (await import('node:fs/promises')).readFile(path) });
  await settled(other.page);
  await other.page.locator('ts-strip').getByRole('link', { name: /^voice/ }).click();
  await settled(other.page);
  assert.match(await textOf(other.page, 'ts-drawing'), /R3 68k/);
  assert.deepEqual(other.faults, []);
  await other.close();
});

test('without a worker the page answers all the same', async () => {
  const { page } = guest;
  await page.addInitScript(() => { delete globalThis.Worker; });
  await plateOf(page, 'stage', '100k');
  assert.match(await textOf(page, 'ts-open-field'), /Read as 100/);
});

test('the text that is copied has the readings, as they should be and as they were', async () => {
  const { page, context } = guest;
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page, server, 'stage');
  await page.locator('ts-drawing [data-tag=plate]').click();
  await page.locator('ts-readings input[data-point=plate]').fill('310');
  await settled(page);
  await page.getByRole('button', { name: 'Keep and send on' }).click();
  await page.getByRole('button', { name: 'Copy as text' }).click();
  await page.locator('ts-notice').filter({ hasText: 'The text is copied' }).waitFor();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  assert.match(copied, /\nReadings\n[^]* {2}Plate, pin \d: 1\d\d V \([\d.]+ V to 1\d\d V\)\. 310 V is wrong/);
  assert.match(copied, /\n {2}Cathode, pin \d: 1\.\d+ V \([\d.]+ V to [\d.]+ V\)\.\n/);
});

test('an engine that arrives late, or is served with the wrong type, does no harm', async () => {
  const { page } = guest;
  await page.route(/engine-[0-9a-f]+\.wasm/, async (route) => {
    const response = await route.fetch();
    await new Promise((wait) => setTimeout(wait, 700));
    await route.fulfill({ response, headers: { 'content-type': 'text/plain' } });
  });
  await plateOf(page, 'stage', '100k');
  assert.match(await textOf(page, 'ts-drawing'), /R3 100k/);
});

test('a part touched before the rest of the script has come has its field when it comes', async () => {
  const { page } = guest;
  await page.route(/later-[^/]+\.js/, async (route) => {
    const response = await route.fetch();
    await new Promise((wait) => setTimeout(wait, 1500));
    await route.fulfill({ response });
  });
  await page.goto(`${server.address}stage/`);
  await page.locator('ts-drawing [data-field="plate_ohms"]').first().click();
  await type(page, '100k');
  assert.match(await textOf(page, 'ts-open-field'), /Read as 100/);
});
