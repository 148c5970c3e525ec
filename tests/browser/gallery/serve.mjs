// Builds the gallery in memory and serves it under the page's own content-security policy.
import { createServer } from 'node:http';
import { fileURLToPath } from 'node:url';

import { build } from 'esbuild';

export { browser } from '../harness.mjs';

const POLICY =
  "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; connect-src 'self'; img-src 'self' data:; " +
  "base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types lit-html tagstrip";
const LIGHT = `--paper: #edeee8; --plate: #fbfbf7; --ink: #171a19; --ink-2: #454a47; --edge: #6c726d; --rule: #bfc3ba;
  --copper: #8a3d10; --live: #a34a14; --touch: #005259; --wash: #dceae8;`;
const DARK = `--paper: #16120e; --plate: #201a14; --ink: #f3eadc; --ink-2: #cbbfae; --edge: #94887a; --rule: #4b4136;
  --copper: #efab78; --live: #e2925a; --touch: #82d3cc; --wash: #1c3532;`;
const STYLE = `:root { ${LIGHT} } :root[data-theme=dark] { ${DARK} } body { margin: 0; background: var(--paper); color: var(--ink); }
  .plots { padding: 16px; }`;
const PAGE = `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>Gallery</title><link rel="stylesheet" href="gallery.css"><script type="module" src="gallery.js"></script><body></body></html>`;

/** Starts the server; gives its address and how to stop it. */
export async function serve() {
  const entry = fileURLToPath(new URL('gallery.ts', import.meta.url));
  const made = await build({ entryPoints: [entry], bundle: true, format: 'esm', write: false, logLevel: 'warning' });
  const files = {
    '/': ['text/html; charset=utf-8', PAGE],
    '/gallery.css': ['text/css', STYLE],
    '/gallery.js': ['text/javascript', made.outputFiles[0].text],
  };
  const server = createServer((request, response) => {
    const [type, body] = files[new URL(request.url, 'http://x').pathname] ?? [];
    response.writeHead(body === undefined ? 404 : 200, { 'content-type': type ?? 'text/plain', 'content-security-policy': POLICY });
    response.end(body ?? '');
  });
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  return { address: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() };
}
