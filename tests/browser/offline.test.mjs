// The service worker: a site that is kept whole, works with the network gone, and never mixes two releases.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';

import { filesUnder } from '../../scripts/lib/sizes.mjs';
import { interrupt } from './engines/interruptions.mjs';
import { release as made } from './engines/releases.mjs';
import { browser, open, serveSite, settled, SITE, textOf, touchPart, type, visitor } from './harness.mjs';

let chromium;
let scratch;

before(async () => {
  chromium = await browser();
  scratch = mkdtempSync(join(tmpdir(), 'tagstrip-releases-'));
});
after(async () => {
  await chromium?.close();
  rmSync(scratch, { recursive: true, force: true });
});

const release = (name) => made(SITE, scratch, name);

const kept = (page) => page.evaluate(async () => {
  const registration = await navigator.serviceWorker.ready;
  while (registration.active?.state !== 'activated') await new Promise((wait) => setTimeout(wait, 20));
});
/** Someone whose device keeps the site. */
async function keeper(server) {
  const visit = await visitor(chromium, server);
  await open(visit.page, server, 'voice');
  await kept(visit.page);
  return visit;
}
/** The same, with a page that is served from there. */
async function served(server) {
  const visit = await keeper(server);
  await visit.page.reload();
  await settled(visit.page);
  return visit;
}
const waits = (page) => page.evaluate(async () => {
  const registration = await navigator.serviceWorker.getRegistration();
  await registration.update();
  for (let k = 0; k < 250 && registration.waiting === null; k += 1) await new Promise((wait) => setTimeout(wait, 20));
  return registration.waiting !== null;
});
const seen = (page) => page.evaluate(() => ({ ...document.documentElement.dataset }));

test('after one visit it works with the network gone, every page of it, and a reload keeps what was typed', async () => {
  const server = await serveSite();
  const { page, context, faults } = await keeper(server);
  await server.close();
  await page.reload();
  await settled(page);
  await touchPart(page, 'plate_ohms');
  await type(page, '47k');
  await page.waitForTimeout(700);
  await page.reload();
  await settled(page);
  assert.match(await textOf(page, 'ts-drawing'), /R3 47k/);
  await page.goto(`${server.address}filter/`);
  await settled(page);
  await page.goto(`${server.address}how-we-know/`);
  assert.match(await page.innerText('h1'), /How we know/);
  // An address without its slash, as people type it.
  await page.goto(`${server.address}stage`);
  await settled(page);
  assert.ok(page.url().startsWith(`${server.address}stage/`), page.url());
  await page.goto(server.address);
  await settled(page);
  assert.deepEqual(faults.filter((fault) => !/Failed to load resource|An unknown error occurred when fetching the script/.test(fault)), []);
  await context.close();
});

test('a new release waits, says so, never takes over by itself, and is never mixed with the old', async () => {
  const [one, two] = [await release('one'), await release('two')];
  let site = one;
  const server = await serveSite(() => site);
  const { page, context } = await served(server);
  assert.deepEqual(await seen(page), { page: 'one', script: 'one' });

  site = two;
  assert.equal(await waits(page), true, 'the new release was not fetched');
  await page.locator('ts-notice').filter({ hasText: 'newer release' }).waitFor();
  for (const calculator of ['voice', 'filter', 'stage', 'voice']) {
    await page.goto(`${server.address}${calculator}/`);
    await settled(page);
    assert.deepEqual(await seen(page), { page: 'one', script: 'one' }, 'while a page of the old one is open');
  }
  const second = await context.newPage();
  await open(second, server, 'stage');
  assert.deepEqual(await seen(second), { page: 'one', script: 'one' });
  await second.close();
  await page.close();

  // Every page is closed: the new one comes in whole.
  const deadline = Date.now() + 10000;
  let now;
  do {
    const next = await context.newPage();
    await open(next, server, 'voice');
    now = await seen(next);
    assert.equal(now.page, now.script, 'mixed');
    await next.close();
  } while (now.page !== 'two' && Date.now() < deadline);
  assert.deepEqual(now, { page: 'two', script: 'two' });
  await context.close();
  await server.close();
});

test('a release with one wrong byte, or half of it not there, is not taken at all', async () => {
  const [one, broken] = [await release('good'), await release('broken')];
  const script = filesUnder(broken).find((file) => /worker-[0-9a-f]+\.js$/.test(file));
  writeFileSync(script, `${readFileSync(script, 'utf8')} `);
  let site = one;
  const server = await serveSite(() => site);
  const { page, context } = await keeper(server);
  site = broken;
  assert.equal(await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration.update().catch(() => undefined);
    for (let k = 0; k < 250 && registration.installing !== null; k += 1) await new Promise((wait) => setTimeout(wait, 20));
    return registration.waiting === null;
  }), true, 'a broken release waits to take over');
  const names = await page.evaluate(() => caches.keys());
  assert.equal(names.length, 1, names.join());
  await server.close();
  await page.reload();
  await settled(page);
  assert.deepEqual(await seen(page), { page: 'good', script: 'good' });
  await context.close();
});

test('two copies of the site on one host keep out of each other', async () => {
  const server = await serveSite();
  const { page, context } = await keeper(server);
  const others = await page.evaluate(async () => {
    await caches.open('tagstrip /another/place/ 0123456789ab');
    const registration = await navigator.serviceWorker.getRegistration();
    await registration.unregister();
    return caches.keys();
  });
  assert.equal(others.length, 2);
  await page.reload();
  await kept(page);
  assert.ok((await page.evaluate(() => caches.keys())).includes('tagstrip /another/place/ 0123456789ab'));
  await context.close();
  await server.close();
});

test('an update that is killed, cut off, spoilt, half there or out of room leaves one whole release, and the next one comes in', async () => {
  const { faults, anew } = await interrupt(SITE, 16);
  assert.deepEqual(faults, []);
  assert.ok(anew <= 3, `${anew} pages of some 60 had to be loaded anew`);
});

test('a newer release comes in at a press, where no other page of this one is open', async () => {
  const [one, two] = [await release('before'), await release('after')];
  let site = one;
  const server = await serveSite(() => site);
  const { page, context } = await served(server);
  const second = await context.newPage();
  await open(second, server, 'stage');
  site = two;
  assert.equal(await waits(page), true);
  const press = () => page.getByRole('button', { name: 'Load it now' }).click();
  await press();
  await page.locator('ts-notice').filter({ hasText: 'Other pages of this site are open' }).waitFor();
  assert.deepEqual(await seen(page), { page: 'before', script: 'before' });
  // Chromium lets no release in, for minutes, while a page that was closed had something still to come.
  await second.waitForLoadState('networkidle');
  await second.close();
  await page.reload({ waitUntil: 'networkidle' });
  await settled(page);
  await press();
  await page.waitForFunction(() => document.documentElement.dataset.script === 'after');
  assert.deepEqual(await seen(page), { page: 'after', script: 'after' });
  await context.close();
  await server.close();
});

test('a page whose own script does not come in is loaded anew, once, and then says so', async () => {
  const server = await serveSite();
  for (const missed of [1, Infinity]) {
    const { page, context } = await visitor(chromium, server, { serviceWorkers: 'block' });
    let asked = 0;
    await page.route(/\/assets\/page-\w+\.js$/, (route) => {
      asked += 1;
      return asked > missed ? route.continue() : route.abort();
    });
    await page.goto(`${server.address}voice/`);
    if (missed === 1) {
      await settled(page);
      assert.match(await textOf(page, 'ts-lead'), /dB/);
    } else {
      await page.getByRole('alert').filter({ hasText: 'Load the page again' }).waitFor();
      await page.waitForTimeout(1000);
      assert.match(await page.locator('main').innerText(), /A microphone stage/, 'what can be read without it stays');
    }
    assert.equal(asked, 2, 'no more than that');
    await context.close();
  }
  await server.close();
});
