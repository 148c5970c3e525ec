/**
 * Where the figures of an axis stand on the screen, and back. A general library of scales carries colours, dates and
 * formats along, a tenth of the page, for these two maps.
 */
export interface Place {
  (value: number): number;
  invert(at: number): number;
}

type Ends = readonly [number, number];

/** Even steps for even figures, or for even ratios. */
export function placeOf(log: boolean, domain: Ends, room: Ends): Place {
  const to = log ? Math.log : (value: number) => value;
  const [first, last] = [to(domain[0]), to(domain[1])];
  const place = (value: number): number => room[0] + ((to(value) - first) / (last - first)) * (room[1] - room[0]);
  const invert = (at: number): number => {
    const share = (at - room[0]) / (room[1] - room[0]);
    const value = first + share * (last - first);
    return log ? Math.exp(value) : value;
  };
  return Object.assign(place, { invert });
}

/** About `count` round figures between the ends: multiples of one, two or five times a power of ten. */
export function evens([from, to]: Ends, count: number): readonly number[] {
  const rough = (to - from) / Math.max(1, count);
  const power = Math.floor(Math.log10(rough));
  const share = rough / 10 ** power;
  // Geometric means of the neighbours: the step that comes nearest to the count.
  const step = share >= Math.sqrt(50) ? 10 : share >= Math.sqrt(10) ? 5 : share >= Math.SQRT2 ? 2 : 1;
  const found: number[] = [];
  const unit = Number(`${step}e${power}`);
  if (!(unit > 0) || !Number.isFinite(unit)) return found;
  for (let k = Math.ceil(from / unit - 1e-9); k <= to / unit + 1e-9; k += 1) found.push(Number(`${k * step}e${power}`));
  return found;
}
