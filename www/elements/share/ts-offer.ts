import { css, html, LitElement } from 'lit';
import { EMBED } from '../../words/embed-words.js';
import { tell } from '../shared/events.js';
import { controls, ground, type } from '../shared/look.js';
import type { Way } from './snippets.js';

const WAYS: readonly (readonly [Way, string, string])[] = [
  ['link', EMBED.link, EMBED.linkIs], ['frame', EMBED.frame, EMBED.frameIs], ['element', EMBED.element, EMBED.elementIs],
];

/** `<ts-offer>`: three ways to put a calculator on somebody's page, as markup to paste. Fires `ts-copy-code` with the way. */
export class TsOffer extends LitElement {
  static override styles = [ground, type, controls, css`
    ul { display: grid; gap: 14px; margin: 12px 0; }
    li { display: grid; gap: 6px; justify-items: start; }
    a { color: var(--touch); text-decoration-thickness: 1.6px; text-underline-offset: 3px; display: inline-block; padding: 11px 0; }
    p { max-width: 38em; }
  `];

  static override properties = { keepers: {} };
  /** Where web keepers read more; empty in a page that is a single file, which has no address to point to. */
  keepers = '';

  protected override render(): unknown {
    if (this.keepers === '') return html`<p class="book">${EMBED.noAddress}</p>`;
    return html`<p class="book">${EMBED.lead}</p>
      <ul>${WAYS.map(([way, name, is]) => html`<li><button @click=${() => { tell(this, 'ts-copy-code', way); }}>${name}</button><p class="book small">${is}</p></li>`)}</ul>
      <p><a href=${this.keepers}>${EMBED.keepers}</a></p>`;
  }
}

customElements.define('ts-offer', TsOffer);
