// The whole suite as one file, opened from a folder: nothing beside it, no server, no network.
import assert from 'node:assert/strict';
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath, pathToFileURL } from 'node:url';

import { catalogue, init } from '../../dist/package/index.js';
import { handsOn } from './engines/hands.mjs';
import { ENGINES } from './engines/index.mjs';
import { calculator, savesAndOpens } from './engines/one-file.mjs';
import { browser } from './harness.mjs';

const BUILT = process.env.TAGSTRIP_FILE ?? fileURLToPath(new URL('../../dist/tagstrip.html', import.meta.url));
const only = (process.env.TAGSTRIP_ENGINE?.split(',') ?? ['chromium', 'firefox']).filter((name) => name !== 'webkit');
let folder;
let file;
await init();
before(() => {
  folder = mkdtempSync(join(tmpdir(), 'a memory stick '));
  copyFileSync(BUILT, join(folder, 'tagstrip.html'));
  file = pathToFileURL(join(folder, 'tagstrip.html')).href;
});
after(() => { rmSync(folder, { recursive: true, force: true }); });

for (const name of only) {
  test(`from a file, ${name}`, async (t) => {
    const engine = await ENGINES[name].start();
    t.after(() => engine.close());
    const scenario = (what, play) => t.test(what, async () => {
      const page = await handsOn(engine, { width: 360, height: 740 });
      try {
        await play(page);
        assert.deepEqual(await page.faults(), []);
      } finally {
        await page.close();
      }
    });
    for (const { id } of catalogue()) await scenario(id, (page) => calculator(page, file, id));
    await scenario('a build is saved and opened', (page) => savesAndOpens(page, file));
  });
}

// What it weighs is a figure: `scripts/measure onefile`.
test('it says what it is about without scripts', () => {
  const text = readFileSync(BUILT, 'utf8').replace(/<script[\s\S]*/, '').replace(/<[^>]+>/g, ' ');
  for (const { title, summary } of catalogue()) assert.ok(text.includes(title) && text.includes(summary.split(':')[0]), title);
});

test('a program that was changed on its way does not run, and nothing asks for anything beside the file', async () => {
  const chromium = await browser();
  const page = await chromium.newPage();
  const asked = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(file);
  await page.locator('ts-build').waitFor();
  assert.deepEqual(asked.filter((url) => !/^(data|blob):/.test(url)), [file]);
  const whole = readFileSync(BUILT, 'utf8');
  // Another program, packed as well as the right one.
  const { packed } = await import('../../scripts/lib/in-one.mjs');
  const changed = whole.replace(/(id="program">)[^<]+/, (_, start) => start + packed('document.title = "taken over"'));
  writeFileSync(join(folder, 'changed.html'), changed);
  await page.goto(pathToFileURL(join(folder, 'changed.html')).href);
  await page.waitForTimeout(500);
  assert.equal(await page.title(), 'Tagstrip');
  assert.ok(await page.locator('main.static').isVisible());
  await chromium.close();
});
