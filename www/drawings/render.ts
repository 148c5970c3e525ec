import { nothing, svg, type SVGTemplateResult } from 'lit';

import { nodeWords } from '../words/node-words.js';
import type { Arrangement, Spot } from './arrange.js';
import { junctions } from './junctions.js';
import type { Panel, Point } from './kinds.js';
import { drawBacking, drawMarks, drawPart } from './part.js';
import type { State } from './state.js';
import { SWATCHES } from './swatches.js';
import { BOLT, GROUND_STROKES } from './symbols.js';
import { tag } from './tag.js';

/** The whole drawing as SVG content: panels in their places and the letters between them. */
export function render(arrangement: Arrangement, state: State): SVGTemplateResult {
  return svg`${HATCH}${SWATCHES}${arrangement.spots.map((spot) => drawSpot(spot, state))}
    ${arrangement.letters.map(({ letter, x, y, align }) => svg`<text class="join" x=${x} y=${y} text-anchor=${align}>${letter}</text>`)}`;
}

/** Hatching at 45 degrees, for what is refused. */
export const HATCH = svg`<defs><pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
  <path class="hatching" d="M0 -1V8"></path></pattern></defs>`;

function drawSpot({ panel, x, y }: Spot, state: State): SVGTemplateResult {
  return svg`<g transform="translate(${x} ${y})">
    ${panel.parts.map((part) => drawBacking(part, state))}
    ${wires(panel, state)}
    ${panel.grounds.map(({ x: left, y: top }) => svg`<path class="ground" transform="translate(${left} ${top})" d=${GROUND_STROKES}></path>`)}
    ${panel.rings.map(({ node, at }) => ring(at, state.live.has(node)))}
    ${tags(panel, state)}
    ${panel.notes.map(({ at, text, align }) => svg`<text class="word" x=${at.x} y=${at.y} text-anchor=${align} data-label>${text}</text>`)}
    ${panel.bolt === null || state.dangerName === '' ? nothing : bolt(panel.bolt, state)}
    ${panel.parts.map((part) => drawPart(part, state))}
    <g pointer-events="none">${panel.parts.map(drawMarks)}</g>
  </g>`;
}

function wires(panel: Panel, state: State): SVGTemplateResult[] {
  // One path a node: where its lines meet, the ink is laid on once.
  const lines = new Map<string, string>();
  for (const { node, points } of panel.wires) lines.set(node, (lines.get(node) ?? '') + line(points));
  const hot = (node: string): number => (state.live.has(node) ? 1 : 0);
  const drawn = [...lines].sort(([one], [other]) => hot(one) - hot(other)).map(([node, d]) =>
    svg`<path class=${state.live.has(node) ? 'wire live' : 'wire'} data-wire=${node} d=${d}></path>`);
  const dots = junctions(panel).map(({ node, at }) => {
    const live = state.live.has(node);
    return svg`<circle class=${live ? 'dot live' : 'dot'} cx=${at.x} cy=${at.y} r=${live ? 3.8 : 3}></circle>`;
  });
  return [...drawn, ...dots];
}

function line(points: readonly Point[]): string {
  return points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}

/** The end of a wire: an open ring. */
export function ring(at: Point, live: boolean): SVGTemplateResult {
  return svg`<circle class=${live ? 'end live' : 'end'} cx=${at.x} cy=${at.y} r="4.8"></circle>`;
}

function tags(panel: Panel, state: State): SVGTemplateResult[] {
  return panel.tags.flatMap((place) => {
    const words = state.tags.get(place.node);
    if (words === undefined) return [];
    const { outline, lines } = tag(place, words, state.measure);
    const name = `${nodeWords(place.node)}, ${words.text}${words.second === undefined ? '' : `, ${words.second}`}`;
    return [svg`<g class=${state.stale ? 'tag stale' : 'tag'} role="img" aria-label=${name} data-tag=${place.node} @click=${() => { state.probe(place.node); }}>
      ${place.leader === undefined ? nothing : svg`<path class="leader" d=${`M${place.leader.x} ${place.leader.y}L${place.tip.x} ${place.tip.y}`}></path>`}
      <path class="outline" d=${outline}></path>
      ${lines.map(({ x, y, text, first }) => svg`<text class=${first ? 'answer' : 'second'} x=${x} y=${y}
        text-anchor="middle" font-size=${text.size} textLength=${text.narrowed ? text.width : nothing} lengthAdjust="spacingAndGlyphs">${text.text}</text>`)}
    </g>`];
  });
}

function bolt(at: Point, state: State): SVGTemplateResult {
  const key = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    state.danger();
  };
  return svg`<g class="button bolt" role="button" tabindex="0" aria-label=${state.dangerName} data-touch="danger"
    @click=${state.danger} @keydown=${key} transform="translate(${at.x} ${at.y})">
    <path class="triangle" d=${BOLT.ground}></path><path class="flash" d=${BOLT.bolt}></path>
    <path class="hit" d="M-22 -24H22V20H-22Z"></path>
    <rect class="focus" x="-15" y="-23" width="30" height="27"></rect>
  </g>`;
}
