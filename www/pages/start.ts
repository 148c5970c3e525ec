import '../elements/app/ts-app.js';
import { pageEngine } from '../engine/index.js';
import { keepOnDevice } from './releases.js';
import { scriptAddress } from './trusted.js';

/** Names of the built files, relative to this script. Filled in by the build. */
declare const WORKER: string;
declare const WASM: string;

const wasm = (): URL => new URL(WASM, import.meta.url);
const worker = (): Worker => new Worker(scriptAddress(`${WORKER}?${WASM}`), { type: 'module' });

const app = document.querySelector('ts-app');
if (app !== null) {
  app.engine = pageEngine(worker, wasm);
  if ('serviceWorker' in navigator) keepOnDevice(scriptAddress('../service-worker.js'), app).catch(() => undefined);
}
