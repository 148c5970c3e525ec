// What a phone loads before the voice page shows its answers, after brotli, as a real Chromium asks for it.
import { statSync } from 'node:fs';
import { join } from 'node:path';
import { brotli } from '../sizes.mjs';
import { serveFolder } from '../static-server.mjs';
import { browser } from '../measuring/browser.mjs';
import { atMost, built, root } from '../measuring/run.mjs';

const SITE = join(root, 'dist/site');

export async function measure() {
  built();
  const asked = new Set();
  const server = await serveFolder(SITE, { heard: (path) => asked.add(path) });
  const chromium = await browser();
  try {
    // The service worker fetches the rest later; it is not in the way of the first answer.
    const page = await (await chromium.newContext({ serviceWorkers: 'block' })).newPage();
    // What is fetched behind the first answers is held back: they must show without it.
    await page.route(/later-/, (route) => route.abort());
    await page.goto(`${server.address}voice/`);
    await page.locator('ts-answers').first().waitFor();
  } finally {
    await chromium.close();
    await server.close();
  }
  const files = [...asked].map((path) => join(SITE, path.endsWith('/') ? `${path}index.html` : path));
  const there = files.filter((file) => statSync(file, { throwIfNoEntry: false })?.isFile());
  const sizes = there.map((file) => [file.slice(SITE.length + 1), brotli(file)]);
  const remark = sizes.map(([name, size]) => `${name} ${size}`).join('; ');
  const sum = sizes.reduce((bytes, [, size]) => bytes + size, 0);
  return [
    atMost('size.wasm', brotli(join(root, 'dist/package/tagstrip.wasm')), 'bytes brotli', 70_000),
    atMost('size.voice_page', sum, 'bytes brotli', 150_000, remark),
  ];
}
