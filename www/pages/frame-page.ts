import { EMBED } from '../words/embed-words.js';
import { SAY } from '../words/index.js';

/** What a page may do that has script and style in itself: what is named by its hash, and nothing else. */
export const inOnePolicy = (scripts: string, style: string): string => [
  "default-src 'none'",
  `script-src ${scripts} 'wasm-unsafe-eval'`,
  `style-src '${style}'`,
  'img-src data:',
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types lit-html tagstrip',
].join('; ');

/** What the page in a frame may do: run the one script that is named by its hash, and what that fetches. */
export const framePolicy = (script: string, style: string): string => inOnePolicy(`'${script}' 'strict-dynamic'`, style);

/** What stands in the frame until the element is there, and where scripts do not run. */
export const FRAME_TITLE = SAY.site;
export const FRAME_BODY = `<tag-strip><noscript><p>${EMBED.without} <a href="../">${SAY.site}</a></p></noscript></tag-strip>`;
