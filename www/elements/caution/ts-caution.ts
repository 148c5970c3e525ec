import { html, LitElement, nothing, svg, type TemplateResult } from 'lit';
import { cautionWords, DANGER_LAW, dangerSteps, type BareCaution, type CautionWords, type Figures, type Gauge, type Way, USUAL_WAY } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { show } from '../../words/quantity.js';
import { afterFrame } from '../../drawings/frame.js';
import { tell } from '../shared/events.js';
import { ICONS } from '../shared/icons.js';
import { controls, ground, hatching, type } from '../shared/look.js';
import type { MendOffer } from '../state/mends.js';
import { cautionStyle } from './style.js';

/** `<ts-caution>`: danger, limit or note, each told by its form and its words. Fires `ts-type` where it mends. */
export class TsCaution extends LitElement {
  static override styles = [ground, type, controls, hatching, cautionStyle];

  static override properties = { caution: {}, inputs: {}, way: {}, mend: {}, first: { type: Boolean } };
  caution: BareCaution | null = null;
  inputs: Figures = {};
  way: Way = USUAL_WAY;
  mend: MendOffer | null = null;
  /** The first danger of the page says the law too. */
  first = false;

  /** The figures first. */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.hasUpdated) await afterFrame(120);
    super.scheduleUpdate();
  }

  /** Brings the box onto the screen and the focus to it. */
  lead(behavior: ScrollBehavior = 'auto'): void {
    const box = this.renderRoot.querySelector<HTMLElement>('[role="group"]');
    box?.scrollIntoView({ block: 'center', behavior });
    box?.focus({ preventScroll: true });
  }

  protected override render(): unknown {
    if (this.caution === null) return nothing;
    const words = cautionWords(this.caution, this.inputs, this.way);
    if (words.severity === 'danger') return this.#danger(this.caution, words);
    return words.severity === 'limit' ? this.#limit(words) : note(words);
  }

  #danger(caution: BareCaution, { heading, text, hazard }: CautionWords): TemplateResult {
    const steps = dangerSteps(caution.figures, hazard, this.way);
    return html`<div class="danger" tabindex="-1" role="group" aria-labelledby="heading">
      <div class="head">${ICONS.danger(38)}<div><h2 id="heading">${heading}</h2><p>${text}</p></div></div>
      ${steps.length === 0 ? nothing : html`<ol>${steps.map(({ word }, k) => html`<li><span>${k + 1}</span><b>${word}</b></li>`)}</ol>
      <details><summary><span>${PAGE.stepsMean}</span></summary>
        <ol class="long">${steps.map(({ word, more }, k) => html`<li><b>${k + 1}. ${word}.</b> ${more}</li>`)}</ol>
      </details>`}
      ${this.first ? html`<p class="law">${DANGER_LAW}</p>` : nothing}
    </div>`;
  }

  #limit({ heading, text, gauge: given }: CautionWords): TemplateResult {
    const { mend } = this;
    return html`<div class="limit" tabindex="-1" role="group" aria-labelledby="heading">
      <div class="edge hatched-ink"></div>
      <div class="mark">${ICONS.limit(30)}</div>
      <div class="body"><h2 id="heading">${heading}</h2>
        ${given === undefined ? nothing : gauge(given, this.way)}
        <p>${text}</p>
        ${mend === null ? nothing : html`<button @click=${() => { tell(this, 'ts-type', { path: mend.path, value: mend.text }); }}>${mend.words}</button>`}
      </div>
    </div>`;
  }
}

function note({ heading, text }: CautionWords): TemplateResult {
  return html`<div class="note-box" role="group" aria-labelledby="heading">
    <div class="mark">${ICONS.note(30)}</div><div class="body"><h2 id="heading">${heading}</h2><p>${text}</p></div>
  </div>`;
}

/** A bar to the rating's tick; what is over it is hollow and hatched. */
function gauge({ value, rating, unit }: Gauge, way: Way): TemplateResult {
  const most = Math.max(value, rating) * 1.02;
  const [full, tick] = [(Math.min(value, rating) / most) * 100, (rating / most) * 100];
  const over = (value / most) * 100;
  const label = PAGE.ofRated(show(value, unit, { way }), show(rating, unit, { way }));
  return html`<div class="gauge"><svg width="100%" height="20" role="img" aria-label=${label}>${svg`
    <defs><pattern id="hatch" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V4" stroke="var(--ink)" stroke-width="1.6"></path></pattern></defs>
    <rect x="0" y="6" width="${full}%" height="8" fill="var(--ink)"></rect>
    ${over > tick ? svg`<rect x="${tick}%" y="6" width="${over - tick}%" height="8" fill="url(#hatch)" stroke="var(--ink)" stroke-width="1.4"></rect>` : nothing}
    <line x1="${tick}%" x2="${tick}%" y1="1" y2="19" stroke="var(--ink)" stroke-width="2.4"></line>`}
    </svg><div class="rated">${PAGE.rated(show(rating, unit, { way }))}</div></div>`;
}

customElements.define('ts-caution', TsCaution);
