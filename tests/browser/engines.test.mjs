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
    const server = await serveWatched(SITE);
    t.after(() => server.close());
    const engine = await ENGINES[name].start();
    t.after(() => engine.close());
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
    const ids = catalogue().map(({ id }) => id);
    for (const id of ids) await scenario(id, (page) => scenarios.calculator(page, server.address, id));
    // One page an engine here, each another; `scripts/measure axe` looks at all of them.
    const turn = Object.keys(ENGINES).indexOf(name);
    const [looked, theme] = [ids[turn % ids.length], turn % 2 === 0 ? 'dark' : 'light'];
    await scenario(`axe and targets: ${looked}, ${theme}`, (page) => scenarios.access(page, server.address, looked, theme));
    await scenario('a result is read out once', (page) => scenarios.announcedOnce(page, server.address));
    await scenario('a strange link', (page) => scenarios.strangeLink(page, server.address));
    await scenario('a strange message', (page) => scenarios.strangeMessage(page, server.address));
    await scenario('a voice stage by keyboard alone', (page) => scenarios.keyboardAlone(page, server.address), { width: 1280, height: 900 });
    await t.test('kept on the device, and said so when it is', async () => {
      const own = await serveWatched(SITE);
      const page = await handsOn(engine, PHONE);
      let gone = false;
      const goOffline = async () => {
        await own.close();
        gone = true;
      };
      try {
        await scenarios.keptOnDevice(page, own.address, goOffline);
      } finally {
        await page.close();
        if (!gone) await own.close();
      }
    });
  });
}
