import { figure, text } from '../words/plain.js';
import type { Figures, Value } from '../words/kinds.js';

/** What a page takes of the template, in millimetres: less than A4 and Letter have between the margins. */
const PAGE = { width: 160, height: 216 } as const;

/** A place on the template, in millimetres of the page. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A hole or a tap. */
export interface Mark extends Spot {
  readonly mark: string;
  readonly turn: number;
}

/** One strip: the part of the template that one page takes. */
export interface Strip {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly (readonly [Spot, Spot])[];
  readonly marks: readonly Mark[];
  /** From 1, along the page's width and its height, and of how many. */
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
  /** The winding runs along the page's width. */
  readonly turned: boolean;
}

/** Turns drawn singly at most: beyond them the lines would run together. */
const MOST_LINES = 1200;

/** The template of a coil as strips that fit the paper: millimetres at true size. */
export function strips(template: Value | undefined): readonly Strip[] {
  const [around, length, pitch, turns] = ['around', 'length', 'pitch', 'turns'].map((key) => figure(template, key));
  if (!around || !length || !pitch || !turns || turns > MOST_LINES) return [];
  const points = pointsOf(template);
  const first = Math.min(0, ...points.map(({ along }) => along));
  const last = Math.max(length, ...points.map(({ along }) => along));
  // Some room beside both ends, for the holes.
  const [from, to] = [1e3 * first - 4, 1e3 * last + 4];
  const [across, tall] = [1e3 * around, to - from];
  const pages = (w: number, h: number): number => Math.ceil(w / PAGE.width) * Math.ceil(h / PAGE.height);
  const turned = pages(tall, across) < pages(across, tall);
  const [w, h] = turned ? [tall, across] : [across, tall];
  const place = (along: number, round: number): Spot => {
    const [a, r] = [1e3 * along - from, 1e3 * round];
    return turned ? { x: a, y: r } : { x: r, y: a };
  };
  const lines = linesOf(turns, pitch, around, place);
  const marks = points.map(({ mark, turn, along, round }) => ({ mark, turn, ...place(along, round) }));
  const [columns, rows] = [Math.ceil(w / PAGE.width), Math.ceil(h / PAGE.height)];
  return Array.from({ length: columns * rows }, (_, k): Strip => {
    const [column, row] = [k % columns, Math.floor(k / columns)];
    const corner = { x: column * PAGE.width, y: row * PAGE.height };
    const [width, height] = [Math.min(PAGE.width, w - corner.x), Math.min(PAGE.height, h - corner.y)];
    const moved = ({ x, y }: Spot): Spot => ({ x: x - corner.x, y: y - corner.y });
    const inside = ({ x, y }: Spot): boolean => x >= -1e-6 && y >= -1e-6 && x <= width + 1e-6 && y <= height + 1e-6;
    const touching = ([one, other]: readonly [Spot, Spot]): boolean =>
      Math.max(one.x, other.x) >= 0 && Math.min(one.x, other.x) <= width && Math.max(one.y, other.y) >= 0 && Math.min(one.y, other.y) <= height;
    return {
      width, height, column: column + 1, row: row + 1, columns, rows, turned,
      lines: lines.map(([one, other]): readonly [Spot, Spot] => [moved(one), moved(other)]).filter(touching),
      marks: marks.map((mark) => ({ ...mark, ...moved(mark) })).filter(inside),
    };
  });
}

/** Each turn once around the form, from seam to seam; the last as far as it goes. */
function linesOf(turns: number, pitch: number, around: number, place: (along: number, round: number) => Spot): readonly (readonly [Spot, Spot])[] {
  return Array.from({ length: Math.ceil(turns - 1e-9) }, (_, k) => {
    const end = Math.min(turns, k + 1);
    return [place(k * pitch, 0), place(end * pitch, (end - k) * around)] as const;
  });
}

interface Point {
  readonly mark: string;
  readonly turn: number;
  readonly along: number;
  readonly round: number;
}

function pointsOf(template: Value | undefined): readonly Point[] {
  const points = (template as Figures | undefined)?.['points'];
  if (!Array.isArray(points)) return [];
  return (points as readonly Value[]).map((point) => ({
    mark: text(point, 'mark'), turn: figure(point, 'turn') ?? 0, along: figure(point, 'along') ?? 0, round: figure(point, 'around') ?? 0,
  }));
}

/** "A", "B" …: the letter at the edge where two strips meet. */
export function joinLetter(strip: Strip, down: boolean): string {
  const index = down ? (strip.row - 1) * strip.columns + strip.column : strip.rows * strip.columns + (strip.row - 1) * (strip.columns - 1) + strip.column;
  return String.fromCharCode(64 + (((index - 1) % 26) + 1));
}

