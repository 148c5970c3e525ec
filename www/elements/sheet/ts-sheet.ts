import { html, LitElement, nothing, type TemplateResult } from 'lit';
import {
  byGravity, cautionText, cautionWords, curveWords, dangerLine, drawingNote, pointWords, ratingWords, readingsNote, roleWords, SAY, told, type BareCaution, type Hazard, type PartRow,
} from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { raised } from '../../words/plain.js';
import { show } from '../../words/quantity.js';
import { meterOf } from '../calculator/rest.js';
import { partValue } from '../parts/ts-parts.js';
import { ICONS } from '../shared/icons.js';
import { ground, type } from '../shared/look.js';
import { readingsOf } from '../state/taken.js';
import { labelsOf, tablesOf, tagsOf, type View } from '../state/view.js';
import '../../drawings/ts-drawing.js';
import '../answers/ts-answers.js';
import '../pictures/ts-pictures.js';
import '../template/ts-template.js';
import '../wiring/ts-wiring.js';
import { sheetStyle } from './style.js';

const NOTHING = {};
/** So many parts fit beside the readings and a plot. */
const BESIDE = 14;

/** `<ts-sheet>`: one calculator on paper: what to expect with room for what was read, what to buy with room for a tick. */
export class TsSheet extends LitElement {
  static override styles = [ground, type, sheetStyle];

  static override properties = { view: { attribute: false }, build: {}, place: {}, today: {}, printing: { type: Boolean, reflect: true } };
  view: View | null = null;
  build = '';
  /** "Sheet 4 of 10", or nothing for a lug that stands alone. */
  place = '';
  today = '';
  printing = false;

  /** Lays it out before anything else happens: a printer does not wait. */
  performNow(): void {
    this.performUpdate();
  }

  protected override render(): unknown {
    const { view } = this;
    if (view === null || !this.printing) return nothing;
    const { lead, way } = view;
    const cautions = byGravity(view.situation?.outcome.cautions ?? []);
    const words = (caution: BareCaution) => cautionWords(caution, view.situation?.inputs, way);
    const danger = cautions.find((caution) => caution.severity === 'danger' && words(caution).hazard !== 'none');
    const limits = cautions.filter((caution) => caution.severity !== 'note' && caution !== danger);
    const tube = view.circuit?.tubes?.[0]?.reference;
    return html`
      <header><div><h1>${view.calculator.title}</h1><p>${this.build === '' ? '' : `${this.build}. `}${PAGE.lug(view.lug.id)}${tube === undefined ? '' : `, ${tube}`}</p></div>
        <p class="by">${PAGE.builtBy} <span class="blank"></span><br>${PAGE.date} <span class="blank short"></span> ${this.place}</p></header>
      ${lead === null ? nothing : html`<div class="lead"><div class="figure">${lead.figure}${lead.unit === '' ? '' : `\u00a0${lead.unit}`}</div><p>${lead.label}: ${lead.sentence}</p></div>`}
      ${view.circuit?.parts.length === 0 ? nothing : html`<div class="drawing"><ts-drawing calculator=${view.calculator.id} .circuit=${view.circuit} .texts=${view.texts} .answers=${view.situation?.outcome.answers ?? NOTHING} .tags=${tagsOf(view)} .labels=${labelsOf(view)} .boxes=${way.resistor === 'box'}></ts-drawing></div>
        ${view.circuit === null ? nothing : html`<p class="under">${drawingNote(view.columns.length > 1 ? view.lug.position + 1 : null, way)}</p>`}`}
      ${danger === undefined ? nothing : this.#safety(danger, words(danger).hazard, view)}
      ${limits.map((caution) => html`<p class="limits"><b>${cautionText(caution, view.situation?.inputs, way)}</b></p>`)}
      ${this.#below(view)}
      ${this.#flow(view)}
      <footer><p>${raised(told(view.words.how.holdsFor, way))}</p><p>${SAY.site}, ${this.today}</p></footer>
      ${this.#template(view)}`;
  }

  #safety(danger: BareCaution, hazard: Hazard, view: View): TemplateResult {
    return html`<div class="safety">${ICONS.danger(44)}<p>${dangerLine(danger.figures, hazard, view.way)}</p></div>`;
  }

  /** A winding template follows on pages of its own, at true size. */
  #template(view: View): unknown {
    const template = view.situation?.outcome.answers?.['template'];
    return template === undefined ? nothing : html`<ts-template paper .template=${template} .way=${view.way}></ts-template>`;
  }

  #readings(view: View): unknown {
    const points = view.work.outcome?.test_points ?? [];
    if (points.length === 0) return nothing;
    const read = readingsOf(view.lug);
    const { point, pin, least, expect, most, yours, again } = SAY.table;
    const volts = (value: number): string => show(value, '1', { way: view.way });
    return html`<section><h2>${SAY.headings.readingsOnPaper}</h2><table>
      <thead><tr>${[point, pin, least, expect, most, yours, again].map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
      <tbody>${points.map((row) => html`<tr><th scope="row" class="wrap">${pointWords(row.name, null, view.way)}</th><td>${row.pin?.split('.').at(-1) ?? '–'}</td>
        <td>${volts(row.least)}</td><td>${volts(row.nominal)}</td><td>${volts(row.most)}</td><td>${read[row.name] ?? ''}</td><td></td></tr>`)}</tbody></table>
      <p class="note">${readingsNote(meterOf(view), view.way)}</p></section>`;
  }

  /** A calculator without test points has its answers in their place. */
  #answers(view: View): unknown {
    if ((view.work.outcome?.test_points ?? []).length > 0) return nothing;
    return html`<section class="long"><ts-answers .tables=${this.#tables(view)}></ts-answers></section>`;
  }

  #tables(view: View) {
    return tablesOf({ ...view, pins: [] });
  }

  #plots(view: View): unknown {
    const title = view.words.face.pictures[0] === undefined ? '' : curveWords(view.calculator.id, view.words.face.pictures[0].curve).title;
    return title === '' ? nothing : html`<section><h2>${told(title, view.way)}</h2><ts-pictures bare shows="first" .view=${{ ...view, pins: [] }}></ts-pictures></section>`;
  }

  /** A short list of parts stands beside the readings; a long one has a place of its own, whole, in two halves. */
  #below(view: View): TemplateResult {
    const parts = view.work.outcome?.parts ?? [];
    if (parts.length <= BESIDE) {
      const list = parts.length === 0 ? nothing : html`<section><h2>${SAY.headings.parts}</h2>${this.#parts(parts, view)}</section>`;
      const bare = (view.work.outcome?.test_points ?? []).length === 0;
      const plots = this.#plots(view);
      return html`<div class="cols"><div>${this.#readings(view)}${this.#answers(view)}${bare ? nothing : plots}</div><div>${list}${bare ? plots : nothing}</div></div>`;
    }
    const half = Math.ceil(parts.length / 2);
    return html`<div class="cols"><div>${this.#readings(view)}${this.#answers(view)}</div><div>${this.#plots(view)}</div></div>
      <section class="whole"><h2>${SAY.headings.parts}</h2><div class="halves">${this.#parts(parts.slice(0, half), view)}${this.#parts(parts.slice(half), view)}</div></section>`;
  }

  /** The joins and the other pictures, as they come, in two columns. */
  #flow(view: View): unknown {
    const { work: { outcome }, circuit, way } = view;
    const steps = outcome?.wiring ?? [];
    const wiring = steps.length === 0 ? nothing : html`<h2>${SAY.headings.wiring}</h2><ts-wiring paper .steps=${steps} .circuit=${circuit} .way=${way}></ts-wiring>`;
    return html`<section class="flow">${wiring}<ts-pictures bare shows="rest" .view=${{ ...view, pins: [] }}></ts-pictures></section>`;
  }

  #parts(parts: readonly PartRow[], view: View): TemplateResult {
    const { part, use, value, rating, fitted } = SAY.table;
    return html`<table class="parts">
      <thead><tr>${[part, use, value, rating, fitted].map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
      <tbody>${parts.map((row) => html`<tr><th scope="row">${row.reference}</th><td class="wrap">${short(roleWords(row.role, view.way))}</td><td>${partValue(row, view.way)}</td><td class="wrap">${ratingWords(row, view.way)}</td><td></td></tr>`)}</tbody></table>`;
  }
}

/** "plate resistor" is "plate" beside a value in ohms. */
function short(role: string): string {
  return role.replace(/ (resistor|capacitor|knob)$/, '');
}

customElements.define('ts-sheet', TsSheet);
