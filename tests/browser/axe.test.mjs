// axe finds nothing, in every state of every calculator's page, light and dark, on a phone and wide; nothing is cut off.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { catalogue, init } from '../../dist/package/index.js';
import { axe, browser, fits, NARROW, open, PHONE, serveSite, settled, TABLET, touchPart, type, visitor, WIDE } from './harness.mjs';

await init();
const IDS = catalogue().map(({ id }) => id);
let chromium;
let server;
before(async () => { [chromium, server] = await Promise.all([browser(), serveSite()]); });
after(async () => { await chromium?.close(); await server?.close(); });

const SCREENS = [
  { name: 'phone, light', every: true, ids: IDS, viewport: PHONE, colorScheme: 'light' },
  { name: 'phone, dark', ids: ['voice', 'marking'], viewport: PHONE, colorScheme: 'dark' },
  { name: 'wide, light', ids: ['stage', 'tube'], viewport: WIDE, colorScheme: 'light' },
  { name: 'wide, dark, forced colours', ids: ['voice'], viewport: WIDE, colorScheme: 'dark', forcedColors: 'active' },
];
/** The states with the most on the screen; the rest differ in structure, which no colour or width changes. */
const FULLEST = ['everything unfolded', 'a value refused, the answers stale'];

/** A field to open and spoil where it is worth more than the first part of the drawing that a value can be typed into. */
const PARTS = { voice: 'plate_ohms', stage: 'cathode_ohms', filter: 'branches[0].farads' };
const firstPart = async (page) => (await page.locator('ts-drawing [data-field][tabindex="0"]').evaluateAll((parts) => parts.map(({ dataset }) => dataset.field)))
  .find((field) => /(ohms|farads|henries|volts|diameter)$/.test(field));

async function unfold(page) {
  for (const one of await page.locator('ts-disclosure button[aria-expanded="false"], summary').all()) await one.click({ timeout: 3000 }).catch(() => undefined);
  await settled(page);
}

/** Every state that a calculator's page can be in, one after the other on the same page. */
async function* states(page, id) {
  yield 'as it opens';
  await unfold(page);
  yield 'everything unfolded';
  const part = PARTS[id] ?? await firstPart(page);
  if (part !== undefined) {
    await touchPart(page, part);
    await settled(page);
    yield 'a field open';
    await type(page, '4k7k');
    yield 'a value refused, the answers stale';
    await type(page, '10k');
    await page.keyboard.press('Escape');
    await page.locator('ts-open-field').waitFor({ state: 'detached' });
  }
  const pin = page.getByRole('button', { name: 'Pin this' });
  if (await pin.isEnabled()) {
    await pin.click();
    await settled(page);
    yield 'pinned';
  }
}

for (const { name, every, ids, ...screen } of SCREENS) {
  for (const id of ids) {
    test(`${id}: ${name}`, async () => {
      const { page, faults, close } = await visitor(chromium, server, screen);
      await open(page, server, id);
      for await (const state of states(page, id)) {
        if (every || FULLEST.includes(state)) await axe(page, `${id}, ${name}, ${state}`);
        await fits(page, `${id}, ${name}, ${state}`);
      }
      assert.deepEqual(faults, []);
      await close();
    });
  }

  test(`the build: ${name}`, async () => {
    const { page, close } = await visitor(chromium, server, screen);
    await open(page, server, '');
    await axe(page, 'empty');
    await page.getByRole('button', { name: 'Open the example' }).click();
    await page.locator('ts-calculator').waitFor();
    await page.locator('ts-strip').getByRole('link', { name: 'build' }).click();
    await unfold(page);
    await page.getByRole('button', { name: 'Add a calculator' }).click();
    await settled(page);
    await axe(page, 'with the example, adding a lug');
    await fits(page, 'the build');
    await close();
  });
}

test('a rating exceeded, and danger, on a phone', async () => {
  const { page, close } = await visitor(chromium, server);
  await open(page, server, 'stage');
  await touchPart(page, 'supply_volts');
  await type(page, '900 V');
  await page.keyboard.press('Escape');
  await page.locator('ts-caution[data-severity="limit"]').first().waitFor();
  await page.locator('ts-caution[data-severity="danger"]').first().waitFor();
  await axe(page, 'limit and danger');
  await close();
});

test('without scripts: title, inputs and answers can be read, and axe finds nothing', async () => {
  for (const id of [...IDS, '', 'how-we-know']) {
    const { page, close } = await visitor(chromium, server, { javaScriptEnabled: false });
    await page.goto(`${server.address}${id === '' ? '' : `${id}/`}`);
    assert.equal(await page.locator('h1').count(), 1, id);
    assert.ok((await page.locator('main').innerText()).length > 200, id);
    await fits(page, id).catch((fault) => { if (!/evaluate/.test(String(fault))) throw fault; });
    await close();
  }
  const { page, close } = await visitor(chromium, server);
  await page.goto(`${server.address}how-we-know/`);
  await axe(page, 'how we know');
  await close();
});

test('nothing is too wide, from 320 to 1440, and at 400 %', async () => {
  // 400 % of a 1280 window is a window of 320.
  for (const viewport of [NARROW, { width: 320, height: 256 }, PHONE, TABLET, WIDE]) {
    const { page, close } = await visitor(chromium, server, { viewport });
    for (const id of [...IDS, '']) {
      await open(page, server, id);
      await fits(page, `${id || 'build'} at ${viewport.width} × ${viewport.height}`);
    }
    await close();
  }
});
