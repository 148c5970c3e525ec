import { css, html, LitElement, nothing } from 'lit';
import { tell } from '../shared/events.js';
import { ground, type } from '../shared/look.js';

/** `<ts-disclosure>`: a heading that opens what stands in its slot. Fires `ts-disclose` the first time it is opened. */
export class TsDisclosure extends LitElement {
  static override styles = [ground, type, css`
    :host { border-top: 1px solid var(--edge); }
    h2 { font-size: 1.125rem; }
    button { width: 100%; min-height: 52px; padding: 8px 0; border: 0; background: none; color: var(--touch); font: inherit; text-align: left; display: flex; align-items: center; gap: 14px; cursor: pointer; touch-action: manipulation; }
    button span { border-bottom: 1.6px solid currentcolor; padding-bottom: 2px; }
    button:active { background: var(--touch); color: var(--plate); }
    svg { fill: currentcolor; }
    .inside { padding: 4px 0 22px; }
  `];

  static override properties = { heading: {}, open: { type: Boolean, reflect: true } };
  heading = '';
  open = false;

  protected override render(): unknown {
    return html`<h2><button aria-expanded=${this.open ? 'true' : 'false'} @click=${this.#toggle}>
      <svg viewBox="0 0 12 12" width="13" height="13" aria-hidden="true"><path d=${this.open ? 'M0 2H12L6 11Z' : 'M2 0V12L11 6Z'}></path></svg>
      <span>${this.heading}</span></button></h2>
      ${this.open ? html`<div class="inside"><slot></slot></div>` : nothing}`;
  }

  /** Opens it, if it is not open. */
  unfold(): void {
    if (!this.open) this.#toggle();
  }

  #toggle(): void {
    this.open = !this.open;
    if (this.open) tell(this, 'ts-disclose');
  }
}

customElements.define('ts-disclosure', TsDisclosure);
