import { css, html, LitElement, nothing } from 'lit';
import { PAGE } from '../../words/page-words.js';
import { controls, ground } from '../shared/look.js';

/** Whether the browser promises to keep what is stored; `refused` after it was asked. */
type Promised = 'yes' | 'no' | 'refused' | 'unknown';

/** `<ts-lasting>`: whether the browser has promised to keep the build, and a button that asks it to. */
export class TsLasting extends LitElement {
  static override styles = [ground, controls, css`
    p { margin: 0 0 8px; }
  `];

  static override properties = { promised: { state: true } };
  private promised: Promised | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    // Outside of a secure address, or in a sandbox, there is nothing to ask.
    void this.#ask((storage) => storage.persisted(), 'no');
  }

  protected override render(): unknown {
    const { promised } = this;
    if (promised === null) return nothing;
    const words = { yes: PAGE.keptForGood, no: PAGE.mayBeCleared, refused: PAGE.askedInVain, unknown: PAGE.keptNowhere };
    return html`<p role="status">${words[promised]}</p>
      ${promised === 'no' ? html`<button @click=${() => { void this.#ask((storage) => storage.persist(), 'refused'); }}>${PAGE.askToKeep}</button>` : nothing}`;
  }

  async #ask(question: (storage: StorageManager) => Promise<boolean>, otherwise: Promised): Promise<void> {
    try {
      this.promised = (await question(navigator.storage)) ? 'yes' : otherwise;
    } catch {
      this.promised = 'unknown';
    }
  }
}

customElements.define('ts-lasting', TsLasting);
