import type { TagStrip } from '../elements/embed/tag-strip.js';
import { lugFrom } from '../elements/embed/attributes.js';
import { fromHash } from '../elements/state/hash.js';
import { isRecord } from '../elements/state/paths.js';
import { trustedTypesOf } from './trusted-types.js';

/**
 * The page in a frame: one calculator, by the same link as its own page. It tells the page around it how high it is, as
 * `{tagstrip: 1, height}`, and what it answers, as `{tagstrip: 1, answers}`; it takes `{tagstrip: 1, inputs}` from that
 * page and from no other window.
 */
async function begin(): Promise<void> {
  fetchElement(new URL('../element.js', location.href).href);
  await customElements.whenDefined('tag-strip');
  const element = document.querySelector('tag-strip') as TagStrip;
  let calculator = '';
  const show = async (): Promise<void> => {
    const read = await fromHash(location.hash);
    if (read === null || !('build' in read)) return;
    const lug = read.build.lugs.find(({ id }) => id === read.at) ?? read.build.lugs[0];
    if (lug === undefined) return;
    ({ calculator } = lug);
    element.take(lug);
  };
  const heard = ({ source, data }: MessageEvent<unknown>): void => {
    if (source !== parent || parent === window || !isRecord(data) || data['tagstrip'] !== 1) return;
    const lug = lugFrom(calculator, data['inputs'], data['position']);
    if (lug !== null) element.take(lug);
  };
  const tell = (): void => {
    const height = Math.ceil(document.documentElement.getBoundingClientRect().height);
    if (height > 0) parent.postMessage({ tagstrip: 1, height }, '*');
  };
  addEventListener('hashchange', () => void show());
  addEventListener('message', heard);
  new ResizeObserver(tell).observe(document.documentElement);
  // A frame that is out of sight is not laid out by itself; its answers are there all the same.
  element.addEventListener('answers', ({ detail }: CustomEventInit<unknown>) => {
    parent.postMessage({ tagstrip: 1, answers: detail }, '*');
    setTimeout(tell, 200);
  });
  await show();
}

/** Shut off, the page is of no origin, so that not every engine knows "this site" when it sees it: trust goes by hash. */
function fetchElement(address: string): void {
  const policy = trustedTypesOf(globalThis)?.createPolicy('tagstrip', {
    createScriptURL: (url) => { if (url !== address) throw new TypeError('not of this site'); return url; },
  });
  const script = document.createElement('script');
  script.src = (policy === undefined ? address : policy.createScriptURL(address)) as string;
  document.head.append(script);
}

void begin();
