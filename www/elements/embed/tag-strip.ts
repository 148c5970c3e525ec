import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { EMBED } from '../../words/embed-words.js';
import { byGravity, dressCautions, SAY, STATES } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import '../../drawings/ts-drawing.js';
import '../answers/ts-answers.js';
import { besideOf } from '../calculator/part-view.js';
import { Handlers } from '../calculator/handlers.js';
import type { TsCaution } from '../caution/ts-caution.js';
import '../caution/ts-caution.js';
import '../disclosure/ts-disclosure.js';
import type { TsDisclosure } from '../disclosure/ts-disclosure.js';
import '../form/ts-form.js';
import '../lead/ts-lead.js';
import '../open-field/ts-open-field.js';
import type { TsOpenField } from '../open-field/ts-open-field.js';
import { controls, ground, hatching, type } from '../shared/look.js';
import '../switch/ts-switch.js';
import '../worked/ts-worked.js';
import { Desk } from '../state/desk.js';
import { toHash } from '../state/hash.js';
import type { Engine, Lug } from '../state/kinds.js';
import { rowFor } from '../state/leaves.js';
import { Memo } from '../state/memo.js';
import { labelsOf, tablesOf, tagsOf, viewOf, type View } from '../state/view.js';
import { known, lugOf } from './attributes.js';
import { embedStyle } from './style.js';

const THEMES = ['light', 'dark', 'system'];

/** What `answers` carries. */
export interface AnswersDetail {
  readonly calculator: string;
  /** Every input, as it is written. */
  readonly inputs: unknown;
  readonly answers: unknown;
  readonly cautions: readonly { readonly code: string; readonly severity: string; readonly text: string }[];
  readonly problems: readonly { readonly field: string; readonly code: string; readonly text: string }[];
}

/**
 * `<tag-strip calculator="stage" plate_ohms="220k">`: one calculator on somebody's page.
 *
 * Attributes: `calculator`; `position` of its switch, from 1; `theme`, light unless dark or system; `home`, where “Open in
 * full” leads; any other is an input by its path. Custom properties: `--tagstrip-ink` and the other tokens. Parts: `frame
 * title lead drawing cautions values foot`. Fires `answers` with an {@link AnswersDetail}. What stands inside the element
 * in the markup shows until its answers are there.
 */
export class TagStrip extends LitElement {
  static override styles = [ground, type, controls, hatching, ...embedStyle];
  static override properties = { tick: { state: true }, open: { state: true }, reference: { state: true }, hash: { state: true } };
  /** One engine for every element of the page, made when the first needs it. */
  static engine: (() => Engine) | null = null;
  /** Where the site stands whose script this is. */
  static home: URL | null = null;

  private tick = 0;
  private open: string | null = null;
  private reference = '';
  private hash = '';
  readonly #page: { desk: Desk | null } = { desk: null };
  #given: Lug | null = null;
  #told: unknown = null;
  #pixels = '16px';
  readonly #opened = new Set<string>();
  readonly #memo = new Memo();
  readonly #handlers = new Handlers(this.#page);
  readonly #watcher = new MutationObserver(() => { this.take(lugOf(this)); });

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watcher.observe(this, { attributes: true });
    if (this.#given === null) this.take(lugOf(this));
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watcher.disconnect();
  }

  /** Takes a calculator with its inputs. */
  take(lug: Lug | null): void {
    if (lug === null || lug.calculator === '') return;
    this.#given = lug;
    const { desk } = this.#page;
    if (desk === null) void this.#begin();
    else this.#put(desk);
  }

  async #begin(): Promise<void> {
    const make = TagStrip.engine;
    if (make === null) return;
    const desk = new Desk(make());
    this.#page.desk = desk;
    desk.listen((news) => { if (news !== 'typed') this.tick += 1; });
    await desk.begin();
    this.#put(desk);
  }

  /** Puts on the desk what the calculator knows of what was given. */
  #put(desk: Desk): void {
    const lug = this.#given;
    const calculator = lug === null ? undefined : desk.calculator(lug.calculator);
    if (lug === null || calculator === undefined) return;
    const inputs = known(lug.inputs, new Set(calculator.inputs.map(({ key }) => key ?? '')));
    this.open = null;
    desk.open({ name: '', lugs: [{ ...lug, inputs }], rest: {} }, lug.id);
  }

  protected override willUpdate(): void {
    if (!this.hasUpdated) return;
    const page = this.renderRoot.querySelector('.page');
    if (page !== null) this.#pixels = getComputedStyle(page).fontSize;
  }

  protected override updated(changed: PropertyValues): void {
    this.renderRoot.querySelector<HTMLElement>('.inside')?.style.setProperty('--rem', this.#pixels);
    if (changed.has('open') || changed.has('reference')) {
      const panel = this.renderRoot.querySelector<TsOpenField>('ts-open-field');
      void panel?.updateComplete.then(() => { panel.focus(); panel.scrollIntoView({ block: 'nearest' }); });
    }
    const view = this.#view();
    if (view !== null && view.situation !== null) this.#tell(view);
  }

  #view(): View | null {
    const { desk } = this.#page;
    return desk === null ? null : viewOf(desk, this.#memo);
  }

  /** Tells the page what stands here now, in objects made for it. */
  #tell(view: View): void {
    const { outcome, inputs } = view.situation ?? {};
    if (outcome === undefined || (this.#told === view.situation && view.problems.size === 0)) return;
    this.#told = view.situation;
    const cautions = dressCautions(outcome.cautions ?? [], inputs, view.way).map(({ code, severity, text }) => ({ code, severity, text }));
    const problems = [...view.problems.values()].map(({ problem: { field, code }, text }) => ({ field, code, text }));
    const detail: AnswersDetail = structuredClone({ calculator: view.calculator.id, inputs: view.full, answers: outcome.answers ?? {}, cautions, problems });
    this.dispatchEvent(new CustomEvent('answers', { detail }));
    const { desk } = this.#page;
    if (desk !== null) void toHash({ build: desk.build, at: desk.at }).then((hash) => { this.hash = hash; });
  }

  protected override render(): unknown {
    const view = this.#view();
    const theme = this.getAttribute('theme') ?? '';
    const chosen = THEMES.includes(theme) ? theme : 'light';
    return html`<div class="page" data-theme=${chosen}><div class="inside" part="frame">${this.#inside(view)}</div></div>`;
  }

  #inside(view: View | null): unknown {
    const { desk } = this.#page;
    // What stands in the markup serves until there are answers, and where there never are any.
    if (view === null || desk === null || (view.situation === null && view.problems.size === 0)) return html`<slot></slot>`;
    const memo = this.#memo;
    const { way } = view;
    const cautions = byGravity(view.situation?.outcome.cautions ?? []);
    return html`<section aria-labelledby="title" @ts-type=${this.#handlers.type} @ts-step=${this.#handlers.step} @ts-turn=${this.#handlers.turn} @ts-open=${this.#touched}
      @ts-close=${() => { this.#close(); }} @ts-danger=${() => { this.#toDanger(); }} @ts-disclose=${this.#disclosed}>
      <header part="title"><h2 class="title" id="title">${view.calculator.title}</h2></header>
      ${view.general === null ? nothing : html`<div class="general" role="status"><b>${STATES.noSolution}</b> ${view.general.text}</div>`}
      <ts-lead part="lead" .lead=${view.lead} .stale=${view.stale} .waiting=${view.waiting}></ts-lead>
      <div class="drawing" part="drawing"><ts-drawing calculator=${view.calculator.id} .circuit=${view.circuit} .texts=${view.texts} .answers=${view.situation?.outcome.answers ?? NOTHING}
        .tags=${memo.get('tags', [view.situation], () => tagsOf(view))} .labels=${memo.get('labels', [view.circuit, way], () => labelsOf(view))} .open=${this.open}
        .refused=${memo.get('refused', [view.problems], () => new Set(view.problems.keys()))} .stale=${view.stale}></ts-drawing></div>
      ${this.open === null ? nothing : html`<ts-open-field .view=${view} .desk=${desk} .path=${this.open} .reference=${this.reference} .tick=${this.tick}></ts-open-field>`}
      ${view.columns.length < 2 ? nothing : html`<ts-switch .positions=${view.columns} .label=${PAGE.switchPosition}></ts-switch>`}
      <div class="cautions" part="cautions">${cautions.map((caution, k) => html`<ts-caution .caution=${caution} .inputs=${view.situation?.inputs ?? NOTHING} .way=${way} .first=${k === 0} .mend=${desk.mendOffer(caution, view)}></ts-caution>`)}</div>
      <div part="values">
        ${this.#behind(EMBED.answers, () => html`<ts-answers .tables=${tablesOf(view)} .stale=${view.stale}></ts-answers>`)}
        ${this.#behind(EMBED.values, () => html`<ts-form .view=${view} .desk=${desk} .tick=${this.tick}></ts-form>`)}
        ${this.#behind(SAY.headings.worked, () => html`<ts-worked .how=${view.words.how} .way=${way}></ts-worked>`)}
      </div>
      <p class="foot" part="foot">${EMBED.foot} <a href=${this.#full(view)} target="_blank" rel="noopener">${EMBED.full}</a></p></section>`;
  }

  #behind(heading: string, what: () => TemplateResult): TemplateResult {
    return html`<ts-disclosure .heading=${heading}>${this.#opened.has(heading) ? what() : nothing}</ts-disclosure>`;
  }

  /** The whole page of the calculator with what stands here now. Only an address of the web is one. */
  #full({ calculator: { id } }: View): string {
    const given = this.getAttribute('home');
    const home = given !== null && /^https?:\/\//.test(given) ? new URL(given) : TagStrip.home;
    if (home === null) return '#';
    const page = new URL(`${id}/`, home);
    page.hash = this.hash;
    return page.href;
  }

  readonly #touched = ({ detail: { field, reference } }: CustomEvent<{ readonly field: string; readonly reference: string }>): void => {
    if (this.open === field) { this.#close(); return; }
    const rows = this.#view()?.calculator.inputs ?? [];
    if (rowFor(rows, field) === undefined) return;
    this.open = field;
    this.reference = besideOf(reference);
  };

  #close(): void {
    const field = this.open;
    this.open = null;
    if (field === null) return;
    const drawing = this.renderRoot.querySelector('ts-drawing');
    void this.updateComplete.then(() => drawing?.renderRoot.querySelector<SVGElement>(`[data-field="${CSS.escape(field)}"]`)?.focus({ preventScroll: true }));
  }

  #toDanger(): void {
    this.renderRoot.querySelector<TsCaution>('ts-caution')?.lead();
  }

  readonly #disclosed = (event: Event): void => {
    this.#opened.add((event.target as TsDisclosure).heading);
    this.tick += 1;
  };
}

const NOTHING = {};
