import { html, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import type { LugMark } from '../shared/icons.js';

const low = (inner: SVGTemplateResult): TemplateResult => html`<svg class="low" viewBox="0 0 80 32" width="80" height="32" preserveAspectRatio="xMidYMid meet" aria-hidden="true">${inner}</svg>`;
const side = (inner: SVGTemplateResult): TemplateResult => html`<svg class="side" viewBox="0 0 40 76" width="40" height="76" aria-hidden="true">${inner}</svg>`;

/** A lug: a tab with an eye on the board; solid where it is the open one. */
export function lugPicture(open: boolean): TemplateResult {
  const [tab, eye] = open ? ['var(--ink)', 'var(--paper)'] : ['var(--plate)', 'var(--paper)'];
  return html`${low(svg`<rect x="-1" y="12" width="82" height="12" class="board"></rect>
      <path d=${open ? 'M27 29V8q0-6 6-6h14q6 0 6 6v21z' : 'M27 21.5V8q0-6 6-6h14q6 0 6 6v13.5z'} fill=${tab} class="line"></path>
      <ellipse cx="40" cy="9.5" rx="5" ry="3.7" fill=${eye} class="line thin"></ellipse>`)}
    ${side(svg`<rect x="14" y="-1" width="16" height="78" class="board"></rect>
      <path d=${open ? 'M34 28V48H10q-6 0-6-6V34q0-6 6-6z' : 'M25 28V48H10q-6 0-6-6V34q0-6 6-6z'} fill=${tab} class="line"></path>
      <ellipse cx="11" cy="38" rx="3.7" ry="5" fill=${eye} class="line thin"></ellipse>`)}`;
}

/** The ear that the strip is screwed down by. */
export function ear(): TemplateResult {
  return html`${low(svg`<path d="M66 30.5H20a10 10 0 0 1 0-24H66z" class="board"></path><circle cx="24" cy="18.5" r="4.4" class="board"></circle><rect x="57" y="12" width="24" height="12" class="board"></rect>`)}
    ${side(svg`<rect x="14" y="50" width="16" height="30" class="board"></rect><path d="M34 26H16a10 10 0 0 0-2 20h0v8H34z" class="board"></path><circle cx="16" cy="36" r="4.4" class="board"></circle>`)}`;
}

/** The ear at the far end. */
export function lastEar(): TemplateResult {
  return html`${low(svg`<path d="M14 30.5H60a10 10 0 0 0 0-24H14z" class="board"></path><circle cx="56" cy="18.5" r="4.4" class="board"></circle><rect x="-1" y="12" width="24" height="12" class="board"></rect>`)}
    ${side(svg`<rect x="14" y="-4" width="16" height="14" class="board"></rect><path d="M34 34H16a10 10 0 0 1-2-20h0V6H34z" class="board"></path><circle cx="16" cy="24" r="4.4" class="board"></circle>`)}`;
}

/** What stands at a lug's foot: arrow against a bar, struck ring, broken ring. */
export function markPicture(mark: LugMark): TemplateResult {
  const inner = mark === 'limit'
    ? svg`<rect width="20" height="20" fill="var(--ink)"></rect><path d="M4 4.6H16M10 16.4V8M6.2 11.4 10 7.6 13.8 11.4" fill="none" stroke="var(--paper)" stroke-width="2"></path>`
    : mark === 'refused'
      ? svg`<circle cx="10" cy="10" r="8" fill="var(--plate)" stroke="var(--ink)" stroke-width="2.4"></circle><path d="M4.6 15.4 15.4 4.6" stroke="var(--ink)" stroke-width="2.4"></path>`
      : svg`<circle cx="10" cy="10" r="8" fill="var(--plate)" stroke="var(--ink)" stroke-width="2" stroke-dasharray="3.2 2.1"></circle>`;
  return html`<svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">${inner}</svg>`;
}
