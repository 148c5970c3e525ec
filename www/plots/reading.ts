import type { Line } from './kinds.js';

/** Height of a line at a place, by straight lines between its points; NaN where it has none there. */
export function heightAt(line: Line, at: number, log: boolean): number {
  const { x, y } = line;
  let [low, high] = [0, x.length - 1];
  if (high < 0 || !(at >= (x[0] ?? Number.NaN)) || !(at <= (x[high] ?? Number.NaN))) return Number.NaN;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((x[middle] ?? 0) <= at) low = middle;
    else high = middle;
  }
  const [x0 = 0, x1 = 0, y0 = Number.NaN, y1 = Number.NaN] = [x[low], x[high], y[low], y[high]];
  if (x1 === x0) return y0;
  const share = log && x0 > 0 ? Math.log(at / x0) / Math.log(x1 / x0) : (at - x0) / (x1 - x0);
  if (share <= 0) return y0;
  return share >= 1 ? y1 : y0 + (y1 - y0) * share;
}

/** The highest and lowest point of a line between two places, and its ends there. */
export interface Extent {
  readonly first: { readonly x: number; readonly y: number };
  readonly last: { readonly x: number; readonly y: number };
  readonly most: { readonly x: number; readonly y: number };
  readonly least: { readonly x: number; readonly y: number };
}

/** What a sentence about a line can say of it; nothing where it has no figure. */
export function extent(line: Line, from: number, to: number): Extent | null {
  const points: { x: number; y: number }[] = [];
  line.x.forEach((x, index) => {
    const y = line.y[index] ?? Number.NaN;
    if (x >= from && x <= to && Number.isFinite(y)) points.push({ x, y });
  });
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return null;
  const most = points.reduce((best, point) => (point.y > best.y ? point : best), first);
  const least = points.reduce((best, point) => (point.y < best.y ? point : best), first);
  return { first, last, most, least };
}
