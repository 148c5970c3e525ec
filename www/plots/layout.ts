import { codeOf, type Band, type Curve, type Duty, type Line } from './kinds.js';
import { placeEnds, placeLabels, type LabelPlace, type Rect, type Track } from './label-places.js';
import { across, up, type Scale } from './scales.js';

/** A line ready to be drawn. */
export interface Drawn {
  readonly line: Line;
  readonly duty: Duty;
  /** Its place among the lines that are not switched in: 1 is dashed long, 2 dotted; 0 for all else. */
  readonly dash: 0 | 1 | 2;
  readonly d: string;
  /** The forbidden ground beyond a limit. */
  readonly ground: string;
  readonly label: LabelPlace | null;
}

/** A picture laid out to a width. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly area: Rect;
  readonly x: Scale;
  readonly y: Scale;
  readonly lines: readonly Drawn[];
  readonly ghosts: readonly { readonly d: string; readonly label: LabelPlace | null; readonly name: string }[];
  readonly bands: readonly Rect[];
  readonly marks: readonly { readonly x: number; readonly y: number; readonly label: string; readonly place: LabelPlace | null }[];
}

/** What a picture is laid out from. */
export interface Wish {
  readonly curve: Curve;
  readonly ghosts: readonly Curve[];
  readonly bands: readonly Band[];
  readonly span: Band | null;
  readonly current: string | null;
  readonly width: number;
  readonly measure: (text: string, size: number, weight: 400 | 700) => number;
  /** What a ghost is called. */
  readonly pinned: string;
}

/** Room over the axes, and under them for ticks, unit and the cursor's handle. */
const TOP = 6;
const FOOT = 58;
const AXIS = 14;
const LABEL = 14;
/** Lines of these codes are what a part forbids; of these, one of many alike. */
const LIMITS = new Set(['plate_watts', 'limit']);
const FAMILIES = new Set(['grid']);
const LIVE = new Set(['signal_load']);

/** Everything of a picture in its place. */
export function layout(wish: Wish): Layout {
  const { curve, width, measure } = wish;
  const family = curve.lines.some((line) => FAMILIES.has(codeOf(line)));
  const seen = [...curve.lines, ...wish.ghosts.flatMap(({ lines }) => lines)].filter((line) => !LIMITS.has(codeOf(line)));
  const tall = family ? Math.round(Math.min(340, Math.max(248, width * 0.5))) : Math.round(Math.min(300, Math.max(164, width * 0.42)));
  const top = TOP + (family ? 14 : 0);
  // The ticks' widths decide where the axis stands, and hardly depend on it: once is enough.
  const rough = across(curve, wish.span, [40, width]);
  const y = up(curve, seen, rough.domain, [top + tall, top]);
  const left = Math.ceil(Math.max(18, ...y.ticks.map(({ text }) => measure(text, AXIS, 400))) + 8);
  const right = family ? Math.ceil(Math.max(...curve.lines.filter((line) => FAMILIES.has(codeOf(line))).map(({ label }) => measure(label, LABEL, 700)))) + 8 : 8;
  const area = { x: left, y: top, width: Math.max(40, width - left - right), height: tall };
  const x = across(curve, wish.span, [left, left + area.width]);
  const tracks = curve.lines.map((line) => track(line, x, y));
  const duties = curve.lines.map((line) => duty(line, wish.current, curve.lines.length));
  const unit = { x: area.x, y: area.y, width: measure(y.unit, AXIS, 400) + 12, height: 18 };
  const labels = named(wish, tracks, duties, { area, x, y, unit });
  const others = curve.lines.filter((_, index) => duties[index] === 'other');
  const lines = curve.lines.map((line, index): Drawn => {
    const points = tracks[index] ?? [];
    const what = duties[index] ?? 'other';
    const place = others.indexOf(line);
    return {
      line, duty: what, dash: what !== 'other' ? 0 : place === 0 ? 1 : 2,
      d: path(line, x, y), ground: what === 'limit' ? beyond(points, area) : '', label: labels.lines[index] ?? null,
    };
  });
  const inBand = (band: Band): Rect => {
    const [from, to] = band.map((each) => Math.min(Math.max(x.place(each), left), left + area.width));
    return { x: from ?? left, y: area.y, width: Math.max(0, (to ?? left) - (from ?? left)), height: area.height };
  };
  return {
    width, height: top + tall + FOOT, area, x, y, lines,
    ghosts: wish.ghosts.flatMap(({ lines: old }) => old.filter((line) => !LIMITS.has(codeOf(line))).map((line, index) => (
      { d: path(line, x, y), label: labels.ghosts[index] ?? null, name: wish.pinned }))),
    bands: wish.bands.map(inBand),
    marks: curve.marks.filter((mark) => Number.isFinite(mark.x) && Number.isFinite(mark.y)).map((mark, index) => (
      { x: x.place(mark.x), y: y.place(mark.y), label: mark.label, place: labels.marks[index] ?? null })),
  };
}

function duty(line: Line, current: string | null, count: number): Duty {
  const code = codeOf(line);
  if (LIMITS.has(code)) return 'limit';
  if (FAMILIES.has(code)) return 'family';
  if (LIVE.has(code) || line.label === current || (current === null && count === 1)) return 'current';
  return 'other';
}

/** Points of a line on the screen, with more between them where they lie far apart. */
function track(line: Line, x: Scale, y: Scale): Track {
  const points: { x: number; y: number }[] = [];
  line.x.forEach((value, index) => {
    const point = { x: x.place(value), y: y.place(line.y[index] ?? Number.NaN) };
    if (!Number.isFinite(point.x) || !Number.isFinite(point.y)) return;
    const last = points.at(-1);
    const gaps = last === undefined ? 0 : Math.min(200, Math.floor(Math.hypot(point.x - last.x, point.y - last.y) / 4));
    for (let step = 1; step < gaps && last !== undefined; step += 1) {
      points.push({ x: last.x + ((point.x - last.x) * step) / gaps, y: last.y + ((point.y - last.y) * step) / gaps });
    }
    points.push(point);
  });
  return points;
}

/** The line as strokes from point to point, broken where it has no place. */
function path(line: Line, x: Scale, y: Scale): string {
  const round = (value: number) => Math.round(value * 100) / 100;
  let drawn = '';
  let down = false;
  line.x.forEach((value, index) => {
    const [left, top] = [x.place(value), y.place(line.y[index] ?? Number.NaN)];
    const here = Number.isFinite(left) && Number.isFinite(top);
    if (here) drawn += `${down ? 'L' : 'M'}${round(left)},${round(top)}`;
    down = here;
  });
  return drawn;
}

/** All from the points up to the top of the picture. */
function beyond(points: Track, area: Rect): string {
  const back = [...points].reverse().map(({ x }) => `${x},${area.y}`);
  const there = points.map(({ x, y }) => `${x},${y}`);
  return points.length === 0 ? '' : `M${[...there, ...back].join('L')}Z`;
}

function named(wish: Wish, tracks: readonly Track[], duties: readonly Duty[], frame: { readonly area: Rect; readonly x: Scale; readonly y: Scale; readonly unit: Rect }) {
  const { area, x, y, unit } = frame;
  const { lines, marks } = wish.curve;
  const width = (text: string, weight: 400 | 700 = 700) => (text === '' ? 0 : Math.min(wish.measure(text, LABEL, weight), area.width - 16));
  const ends = placeEnds(tracks, lines.map((line, index) => (duties[index] === 'family' ? width(line.label) : 0)), area);
  const taken = [unit, ...ends.flatMap((place) => (place === null ? [] : [place.box]))];
  const ghosts = wish.ghosts.flatMap((ghost) => ghost.lines.filter((line) => !LIMITS.has(codeOf(line))));
  const dots = marks.map((mark): Track => {
    const [left, top] = [x.place(mark.x), y.place(mark.y)];
    return Array.from({ length: 5 }, (_, step) => ({ x: left - 4 + 2 * step, y: top }));
  });
  const family = duties.includes('family');
  const free = placeLabels([...tracks, ...dots, ...ghosts.map((line) => track(line, x, y))], [
    ...lines.map((line, index) => (duties[index] === 'family' ? 0 : width(line.label))),
    ...marks.map(({ label }) => width(label)),
    ...ghosts.map((_, index) => (index === 0 && !family ? width(wish.pinned, 400) : 0)),
  ], area, taken);
  return {
    lines: ends.map((place, index) => place ?? free[index] ?? null),
    marks: free.slice(tracks.length, tracks.length + dots.length),
    ghosts: free.slice(tracks.length + dots.length),
  };
}
