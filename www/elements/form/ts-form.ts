import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { choiceWords, inputWords, labelOf, partEchoShort, readingWords, told } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { lowered } from '../../words/plain.js';
import { tell } from '../shared/events.js';
import { afterFrame } from '../../drawings/frame.js';
import { controls, ground, type } from '../shared/look.js';
import type { Desk } from '../state/desk.js';
import { valueOf } from '../state/figures.js';
import { formOf, type Piece } from '../state/form.js';
import { newItem, start } from '../state/full.js';
import type { InputRow, Value } from '../state/kinds.js';
import { canGrow, canShrink, grown, moved, shrunk } from '../state/lists.js';
import { isRecord, put, valueAt } from '../state/paths.js';
import { meantIn } from '../state/meant.js';
import { alternatives } from '../state/shown.js';
import { knobWords, type View } from '../state/view.js';
import '../field/ts-field.js';
import '../knob/ts-knob.js';
import { formStyle } from './style.js';

/** `<ts-form>`: every value as a plain labelled form, generated from the catalogue. */
export class TsForm extends LitElement {
  static override styles = [ground, type, controls, formStyle];

  static override properties = { view: {}, desk: { attribute: false }, tick: {} };
  view: View | null = null;
  desk: Desk | null = null;
  /** Changes whenever the desk has something new to say. */
  tick = 0;

  /** Off the screen it is neither laid out nor painted; its height is near enough known. */
  protected override updated(): void {
    this.style.setProperty('contain-intrinsic-size', `auto ${(this.view?.leaves.length ?? 0) * FIELD}px`);
  }

  protected override render(): unknown {
    const view = this.#present();
    if (view === null) return nothing;
    return formOf(view.calculator.inputs, view.full).map(({ key, pieces }) => html`<section aria-labelledby=${`group-${key}`}>
      <h3 id=${`group-${key}`}>${told(view.words.groups[key] ?? key, view.way)}</h3>
      ${this.#pieces(view, pieces, pieces.length === 1)}
    </section>`);
  }

  /** The open field and the drawing echo a keystroke; the long form follows when that is on the screen. */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.hasUpdated) await afterFrame(250);
    super.scheduleUpdate();
  }

  /** The view with every value as it stands now: a key struck while this form waited must not be written over. */
  #present(): View | null {
    const { view, desk } = this;
    if (view === null || desk?.lug?.id !== view.lug.id) return view;
    return { ...view, full: desk.full(desk.lug.calculator, desk.lug.inputs) };
  }

  /** Puts the person's finger on a field. */
  focusField(path: string): void {
    this.renderRoot.querySelector<HTMLElement>(`[data-path="${CSS.escape(path)}"]`)?.focus();
  }

  #pieces(view: View, pieces: readonly Piece[], alone = false): unknown {
    return repeat(pieces, (piece) => `${piece.kind} ${piece.path}`, (piece) => this.#piece(view, piece, alone));
  }

  /** A piece that is alone under its heading does not say it again. */
  #piece(view: View, piece: Piece, alone: boolean): TemplateResult {
    switch (piece.kind) {
      case 'list': return this.#list(view, piece, alone);
      case 'record': return html`<fieldset><legend class=${alone ? 'aside' : ''}>${this.#name(view, piece.path)}</legend>${this.#pieces(view, piece.pieces)}</fieldset>`;
      case 'either': return this.#either(view, piece);
      case 'one_of': return this.#oneOf(view, piece);
      default: return this.#field(view, piece.path, piece.row, piece.value);
    }
  }

  #name(view: View, path: string): string {
    return told(inputWords(view.words, path).label, view.way);
  }

  #field(view: View, path: string, row: InputRow, value: Value, choices = this.#choices(view, path, row)): TemplateResult {
    const words = inputWords(view.words, path);
    const reference = view.circuit?.parts.find((part) => part.field === path)?.reference ?? '';
    const label = reference === '' ? labelOf(view.words, path, view.full, view.way).replace(/^.*: /, '') : lowered(told(words.label, view.way));
    const named = reference === '' ? label.charAt(0).toUpperCase() + label.slice(1) : label;
    const refusal = view.problems.get(path) ?? null;
    if (isKnob(row, words.percent)) {
      const said = typeof value === 'string' ? this.desk?.reading(value, '1') : undefined;
      return html`<ts-knob data-path=${path} .path=${path} .value=${typeof value === 'string' ? value : ''} .place=${Math.min(1, Math.max(0, valueOf(said) ?? 0))}
        .label=${reference !== '' && named.toLowerCase() === reference.toLowerCase() ? PAGE.knob : named} .reference=${reference} .refusal=${refusal} .echo=${said !== undefined && 'value' in said ? `${knobWords(view, path, said.value)}.` : ''}></ts-knob>`;
    }
    return html`<ts-field data-path=${path} .path=${path} .row=${row} .value=${value} .reference=${reference} .label=${named} .refusal=${refusal}
      .echo=${this.#echo(view, path, row, value)} .meant=${typeof value === 'string' ? meantIn(this.desk, row, value) : null} .help=${told(words.help, view.way)} .choices=${choices}></ts-field>`;
  }

  #choices(view: View, path: string, row: InputRow): readonly (readonly [string, string])[] {
    return (row.choices ?? []).map((choice) => [choice, choiceWords(view.words, path, choice, view.way)] as const);
  }

  #echo(view: View, path: string, row: InputRow, value: Value): string {
    if (row.shape !== 'quantity' || typeof value !== 'string') return '';
    const said = this.desk?.reading(value, row.unit ?? '1');
    if (said === undefined || !('value' in said)) return '';
    if (said.value === 0 && row.zero === 'none') return PAGE.isNone;
    const part = view.stale || view.situation === null ? '' : partEchoShort(path, view.situation.outcome, view.way);
    return [readingWords(value, row.unit ?? '1', said, view.way), part].filter((each) => each !== '').join(', ');
  }

  #list(view: View, { path, row, items }: Piece & { kind: 'list' }, alone: boolean): TemplateResult {
    const values = asItems(valueAt(view.full, path));
    const one = lowered(this.#name(view, `${path}[]`));
    const set = (next: readonly Value[]): void => { this.#type(path, next); };
    const mine = view.problems.get(path);
    return html`<fieldset><legend class=${alone ? 'aside' : ''}>${this.#name(view, path)}</legend>
      ${mine === undefined ? nothing : html`<p class="refused">${mine.text}</p>`}
      <ol>${items.map((pieces, k) => html`<li>
        <div class="item"><h4>${one.charAt(0).toUpperCase() + one.slice(1)} ${k + 1}</h4>
          <div class="row">
            <button class="link" ?disabled=${k === 0} @click=${() => { set(moved(values, k, -1)); }}><span>${PAGE.up}<i class="aside">, ${one} ${k + 1}</i></span></button>
            <button class="link" ?disabled=${k === items.length - 1} @click=${() => { set(moved(values, k, 1)); }}><span>${PAGE.down}<i class="aside">, ${one} ${k + 1}</i></span></button>
            <button class="link" ?disabled=${!canShrink(row, values)} @click=${() => { set(shrunk(row, values, k)); }}><span>${PAGE.takeOut}<i class="aside">, ${one} ${k + 1}</i></span></button>
          </div></div>
        ${this.#pieces(view, pieces)}
      </li>`)}</ol>
      ${canGrow(row, values) ? html`<button @click=${() => { set(grown(row, values, newItem(view.words, row, `${path}[${values.length}]`))); }}>${PAGE.addOne(one)}</button>` : nothing}
    </fieldset>`;
  }

  /** A tube of the table or one's own: the choice has one line more. */
  #either(view: View, { path, row, chosen, value, pieces }: Piece & { kind: 'either' }): TemplateResult {
    const table = row.either?.find((option) => option.shape === 'choice');
    const own = row.either?.find((option) => option.shape === 'record');
    if (table === undefined) return this.#field(view, path, chosen, value);
    const none = row.optional === true ? [['', PAGE.noneOf] as const] : [];
    const choices = [...none, ...this.#choices(view, path, table), ...(own === undefined ? [] : [[OWN, PAGE.ofYourOwn(lowered(this.#name(view, path)))] as const])];
    const current = isRecord(value) ? OWN : (value ?? '');
    const change = (event: CustomEvent<{ path: string; value: Value }>): void => {
      if (event.detail.path !== path || event.detail.value !== OWN || own === undefined) return;
      event.stopPropagation();
      this.#type(path, isRecord(value) ? value : start(view.words, own, path));
    };
    return html`<div @ts-type=${change}>${this.#field(view, path, table, current, choices)}</div>
      ${pieces.length === 0 ? nothing : html`<fieldset class="own">${this.#pieces(view, pieces)}</fieldset>`}`;
  }

  #oneOf(view: View, { path, rows, chosen, pieces }: Piece & { kind: 'one_of' }): TemplateResult {
    const at = (key: string): string => (path === '' ? key : `${path}.${key}`);
    const choose = (key: string): void => {
      const all = alternatives(rows, rows[0]?.one_of ?? '').flatMap((option) => option.keys);
      const record = path === '' ? view.full : valueAt(view.full, path);
      if (!isRecord(record)) return;
      const cleared = all.reduce((left, each) => put(left, each, undefined), record);
      const row = rows.find((each) => each.key === key);
      const value = row === undefined ? '' : start(view.words, row, at(key));
      const next = put(cleared, key, value);
      if (path === '') this.desk?.fit(next);
      else this.#type(path, next);
    };
    return html`<div class="one-of" role="group">
      ${rows.length < 2 ? nothing : html`<div class="alternatives">${rows.map((row) => html`<label class=${row.key === chosen ? 'current' : ''}>
        <input type="radio" name=${`one-of-${path}`} .checked=${row.key === chosen} @change=${() => { choose(row.key ?? ''); }}>
        <span>${this.#name(view, at(row.key ?? ''))}</span></label>`)}</div>`}
      ${this.#pieces(view, pieces)}</div>`;
  }

  #type(path: string, value: Value): void {
    tell(this, 'ts-type', { path, value });
  }
}

/** About the height of a field in one column, in pixels. */
const FIELD = 112;
const OWN = '\u0000own';

function asItems(value: Value | undefined): readonly Value[] {
  return Array.isArray(value) ? (value as readonly Value[]) : [];
}

/** A part of a whole, 0 to 1, is a knob where the words show it in percent. */
export function isKnob(row: InputRow, percent: boolean | undefined): boolean {
  return row.shape === 'quantity' && row.unit === '1' && row.least === 0 && row.most === 1 && percent === true;
}

customElements.define('ts-form', TsForm);
