import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { choiceWords, inputWords, labelOf, partHeading, SAY, told } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { lowered } from '../../words/plain.js';
import { doubtOf, refusalOf } from '../field/refusal.js';
import { refusalStyle } from '../field/style.js';
import { tell } from '../shared/events.js';
import { ICONS } from '../shared/icons.js';
import { controls, ground, type } from '../shared/look.js';
import type { Desk } from '../state/desk.js';
import { valueOf } from '../state/figures.js';
import { start } from '../state/full.js';
import type { InputRow, Value } from '../state/kinds.js';
import { rowFor } from '../state/leaves.js';
import { general, isRecord, valueAt } from '../state/paths.js';
import { meantIn } from '../state/meant.js';
import { evenSteps, isPreferred, seriesOf, stepTexts, type StepTexts } from '../state/steps.js';
import { echoOf, type View } from '../state/view.js';
import '../field/ts-field.js';
import { keysFor, type Key } from './keys.js';
import { openFieldStyle } from './style.js';

const NO_STEPS: StepTexts = { lower: null, higher: null };

/**
 * `<ts-open-field>`: the field of the part that was touched. ▼ and ▲ show the values they lead to, the reading stands
 * beneath in a sentence, the keys type at the caret. Fires `ts-type`, `ts-turn` and `ts-close`.
 */
export class TsOpenField extends LitElement {
  static override styles = [ground, type, controls, refusalStyle, openFieldStyle];

  static override properties = { view: {}, desk: { attribute: false }, path: {}, reference: {}, tick: {}, steps: { state: true }, letters: { state: true }, typed: { state: true } };
  view: View | null = null;
  desk: Desk | null = null;
  path = '';
  reference = '';
  tick = 0;
  private steps: StepTexts = NO_STEPS;
  private letters = false;
  /** What was typed just now and is not in the view yet. */
  private typed: string | null = null;
  #asked = '';

  override connectedCallback(): void {
    super.connectedCallback();
    this.setAttribute('role', 'region');
    this.addEventListener('keydown', this.#escape);
  }

  /** Puts the caret at the end of the text, or on the chosen one of a list. */
  override focus(): void {
    const input = this.renderRoot.querySelector<HTMLInputElement>('input.text');
    const chosen = this.renderRoot.querySelector<HTMLElement>('.current') ?? this.renderRoot.querySelector<HTMLElement>('.choices button');
    (input ?? chosen)?.focus({ preventScroll: true });
    input?.setSelectionRange(input.value.length, input.value.length);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('view') || changed.has('path')) this.typed = null;
    if (changed.has('path')) {
      this.steps = NO_STEPS;
      this.letters = false;
      this.#asked = '';
    }
    if (this.typed === null) void this.#stepsFor();
  }

  protected override render(): unknown {
    const { view } = this;
    if (view === null) return nothing;
    const row = rowFor(view.calculator.inputs, this.path);
    if (row === undefined) return nothing;
    const label = labelOf(view.words, this.path, view.full, view.way);
    const heading = this.reference === '' ? label : partHeading(this.reference, label, view.way);
    this.setAttribute('aria-label', heading);
    return html`<div class="panel">
      <div class="head"><h2>${heading}</h2><button @click=${() => { tell(this, 'ts-close'); }}>${SAY.done}</button></div>
      ${this.#body(view, row)}
      ${this.#beside(view)}
    </div>`;
  }

  #body(view: View, row: InputRow): TemplateResult {
    if (this.path === view.words.face.switch) return this.#positions(view);
    if (row.shape === 'choice' || row.shape === 'either') return this.#choices(view, row);
    return row.shape === 'quantity' ? this.#quantity(view, row) : this.#words(view, row);
  }

  #quantity(view: View, row: InputRow): TemplateResult {
    const text = this.#text(view);
    const refusal = view.problems.get(this.path);
    const keys = keysFor(row, inputWords(view.words, this.path).percent === true, view.way.decimal);
    return html`<div class=${refusal === undefined ? '' : 'refused'}>
      <div class="line">${this.#step(this.steps.lower, false)}
        <input class=${text.length > 9 ? 'text long' : 'text'} type="text" inputmode=${this.letters ? 'text' : 'decimal'} autocomplete="off" autocapitalize="off" spellcheck="false"
          enterkeyhint="done" maxlength="80" aria-label=${labelOf(view.words, this.path, view.full, view.way)} aria-describedby="echo"
          aria-invalid=${refusal === undefined ? 'false' : 'true'} .value=${live(text)} @input=${this.#input} @keydown=${this.#key}>
        ${this.#step(this.steps.higher, true)}</div>
      ${refusal === undefined ? html`<p class="echo" id="echo">${this.desk === null ? '' : echoOf(this.desk, view, this.path, this.typed ?? undefined)}</p>${doubtOf(meantIn(this.desk, row, text), (instead) => { this.#type(instead); })}`
        : refusalOf(refusal, 'echo', (mended) => { this.#type(mended); })}
      ${refusal?.problem.mends !== undefined && refusal.problem.mends.length > 0 ? nothing : html`<div class="keys">
        ${keys.map((key) => html`<button type="button" aria-label=${key.name} @pointerdown=${hold} @click=${() => { this.#press(key); }}>${key.face}</button>`)}
        <button type="button" aria-label=${this.letters ? PAGE.figures : PAGE.letters} @pointerdown=${hold} @click=${() => { this.letters = !this.letters; }}>${this.letters ? '123' : 'abc'}</button>
      </div>`}
    </div>`;
  }

  #step(text: string | null, up: boolean): TemplateResult {
    const name = `${up ? SAY.higher : SAY.lower}${text === null ? '' : `, ${text}`}`;
    return html`<button class="step" type="button" aria-label=${name} ?disabled=${text === null} @pointerdown=${hold}
      @click=${() => { if (text !== null) this.#type(text); }}>${up ? ICONS.up(17) : ICONS.down(17)}<span>${text ?? '–'}</span></button>`;
  }

  #words(view: View, row: InputRow): TemplateResult {
    return html`<input class="text words" type="text" autocomplete="off" maxlength=${row.most ?? 200} aria-label=${labelOf(view.words, this.path, view.full, view.way)}
      .value=${live(this.#text(view))} @input=${this.#input} @keydown=${this.#key}>
      <p class="echo">${view.problems.get(this.path)?.text ?? told(inputWords(view.words, this.path).help, view.way)}</p>`;
  }

  #choices(view: View, row: InputRow): TemplateResult {
    const table = row.shape === 'choice' ? row : row.either?.find((option) => option.shape === 'choice');
    const own = row.either?.find((option) => option.shape === 'record');
    const value = valueAt(view.full, this.path);
    const choices = table?.choices ?? [];
    const one = lowered(told(inputWords(view.words, this.path).label, view.way));
    return html`<div class=${choices.length > 3 ? 'choices many' : 'choices'}>
      ${choices.map((choice) => this.#choice(choiceWords(view.words, this.path, choice, view.way), '', choice === value, () => { this.#type(choice); }))}
      ${own === undefined ? nothing : this.#choice(PAGE.ofYourOwn(one), '', isRecord(value), () => { if (!isRecord(value)) this.#type(start(view.words, own, this.path)); })}
    </div>
    ${isRecord(value) ? html`<p class="echo">${PAGE.standsUnder(SAY.headings.values)}</p>` : nothing}
    ${view.problems.has(this.path) ? html`<p class="echo">${view.problems.get(this.path)?.text}</p>` : nothing}`;
  }

  #positions(view: View): TemplateResult {
    return html`<div class="choices">${view.columns.map(({ name, value, current }, k) =>
      this.#choice(name, value, current, () => { tell(this, 'ts-turn', { position: k }); }))}</div>`;
  }

  #choice(words: string, more: string, current: boolean, choose: () => void): TemplateResult {
    return html`<button type="button" class=${current ? 'current' : ''} aria-pressed=${current ? 'true' : 'false'} @click=${choose}>
      ${current ? html`<svg viewBox="0 0 18 18" width="18" height="18" aria-hidden="true"><circle cx="9" cy="9" r="7.6"></circle><circle cx="9" cy="9" r="3.6" fill="currentColor"></circle></svg>` : nothing}
      <span>${words} ${more === '' ? nothing : html`<small>${more}</small>`}</span></button>`;
  }

  /** What opens with this field: a pot's resistance with its knob. */
  #beside(view: View): unknown {
    const paths = view.words.face.beside[general(this.path)] ?? [];
    const index = /\[\d+\]/.exec(this.path)?.[0] ?? '[]';
    return paths.map((each) => each.replace('[]', index)).map((path) => {
      const row = rowFor(view.calculator.inputs, path);
      const value = valueAt(view.full, path);
      if (row === undefined || value === undefined) return nothing;
      return html`<div class="beside"><ts-field .path=${path} .row=${row} .value=${value} .label=${told(inputWords(view.words, path).label, view.way)}
        .echo=${this.desk === null ? '' : echoOf(this.desk, view, path)} .refusal=${view.problems.get(path) ?? null}></ts-field></div>`;
    });
  }

  #text(view: View): string {
    const value = this.typed ?? valueAt(view.full, this.path);
    return typeof value === 'string' ? value : '';
  }

  async #stepsFor(): Promise<void> {
    const { view, desk, path } = this;
    const row = view === null ? undefined : rowFor(view.calculator.inputs, path);
    if (view === null || desk === null || row?.shape !== 'quantity') return;
    const text = this.#text(view);
    const unit = row.unit ?? '1';
    const value = valueOf(desk.reading(text, unit));
    // A text that is not read keeps the steps of the last one that was.
    if (value === null || this.#asked === `${path} ${text}`) return;
    this.#asked = `${path} ${text}`;
    const mark = this.#asked;
    const steps = isPreferred(row) && value > 0 ? await desk.steps(text, unit, seriesOf(row)) : evenSteps(row, value);
    if (mark === this.#asked) this.steps = stepTexts(view.words, row, path, text, steps);
  }

  readonly #input = (event: Event): void => {
    this.#type((event.target as HTMLInputElement).value);
  };

  readonly #key = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') tell(this, 'ts-close');
    const text = event.key === 'ArrowUp' ? this.steps.higher : event.key === 'ArrowDown' ? this.steps.lower : null;
    if (text === null) return;
    event.preventDefault();
    this.#type(text);
  };

  readonly #escape = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    tell(this, 'ts-close');
  };

  #press({ types, back }: Key): void {
    const input = this.renderRoot.querySelector<HTMLInputElement>('input.text');
    if (input === null) return;
    const [from, to] = [input.selectionStart ?? input.value.length, input.selectionEnd ?? input.value.length];
    input.setRangeText(types, from, to, 'end');
    const caret = from + types.length - back;
    input.setSelectionRange(caret, caret);
    this.#type(input.value);
  }

  /** The echo does not wait for the page: it is written as soon as the reader has spoken. */
  #type(value: Value): void {
    const row = this.view === null ? undefined : rowFor(this.view.calculator.inputs, this.path);
    if (typeof value === 'string' && row?.shape === 'quantity') {
      this.typed = value;
      void this.desk?.whenRead(value, row.unit ?? '1').then(() => { this.requestUpdate(); });
    }
    tell(this, 'ts-type', { path: this.path, value });
  }
}

/** A press on a key leaves the caret, and a phone's keyboard, where they are. */
function hold(event: Event): void {
  event.preventDefault();
}

customElements.define('ts-open-field', TsOpenField);
