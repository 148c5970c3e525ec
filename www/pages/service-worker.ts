/** Keeps one release whole on the device: every file checked by its hash, never two releases in one page. */

declare const self: ServiceWorkerGlobalScope & typeof globalThis;
/** Name of the release, and the SHA-256 of every file by its address relative to this script. Filled in by the build. */
declare const RELEASE: string;
declare const FILES: Readonly<Record<string, string>>;

const here = new URL('./', self.location.href);
/** Another copy of the site at another path of this host has caches of its own. */
const OURS = `tagstrip ${here.pathname} `;
const CACHE = OURS + RELEASE;

/** What a host says of a file that must hold without it too. */
const HEADERS = ['content-type', 'content-security-policy', 'x-content-type-options', 'referrer-policy'];

async function hashOf(body: ArrayBuffer): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', body));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** A file as the network has it, if it is this release's. */
async function fetched(path: string): Promise<Response> {
  const response = await fetch(new URL(path, here), { cache: 'no-store' });
  const body = await response.arrayBuffer();
  if (!response.ok || (await hashOf(body)) !== FILES[path]) throw new Error(`${path} is not of this release`);
  // Made anew, since a navigation takes no answer that was redirected, as some hosts do with `index.html`.
  const headers = HEADERS.flatMap((name): [string, string][] => [[name, response.headers.get(name) ?? '']]).filter(([, value]) => value !== '');
  return new Response(body, { headers });
}

/** All or nothing: one wrong file and the old release stays. */
async function install(): Promise<void> {
  const files = await Promise.all(Object.keys(FILES).map(async (path) => ({ path, file: await fetched(path) })));
  try {
    const cache = await caches.open(CACHE);
    for (const { path, file } of files) await cache.put(new URL(path, here), file);
  } catch (fault) {
    await caches.delete(CACHE);
    throw fault;
  }
}

/** The release before stays: a page that it was handing out as it went still comes for its files, which have names of their own. */
async function clear(): Promise<void> {
  const others = (await caches.keys()).filter((name) => name.startsWith(OURS) && name !== CACHE);
  for (const name of others.slice(0, -1)) await caches.delete(name);
}

/** The listed file that an address stands for; a folder stands for its page. */
function listed(address: string): string | undefined {
  const path = new URL(address).pathname.slice(here.pathname.length);
  return [path, `${path}index.html`, `${path}/index.html`].find((candidate) => Object.hasOwn(FILES, candidate));
}

async function answer(path: string, request: Request): Promise<Response> {
  const url = new URL(request.url);
  // Without its slash a folder's page would take its relative addresses from the folder above.
  if (path === `${url.pathname.slice(here.pathname.length)}/index.html`) return Response.redirect(`${url.pathname}/`, 301);
  const kept = await (await caches.open(CACHE)).match(new URL(path, here));
  // The browser may have cleared what was kept. The network's file will do if it is the same, or if it is a whole page.
  return kept ?? (request.mode === 'navigate' ? fetch(request) : fetched(path));
}

/** The page asks for a newer release: it comes in only where no other page of this one is open. */
async function comeIn(reply: MessagePort | undefined): Promise<void> {
  const pages = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  reply?.postMessage(pages.length <= 1);
  if (pages.length <= 1) await self.skipWaiting();
}

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(clear()));
self.addEventListener('message', (event) => { if (event.data === 'come in') event.waitUntil(comeIn(event.ports[0])); });
self.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  if (method !== 'GET' || !url.startsWith(here.href)) return;
  const path = listed(url);
  if (path !== undefined) event.respondWith(answer(path, event.request));
  else if (url.startsWith(`${here.href}assets/`)) event.respondWith(caches.match(url).then((kept) => kept ?? fetch(event.request)));
});
