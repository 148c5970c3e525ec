import type { Box, Form, Point, Turn } from './kinds.js';

/** Two places closer than this are one. */
const SAME = 0.01;

/** A point of a symbol, turned and moved to where the symbol stands. */
export function placed(point: Point, at: Point, turn: Turn): Point {
  const { x, y } = point;
  const turned = turn === 90 ? { x: -y, y: x } : turn === 180 ? { x: -x, y: -y } : turn === 270 ? { x: y, y: -x } : point;
  return { x: at.x + turned.x, y: at.y + turned.y };
}

/** A symbol's box where it stands. */
export function boxOf(form: Form, at: Point, turn: Turn): Box {
  const { x, y, width, height } = form.box;
  const [one, other] = [placed({ x, y }, at, turn), placed({ x: x + width, y: y + height }, at, turn)];
  return {
    x: Math.min(one.x, other.x),
    y: Math.min(one.y, other.y),
    width: Math.abs(one.x - other.x),
    height: Math.abs(one.y - other.y),
  };
}

/** Whether two points are one place. */
export function same(one: Point, other: Point): boolean {
  return Math.abs(one.x - other.x) < SAME && Math.abs(one.y - other.y) < SAME;
}

/** Whether a point lies on the stretch from `a` to `b`, its ends included. */
export function on(point: Point, a: Point, b: Point): boolean {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length < SAME) return same(point, a);
  const across = Math.abs((b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x)) / length;
  const along = ((point.x - a.x) * (b.x - a.x) + (point.y - a.y) * (b.y - a.y)) / length;
  return across < SAME && along > -SAME && along < length + SAME;
}

/** The stretches of a line of several points. */
export function stretches(points: readonly Point[]): readonly (readonly [Point, Point])[] {
  return points.slice(1).map((point, index) => [points[index] ?? point, point] as const);
}

/** The smallest box round all of them. */
export function around(boxes: readonly Box[]): Box {
  const left = Math.min(...boxes.map(({ x }) => x));
  const top = Math.min(...boxes.map(({ y }) => y));
  const right = Math.max(...boxes.map(({ x, width }) => x + width));
  const bottom = Math.max(...boxes.map(({ y, height }) => y + height));
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/** Whether two boxes share more than an edge. */
export function overlap(one: Box, other: Box): boolean {
  return (
    one.x + SAME < other.x + other.width &&
    other.x + SAME < one.x + one.width &&
    one.y + SAME < other.y + other.height &&
    other.y + SAME < one.y + one.height
  );
}

/** A box by its edges. */
export function edges(left: number, top: number, right: number, bottom: number): Box {
  return { x: left, y: top, width: right - left, height: bottom - top };
}
