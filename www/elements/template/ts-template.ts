import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { joinLetter, strips, type Mark, type Strip } from '../../drawings/template.js';
import { markWords, TEMPLATE } from '../../words/template.js';
import { USUAL_WAY, type Way } from '../../words/way.js';
import { tell } from '../shared/events.js';
import { controls, ground } from '../shared/look.js';
import type { Value } from '../state/kinds.js';
import { templateStyle } from './style.js';

/** Where the strip stands on the page, and the page itself, in millimetres: both bars and the letters have room. */
const [X, Y, WIDTH, HEIGHT] = [16, 6, 181, 238];
const [TALL, WIDE] = [200, 100];

/** `<ts-template>`: the winding as it lies on paper, at true size on paper and as large as there is room on the screen. */
export class TsTemplate extends LitElement {
  static override styles = [ground, controls, templateStyle];
  static override properties = { template: { attribute: false }, way: { attribute: false }, paper: { type: Boolean, reflect: true } };
  template: Value | undefined;
  way: Way = USUAL_WAY;
  /** On paper there is no button, and no border. */
  paper = false;

  protected override render(): TemplateResult {
    const pages = strips(this.template);
    if (pages.length === 0) return html`<p>${TEMPLATE.none}</p>`;
    const head = this.paper ? nothing : html`<p>${TEMPLATE.about}</p>
      <button class="link" @click=${() => { tell(this, 'ts-print'); }}>${TEMPLATE.print}</button><p>${TEMPLATE.wrap}</p>`;
    return html`${head}${pages.map((strip, k) => html`<div class="page">${this.paper && k === 0 ? html`<p>${TEMPLATE.wrap}</p>` : nothing}${this.#page(strip, k + 1, pages.length)}</div>`)}`;
  }

  #page(strip: Strip, place: number, count: number): TemplateResult {
    const { width, height, lines, marks } = strip;
    const clip = `strip-${place}`;
    return html`<svg width="${WIDTH}mm" height="${HEIGHT}mm" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label=${TEMPLATE.picture(place)}>
      ${svg`<defs><clipPath id=${clip}><rect x="0" y="0" width=${width} height=${height}></rect></clipPath></defs>
      <path class="bar" data-bar=${TALL} d=${`M3 ${Y}H8M5.5 ${Y}V${Y + TALL}M3 ${Y + TALL}H8`}></path>
      <text class="small" transform=${`translate(12 ${Y + TALL / 2}) rotate(-90)`} text-anchor="middle">${TEMPLATE.bar(TALL)}</text>
      <g transform=${`translate(${X} ${Y})`}>
        <g clip-path=${`url(#${clip})`}>${lines.map(([one, other]) => svg`<path class="turn" d=${`M${mm(one.x)} ${mm(one.y)}L${mm(other.x)} ${mm(other.y)}`}></path>`)}</g>
        <rect class="frame" x="0" y="0" width=${width} height=${height}></rect>
        ${marks.map((mark) => this.#mark(mark, strip))}${joins(strip)}
      </g>
      <path class="bar" data-bar=${WIDE} d=${`M${X} ${HEIGHT - 11}V${HEIGHT - 6}M${X} ${HEIGHT - 8.5}H${X + WIDE}M${X + WIDE} ${HEIGHT - 11}V${HEIGHT - 6}`}></path>
      <text class="small" x=${X + WIDE + 3} y=${HEIGHT - 7.4}>${TEMPLATE.bar(WIDE)}</text>
      <text class="small" x=${X} y=${HEIGHT - 1.5}>${TEMPLATE.page(place, count)}. ${strip.turned ? TEMPLATE.windDown : TEMPLATE.windRight}</text>`}
    </svg>`;
  }

  #mark({ mark, turn, x, y }: Mark, { width, height }: Strip): SVGTemplateResult {
    const words = markWords(mark, turn, this.way);
    const back = x > width / 2;
    const room = 1.9 * words.length + 2;
    const left = back ? x - 3 - room : x + 3;
    const base = Math.min(height - 1, Math.max(3.4, y + 1.2));
    const shape = mark === 'tap' ? `M${x} ${y - 1.8}L${x + 1.8} ${y}L${x} ${y + 1.8}L${x - 1.8} ${y}Z` : `M${x - 1.5} ${y}a1.5 1.5 0 1 0 3 0a1.5 1.5 0 1 0 -3 0`;
    return svg`<path class="hole" data-mark=${mark} d=${shape}></path><path class="turn" d=${`M${x - 2.6} ${y}H${x + 2.6}M${x} ${y - 2.6}V${y + 2.6}`}></path>
      <rect class="ground" x=${left} y=${base - 3.2} width=${room} height="4.2"></rect><text x=${left + 1} y=${base}>${words}</text>`;
  }
}

/** Letters at the edges where this strip meets the next. */
function joins(strip: Strip): SVGTemplateResult {
  const { width, height, column, row, columns, rows } = strip;
  const letter = (x: number, y: number, name: string): SVGTemplateResult => svg`<text x=${x} y=${y} text-anchor="middle">${name}</text>`;
  return svg`${row < rows ? letter(width / 2, height + 4, joinLetter(strip, true)) : nothing}
    ${row > 1 ? letter(width / 2, -1.4, joinLetter({ ...strip, row: row - 1 }, true)) : nothing}
    ${column < columns ? letter(width + 2.6, height / 2, joinLetter(strip, false)) : nothing}
    ${column > 1 ? letter(-2.2, height / 2, joinLetter({ ...strip, column: column - 1 }, false)) : nothing}`;
}

const mm = (figure: number): number => Math.round(figure * 1e4) / 1e4;

customElements.define('ts-template', TsTemplate);
