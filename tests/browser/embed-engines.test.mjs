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
    for (const { id } of catalogue()) {
      for (const [way, play] of Object.entries(WAYS)) {
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
