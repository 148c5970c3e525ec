import { nothing, svg, type SVGTemplateResult } from 'lit';

import { DRAWN, roleWords } from '../words/part-words.js';
import { around } from './geometry.js';
import type { Box, Placed, Stroke } from './kinds.js';
import { lettering, type Line } from './lettering.js';
import { ring } from './render.js';
import { fieldsOf, noteOf, textOf, type State } from './state.js';

/** A part with its label: one button where it has a field, one picture where it has none. */
export function drawPart(part: Placed, state: State): SVGTemplateResult {
  const text = textOf(part, state);
  const refused = isRefused(part, state);
  const open = isOpen(part, state);
  const lines = lettering(part.label, part.written, text, noteOf(part, state), state.measure);
  const name = spoken(part, text, state);
  const shape = svg`${open || refused ? marks(around(part.touch), refused) : nothing}
    ${symbol(part)}
    ${lines.map((line) => lettered(line, refused, part.field !== ''))}`;
  if (part.field === '') return svg`<g class="part" role="img" aria-label=${name} data-part=${part.reference}>${shape}</g>`;
  const touch = () => { state.touch(part); };
  const key = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    touch();
  };
  const bounds = around(part.touch);
  return svg`<g class=${refused ? 'part button refused' : 'part button'} role="button" tabindex="0" aria-label=${name}
    aria-expanded=${open ? 'true' : 'false'} data-part=${part.reference} data-field=${part.field} @click=${touch} @keydown=${key}>
    ${shape}
    <path class="hit" data-touch=${part.reference} d=${part.touch.map(outline).join('')}></path>
    <rect class="focus" x=${bounds.x + 1} y=${bounds.y + 1} width=${bounds.width - 2} height=${bounds.height - 2}></rect>
  </g>`;
}

/** The wash or hatching behind a part whose field is open or refused: under the wires. */
export function drawBacking(part: Placed, state: State): SVGTemplateResult | typeof nothing {
  const [open, refused] = [isOpen(part, state), isRefused(part, state)];
  if (!open && !refused) return nothing;
  const { x, y, width, height } = around(part.touch);
  return svg`<rect class=${refused ? 'hatched' : 'opened'} x=${x + 3} y=${y + 3} width=${width - 6} height=${height - 6}></rect>`;
}

function isOpen(part: Placed, state: State): boolean {
  return part.field !== '' && state.open !== null && fieldsOf(part).includes(state.open);
}

function isRefused(part: Placed, state: State): boolean {
  return fieldsOf(part).some((field) => state.refused.has(field));
}

/** The name aloud begins with what is seen, so that a person who speaks to the page can say it: "R3 220k, plate resistor". */
function spoken(part: Placed, text: string, state: State): string {
  const label = state.labels.get(part.reference) ?? roleWords(part.role);
  const seen = [part.written, text, noteOf(part, state)].filter((each) => each !== '').join(' ');
  const named = [seen, ...(label === part.written ? [] : [label]), ...(isRefused(part, state) ? [DRAWN.notRead] : [])];
  return [...named, ...(part.field === '' ? [] : [DRAWN.opens])].filter((each) => each !== '').join(', ');
}

function symbol(part: Placed): SVGTemplateResult {
  const { at, turn, form } = part;
  const transform = `translate(${at.x} ${at.y})${turn === 0 ? '' : ` rotate(${turn})`}`;
  const rail = form.strokes.length === 0 && part.kind === 'source';
  return svg`<g transform=${transform} data-symbol=${part.reference}>
      ${rail ? ring({ x: 0, y: 0 }, typeof part.value === 'number' && Math.abs(part.value) > 60) : form.strokes.map(stroke)}
    </g>`;
}

/** A tube's pins and what is printed on a body: seen, but no part of what a button is called. */
export function drawMarks({ at, form }: Placed): readonly SVGTemplateResult[] {
  return (form.marks ?? []).map(({ at: place, text, align, printed }) => (printed === true
    ? svg`<text class="printed" x=${at.x + place.x} y=${at.y + place.y} text-anchor=${align}>${text}</text>`
    : svg`<text class="pin" x=${at.x + place.x} y=${at.y + place.y} text-anchor=${align} data-label>${text}</text>`));
}

function stroke({ d, weight, dash, fill }: Stroke): SVGTemplateResult {
  if (fill !== undefined) return svg`<path class=${`stroke ${weight} fill-${fill}`} d=${d}></path>`;
  return dash === undefined
    ? svg`<path class=${`stroke ${weight}`} d=${d}></path>`
    : svg`<path class=${`stroke ${weight}`} d=${d} stroke-dasharray=${dash}></path>`;
}

function lettered(line: Line, refused: boolean, touchable: boolean): SVGTemplateResult {
  const { x, y, size, text, width, narrowed, look, box } = line;
  const length = narrowed ? width : nothing;
  if (look !== 'value' || !touchable) {
    const shown = look === 'value' ? 'plain' : look;
    return svg`<text class=${shown} x=${x} y=${y} font-size=${size} textLength=${length} lengthAdjust="spacingAndGlyphs" data-label>${text}</text>`;
  }
  return svg`<rect class=${refused ? 'frame' : 'wash'} x=${box.x} y=${box.y} width=${box.width} height=${box.height} rx="3" data-label></rect>
    <text class=${refused ? 'value unread' : 'value'} x=${x} y=${y} font-size=${size} textLength=${length} lengthAdjust="spacingAndGlyphs">${text}</text>
    <path class=${refused ? 'dotted' : 'underline'} d=${`M${x} ${y + 3}H${x + width}`}></path>`;
}

/** Four register marks at the corners. */
function marks({ x, y, width, height }: Box, refused: boolean): SVGTemplateResult {
  const [right, bottom, arm] = [x + width, y + height, Math.min(12, width / 4)];
  const d = `M${x} ${y + arm}V${y}H${x + arm}M${right - arm} ${y}H${right}V${y + arm}` +
    `M${right} ${bottom - arm}V${bottom}H${right - arm}M${x + arm} ${bottom}H${x}V${bottom - arm}`;
  return svg`<path class=${refused ? 'register unread' : 'register'} d=${d}></path>`;
}

function outline({ x, y, width, height }: Box): string {
  return `M${x} ${y}h${width}v${height}h${-width}Z`;
}
