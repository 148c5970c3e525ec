// Findings over every state of every calculator's page, light and dark, in the three engines: axe, targets under 44 px, anything
// too wide; on a phone, at 320 px, wide, at 400 % (a window of 320 × 256), and with forced colours where the engine has them.
import { catalogueOf } from '../measuring/catalogue.mjs';
import { join } from 'node:path';
import * as access from '../../../tests/browser/engines/access.mjs';
import { handsOn, serveWatched } from '../../../tests/browser/engines/hands.mjs';
import { ENGINES } from '../../../tests/browser/engines/index.mjs';
import { atMost, built, root } from '../measuring/run.mjs';

const SCREENS = [
  { name: 'phone', width: 360, height: 740 }, { name: 'narrow', width: 320, height: 640 }, { name: '400 %', width: 320, height: 256 },
  { name: 'wide', width: 1440, height: 900 }, { name: 'forced colours', width: 360, height: 740, forced: true },
];
/** WebKit's window is never narrower than this, and it has no forced colours. */
const CAN = { webkit: ({ width, forced }) => width >= 447 || (width === 360 && !forced), firefox: () => true, chromium: () => true };

/** `axe=firefox`, or `axe=firefox:wide`, for one engine or one screen. */
export async function measure(how = '') {
  built();
  const [engineAsked, screenAsked] = how.split(':');
  const ids = (await catalogueOf()).map(({ id }) => id);
  const server = await serveWatched(join(root, 'dist/site'));
  const rows = [];
  try {
    for (const name of Object.keys(ENGINES).filter((each) => !engineAsked || each === engineAsked)) {
      const found = { axe: [], small: [], wide: [], looked: 0 };
      for (const screen of SCREENS.filter((each) => CAN[name](each) && (!screenAsked || each.name === screenAsked))) {
        const engine = await ENGINES[name].start({ forced: screen.forced });
        try {
          for (const id of ids) await look(engine, server, id, screen, found);
        } finally {
          await engine.close();
        }
      }
      rows.push(
        atMost(`axe.${name}`, found.axe.length, `findings in ${found.looked} looks`, 0, [...new Set(found.axe)].slice(0, 6).join('; ')),
        atMost(`axe.${name}.targets`, found.small.length, 'under 44 px', 0, [...new Set(found.small)].slice(0, 6).join('; ')),
        atMost(`axe.${name}.too_wide`, found.wide.length, 'states', 0, found.wide.slice(0, 6).join('; ')),
      );
    }
  } finally {
    await server.close();
  }
  return rows;
}

async function look(engine, server, id, screen, found) {
  const page = await handsOn(engine, screen);
  try {
    for await (const state of access.states(page, server.address, id)) {
      const where = `${id}, ${screen.name}, ${state}`;
      for (const theme of ['light', 'dark']) {
        await access.inTheme(page, theme);
        found.looked += 1;
        found.axe.push(...(await access.axe(page)).map((each) => `${where}, ${theme}: ${each}`));
      }
      found.small.push(...(await access.tooSmall(page)).map((each) => `${where}: ${each}`));
      if ((await access.tooWide(page)) > 0) found.wide.push(where);
    }
  } finally {
    await page.close();
  }
}
