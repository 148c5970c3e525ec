import { css, unsafeCSS, type CSSResult } from 'lit';
import sheet from '../../styles/tokens.css';

/** The tokens of the page on the element's own ground; a page sets one from outside as `--tagstrip-ink` and the like. */
const own = sheet.replaceAll(':root', '.page').replaceAll(/--([\w-]+): ([^;]+);/g, '--$1: var(--tagstrip-$1, $2);');
const tokens: CSSResult = unsafeCSS(own);

/**
 * Nothing of the page's own looks comes in: what would be inherited begins anew, lengths are measured by the reader's
 * own letter size and not by the page's, and widths by the column that the element stands in.
 */
export const embedStyle = [tokens, css`
  :host { display: block; min-width: 0; }
  .page { all: initial; display: block; direction: ltr; unicode-bidi: isolate; font: medium system-ui, sans-serif; container-type: inline-size; }
  .page, .page[data-theme] { --margin: 0px; --strip-low: 0px; --strip-side: 0px; }
  .page[data-theme="light"] { --paper: var(--tagstrip-paper, #fff); --plate: var(--tagstrip-plate, #fff); color-scheme: light; }
  .inside { background: var(--paper); color: var(--ink); font: 400 1.0625rem/1.42 var(--instrument); font-variant-numeric: tabular-nums lining-nums; }
  header { border-bottom: 3px solid var(--ink); position: relative; padding: 4px 0 8px; margin-bottom: 8px; }
  header::after { content: ""; position: absolute; left: 0; right: 0; bottom: -6px; border-bottom: 1px solid var(--ink); }
  h2.title { font: 600 1.5625rem/1.2 var(--book); }
  .drawing { border: solid var(--edge); border-width: 1px 0; margin-bottom: 16px; }
  ts-open-field { margin: -8px 0 16px; }
  ts-switch { margin: 0 0 16px; }
  .cautions { display: grid; gap: 14px; padding-bottom: 16px; }
  .foot { border-top: 1px solid var(--edge); padding: 10px 0; color: var(--ink-2); font-size: 0.9375rem; }
  .foot a { color: var(--touch); font-weight: 700; text-decoration-thickness: 1.6px; text-underline-offset: 3px; display: inline-block; padding: 11px 4px; }
  .general { border: 3px solid var(--ink); border-bottom-width: 6px; padding: 12px; margin: 10px 0; }
`];
