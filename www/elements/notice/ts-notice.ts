import { css, html, LitElement } from 'lit';
import { ICONS } from '../shared/icons.js';
import { tell } from '../shared/events.js';
import { controls, ground } from '../shared/look.js';

/** `<ts-notice>`: a sentence about the page itself, with what can be done; it stays until it is closed. Fires `ts-dismiss`. */
export class TsNotice extends LitElement {
  static override styles = [ground, controls, css`
    :host { border: 1.5px solid var(--ink); background: var(--plate); margin: 12px 0; }
    .in { display: grid; grid-template-columns: 44px minmax(0, 1fr); padding: 10px 12px 10px 4px; align-items: start; }
    .mark { padding: 2px 0 0 8px; }
    p { font-size: 1rem; padding-top: 3px; }
    .row { margin-top: 8px; }
  `];

  static override properties = { text: {}, action: {}, close: {} };
  text = '';
  /** The word on the button that does something about it; none for no button. */
  action = '';
  close = 'Close';

  protected override render(): unknown {
    return html`<div class="in" role="status"><div class="mark">${ICONS.note(26)}</div><div><p>${this.text}</p>
      <div class="row">
        ${this.action === '' ? '' : html`<button @click=${() => { tell(this, 'ts-act'); }}>${this.action}</button>`}
        <button class="link" @click=${() => { tell(this, 'ts-dismiss'); }}><span>${this.close}</span></button>
      </div></div></div>`;
  }
}

customElements.define('ts-notice', TsNotice);
