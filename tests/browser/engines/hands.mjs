// Hands to touch a page with, the same in every engine, and a server that hears what the page's policy refuses.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { serveFolder } from '../../../scripts/lib/static-server.mjs';
import * as inPage from './in-page.mjs';

/**
 * The built site in a subfolder. Its own policy is sent as a header too, which alone can say where refusals are told:
 * every engine reports what a page tried against it, a request to another host among it.
 */
export async function serveWatched(site) {
  const refused = [];
  const policy = /Content-Security-Policy: (.*)/.exec(readFileSync(join(site, '_headers'), 'utf8'))[1];
  const server = await serveFolder(site, {
    under: '/club/tagstrip/',
    headers: { 'content-security-policy': `${policy}; report-uri /refused` },
    posted: (path, body) => { if (path === '/refused') refused.push(body); },
  });
  return { ...server, refused };
}

/** A visitor's page with hands. */
export async function handsOn(engine, options) {
  const page = await engine.visit(options);
  const run = (what, ...args) => page.run(String(what), args);
  const settled = () => run(() => globalThis.seen.settled());
  const arrive = async () => {
    await run(inPage.install);
    await settled();
  };
  const tap = async (path) => {
    const { x, y } = await run(inPage.middle, path);
    await page.tap(x, y);
  };
  return {
    ...page,
    run,
    settled,
    tap,
    open: async (url) => {
      await page.go(url);
      await arrive();
    },
    reload: async () => {
      await page.reload();
      await arrive();
    },
    textOf: (path) => run((at) => globalThis.seen.textOf(at), path),
    fields: () => run(inPage.fields),
    fieldAt: (path) => run(inPage.fieldAt, path),
    /** Types over what stands in an input, key by key. */
    fill: async (path, text) => {
      await tap(path);
      await page.chord('Control', 'a');
      await page.press([...text]);
      await settled();
    },
    faults: async () => [...page.told, ...(await run(() => globalThis.seen?.faults ?? []))],
  };
}
