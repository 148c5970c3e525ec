import ENGINE from 'packed:engine';
import '../words/all.js';
import { TagStrip } from '../elements/embed/tag-strip.js';
import { Direct } from '../engine/direct.js';
import { Engine } from '../engine/index.js';
import { unpacked } from '../engine/packed.js';

let engine: Engine | undefined;

/** The site that this script came from; a copy that stands elsewhere has its `home` from the attribute. */
function site(address: string | undefined): URL | null {
  return address !== undefined && /^https?:/.test(address) ? new URL('.', address) : null;
}

/** Makes `<tag-strip>` known. However many stand on the page, the engine is unpacked once. */
export function define(address: string | undefined): void {
  TagStrip.home = site(address);
  TagStrip.engine = () => (engine ??= new Engine(new Direct(() => unpacked(ENGINE))));
  customElements.define('tag-strip', TagStrip);
}
