/** A rectangle on the screen. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A line as it lies on the screen. */
export type Track = readonly { readonly x: number; readonly y: number }[];

/** Where a label's text begins, and its box. */
export interface LabelPlace {
  readonly x: number;
  readonly y: number;
  readonly box: Rect;
}

const HEIGHT = 15;
const LIFT = 7;
const CLEAR = 3;
const APART = 12;
/** Steps along a line at which a label is tried. */
const TRIES = 28;
/** Points of a line that are looked at: a name is many times wider than the way between them. */
const POINTS = 80;

/**
 * Places for labels on their lines, one after another: beside its own line, off the others, off the labels before it,
 * towards the left as in a book. Where nothing is free, the place that covers least.
 */
export function placeLabels(whole: readonly Track[], widths: readonly number[], area: Rect, taken: readonly Rect[]): readonly (LabelPlace | null)[] {
  const used = [...taken];
  const tracks = whole.map(thinned);
  const weights = whole.map((track, index) => track.length / Math.max(tracks[index]?.length ?? 1, 1));
  return tracks.map((track, index) => {
    const width = widths[index] ?? 0;
    if (track.length === 0 || width === 0) return null;
    let best: LabelPlace | null = null;
    let least = Number.POSITIVE_INFINITY;
    for (const place of candidates(track, width, area)) {
      // On another name it would be read as neither: then the reading and the table have to name the line.
      if (used.some((other) => meet(place.box, other))) continue;
      const cost = price(place.box, tracks, weights, index, used) + (0.4 * (place.x - area.x)) / area.width + (place.far ? 0.9 : 0);
      if (cost < least) [best, least] = [place, cost];
    }
    if (best !== null) used.push(best.box);
    return best;
  });
}

function thinned(track: Track): Track {
  const stride = Math.ceil(track.length / POINTS);
  return stride === 1 ? track : track.filter((_, k) => k % stride === 0 || k === track.length - 1);
}

function* candidates(track: Track, width: number, area: Rect): Generator<LabelPlace & { readonly far: boolean }> {
  for (let step = 0; step < TRIES; step += 1) {
    const x = area.x + 8 + ((area.width - width - 12) * step) / (TRIES - 1);
    const under = track.filter((point) => point.x >= x - 2 && point.x <= x + width + 2);
    if (under.length === 0) continue;
    const top = Math.min(...under.map(({ y }) => y));
    const bottom = Math.max(...under.map(({ y }) => y));
    for (const [y, far] of [
      [top - LIFT, false], [bottom + LIFT + HEIGHT - 4, false], [top - LIFT - HEIGHT, true], [bottom + LIFT + 2 * HEIGHT - 4, true],
    ] as const) {
      const box = { x, y: y - HEIGHT + 3, width, height: HEIGHT };
      if (box.y >= area.y && box.y + box.height <= area.y + area.height) yield { x, y, box, far };
    }
  }
}

function price(box: Rect, tracks: readonly Track[], weights: readonly number[], own: number, used: readonly Rect[]): number {
  let cost = nearest(box, tracks, own);
  const wide = { x: box.x - CLEAR, y: box.y - CLEAR, width: box.width + 2 * CLEAR, height: box.height + 2 * CLEAR };
  tracks.forEach((track, index) => {
    const inside = track.filter(({ x, y }) => x >= wide.x && x <= wide.x + wide.width && y >= wide.y && y <= wide.y + wide.height).length;
    cost += inside * (weights[index] ?? 1) * (index === own ? 0.4 : 0.6);
  });
  for (const other of used) {
    // Names in a row would read as one: more is kept free beside them than over them.
    const across = Math.min(wide.x + wide.width, other.x + other.width) - Math.max(wide.x, other.x) + APART;
    const down = Math.min(wide.y + wide.height, other.y + other.height) - Math.max(wide.y, other.y);
    if (across > 0 && down > 0) cost += 4 + across * 0.1;
  }
  return cost;
}

function meet(one: Rect, other: Rect): boolean {
  return one.x < other.x + other.width && other.x < one.x + one.width && one.y + 2 < other.y + other.height && other.y + 2 < one.y + one.height;
}

/** A name that stands nearer to another line than to its own would be read as that line's. */
function nearest(box: Rect, tracks: readonly Track[], own: number): number {
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const distance = (track: Track) => track.reduce((least, point) => Math.min(least, Math.abs(point.x - x) > box.width / 2 ? Infinity : Math.abs(point.y - y)), Infinity);
  const mine = distance(tracks[own] ?? []);
  return tracks.some((track, index) => index !== own && distance(track) < mine - 0.5) ? 3 : 0;
}

/** Labels at the ends of a family of lines: to the right of those that end there, over those that leave at the top. */
export function placeEnds(tracks: readonly Track[], widths: readonly number[], area: Rect): readonly (LabelPlace | null)[] {
  const used: Rect[] = [];
  const order = tracks.map((track, index) => ({ index, end: visibleEnd(track, area) }))
    .sort((one, other) => (one.end?.y ?? 0) - (other.end?.y ?? 0) || (one.end?.x ?? 0) - (other.end?.x ?? 0));
  const places: (LabelPlace | null)[] = tracks.map(() => null);
  for (const { index, end } of order) {
    const width = widths[index] ?? 0;
    if (end === null || width === 0) continue;
    const inside = end.x < area.x + area.width - 12;
    const x = inside ? end.x - width / 2 : end.x + 5;
    const y = inside ? end.y - 6 : end.y + 5;
    const box = { x, y: y - HEIGHT + 3, width, height: HEIGHT };
    const meets = used.some((other) => box.x < other.x + other.width + 4 && other.x < box.x + box.width + 4 && box.y < other.y + other.height && other.y < box.y + box.height);
    if (meets) continue;
    used.push(box);
    places[index] = { x, y, box };
  }
  return places;
}

function visibleEnd(track: Track, area: Rect): { x: number; y: number } | null {
  let last: { x: number; y: number } | null = null;
  for (const point of track) {
    if (point.x > area.x + area.width + 0.5) break;
    if (point.y < area.y) {
      if (last === null || point.y === last.y) break;
      const share = (area.y - last.y) / (point.y - last.y);
      return { x: last.x + (point.x - last.x) * share, y: area.y };
    }
    last = point;
  }
  return last;
}
