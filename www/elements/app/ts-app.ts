import type { Handed } from '../calculator/hands.js';
import { html, LitElement, type PropertyValues } from 'lit';
import { refusedCount, SAY, STATES } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { controls, ground } from '../shared/look.js';
import { buildText, viewText } from '../state/as-text.js';
import { Desk, type News } from '../state/desk.js';
import { EXAMPLE } from '../state/example.js';
import { isAboutBuild, Keep, shelf } from '../state/keep.js';
import type { Engine } from '../state/kinds.js';
import { lugLine } from '../state/lug-line.js';
import { readPreferences, writePreferences, type Preferences } from '../state/preferences.js';
import { Session, type Notice } from '../state/session.js';
import { viewOf } from '../state/view.js';
import '../calculator/ts-calculator.js';
import '../notice/ts-notice.js';
import type { Way } from '../share/snippets.js';
import type { TsSheet } from '../sheet/ts-sheet.js';
import '../strip/ts-strip.js';
import { PageAddress } from './address.js';
import { copy, fileName, saveFile } from './files.js';
import { saidOf, type Said } from './notices.js';
import { appStyle } from './style.js';
import { watchKeyboard } from './keyboard.js';

/** Results are read out once, when they have come to rest. */
const ANNOUNCE_AFTER = 900;
/** How long a struck key may wait to be drawn together with its answer. */
const SOON = 50;
/** What only paper and the lower headings show is worked when nothing else is to do. */
const PREPARE_AFTER = 1500;

/**
 * `<ts-app>`: the whole page. `calculator` is the one that the page is for, empty for the build; `root` is the way to
 * the site's root, absent in a page that is a single file. The page begins when `engine` is set.
 */
export class TsApp extends LitElement {
  static override styles = [ground, controls, appStyle];

  static override properties = { calculator: {}, root: {}, release: {}, element: {}, engine: { attribute: false }, tick: { state: true }, said: { state: true }, aloud: { state: true } };
  calculator = '';
  root: string | null = null;
  /** The number of this release, and the hash of the script that makes its element for other pages. */
  release = '';
  element = '';
  engine: Engine | null = null;
  private tick = 0;
  private said: readonly Said[] = [];
  private aloud = '';
  #desk: Desk | null = null;
  #session: Session | null = null;
  #address: PageAddress | null = null;
  #soon: ReturnType<typeof setTimeout> | undefined;
  #aloudTimer: ReturnType<typeof setTimeout> | undefined;
  #off: (() => void)[] = [];
  readonly #acts = new Map<string, () => void>();
  #whole = false;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const off of this.#off) off();
    this.#off = [];
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('engine') && this.engine !== null && this.#desk === null) void this.#begin(this.engine);
  }

  /** Says a state of the page as a whole, such as a newer release, once; `act` is what can be done about it. */
  say(state: keyof typeof STATES, act?: () => void): void {
    if (act !== undefined) this.#acts.set(state, act);
    this.#say({ key: state, text: STATES[state], action: act === undefined ? '' : PAGE.takeIn });
  }

  async #begin(engine: Engine): Promise<void> {
    const store = shelf();
    const desk = new Desk(engine);
    const address = new PageAddress(this.root);
    this.#desk = desk;
    this.#address = address;
    desk.preferences = readPreferences(store);
    this.#theme(desk.preferences);
    const notice = (name: Notice, form?: number): void => { this.#say(saidOf(name, form)); };
    const session = new Session(desk, new Keep(store, crypto.randomUUID()), address, notice);
    session.release = this.release;
    this.#session = session;
    desk.listen((news) => { this.#heard(news); });
    const catalogue = desk.begin();
    await desk.learn(this.calculator === '' ? undefined : [this.calculator]);
    await session.begin(this.root === null ? null : this.calculator);
    address.at = desk.at;
    if (store === null) notice('refused');
    this.#watch(desk, session, address);
    await catalogue;
    setTimeout(() => { desk.need(['test_points', 'wiring'], true); }, PREPARE_AFTER);
  }

  #watch(desk: Desk, session: Session, address: PageAddress): void {
    const on = (target: EventTarget, name: string, call: (event: never) => void): void => {
      target.addEventListener(name, call as EventListener);
      this.#off.push(() => { target.removeEventListener(name, call as EventListener); });
    };
    on(window, 'pagehide', () => { session.flush(); });
    on(document, 'visibilitychange', () => { if (document.visibilityState === 'hidden') session.flush(); });
    on(window, 'storage', (event: StorageEvent) => { if (isAboutBuild(event)) this.#say(saidOf('other_tab')); });
    on(window, 'popstate', (event: PopStateEvent) => {
      const state = event.state as { readonly tagstrip?: boolean; readonly at?: string } | null;
      if (state?.tagstrip !== true) { void session.relink(location.hash); return; }
      address.at = state.at ?? '';
      desk.choose(address.at);
    });
    on(window, 'beforeprint', () => { this.#sheet(true); });
    on(window, 'afterprint', () => { this.#sheet(false); });
    this.#off.push(watchKeyboard(this));
  }

  protected override render(): unknown {
    const desk = this.#desk;
    if (desk === null) return html`<div class="unread"><slot></slot></div>`;
    const { build, at } = desk;
    const lugs = build.lugs.map((lug) => {
      const { figure, state } = lugLine(desk, lug);
      return { id: lug.id, href: this.#address?.of(lug.calculator) ?? '#', figure, mark: state };
    });
    return html`<div class="frame" @ts-choose=${(event: CustomEvent<string>) => { this.#go(event.detail); }} @ts-add=${({ detail }: CustomEvent<string | Handed>) => { if (typeof detail === 'string') desk.add(detail); else desk.add(detail.calculator, detail.inputs); this.#went(); }}
      @ts-prefer=${(event: CustomEvent<Preferences>) => { this.#prefer(event.detail); }} @ts-print=${() => { this.#print(); }} @ts-disclose=${() => { this.#fetchRest(); }}
      @ts-copy-link=${() => { void this.#copyLink(); }} @ts-copy-text=${() => { void this.#copyText(); }} @ts-copy-code=${(event: CustomEvent<Way>) => { void this.#copyCode(event.detail); }} @ts-save-file=${() => { this.#save(); }}
      @ts-open-file=${(event: CustomEvent<string>) => { this.#session?.openText(event.detail); this.#went(); }}
      @ts-bring-back=${() => { this.#session?.bringBack(); this.#went(); }} @ts-example=${() => { this.#session?.replace(EXAMPLE, 'speech'); this.#went(); }}>
      <nav aria-label="On this page"><header><a class="skip" href="#main" @click=${this.#skip}>${PAGE.toAnswers}</a></header></nav>
      <ts-strip .lugs=${lugs} .at=${at} .name=${build.name} .home=${this.#address?.of('') ?? '#'}></ts-strip>
      <main tabindex="-1" class=${this.said.length > 0 ? 'told' : ''}>
        <div class="notices">${this.said.map((said) => html`<ts-notice .text=${said.text} .action=${said.action} .close=${SAY.close} @ts-act=${() => { this.#act(said); }} @ts-dismiss=${() => { this.#unsay(said.key); }}></ts-notice>`)}</div>
        ${at === '' ? html`<ts-build .desk=${desk} .tick=${this.tick} ?aside=${this.#session?.hasAside === true}></ts-build>`
          : html`<ts-calculator .desk=${desk} .tick=${this.tick} .build=${build.name} .keepers=${this.root === null ? '' : `${this.#address?.of('for-your-page') ?? ''}`}></ts-calculator>`}
      </main>
      <p class="aside" role="status" aria-live="polite">${this.aloud}</p></div>
      <ts-sheet></ts-sheet>`;
  }

  /** A key's answer is nearly there: the page is drawn once, with it, and not before it too. */
  #heard(news: News): void {
    clearTimeout(this.#aloudTimer);
    if (news === 'typed' || news === 'read') {
      this.#soon ??= setTimeout(() => { this.#heard('shown'); }, SOON);
      return;
    }
    clearTimeout(this.#soon);
    this.#soon = undefined;
    this.tick += 1;
    this.#fetchRest();
    this.#entitle();
    this.#aloudTimer = setTimeout(() => { this.#announce(); }, ANNOUNCE_AFTER);
  }

  /** The first answers come first; the pictures, the paper and the build are fetched behind them. */
  #fetchRest(): void {
    const desk = this.#desk;
    if (this.#whole || desk === null || (desk.at !== '' && !desk.lost && !hasSpoken(desk))) return;
    this.#whole = true;
    const fetched = async (): Promise<void> => { await import('../later.js'); await desk.learn(); };
    const again = (): void => { this.#whole = false; };
    if (desk.at === '') fetched().catch(again);
    else void this.updateComplete.then(() => { requestAnimationFrame(() => { requestAnimationFrame(() => { fetched().catch(again); }); }); });
  }

  #announce(): void {
    const view = this.#desk === null ? null : viewOf(this.#desk);
    if (view === null) return;
    const refused = view.problems.size;
    this.aloud = refused > 0 ? refusedCount(refused) : view.lead === null ? '' : `${view.lead.label}: ${view.lead.figure} ${view.lead.unit}. ${view.lead.sentence}`;
  }

  #entitle(): void {
    const lug = this.#desk?.lug;
    const calculator = lug === undefined ? undefined : this.#desk?.calculator(lug.calculator);
    const title = lug === undefined ? SAY.strip.build : `${calculator?.title ?? lug.calculator}: ${lug.id}`;
    const whole = `${title}, ${SAY.site}`;
    if (document.title !== whole) document.title = whole;
  }

  #go(id: string): void {
    this.#desk?.choose(id);
    this.#went();
  }

  /** Another lug is looked at: a step in the history, and the page from its top. */
  #went(): void {
    const desk = this.#desk;
    const address = this.#address;
    if (desk === null || address === null) return;
    address.at = desk.at;
    address.go(desk.lug?.calculator ?? '');
    scrollTo({ top: 0, behavior: 'instant' });
  }

  #prefer(preferences: Preferences): void {
    this.#desk?.prefer(preferences);
    writePreferences(shelf(), preferences);
    this.#theme(preferences);
  }

  #theme({ theme }: Preferences): void {
    if (theme === 'system') delete document.documentElement.dataset['theme'];
    else document.documentElement.dataset['theme'] = theme;
  }

  async #copyLink(): Promise<void> {
    const hash = (await this.#session?.link()) ?? '';
    const calculator = this.#desk?.lug?.calculator ?? '';
    this.#address?.write(hash, calculator);
    const done = await copy(location.href);
    this.#say({ key: 'copy', text: done ? SAY.file.copied : PAGE.linkInAddress, action: '' });
  }

  /** The markup that puts the open calculator on somebody's page. */
  async #copyCode(way: Way): Promise<void> {
    const desk = this.#desk;
    const site = this.#address?.published(this.release) ?? '';
    if (desk === null || site === '') return;
    const { copyCode } = await import('../share/copy-code.js');
    const page = this.renderRoot.querySelector('ts-calculator')?.shadowRoot;
    const drawing = page?.querySelector('ts-drawing')?.renderRoot.querySelector('svg') ?? null;
    const text = await copyCode(way, desk, { site, integrity: this.element, drawing });
    if (text !== '') this.#say({ key: 'copy', text, action: '' });
  }

  async #copyText(): Promise<void> {
    const desk = this.#desk;
    if (desk === null) return;
    const view = viewOf(desk);
    const done = await copy(view === null ? buildText(desk, location.href) : viewText(desk, view, location.href));
    this.#say({ key: 'copy', text: done ? SAY.file.textCopied : PAGE.noCopying, action: done ? '' : SAY.file.save });
  }

  #save(): void {
    if (this.#session !== null) saveFile(fileName(this.#desk?.build.name ?? ''), this.#session.fileText());
  }

  #act({ key }: Said): void {
    const session = this.#session;
    const own = this.#acts.get(key);
    if (own !== undefined) own();
    else if (key === 'keeping' || key === 'copy') this.#save();
    else if (key === 'tabs' && this.said.some((said) => said.key === key && said.text === STATES.otherTab)) session?.takeOther();
    else session?.bringBack();
    this.#unsay(key);
  }

  #print(): void {
    this.#desk?.need(['parts', 'test_points']);
    // The readings are there within a few milliseconds; the printer can wait a tenth of a second.
    setTimeout(() => { print(); }, 120);
  }

  /** Lays the sheet out at the paper's width before the printer looks, and takes it away after. */
  #sheet(printing: boolean): void {
    const sheet = this.renderRoot.querySelector<TsSheet>('ts-sheet');
    const desk = this.#desk;
    if (sheet === null || desk === null || customElements.get('ts-sheet') === undefined) return;
    const place = desk.build.lugs.findIndex((lug) => lug.id === desk.at) + 1;
    sheet.view = viewOf(desk);
    sheet.build = desk.build.name;
    sheet.place = desk.build.lugs.length > 1 ? PAGE.sheetOf(place, desk.build.lugs.length) : '';
    sheet.today = new Date().toISOString().slice(0, 10);
    sheet.printing = printing && sheet.view !== null;
    this.toggleAttribute('printing', sheet.printing);
    sheet.performNow();
  }

  #say(said: Said): void {
    this.said = [...this.said.filter(({ key }) => key !== said.key), said];
  }

  #unsay(key: string): void {
    this.said = this.said.filter((said) => said.key !== key);
  }

  readonly #skip = (event: Event): void => {
    event.preventDefault();
    this.renderRoot.querySelector('main')?.focus();
  };
}

/** Whether the engine has answered for what is looked at, or refused it. */
function hasSpoken(desk: Desk): boolean {
  const view = viewOf(desk);
  return view !== null && (view.situation !== null || view.problems.size > 0 || view.general !== null);
}

customElements.define('ts-app', TsApp);

declare global {
  interface HTMLElementTagNameMap {
    'ts-app': TsApp;
  }
}
