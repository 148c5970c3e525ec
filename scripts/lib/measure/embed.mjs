// On a page of another origin: the scenarios that pass in each engine, and the bytes for the first and the next on a page.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { clubPage, serveClub, serveHosted } from '../../../tests/browser/hosts.mjs';
import { ENGINES } from '../../../tests/browser/engines/index.mjs';
import { integrity } from '../in-one.mjs';
import { browser } from '../measuring/browser.mjs';
import { built, root, run, told } from '../measuring/run.mjs';

const SITE = join(root, 'dist/site');

export async function measure() {
  built();
  const rows = await bytes();
  for (const name of Object.keys(ENGINES)) {
    const { text } = run('node', ['--test', '--test-reporter=spec', 'tests/browser/embed-engines.test.mjs'], { env: { TAGSTRIP_ENGINE: name, TAGSTRIP_WIDE: '1' }, cwd: root });
    const marks = (mark) => text.split('\nℹ tests')[0].split('\n').filter((line) => line.startsWith(`  ${mark} `)).length;
    rows.push({ name: `embed.${name}`, value: marks('✔'), unit: 'scenarios', bound: marks('✔') + marks('✖'), holds: marks('✖') === 0 && marks('✔') > 0 });
  }
  return rows;
}

/** What a host sends, packed, for the first and for two more of each way on one page. */
async function bytes() {
  const [chromium, site, club] = await Promise.all([browser(), serveHosted(SITE), serveClub()]);
  const held = integrity(readFileSync(join(SITE, 'element.js')), 'sha384');
  const pieces = {
    element: ['<tag-strip calculator="stage"></tag-strip>', `<script src="${site.address}element.js" integrity="${held}" crossorigin="anonymous"></script>`],
    frame: [`<iframe src="${site.address}frame/#1&lugs.0.id=stage&lugs.0.calculator=stage" sandbox="allow-scripts" width="320" height="400"></iframe>`, ''],
  };
  const rows = [];
  try {
    for (const [way, [one, once]] of Object.entries(pieces)) {
      const sums = [];
      for (const count of [1, 3]) {
        const page = await (await chromium.newContext({ serviceWorkers: 'block' })).newPage();
        site.sent.length = 0;
        club.pages.set(`/${way}-${count}`, clubPage(one.repeat(count) + once));
        await page.goto(`${club.address}/${way}-${count}`);
        await page.waitForFunction((wanted) => globalThis.heard.length + globalThis.told.filter(({ data }) => data.answers !== undefined).length >= wanted, count);
        sums.push(site.sent.reduce((sum, { bytes: sent }) => sum + sent, 0));
        await page.context().close();
      }
      rows.push(told(`embed.${way}.first`, sums[0], 'bytes brotli'), told(`embed.${way}.next`, (sums[1] - sums[0]) / 2, 'bytes brotli', 'mean of two more on the same page'));
    }
  } finally {
    await Promise.all([chromium.close(), site.close(), club.close()]);
  }
  return rows;
}
