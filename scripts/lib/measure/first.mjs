// How soon a phone on a slow line has its first answer: 1.6 Mbit/s with 150 ms there and back, and a page slowed four times,
// on files as a host compresses them; and by how much the page moves while it comes in.
import { join } from 'node:path';
import { launchChromium } from '../../../tests/browser/engines/chromium.mjs';
import { serveFolder } from '../static-server.mjs';
import { atMost, built, quantile, root, told } from '../measuring/run.mjs';

const LINE = { offline: false, latency: 150, downloadThroughput: 1_600_000 / 8, uploadThroughput: 750_000 / 8 };
const SLOW = 4;
const RUNS = 7;

export async function measure() {
  built();
  const server = await serveFolder(join(root, 'dist/site'), { compressed: true });
  const chromium = await launchChromium();
  try {
    const runs = [];
    for (let k = 0; k < RUNS; k += 1) runs.push(await load(chromium, server));
    const of = (name, share) => quantile(runs.map((run) => run[name]), share);
    return [
      atMost('first.answer', of('answer', 0.5) / 1000, 's', 2, `median of ${RUNS} cold loads of the voice page, 1.6 Mbit/s, ${SLOW} times slower`),
      told('first.answer_worst', of('answer', 1) / 1000, 's'),
      atMost('first.layout_shift', of('shift', 1), 'cumulative', 0.02, `worst of ${RUNS}, until all is there`),
    ];
  } finally {
    await chromium.close();
    await server.close();
  }
}

async function load(chromium, server) {
  const context = await chromium.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true, deviceScaleFactor: 3 });
  try {
    const page = await context.newPage();
    const wire = await context.newCDPSession(page);
    await wire.send('Network.enable');
    await wire.send('Network.emulateNetworkConditions', LINE);
    await wire.send('Emulation.setCPUThrottlingRate', { rate: SLOW });
    await page.addInitScript(watch);
    await page.goto(`${server.address}voice/`, { waitUntil: 'commit' });
    await page.waitForFunction(() => globalThis.first.answer !== undefined, undefined, { timeout: 60_000, polling: 50 });
    await page.locator('ts-form ts-field').first().waitFor();
    await page.waitForTimeout(1500);
    return await page.evaluate(() => globalThis.first);
  } finally {
    await context.close();
  }
}

/** Runs in the page before its own scripts: when the answers stood on the screen, counted from the press on the link. */
function watch() {
  const first = { answer: undefined, shift: 0, moved: [] };
  globalThis.first = first;
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      if (entry.hadRecentInput) continue;
      first.shift += entry.value;
      first.moved.push(`${Math.round(entry.startTime)} ms ${entry.value.toFixed(4)} ${entry.sources.map(({ node }) => node?.localName ?? node?.nodeName ?? 'gone').join(' ')}`);
    }
  }).observe({ type: 'layout-shift', buffered: true });
  const look = () => {
    const table = document.querySelector('ts-app')?.shadowRoot?.querySelector('ts-calculator')?.shadowRoot?.querySelector('ts-answers')?.shadowRoot?.querySelector('table');
    if (table) first.answer = performance.now();
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}
