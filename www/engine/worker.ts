import { open } from '../package/door.js';
import { answer } from './answer.js';
import type { Asked } from './protocol.js';

/** The worker's side: opens the engine beside the script, then answers in order. */
const here = self as unknown as DedicatedWorkerGlobalScope;
const opened = open(new URL(here.location.search.slice(1), here.location.href));

here.addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  opened.then(
    () => here.postMessage(answer(data)),
    (fault: unknown) => here.postMessage({ number: data.number, lost: String(fault) }),
  );
});
