import { css, html, LitElement } from 'lit';
import { PAGE } from '../../words/page-words.js';
import { tell } from '../shared/events.js';
import { controls, ground, type } from '../shared/look.js';
import type { Change } from '../state/answered.js';

/** `<ts-changes>`: answers that another release gave otherwise, both figures side by side. Fires `ts-take-new`. */
export class TsChanges extends LitElement {
  static override styles = [ground, type, controls, css`
    section { border: 1.5px solid var(--ink); background: var(--plate); padding: 12px; margin-bottom: 14px; display: grid; gap: 8px; justify-items: start; }
    li { font: 400 1.0625rem/1.42 var(--book); }
  `];

  static override properties = { release: {}, changes: {} };
  release = '';
  changes: readonly Change[] = [];

  protected override render(): unknown {
    return html`<section role="status"><h2>${PAGE.answeredOtherwise(this.release)}</h2>
      <ul>${this.changes.map(({ label, was, now }) => html`<li>${label}: ${PAGE.wasNow(was, now)}</li>`)}</ul>
      <button @click=${() => { tell(this, 'ts-take-new'); }}>${PAGE.takeNew}</button></section>`;
  }
}

customElements.define('ts-changes', TsChanges);
