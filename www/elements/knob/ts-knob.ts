import { css, html, LitElement, svg } from 'lit';
import { live } from 'lit/directives/live.js';
import { tell } from '../shared/events.js';
import { controls, ground } from '../shared/look.js';
import type { Refusal } from '../state/kinds.js';
import { fieldStyle, refusalStyle } from '../field/style.js';
import { refusalOf } from '../field/refusal.js';
import type { TypeDetail } from '../field/ts-field.js';
import { PAGE } from '../../words/page-words.js';

const HANDLE = 26;

/** `<ts-knob>`: a control's place from 0 to 100 %, by a slider with a handle that a thumb finds, or by a number. */
export class TsKnob extends LitElement {
  static override styles = [ground, controls, fieldStyle, refusalStyle, css`
    .both { display: grid; grid-template-columns: minmax(0, 1fr) 104px; gap: 12px; align-items: center; }
    .slide { position: relative; height: 48px; }
    .slide svg { position: absolute; inset: 0; width: 100%; height: 48px; }
    input[type="range"] { position: absolute; inset: 0; width: 100%; height: 48px; margin: 0; background: none; appearance: none; cursor: pointer; touch-action: pan-y; }
    input[type="range"]::-webkit-slider-thumb { appearance: none; width: 26px; height: 40px; border: 2px solid var(--touch); border-radius: 3px; background: var(--plate) linear-gradient(90deg, transparent 7px, var(--touch) 7px 9px, transparent 9px 13px, var(--touch) 13px 15px, transparent 15px) 0 11px / 100% 14px no-repeat; }
    input[type="range"]::-moz-range-thumb { box-sizing: border-box; width: 26px; height: 40px; border: 2px solid var(--touch); border-radius: 3px; background: var(--plate) linear-gradient(90deg, transparent 7px, var(--touch) 7px 9px, transparent 9px 13px, var(--touch) 13px 15px, transparent 15px) 0 11px / 100% 14px no-repeat; }
    input[type="range"]::-webkit-slider-runnable-track { height: 48px; padding: 4px 0; }
    input[type="range"]:focus-visible { outline: none; }
    .slide:has(:focus-visible) { outline: 3px solid var(--ink); outline-offset: 2px; border-radius: 3px; }
    input.text { text-align: right; }
  `];

  static override properties = { path: {}, value: {}, place: {}, label: {}, reference: {}, echo: {}, refusal: {} };
  path = '';
  /** The text as typed. */
  value = '';
  /** What the text was read as, 0 to 1. */
  place = 0;
  label = '';
  reference = '';
  echo = '';
  refusal: Refusal | null = null;

  protected override render(): unknown {
    const percent = Math.round(this.place * 100);
    return html`<div class=${this.refusal === null ? '' : 'refused'}>
      <label class="label" for="value">${this.reference === '' ? html`<b>${this.label}</b>` : html`<b>${this.reference}</b> ${this.label}`}</label>
      <div class="both">
        <div class="slide">${this.#track()}
          <input type="range" min="0" max="100" step="1" aria-label=${PAGE.inPercent(this.reference === '' ? this.label : `${this.reference} ${this.label}`)} aria-valuetext=${`${percent} percent`}
            .value=${live(String(percent))} @input=${this.#slid}></div>
        <input id="value" class="text" type="text" inputmode="decimal" autocomplete="off" spellcheck="false" maxlength="40"
          aria-describedby="echo" aria-invalid=${this.refusal === null ? 'false' : 'true'} .value=${live(this.value)} @input=${this.#typed}>
      </div>
      ${this.refusal === null ? html`<p class="echo" id="echo">${this.echo}</p>` : refusalOf(this.refusal, 'echo', (text) => { this.#type(text); })}
    </div>`;
  }

  /** The way behind the handle solid, the way before it thin, a tick at each quarter. */
  #track(): unknown {
    const ticks = [0, 25, 50, 75, 100];
    return html`<svg aria-hidden="true">${svg`
      ${ticks.map((tick) => svg`<svg x="${tick}%" overflow="visible"><line x1=${13 - (tick / 100) * HANDLE} x2=${13 - (tick / 100) * HANDLE} y1="18" y2="30" stroke="var(--edge)" stroke-width="1.5"></line></svg>`)}
      <line x1="2" x2="100%" y1="24" y2="24" stroke="var(--edge)" stroke-width="1.5"></line>
      <line x1="2" x2=${`${this.place * 100}%`} y1="24" y2="24" stroke="var(--touch)" stroke-width="4"></line>`}</svg>`;
  }

  readonly #slid = (event: Event): void => {
    this.#type(`${(event.target as HTMLInputElement).value} %`);
  };

  readonly #typed = (event: Event): void => {
    this.#type((event.target as HTMLInputElement).value);
  };

  #type(value: string): void {
    tell(this, 'ts-type', { path: this.path, value } satisfies TypeDetail);
  }
}

customElements.define('ts-knob', TsKnob);
