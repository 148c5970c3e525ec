// A small server of static files: right types, one folder, nothing outside it. For a person's own machine and the tests.
import { createReadStream, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { brotliCompressSync } from 'node:zlib';

const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/**
 * Serves a folder on the loopback. `folder` may be a function, asked at each request, so that a test can put a new
 * release in place of an old one; `under` is the path that the site stands at; `heard` is told every path asked for;
 * `headers` go with every file; `compressed` sends them as a host does, once a file is packed; `posted` takes what a page sends, such as what its policy refused.
 */
export async function serveFolder(folder, { port = 0, under = '/', heard = () => {}, headers = {}, compressed = false, posted } = {}) {
  const current = typeof folder === 'function' ? folder : () => folder;
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url, 'http://local');
    heard(pathname);
    if (request.method === 'POST' && posted !== undefined) {
      take(request).then((body) => posted(pathname, body)).catch(() => undefined);
      response.writeHead(204).end();
      return;
    }
    const answer = found(current(), under, pathname);
    if (answer.to !== undefined) response.writeHead(301, { location: answer.to }).end();
    else if (answer.file === undefined) response.writeHead(404, { 'content-type': 'text/plain' }).end('not here\n');
    else {
      const head = { 'content-type': TYPES[extname(answer.file)] ?? 'application/octet-stream', 'cache-control': 'no-cache' };
      if (compressed && /\bbr\b/.test(request.headers['accept-encoding'] ?? '')) head['content-encoding'] = 'br';
      response.writeHead(200, { ...head, 'x-content-type-options': 'nosniff', ...headers });
      if (request.method === 'HEAD') response.end();
      else if (head['content-encoding'] === 'br') response.end(packed(answer.file));
      else createReadStream(answer.file).pipe(response);
    }
  });
  await new Promise((ready, failed) => {
    server.once('error', failed);
    server.listen(port, '127.0.0.1', ready);
  });
  const address = `http://127.0.0.1:${server.address().port}${under}`;
  return { address, close: () => new Promise((done) => { server.close(done); server.closeAllConnections(); }) };
}

const packs = new Map();

function packed(file) {
  if (!packs.has(file)) packs.set(file, brotliCompressSync(readFileSync(file)));
  return packs.get(file);
}

async function take(request) {
  const pieces = [];
  for await (const piece of request) pieces.push(piece);
  return Buffer.concat(pieces).toString('utf8');
}

function found(folder, under, pathname) {
  if (!pathname.startsWith(under)) return {};
  let path;
  try {
    path = normalize(decodeURIComponent(pathname.slice(under.length)));
  } catch {
    return {};
  }
  if (path.startsWith('..') || path.includes(`${sep}..`) || path.includes('\0')) return {};
  const file = join(folder, path);
  const kind = statSync(file, { throwIfNoEntry: false });
  if (kind?.isFile()) return { file };
  if (!kind?.isDirectory()) return {};
  if (!pathname.endsWith('/')) return { to: `${pathname}/` };
  const page = join(file, 'index.html');
  return statSync(page, { throwIfNoEntry: false })?.isFile() ? { file: page } : {};
}
