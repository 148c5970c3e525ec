import { css, html, LitElement } from 'lit';
import { SAY } from '../../words/index.js';
import { tell } from '../shared/events.js';
import { controls, ground } from '../shared/look.js';

/** Files larger than this are no build. */
const MOST_BYTES = 2_000_000;

/**
 * `<ts-share>`: the link, the text and the file of what is on the page. Fires `ts-copy-link`, `ts-copy-text`,
 * `ts-save-file` and `ts-open-file` with a file's text.
 */
export class TsShare extends LitElement {
  static override styles = [ground, controls, css`
    .row { gap: 10px; }
    .open { position: relative; }
    input { position: absolute; inset: 0; width: 100%; height: 100%; opacity: 0; cursor: pointer; font-size: 0; }
    .open:has(:focus-visible) { outline: 3px solid var(--ink); outline-offset: 2px; }
  `];

  protected override render(): unknown {
    const { link, text, save, open } = SAY.file;
    return html`<div class="row">
      <button @click=${() => { tell(this, 'ts-copy-link'); }}>${link}</button>
      <button @click=${() => { tell(this, 'ts-copy-text'); }}>${text}</button>
      <button @click=${() => { tell(this, 'ts-save-file'); }}>${save}</button>
      <label class="button open">${open}<input type="file" accept=".json,application/json" @change=${this.#opened}></label>
    </div>`;
  }

  readonly #opened = async (event: Event): Promise<void> => {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (file !== undefined) tell(this, 'ts-open-file', file.size > MOST_BYTES ? '' : await file.text());
    input.value = '';
  };
}

customElements.define('ts-share', TsShare);
