// How much typing is lost when the page is killed at a random moment: 100 times, or as often as is asked for (`typing=20`).
// A key counts as lost when it is not there after the page was opened again; the loss is the time from the first lost key to the end.
import { join } from 'node:path';
import { launchChromium } from '../../../tests/browser/engines/chromium.mjs';
import { odds } from '../../../tests/browser/engines/releases.mjs';
import { serveFolder } from '../static-server.mjs';
import { atMost, built, quantile, root, told } from '../measuring/run.mjs';

/** Milliseconds between keys of a quick typist. */
const KEY = 70;
const LONGEST = 4000;

export async function measure(how) {
  built();
  const rounds = Number(how ?? 100);
  const server = await serveFolder(join(root, 'dist/site'));
  const chromium = await launchChromium();
  const random = odds(4711);
  const losses = [];
  try {
    for (let k = 0; k < rounds; k += 1) losses.push(await killed(chromium, server, random() * LONGEST));
  } finally {
    await chromium.close();
    await server.close();
  }
  return [
    atMost('typing.lost', Math.max(...losses) / 1000, 's', 0.5, `the worst of ${rounds} pages killed`),
    told('typing.lost_median', quantile(losses, 0.5) / 1000, 's'),
  ];
}

async function killed(chromium, server, moment) {
  const context = await chromium.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true });
  try {
    const page = await open(context, server);
    const input = page.locator('ts-form ts-field[data-path="plate_ohms"] input');
    await input.click();
    await page.keyboard.press('ControlOrMeta+a');
    const wire = await context.newCDPSession(page);
    const keys = [];
    const start = Date.now();
    while (Date.now() - start < moment || keys.length === 0) {
      const key = String((keys.length * 7 + 3) % 10);
      await page.keyboard.type(key);
      keys.push({ key, at: Date.now() });
      await new Promise((next) => setTimeout(next, KEY));
    }
    const end = Date.now();
    const crashed = page.waitForEvent('crash');
    wire.send('Page.crash').catch(() => undefined);
    await crashed;
    const again = await open(context, server);
    const kept = await again.locator('ts-form ts-field[data-path="plate_ohms"] input').inputValue();
    const typed = keys.map(({ key }) => key).join('');
    if (!typed.startsWith(kept)) return kept === '220k' ? end - keys[0].at : Number.NaN;
    return kept.length === typed.length ? 0 : end - keys[kept.length].at;
  } finally {
    await context.close();
  }
}

async function open(context, server) {
  const page = await context.newPage();
  await page.goto(`${server.address}stage/`);
  await page.locator('ts-form ts-field[data-path="plate_ohms"] input').waitFor();
  return page;
}
