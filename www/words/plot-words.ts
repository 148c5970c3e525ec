import { show } from './quantity.js';
import type { Way } from './way.js';

/** A place on a line. */
interface Place {
  readonly x: number;
  readonly y: number;
}

/** One line of a picture in a sentence: its ends, and its highest place where that is neither. */
export function lineSummary(
  name: string,
  first: Place,
  last: Place,
  most: Place,
  units: { readonly x: string; readonly y: string },
  way?: Way,
): string {
  const at = ({ x, y }: Place): string => `${show(y, units.y, { way })} at ${show(x, units.x, { way })}`;
  const ends = `${name}: from ${at(first)} to ${at(last)}`;
  return most.x === first.x || most.x === last.x ? `${ends}.` : `${ends}, most ${at(most)}.`;
}

/** What stands for a picture with nothing to show. */
export const NOTHING_TO_SHOW = 'There is nothing to show for these values.';

/** Before a figure of the pinned state. */
export const PINNED = 'pinned';
