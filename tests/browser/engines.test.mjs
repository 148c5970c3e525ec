// The same scenarios in the three engines that a reader's browser may have inside, over every calculator there is.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { catalogue, init } from '../../dist/package/index.js';
import { SITE } from './harness.mjs';
import { ENGINES } from './engines/index.mjs';
import { handsOn, serveWatched } from './engines/hands.mjs';
import * as scenarios from './engines/scenarios.mjs';

const PHONE = { width: 360, height: 740 };
const only = process.env.TAGSTRIP_ENGINE?.split(',') ?? Object.keys(ENGINES);
await init();

for (const name of only) {
  test(name, async (t) => {
    const [engine, server] = await Promise.all([ENGINES[name].start(), serveWatched(SITE)]);
    t.after(async () => {
      await engine.close();
      await server.close();
    });
    /** One scenario in a profile of its own; whatever the console or the policy has to say is a fault. */
    const scenario = (what, play, size = PHONE) => t.test(what, async () => {
      const page = await handsOn(engine, size);
      try {
        await play(page);
        assert.deepEqual(await page.faults(), []);
        assert.deepEqual(server.refused.splice(0), [], 'refused by the policy');
      } finally {
        await page.close();
      }
    });
    for (const { id } of catalogue()) await scenario(id, (page) => scenarios.calculator(page, server.address, id));
    await scenario('a voice stage by keyboard alone', (page) => scenarios.keyboardAlone(page, server.address), { width: 1280, height: 900 });
  });
}
