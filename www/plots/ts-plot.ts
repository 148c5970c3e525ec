import { html, LitElement, nothing, svg, type PropertyValues, type SVGTemplateResult, type TemplateResult } from 'lit';

import { measurer, type Measure } from '../drawings/measure.js';
import { SAY } from '../words/interface.js';
import { lowered } from '../words/plain.js';
import { lineSummary, NOTHING_TO_SHOW, PINNED } from '../words/plot-words.js';
import { show } from '../words/quantity.js';
import { USUAL_WAY, type Way } from '../words/way.js';
import { codeOf, type Band, type Curve } from './kinds.js';
import { layout, type Layout } from './layout.js';
import { paint } from './paint.js';
import { plotStyle } from './plot-style.js';
import { extent, heightAt } from './reading.js';
import { table } from './table.js';

/** Steps of the cursor along the axis: by an arrow key, and by a page key. */
const STEP = 0.01;
const PAGE = 0.1;
/** Half the handle's width, and room beside it. */
const HANDLE = 18;

/** What `ts-cursor` carries: the place in the axis' own unit. */
export interface CursorDetail {
  readonly x: number;
}

/**
 * `<ts-plot>`: a curve as a picture with a cursor, a reading under it, a summary for those who do not see it, and the
 * same as a table. Laid out to its own width; texts keep their size.
 *
 * Fires `ts-cursor` with a {@link CursorDetail} when the cursor is moved by hand.
 */
export class TsPlot extends LitElement {
  static override styles = plotStyle;
  static override properties = {
    curve: { attribute: false }, current: { attribute: false }, ghosts: { attribute: false }, bands: { attribute: false },
    span: { attribute: false }, figure: { type: Number }, caption: {}, cursor: { type: Number }, way: { attribute: false },
    room: { state: true }, unfolded: { state: true },
  };

  declare curve: Curve | null;
  /** Label of the line that is switched in; with one line alone it is that. */
  declare current: string | null;
  /** Curves of pinned states, drawn behind. */
  declare ghosts: readonly Curve[];
  /** Hatched stretches of the axis. */
  declare bands: readonly Band[];
  /** The part of the axis to show; all of it if not said. */
  declare span: Band | null;
  /** Its number on the page. */
  declare figure: number;
  declare caption: string;
  /** Where the cursor stands, in the axis' unit. */
  declare cursor: number | null;
  declare way: Way;
  declare room: number;
  declare unfolded: boolean;

  private watcher: ResizeObserver | null = null;
  private measure: Measure | null = null;
  private shown: Layout | null = null;

  constructor() {
    super();
    this.curve = null;
    this.current = null;
    this.ghosts = [];
    this.bands = [];
    this.span = null;
    this.figure = 0;
    this.caption = '';
    this.cursor = null;
    this.way = USUAL_WAY;
    this.room = 0;
    this.unfolded = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.room = this.clientWidth || 328;
    this.watcher = new ResizeObserver((entries) => {
      const width = Math.floor(entries.at(-1)?.contentRect.width ?? 0);
      // Laid out within the observer's own round, the new height would call it again.
      if (width > 0) requestAnimationFrame(() => { this.room = width; });
    });
    this.watcher.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.watcher?.disconnect();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    this.measure ??= measurer();
    const { curve, measure } = this;
    if (curve === null || !curve.lines.some((line) => line.y.some(Number.isFinite))) {
      this.shown = null;
      return;
    }
    const only = [...changed.keys()].every((key) => key === 'cursor' || key === 'unfolded');
    if (only && this.shown !== null && changed.size > 0) return;
    const { ghosts, bands, span, current, room } = this;
    this.shown = layout({ curve, ghosts, bands, span, current, width: room, measure, pinned: PINNED });
  }

  protected override render(): TemplateResult | typeof nothing {
    const { curve, shown } = this;
    if (curve === null) return nothing;
    const number = this.figure > 0 ? `${SAY.plot.figure(this.figure)} ` : '';
    const caption = html`<figcaption>${number}${this.caption || `${curve.title}.`}</figcaption>`;
    if (shown === null) return html`<figure>${caption}<p class="reading">${NOTHING_TO_SHOW}</p></figure>`;
    return html`<figure>
      <p class="unseen" id="summary">${this.summary(curve, shown)}</p>
      <svg width=${shown.width} height=${shown.height} viewBox="0 0 ${shown.width} ${shown.height}" role="group"
        aria-label=${curve.title} aria-describedby="summary" @pointerdown=${this.grasp}>
        ${svg`<g aria-hidden="true">${paint(shown)}</g>${this.drawCursor(curve, shown)}`}
      </svg>
      ${caption}
      ${this.reading(curve)}
      <details @toggle=${this.toggled}><summary><span>${SAY.headings.table}</span></summary>
        ${this.unfolded ? html`<div class="table" tabindex="0" role="group" aria-label=${SAY.headings.table}>${table(curve, shown.x, this.way)}</div>` : nothing}
      </details>
    </figure>`;
  }

  private place(shown: Layout): number {
    const [from, to] = shown.x.domain;
    const middle = shown.x.place.invert(shown.area.x + shown.area.width / 2);
    return Math.min(Math.max(this.cursor ?? middle, from), to);
  }

  private drawCursor(curve: Curve, shown: Layout): SVGTemplateResult {
    const { area, x, height } = shown;
    const at = this.place(shown);
    const left = Math.round(x.place(at) * 10) / 10;
    const bottom = area.y + area.height;
    const top = bottom + 26;
    const words = this.figures(curve, at).map(({ name, figure }) => `${name} ${figure}`).join(', ');
    const whole = x.unit === 'Hz' || curve.x.label === '' ? x.unit : `${x.unit}, ${lowered(curve.x.label)}`;
    const free = Math.max(left - area.x, area.x + area.width - left) - HANDLE;
    const unit = (this.measure?.(whole, 14, 400) ?? 0) < free ? whole : x.unit;
    const unitAtEnd = left - area.x < (this.measure?.(unit, 14, 400) ?? 0) + HANDLE;
    const hand = bottom + 22 + 16;
    return svg`
      <text x=${unitAtEnd ? area.x + area.width : area.x} y=${hand} text-anchor=${unitAtEnd ? 'end' : 'start'} aria-hidden="true">${unit}</text>
      <g class="cursor" role="slider" tabindex="0" aria-label=${SAY.plot.cursor} aria-description=${SAY.plot.cursorHelp}
        aria-orientation="horizontal" aria-valuemin=${plain(x.domain[0])} aria-valuemax=${plain(x.domain[1])} aria-valuenow=${plain(at)}
        aria-valuetext=${`${show(at, curve.x.unit, { way: this.way })}: ${words}`} @keydown=${this.stepped}
        transform="translate(${left} 0)">
        <line x1="0" x2="0" y1=${area.y - 4} y2=${top}></line>
        <path class="handle" d=${`M0 ${top}L11 ${top + 10}V${top + 25}H-11V${top + 10}Z`}></path>
        <path class="grip" d=${`M-3 ${top + 12}V${top + 20}M3 ${top + 12}V${top + 20}`}></path>
        <rect class="hit" x="-22" y=${height - 44} width="44" height="44"></rect>
        <rect class="focus" x="-16" y=${top - 4} width="32" height="34"></rect>
      </g>`;
  }

  private figures(curve: Curve, at: number): readonly { readonly name: string; readonly figure: string }[] {
    return curve.lines.map((line) => ({
      name: line.label,
      figure: show(heightAt(line, at, curve.x.scale === 'log'), curve.y.unit, { way: this.way }),
      found: Number.isFinite(heightAt(line, at, curve.x.scale === 'log')),
      code: codeOf(line),
    })).filter(({ found, code }) => found || code === '' || curve.lines.length < 4);
  }

  private reading(curve: Curve): TemplateResult {
    const at = this.shown === null ? 0 : this.place(this.shown);
    const log = curve.x.scale === 'log';
    const old = this.ghosts.flatMap(({ lines }) => lines).flatMap((line) => {
      const height = heightAt(line, at, log);
      return Number.isFinite(height) ? [{ name: line.label, figure: show(height, curve.y.unit, { way: this.way }) }] : [];
    });
    return html`<p class="reading"><span>${SAY.plot.atPlace(show(at, curve.x.unit, { way: this.way }))}</span>
      ${this.figures(curve, at).map(({ name, figure }) => html` <span>${name} <b>${figure}</b></span>`)}
      ${old.slice(0, 6).map(({ name, figure }) => html` <span class="old">${name}, ${PINNED}, ${figure}</span>`)}</p>`;
  }

  private summary(curve: Curve, shown: Layout): string {
    const [from, to] = shown.x.domain;
    const units = { x: curve.x.unit, y: curve.y.unit };
    return curve.lines.flatMap((line) => {
      const found = extent(line, from, to);
      return found === null ? [] : [lineSummary(line.label, found.first, found.last, found.most, units, this.way)];
    }).join(' ');
  }

  private readonly toggled = (event: Event): void => {
    this.unfolded = (event.target as HTMLDetailsElement).open;
  };

  private readonly stepped = (event: KeyboardEvent): void => {
    const shares: Readonly<Record<string, number>> = {
      ArrowLeft: -STEP, ArrowDown: -STEP, ArrowRight: STEP, ArrowUp: STEP, PageDown: -PAGE, PageUp: PAGE, Home: -2, End: 2,
    };
    const share = shares[event.key];
    if (share === undefined || this.shown === null) return;
    event.preventDefault();
    const { area, x } = this.shown;
    this.moveTo(x.place(this.place(this.shown)) + share * area.width);
  };

  /** A tap on the picture brings the cursor there; held, it follows. A finger that goes up or down scrolls the page. */
  private readonly grasp = (event: PointerEvent): void => {
    if (event.button !== 0 || this.shown === null) return;
    const drawn = event.currentTarget as SVGSVGElement;
    const follow = (moved: PointerEvent): void => { this.moveTo(moved.clientX - drawn.getBoundingClientRect().left); };
    const end = (): void => {
      drawn.removeEventListener('pointermove', follow);
      drawn.removeEventListener('pointerup', end);
      drawn.removeEventListener('pointercancel', end);
    };
    drawn.setPointerCapture(event.pointerId);
    drawn.addEventListener('pointermove', follow);
    drawn.addEventListener('pointerup', end);
    drawn.addEventListener('pointercancel', end);
    follow(event);
  };

  private moveTo(left: number): void {
    if (this.shown === null) return;
    const { area, x } = this.shown;
    const inside = Math.min(Math.max(left, area.x), area.x + area.width);
    this.cursor = x.place.invert(inside);
    const detail: CursorDetail = { x: this.cursor };
    this.dispatchEvent(new CustomEvent('ts-cursor', { detail, bubbles: true, composed: true }));
  }
}

customElements.define('ts-plot', TsPlot);

declare global {
  interface HTMLElementTagNameMap {
    'ts-plot': TsPlot;
  }
}

/** A figure as an attribute of access takes it: never with an exponent, which picofarads would have. */
function plain(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(20) : text;
}
