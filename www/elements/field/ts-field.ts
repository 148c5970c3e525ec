import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { SAY } from '../../words/index.js';
import { tell } from '../shared/events.js';
import { ICONS } from '../shared/icons.js';
import { controls, ground } from '../shared/look.js';
import type { InputRow, Refusal, Value } from '../state/kinds.js';
import { doubtOf, refusalOf } from './refusal.js';
import { fieldStyle, refusalStyle } from './style.js';

/** What `ts-type` carries: where, and what stands there now. */
export interface TypeDetail {
  readonly path: string;
  readonly value: Value;
}

/** What `ts-step` carries: where, and which way. */
export interface StepDetail {
  readonly path: string;
  readonly up: boolean;
}

/**
 * `<ts-field>`: one field of the plain form, whatever its shape. Fires `ts-type` at every keystroke and `ts-step` at ▼
 * and ▲.
 */
export class TsField extends LitElement {
  static override styles = [ground, controls, fieldStyle, refusalStyle];

  static override properties = {
    path: {}, row: {}, value: {}, reference: {}, label: {}, help: {}, echo: {}, meant: {}, refusal: {}, choices: { hasChanged: (now: unknown, before: unknown) => String(now) !== String(before) },
  };
  path = '';
  row: InputRow | null = null;
  value: Value = '';
  /** The part's reference in the drawing, if it has one. */
  reference = '';
  label = '';
  help = '';
  echo = '';
  /** What was probably meant, where the figure is far from anything usual. */
  meant: string | null = null;
  refusal: Refusal | null = null;
  /** The choices with their words. */
  choices: readonly (readonly [choice: string, words: string])[] = [];

  protected override render(): unknown {
    const { row } = this;
    if (row === null) return nothing;
    return html`<div class=${this.refusal === null ? '' : 'refused'}>
      ${row.shape === 'flag' ? this.#flag() : html`<label class="label" for="value">${this.#label()}</label>${this.#control(row)}`}
      ${this.refusal === null ? html`<p class="echo" id="echo">${this.echo === '' ? nothing : this.echo}</p>${doubtOf(this.meant, (text) => { this.#type(text); })}` : refusalOf(this.refusal, 'echo', (text) => { this.#type(text); })}
      ${this.help === '' ? nothing : html`<p class="help" id="help">${this.help}</p>`}
    </div>`;
  }

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>('#value')?.focus();
  }

  #label(): unknown {
    return this.reference === '' || this.reference === this.label ? html`<b>${this.label}</b>` : html`<b>${this.reference}</b> ${this.label}`;
  }

  #control(row: InputRow): TemplateResult {
    if (this.choices.length > 0) return this.#select();
    const text = typeof this.value === 'string' ? this.value : '';
    const figure = row.shape === 'quantity';
    const input = html`<input id="value" class="text" type="text" inputmode=${figure ? 'decimal' : 'text'} autocomplete="off"
      autocapitalize="off" spellcheck="false" enterkeyhint="done" maxlength=${figure ? 80 : (row.most ?? 200)} aria-describedby="echo help"
      aria-invalid=${this.refusal === null ? 'false' : 'true'} .value=${live(text)} @input=${this.#input} @keydown=${this.#key}>`;
    return figure ? html`<div class="line">${this.#step(false)}${input}${this.#step(true)}</div>` : html`<div class="line alone">${input}</div>`;
  }

  #select(): TemplateResult {
    return html`<div class="select"><select id="value" aria-describedby="echo help" .value=${live(String(this.value))} @change=${this.#input}>
      ${this.choices.map(([choice, words]) => html`<option value=${choice} ?selected=${choice === this.value}>${words}</option>`)}
    </select>${ICONS.down(16)}</div>`;
  }

  #flag(): TemplateResult {
    return html`<label class="flag"><input id="value" type="checkbox" aria-describedby="echo help" .checked=${live(this.value === true)}
      @change=${(event: Event) => { this.#type((event.target as HTMLInputElement).checked); }}><span>${this.#label()}</span></label>`;
  }

  #step(up: boolean): TemplateResult {
    const name = `${this.reference || this.label}, ${up ? SAY.higher : SAY.lower}`;
    return html`<button class="step" type="button" aria-label=${name} @click=${() => { this.#tellStep(up); }}>${up ? ICONS.up() : ICONS.down()}</button>`;
  }

  readonly #input = (event: Event): void => {
    this.#type((event.target as HTMLInputElement).value);
  };

  readonly #key = (event: KeyboardEvent): void => {
    if ((event.key !== 'ArrowUp' && event.key !== 'ArrowDown') || this.row?.shape !== 'quantity') return;
    event.preventDefault();
    this.#tellStep(event.key === 'ArrowUp');
  };

  #tellStep(up: boolean): void {
    tell(this, 'ts-step', { path: this.path, up } satisfies StepDetail);
  }

  #type(value: Value): void {
    tell(this, 'ts-type', { path: this.path, value } satisfies TypeDetail);
  }
}

customElements.define('ts-field', TsField);
