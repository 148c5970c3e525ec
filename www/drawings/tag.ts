import type { Box, TagPlace } from './kinds.js';
import { fit, type Fitted, type Measure } from './measure.js';

/** An answer at a node: a figure and, for ripple or the like, a second line. */
export interface TagText {
  readonly text: string;
  readonly second?: string | undefined;
}

/** A luggage tag, set: its outline, and its lines with their places. */
export interface Tag {
  readonly outline: string;
  readonly box: Box;
  readonly lines: readonly { readonly x: number; readonly y: number; readonly text: Fitted; readonly first: boolean }[];
}

/** The point's length, half its width at the root, and the room round the text. */
const POINT = 9;
const ROOT = 7;
const PAD = 8;
const HEIGHT = 24;
const SECOND = 15;

/** The outline of a tag with its point on the node, and the text in it. */
export function tag(place: TagPlace, words: TagText, measure: Measure): Tag {
  const { tip, side } = place;
  const first = fit(words.text, 15, 700, place.room, measure);
  const second = words.second === undefined || words.second === '' ? null : fit(words.second, 12.5, 400, place.room + 6, measure);
  const width = Math.max(first.width, second?.width ?? 0) + 2 * PAD;
  const height = HEIGHT + (second === null ? 0 : SECOND);
  const { box, outline } = side === 'left' || side === 'right' ? lying(tip, side, width, height) : standing(tip, side, width, height);
  const middle = box.x + box.width / 2;
  const lines = [{ x: middle, y: box.y + 17.4, text: first, first: true }];
  if (second !== null) lines.push({ x: middle, y: box.y + 33, text: second, first: false });
  return { outline, box, lines };
}

function lying(tip: TagPlace['tip'], side: 'left' | 'right', width: number, height: number): { box: Box; outline: string } {
  const way = side === 'left' ? -1 : 1;
  const near = tip.x + POINT * way;
  const far = near + width * way;
  const [top, bottom] = [tip.y - height / 2, tip.y + height / 2];
  return {
    outline: `M${tip.x} ${tip.y}L${near} ${top}H${far}V${bottom}H${near}Z`,
    box: { x: Math.min(near, far), y: top, width, height },
  };
}

function standing(tip: TagPlace['tip'], side: 'above' | 'below', width: number, height: number): { box: Box; outline: string } {
  const way = side === 'above' ? -1 : 1;
  const near = tip.y + POINT * way;
  const far = near + height * way;
  // Kept inside its panel: the point stays on the node, the body moves.
  const left = Math.min(Math.max(tip.x - width / 2, 4), 316 - width);
  return {
    outline: `M${tip.x} ${tip.y}L${tip.x - ROOT} ${near}H${left}V${far}H${left + width}V${near}H${tip.x + ROOT}Z`,
    box: { x: left, y: Math.min(near, far), width, height },
  };
}
