// On a page of another origin, in the three engines: link, frame, element.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

import { catalogue, init } from '../../dist/package/index.js';
import { integrity } from '../../scripts/lib/in-one.mjs';
import { version } from '../../scripts/lib/release.mjs';
import { WAYS } from './engines/embed.mjs';
import { ENGINES } from './engines/index.mjs';
import { SITE } from './harness.mjs';
import { serveClub, serveHosted } from './hosts.mjs';

const only = process.env.TAGSTRIP_ENGINE?.split(',') ?? Object.keys(ENGINES);
const held = integrity(readFileSync(join(SITE, 'element.js')), 'sha384');
const release = version(fileURLToPath(new URL('../../', import.meta.url)));
await init();

for (const name of only) {
  test(`on a page, ${name}`, async (t) => {
    const [engine, site, club] = await Promise.all([ENGINES[name].start(), serveHosted(SITE), serveClub()]);
    t.after(() => Promise.all([engine.close(), site.close(), club.close()]));
    const ways = Object.entries(WAYS);
    const turn = Object.keys(ENGINES).indexOf(name);
    for (const [index, { id }] of catalogue().entries()) {
      // Each calculator by one way in each engine, by another in the next; TAGSTRIP_WIDE plays all.
      const chosen = process.env.TAGSTRIP_WIDE === '1' ? ways : [ways[(index + turn) % ways.length]];
      for (const [way, play] of chosen) {
        await t.test(`${id}: ${way}`, async () => {
          const page = await engine.visit({ width: 1000, height: 800 });
          try {
            await play(page, { site, club, id, integrity: held, release });
            assert.deepEqual(page.told ?? [], []);
          } finally {
            await page.close();
          }
        });
      }
    }
  });
}
