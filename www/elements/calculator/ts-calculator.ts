import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { byGravity, cautionWords, SAY, STATES, type BareCaution } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { tell } from '../shared/events.js';
import { ICONS } from '../shared/icons.js';
import { controls, ground, hatching, type } from '../shared/look.js';
import type { Desk } from '../state/desk.js';
import { rowFor } from '../state/leaves.js';
import { Memo } from '../state/memo.js';
import { answeredOf, changesIn } from '../state/answered.js';
import { cellsOf, labelsOf, nearest, tablesOf, tagsOf, viewOf, type View } from '../state/view.js';
import '../../drawings/ts-drawing.js';
import '../answers/ts-answers.js';
import type { TsDisclosure } from '../disclosure/ts-disclosure.js';
import type { TsCaution } from '../caution/ts-caution.js';
import '../caution/ts-caution.js';
import '../lead/ts-lead.js';
import type { TsReadings } from '../readings/ts-readings.js';
import type { TsOpenField } from '../open-field/ts-open-field.js';
import '../switch/ts-switch.js';
import { Handlers } from './handlers.js';
import { handsOf } from './hands.js';
import { isProbed, listenOf, readingsOn, restOf } from './rest.js';
import { calculatorStyle } from './style.js';
import { besideOf, keepInView } from './part-view.js';

/** `<ts-calculator>`: the page of one lug, in the order of the look: answers first, the drawing as the form's face. */
export class TsCalculator extends LitElement {
  static override styles = [ground, type, controls, hatching, calculatorStyle];

  static override properties = { desk: { attribute: false }, tick: {}, build: {}, keepers: {}, open: { state: true }, reference: { state: true } };
  desk: Desk | null = null;
  tick = 0;
  /** The build's name, for the line under the title. */
  build = '';
  /** The page for web keepers; empty where there is no site. */
  keepers = '';
  private open: string | null = null;
  private reference = '';
  #at = '';
  /** The headings that were ever opened: what is behind the others is not made. */
  readonly #opened = new Set<string>();
  readonly #handlers = new Handlers(this);
  readonly #memo = new Memo();

  protected override willUpdate(): void {
    const at = this.desk?.at ?? '';
    if (at !== this.#at) this.open = null;
    this.#at = at;
  }

  protected override updated(changed: PropertyValues): void {
    if (!changed.has('open') && !changed.has('reference')) return;
    const panel = this.renderRoot.querySelector<TsOpenField>('ts-open-field');
    if (panel === null) {
      this.style.setProperty('--panel', '0px');
      return;
    }
    void customElements.whenDefined('ts-open-field').then(() => panel.updateComplete).then(() => {
      panel.focus();
      // The folded lead and the panel have their heights only with the next picture.
      requestAnimationFrame(() => {
        this.style.setProperty('--panel', `${panel.offsetHeight}px`);
        keepInView(this.#drawing(), this.open ?? '', panel, this.renderRoot.querySelector<HTMLElement>('ts-lead'));
      });
    });
  }

  protected override render(): unknown {
    const { desk } = this;
    if (desk?.lug === undefined) return nothing;
    const view = viewOf(desk, this.#memo);
    if (view === null) return html`<p class="waiting" role="status">${desk.lost ? STATES.engineMissing : desk.catalogue.length === 0 ? STATES.loading : PAGE.noCalculator(desk.lug.calculator)}</p>`;
    return html`<div @ts-type=${this.#handlers.type} @ts-step=${this.#handlers.step} @ts-turn=${this.#handlers.turn} @ts-open=${this.#touched} @ts-close=${() => { this.#close(); }}
      @ts-danger=${() => { this.#lead('danger'); }} @ts-pin=${this.#handlers.pin} @ts-unpin=${this.#handlers.unpin} @ts-name-pin=${this.#handlers.namePin} @ts-take-pin=${this.#handlers.takePin} @ts-read=${this.#handlers.read} @ts-probe=${({ detail }: CustomEvent<string>) => void this.#lookUp(detail)} @keydown=${this.#escape} @ts-disclose=${this.#disclosed}>
      ${this.#header(view)}
      <div class=${view.situation === null && view.problems.size === 0 ? 'page unworked' : 'page'}>${this.#top(view)}
        <div class="full"><ts-drawing calculator=${view.calculator.id} .circuit=${view.circuit} .texts=${view.texts} .answers=${view.situation?.outcome.answers ?? NOTHING}
          .tags=${this.#memo.get('tags', [view.situation], () => tagsOf(view))} .labels=${this.#memo.get('labels', [view.circuit, view.way], () => labelsOf(view))}
          .open=${this.open} .refused=${this.#memo.get('refused', [view.problems], () => new Set(view.problems.keys()))} .stale=${view.stale} .boxes=${view.way.resistor === 'box'}></ts-drawing>
          ${isProbed(view) ? html`<p class="probe"><button class="link" @click=${() => void this.#lookUp('')}><span>${SAY.headings.readings}</span></button></p>` : nothing}</div>
        <div class="side">${this.#side(view, desk)}</div>
        <ts-pictures .view=${view}></ts-pictures>
        <div class="rest">
          ${readingsOn(view, desk, this.#opened, this.tick)}
          ${listenOf(view, desk, this.#opened)}
          <section class="values"><h2>${SAY.headings.values}</h2><ts-form .view=${view} .desk=${desk} .tick=${this.tick}></ts-form></section>
          ${restOf(view, desk, this.#opened, this.keepers)}
        </div>
      </div></div>`;
  }

  #header(view: View): TemplateResult {
    const tube = view.circuit?.tubes?.[0]?.reference;
    const where = this.build === '' ? '' : PAGE.inBuild(this.build);
    return html`<header><div><h1>${view.calculator.title}</h1><p class="subtitle"><span>${view.lug.id}${tube === undefined ? '' : `, ${tube}`}</span><span>${where}</span></p></div>
      <button class="link sheet" @click=${() => { tell(this, 'ts-print'); }}>${ICONS.sheet(24)}<span>${SAY.sheet}</span></button></header>`;
  }

  #top(view: View): TemplateResult {
    const folded = this.open !== null && matchMedia('(max-width: 719.9px)').matches;
    const over = cautionsOf(view).find(({ severity }) => severity === 'limit');
    return html`<div class="top">
      ${view.general === null ? nothing : html`<div class="general" role="status">${ICONS.refused(26)}<p><b>${STATES.noSolution}</b> ${view.general.text}</p></div>`}
      </div>${this.#changes(view)}<ts-lead class="top" .lead=${view.lead} .nearest=${this.#memo.get('nearest', [view.situation, this.open], () => (this.open === null ? null : nearest(view, this.open)))} ?folded=${folded} .stale=${view.stale} .waiting=${view.waiting}></ts-lead>
      ${over === undefined ? nothing : html`<div class="over"><button class="look" @click=${() => { this.#lead('limit'); }}><span class="edge hatched-ink"></span><span class="mark">${ICONS.limit(26)}</span>
        <b>${cautionWords(over, view.situation?.inputs, view.way).heading}</b><span class="why">${PAGE.why}</span></button></div>`}`;
  }

  /** What this lug brought with it from another release, where that reads otherwise. */
  #changes(view: View): TemplateResult | typeof nothing {
    const [answered, answers] = [answeredOf(view.lug), view.situation?.outcome.answers];
    if (answered === null || answers === undefined || view.stale) return nothing;
    const changes = this.#memo.get('changes', [answered.answers, answers, view.way], () => changesIn(cellsOf(view), answered.answers, answers));
    return changes.length === 0 ? nothing : html`<div class="top"><ts-changes .release=${answered.release} .changes=${changes} @ts-take-new=${this.#handlers.takeNew}></ts-changes></div>`;
  }

  #side(view: View, desk: Desk): TemplateResult {
    const cautions = cautionsOf(view);
    const [first, others] = this.#memo.get('tables', [view.situation, view.columns, view.pins], () => {
      const tables = tablesOf(view);
      return [tables.slice(0, 1), tables.slice(1)] as const;
    });
    const remarks = view.situation === null ? [] : (view.words.remarks?.(view.situation) ?? []);
    return html`<div class="answers">
        ${view.columns.length < 2 ? nothing : html`<ts-switch .positions=${view.columns} .label=${PAGE.switchPosition}></ts-switch>`}
        <ts-answers .tables=${first} .stale=${view.stale}></ts-answers>
        ${this.open === null ? nothing : html`<ts-open-field .view=${view} .desk=${desk} .path=${this.open} .reference=${this.reference} .tick=${this.tick}></ts-open-field>`}
        ${others.length === 0 ? nothing : html`<ts-answers .tables=${others} .stale=${view.stale}></ts-answers>`}
        ${handsOf(view, (handed) => { tell(this, 'ts-add', handed); })}
        ${remarks.length === 0 ? nothing : html`<div class="remarks">${remarks.map((remark) => html`<p>${remark}</p>`)}</div>`}
        <ts-pins .view=${view} .desk=${desk}></ts-pins>
      </div>
      <div class="cautions">${cautions.map((caution, k) => html`<ts-caution data-severity=${caution.severity} .caution=${caution} .inputs=${view.situation?.inputs ?? NOTHING} .way=${view.way}
        .first=${k === 0} .mend=${desk.mendOffer(caution, view)}></ts-caution>`)}</div>`;
  }

  readonly #touched = (event: CustomEvent<{ readonly field: string; readonly reference: string }>): void => {
    const { field, reference } = event.detail;
    const desk = this.desk;
    if (this.open === field) { this.#close(); return; }
    const known = desk?.lug === undefined ? undefined : rowFor(desk.calculator(desk.lug.calculator)?.inputs ?? [], field);
    if (known === undefined) return;
    this.open = field;
    this.reference = besideOf(reference);
  };

  /** Leads to a point's row in the readings, opened if need be; to the first where none is named. */
  async #lookUp(point: string): Promise<void> {
    const fold = this.renderRoot.querySelector<TsDisclosure>('.readings');
    if (fold === null) return;
    fold.unfold();
    await this.updateComplete;
    await customElements.whenDefined('ts-readings');
    const readings = this.renderRoot.querySelector<TsReadings>('ts-readings');
    await readings?.updateComplete;
    readings?.lead(point);
  }

  readonly #disclosed = (event: Event): void => {
    this.#opened.add((event.target as TsDisclosure).heading);
    this.requestUpdate();
  };

  readonly #escape = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') this.#close();
  };

  #close(): void {
    const field = this.open;
    if (field === null) return;
    this.open = null;
    void this.updateComplete.then(() => {
      this.#drawing()?.renderRoot.querySelector<SVGElement>(`[data-field="${CSS.escape(field)}"]`)?.focus({ preventScroll: true });
    });
  }

  /** Leads to the first box of a kind. */
  #lead(severity: string): void {
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    this.renderRoot.querySelector<TsCaution>(`ts-caution[data-severity="${severity}"]`)?.lead(still ? 'instant' : 'smooth');
  }

  #drawing() {
    return this.renderRoot.querySelector('ts-drawing');
  }
}

const NOTHING = {};

function cautionsOf(view: View): readonly BareCaution[] {
  return byGravity(view.situation?.outcome.cautions ?? []);
}

customElements.define('ts-calculator', TsCalculator);
