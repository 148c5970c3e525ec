import { pictureAddress } from '../../drawings/picture.js';
import { EMBED } from '../../words/embed-words.js';
import { copy } from '../app/files.js';
import type { Desk } from '../state/desk.js';
import { toHash } from '../state/hash.js';
import { viewOf } from '../state/view.js';
import { codeOf, type Way } from './snippets.js';

const NAMES: Readonly<Record<Way, string>> = { link: EMBED.aLink, frame: EMBED.aFrame, element: EMBED.anElement };

interface Place {
  readonly site: string;
  readonly integrity: string;
  readonly drawing: SVGSVGElement | null;
}

/** Copies the markup for the open calculator; gives what the page then says. */
export async function copyCode(way: Way, desk: Desk, { site, integrity, drawing }: Place): Promise<string> {
  const [view, { lug }] = [viewOf(desk), desk];
  if (view === null || lug === undefined) return '';
  const hash = await toHash({ build: { name: '', lugs: [{ ...lug, pins: [], rest: {} }], rest: {} }, at: lug.id });
  const held = way === 'element' && !(await lets(`${site}element.js`)) ? '' : integrity;
  const picture = drawing === null ? '' : pictureAddress(drawing);
  const done = await copy(codeOf(way, { view, inputs: lug.inputs, site, hash, integrity: held, picture }));
  if (!done) return EMBED.notCopied;
  return held === '' ? `${EMBED.copied(NAMES[way])} ${EMBED.notHeld}` : EMBED.copied(NAMES[way]);
}

/** Whether another page may hold the script to its hash, which needs a header of the host. */
async function lets(script: string): Promise<boolean> {
  try {
    const { ok, headers } = await fetch(script, { method: 'HEAD' });
    return ok && headers.get('access-control-allow-origin') === '*';
  } catch {
    return false;
  }
}
