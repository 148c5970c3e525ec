import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { SAY } from '../../words/index.js';
import { tell } from '../shared/events.js';
import type { LugMark } from '../shared/icons.js';
import { ground } from '../shared/look.js';
import { ear, lastEar, lugPicture, markPicture } from './pictures.js';
import { stripStyle } from './style.js';

/** A lug as the strip shows it. */
export interface StripLug {
  readonly id: string;
  readonly href: string;
  /** Its lead answer in brief, for where there is room. */
  readonly figure: string;
  readonly mark: LugMark | null;
}

const MARKS: Readonly<Record<LugMark, string>> = {
  limit: SAY.strip.exceeded, refused: SAY.strip.refused, waiting: SAY.strip.waiting,
};

/**
 * `<ts-strip>`: the calculators in use, as a terminal strip; its first ear leads to the build. Fires `ts-choose` with
 * the lug's name, empty for the build.
 */
export class TsStrip extends LitElement {
  static override styles = [ground, stripStyle];

  static override properties = { lugs: { hasChanged: differ }, at: {}, name: {}, home: {} };
  lugs: readonly StripLug[] = [];
  at = '';
  /** The build's name. */
  name = '';
  /** Where the build's own page is. */
  home = '';

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('at')) return;
    const open = this.renderRoot.querySelector('[aria-current]');
    const smooth = !matchMedia('(prefers-reduced-motion: reduce)').matches && changed.get('at') !== undefined;
    open?.scrollIntoView({ block: 'nearest', inline: 'center', behavior: smooth ? 'smooth' : 'instant' });
  }

  protected override render(): unknown {
    return html`<nav aria-label=${SAY.strip.name}>
      <p class="name">${this.name}</p>
      <ul>
        <li class="ear">${this.#cell('', this.home, 'build', '', null, ear())}</li>
        ${repeat(this.lugs, ({ id }) => id, ({ id, href, figure, mark }) => html`<li>${this.#cell(id, href, id, figure, mark, lugPicture(id === this.at))}</li>`)}
        <li class="ear last" aria-hidden="true"><span class="cell">${lastEar()}</span></li>
      </ul></nav>`;
  }

  #cell(id: string, href: string, name: string, figure: string, mark: LugMark | null, picture: TemplateResult): TemplateResult {
    const open = id === this.at;
    return html`<a class=${open ? 'cell open' : 'cell'} href=${href} aria-current=${open ? 'page' : nothing} @click=${(event: MouseEvent) => { this.#choose(event, id); }}>
      ${picture}
      <span class="words"><span class="title">${name}</span>${figure === '' ? nothing : html`<span class="figure">${figure}</span>`}</span>
      ${mark === null ? nothing : html`<span class="mark">${markPicture(mark)}<span class="aside">, ${MARKS[mark]}</span></span>`}</a>`;
  }

  #choose(event: MouseEvent, id: string): void {
    if (event.metaKey || event.ctrlKey || event.shiftKey || event.button !== 0) return;
    event.preventDefault();
    tell(this, 'ts-choose', id);
  }
}

function differ(now: readonly StripLug[], before: readonly StripLug[] | undefined): boolean {
  const same = (one: StripLug, other: StripLug | undefined): boolean =>
    one.id === other?.id && one.figure === other.figure && one.mark === other.mark && one.href === other.href;
  return now.length !== before?.length || !now.every((lug, k) => same(lug, before[k]));
}

customElements.define('ts-strip', TsStrip);
