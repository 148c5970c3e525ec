import { css, html, LitElement, nothing } from 'lit';
import { staleWords, type Lead } from '../../words/index.js';
import { ICONS } from '../shared/icons.js';
import { ground, hatching, type } from '../shared/look.js';
import type { Waiting } from '../state/stale.js';

/**
 * `<ts-lead>`: the lead answer, large, with its unit and one sentence; folded to one row with the answer nearest to the
 * open part. Greyed, with the reason said once above it, while it is of older values.
 */
export class TsLead extends LitElement {
  static override styles = [ground, type, hatching, css`
    :host { padding: 14px 0 16px; }
    .answer { display: grid; gap: 2px 28px; }
    .label { font: 700 1rem/1.35 var(--instrument); }
    .figure { font-size: 3.125rem; font-weight: 600; line-height: 1.12; letter-spacing: -0.015em; overflow-wrap: anywhere; }
    .unit { font-size: 0.5em; font-weight: 600; letter-spacing: 0; }
    .sentence { font: 400 1.125rem/1.42 var(--book); text-wrap: pretty; max-width: 36em; margin-top: 8px; }
    .folded { display: flex; gap: 4px 24px; padding: 2px 0; }
    .folded > div { min-width: 0; }
    .folded .label { font-size: 0.9375rem; white-space: nowrap; overflow: hidden; text-overflow: ellipsis; }
    .folded .figure { font-size: 2.125rem; }
    :host([folded]) { padding: 10px var(--margin); margin: 0 calc(-1 * var(--margin)); }
    .stale { border: 1.5px dashed var(--ink); background: var(--plate); padding: 10px 12px; display: flex; gap: 14px; align-items: center; margin-bottom: 10px; font-size: 1rem; font-weight: 500; }
    .hatched { margin: 0 calc(-1 * var(--margin)); padding: 8px var(--margin) 12px; }
    .hatched .label, .hatched .figure, .hatched .sentence { color: var(--ink-2); width: fit-content; max-width: 100%; background: var(--paper); }
    .hatched .label { font-weight: 600; }
    .hatched .figure { font-weight: 400; border-bottom: 2px dashed var(--edge); }
    .hatched .unit { font-weight: 400; }
    @media (min-width: 720px) {
      .answer:not(.folded) { grid-template-columns: max-content minmax(0, 1fr); align-items: center; }
      .answer:not(.folded) .label { grid-column: 1 / -1; }
      .figure { font-size: 4rem; white-space: nowrap; }
      .sentence { margin: 0; }
      .hatched { margin: 0; padding: 8px 12px 12px; }
    }
  `];

  static override properties = { lead: {}, nearest: {}, folded: { type: Boolean, reflect: true }, waiting: {}, stale: { type: Boolean } };
  lead: Lead | null = null;
  nearest: Lead | null = null;
  folded = false;
  stale = false;
  waiting: readonly Waiting[] = [];

  protected override render(): unknown {
    const { lead, stale } = this;
    return html`
      ${stale ? html`<p class="stale">${ICONS.stale(26)}<span>${staleWords(this.waiting)}</span></p>` : nothing}
      ${lead === null ? nothing : html`<div class=${stale ? 'hatched' : ''}>${this.folded ? this.#folded(lead) : whole(lead)}</div>`}`;
  }

  #folded(lead: Lead): unknown {
    const short = lead.label.replace(/,[^,]*$/, '');
    const near = this.nearest;
    return html`<div class="answer folded">
      ${[{ ...lead, label: short }, ...(near === null ? [] : [near])].map(({ label, figure, unit }) => html`
        <div><div class="label">${label}</div><div class="figure">${figure}${unitOf(unit)}</div></div>`)}
    </div>`;
  }
}

function whole({ label, figure, unit, sentence }: Lead): unknown {
  return html`<div class="answer">
    <div class="label">${label}</div>
    <div class="figure">${figure}${unitOf(unit)}</div>
    <p class="sentence">${sentence}</p>
  </div>`;
}

function unitOf(unit: string): unknown {
  return unit === '' ? nothing : html`<span class="unit">\u00a0${unit}</span>`;
}

customElements.define('ts-lead', TsLead);
