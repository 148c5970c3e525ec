import '../elements/app/ts-app.js';
import { pageEngine, type Built, type BuiltPart } from '../engine/index.js';
import type { Sent } from '../engine/protocol.js';
import type { Source } from '../package/door.js';
import type { BareCalculator } from '../package/kinds.js';
import { keepOnDevice } from './releases.js';
import { take } from './soon.js';
import { scriptAddress } from './trusted.js';

/** Names of the built files, relative to this script. Filled in by the build. */
declare const WORKER: string;
declare const WASM: string;
declare const SHELVES: readonly { readonly ids: readonly string[]; readonly wasm: string }[];
declare const CATALOGUE: string;

/** Compiled while it comes in, once for the page and its workers; where that cannot be, each is told the address. */
function built(wasm: string): Built {
  const address = new URL(wasm, import.meta.url).href;
  let compiled: Promise<WebAssembly.Module> | undefined;
  const source = (): Promise<Source> => {
    compiled ??= WebAssembly.compileStreaming(take(address));
    return compiled.catch(() => {
      compiled = undefined;
      return address;
    });
  };
  const worker = (): Worker => {
    const made = new Worker(scriptAddress(WORKER), { type: 'module' });
    const send = (sent: Sent): void => made.postMessage(sent);
    source().then((found) => send({ source: found })).catch(() => send({ source: address }));
    return made;
  };
  return { source, worker };
}

const catalogue = async (): Promise<readonly BareCalculator[]> => {
  const response = await take(new URL(CATALOGUE, import.meta.url).href);
  return (await response.json()) as readonly BareCalculator[];
};

/** The engine of the calculator's own shelf, which is smaller. */
function partFor(calculator: string): BuiltPart | undefined {
  const shelf = SHELVES.find(({ ids }) => ids.includes(calculator));
  return shelf === undefined ? undefined : { ...built(shelf.wasm), ids: shelf.ids, catalogue };
}

// A page that goes to another calculator changes its own address; what is said relative to it would then be elsewhere.
for (const link of document.querySelectorAll<HTMLLinkElement>('link[rel~="icon"], link[rel="manifest"]')) link.setAttribute('href', link.href);

const app = document.querySelector('ts-app');
if (app !== null) {
  app.engine = pageEngine(built(WASM), partFor(app.calculator));
  if ('serviceWorker' in navigator) keepOnDevice(scriptAddress('../service-worker.js'), app).catch(() => undefined);
}
