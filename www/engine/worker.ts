import { open, type Source } from '../package/door.js';
import { answer } from './answer.js';
import type { Asked, Sent } from './protocol.js';

/** The worker's side: opens the engine that its page sends first of all, then answers in order. */
const here = self as unknown as DedicatedWorkerGlobalScope;
let opening: (source: Source) => void;
const opened = new Promise<Source>((sent) => (opening = sent)).then(open);

here.addEventListener('message', ({ data }: MessageEvent<Asked | Sent>) => {
  if ('source' in data) opening(data.source);
  else opened.then(
    () => here.postMessage(answer(data)),
    (fault: unknown) => here.postMessage({ number: data.number, lost: String(fault) }),
  );
});
