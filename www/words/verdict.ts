import { list } from './plain.js';
import { show } from './quantity.js';
import { told, USUAL_WAY, type Way } from './way.js';

/** What a reading is held against: a test point's figures. */
export interface Expected {
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly usual_least: number;
  readonly usual_most: number;
}

/** How a reading stands to what the parts allow. */
export type Standing = 'usual' | 'possible' | 'low' | 'high';

/** What the meter itself may be off by: a share of the reading, and the last figures of its display. Common practice, no source. */
const METER = 0.01;
const DISPLAY = 0.02;

/** How a reading stands; the meter's own error is granted to it. */
export function standing(point: Expected, value: number): Standing {
  const slack = METER * Math.abs(value) + DISPLAY;
  if (value < point.least - slack) return 'low';
  if (value > point.most + slack) return 'high';
  return value >= point.usual_least - slack && value <= point.usual_most + slack ? 'usual' : 'possible';
}

/** Whether a reading is right, and what to do next. */
export interface Verdict {
  readonly said: string;
  readonly next: string;
}

/** What is to be said of a reading; `parts` are those that join at the point. */
export function verdictWords(point: Expected, value: number, parts: readonly string[], way: Way = USUAL_WAY): Verdict {
  const volts = (each: number): string => show(each, point.unit, { way });
  const stands = standing(point, value);
  if (stands === 'usual') return { said: `${volts(value)} is right: nine in ten such builds read so.`, next: '' };
  if (stands === 'possible') {
    return { said: `${volts(value)} is far from the middle, and still within what the parts’ marks and the mains allow.`, next: told('Read B+ too, then go on.', way) };
  }
  const off = stands === 'high'
    ? `${volts(value - point.most)} over the most that these parts allow`
    : `${volts(point.least - value)} under the least that these parts allow`;
  const look = parts.length === 0 ? 'look at what feeds this point' : `look at ${list(parts)}, which ${parts.length === 1 ? 'joins' : 'join'} here, at their values and their joints`;
  return {
    said: `${volts(value)} is wrong: ${off}.`,
    next: told(`Read B+ and the points before this one first. If those are right: unplug, wait, meter each capacitor, discharge, then ${look}.`, way),
  };
}
