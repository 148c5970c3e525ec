// Two hosts: one that has the site and sends what its `_headers` say, and a club's, with pages of its own.
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';

import { serveFolder } from '../../scripts/lib/static-server.mjs';

const UNDER = '/club/tagstrip/';
/** Bytes under which a host packs nothing. */
const SMALL = 200;
const PACKED = { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } };

async function listen(server, name) {
  await new Promise((ready) => { server.listen(0, '127.0.0.1', ready); });
  return {
    address: `http://${name}:${server.address().port}`,
    close: () => new Promise((done) => { server.close(done); server.closeAllConnections(); }),
  };
}

/** The rules of a `_headers` file that fit a path, as hosts read it: a star at the end is anything. */
function rulesIn(text) {
  const rules = [];
  for (const line of text.split('\n').filter((each) => each.trim() !== '')) {
    if (!line.startsWith(' ')) rules.push({ path: line.trim(), headers: [] });
    else rules.at(-1).headers.push(line.trim().split(/:\s*(.*)/).slice(0, 2));
  }
  const fits = (rule, path) => (rule.endsWith('*') ? path.startsWith(rule.slice(0, -1)) : path === rule);
  return (path) => Object.fromEntries(rules.filter((rule) => fits(rule.path, path)).flatMap(({ headers }) => headers));
}

/** The site, packed as a host packs it, with its headers or, `bare`, without. `sent` keeps path and bytes of each answer. */
export async function serveHosted(site, { bare = false } = {}) {
  const inner = await serveFolder(site, { under: UNDER });
  const headersOf = bare ? () => ({}) : rulesIn(readFileSync(join(site, '_headers'), 'utf8'));
  const [sent, packs] = [[], new Map()];
  const server = createServer(async (request, response) => {
    // A page that is closed may still have asked for something when the host is.
    const answer = await fetch(new URL(request.url, inner.address), { redirect: 'manual' }).catch(() => null);
    const plain = await answer?.arrayBuffer().then(Buffer.from).catch(() => null);
    if (!plain) {
      response.destroy();
      return;
    }
    const { pathname } = new URL(request.url, inner.address);
    if (!packs.has(pathname)) packs.set(pathname, plain.length < SMALL ? plain : brotliCompressSync(plain, PACKED));
    const pack = packs.get(pathname);
    const tag = `"${pathname} ${pack.length}"`;
    const head = { 'content-type': answer.headers.get('content-type'), 'cache-control': 'no-cache', etag: tag, ...headersOf(`/${pathname.slice(UNDER.length)}`) };
    if (answer.headers.has('location')) head.location = answer.headers.get('location');
    if (request.headers['if-none-match'] === tag) {
      sent.push({ path: pathname, bytes: 0 });
      response.writeHead(304, head).end();
      return;
    }
    if (plain.length >= SMALL) head['content-encoding'] = 'br';
    if (request.method !== 'HEAD') sent.push({ path: pathname, bytes: pack.length });
    response.writeHead(answer.status, head).end(request.method === 'HEAD' ? undefined : pack);
  });
  const { address, close } = await listen(server, '127.0.0.1');
  return { address: `${address}${UNDER}`, sent, close: async () => { await close(); await inner.close(); } };
}

/** A club's pages, by path; of another origin than the site, and with a look of their own that must not get in. */
export async function serveClub(pages = new Map()) {
  const server = createServer((request, response) => {
    const body = pages.get(request.url);
    response.writeHead(body === undefined ? 404 : 200, { 'content-type': 'text/html; charset=utf-8' }).end(body ?? '');
  });
  return { ...(await listen(server, 'localhost')), pages };
}

/** A page of a club with its own loud style sheet, and what was pasted into it. */
export const clubPage = (pasted) => `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>Evening 4</title><link rel="icon" href="data:,"><style>
:root { --ink: red; --paper: yellow; --rem: 40px; }
html { font-size: 62.5%; letter-spacing: 3px; text-transform: uppercase; font-family: monospace; direction: rtl; }
body { width: 340px; margin: 20px; }
* { color: red; }
p, h2, td, button { font-size: 40px !important; padding: 40px; }
</style></head><body><h2 id="theirs">Evening 4</h2>
${pasted}
<script>
  globalThis.heard = []; globalThis.told = [];
  document.addEventListener('answers', (event) => heard.push(event.detail), true);
  addEventListener('message', ({ data, origin }) => told.push({ data, origin }));
</script></body></html>`;
