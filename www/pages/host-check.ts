import { HOST_CHECKS, HOST_WORDS } from '../words/keepers.js';

type Check = keyof typeof HOST_CHECKS;

/** Asks the host for the headers of its own files, and says which of those that are of use are missing. */
async function check(list: HTMLElement): Promise<void> {
  const head = async (path: string): Promise<Headers> => (await fetch(new URL(path, location.href), { method: 'HEAD', cache: 'no-store' })).headers;
  const [page, script, engine, worker] = await Promise.all([head('./'), head('../element.js'), head(list.dataset['engine'] ?? ''), head('../service-worker.js')]);
  const found: Readonly<Record<Check, boolean>> = {
    policy: page.get('content-security-policy')?.includes('frame-ancestors') === true,
    sniff: page.get('x-content-type-options') === 'nosniff',
    origin: script.get('access-control-allow-origin') === '*',
    wasm: engine.get('content-type')?.startsWith('application/wasm') === true,
    fresh: /no-cache|no-store|max-age=0/.test(worker.get('cache-control') ?? ''),
  };
  const missing = (Object.keys(HOST_CHECKS) as Check[]).filter((name) => !found[name]);
  const line = (text: string): HTMLElement => Object.assign(document.createElement('p'), { textContent: text });
  const rows = missing.map((name) => Object.assign(document.createElement('li'), { textContent: `${HOST_CHECKS[name].says}: ${HOST_WORDS.missing}. ${HOST_CHECKS[name].without}` }));
  const items = document.createElement('ul');
  items.append(...rows);
  list.replaceChildren(line(missing.length === 0 ? HOST_WORDS.all : HOST_WORDS.some(missing.length)), ...(missing.length === 0 ? [] : [items]));
}

const list = document.querySelector<HTMLElement>('#host');
if (list !== null) check(list).catch(() => { list.textContent = HOST_WORDS.noHost; });
