import '../elements/app/ts-app.js';
import { pageEngine } from '../engine/index.js';
import { scriptAddress } from './trusted.js';

/** Names of the built files, relative to this script. Filled in by the build. */
declare const WORKER: string;
declare const WASM: string;

const wasm = (): URL => new URL(WASM, import.meta.url);
const worker = (): Worker => new Worker(scriptAddress(`${WORKER}?${WASM}`), { type: 'module' });

for (const app of document.querySelectorAll('ts-app')) app.engine = pageEngine(worker, wasm);

if ('serviceWorker' in navigator) {
  const address = scriptAddress('../service-worker.js');
  // Where it cannot be had (a sandbox, a file, a refusal of storage) the page works as long as there is a network.
  navigator.serviceWorker.register(address as unknown as string).catch(() => undefined);
}
