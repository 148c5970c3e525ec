import { list } from './plain.js';
import { show } from './quantity.js';
import { told, USUAL_WAY, type Way } from './way.js';

/** One step of the row under a danger: the word that stands there, and what it means. */
export interface DangerStep {
  readonly word: string;
  readonly more: string;
}

/** How long a wait is rounded up to: nobody waits 9.6 s. */
const WAITS = [2, 5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 300, 600];

/** What must be done before a hand goes in, in this order. `seconds` is the wait, null where nothing discharges it. */
export function dangerSteps(seconds: number | null, capacitors: readonly string[] = [], way: Way = USUAL_WAY): readonly DangerStep[] {
  const which = capacitors.length === 0 ? 'every capacitor' : list(capacitors);
  return [
    { word: 'Unplug', more: 'Pull the plug out of the wall. A switch is not enough.' },
    waiting(seconds, way),
    { word: 'Meter', more: `Read the volts across the leads of ${which}, one after the other. One low reading does not prove the next.` },
    { word: 'Discharge', more: `Bridge ${which} with the leads of a resistor, held where it is insulated; never with a screwdriver.` },
    { word: 'Touch', more: 'Only now, one hand away while you can.' },
  ];
}

function waiting(seconds: number | null, way: Way): DangerStep {
  if (seconds === null) return { word: 'Expect charge', more: 'No part here brings it down: waiting does not help.' };
  const wait = show(waited(seconds), 's', { digits: 6, way });
  return { word: `Wait ${wait}`, more: 'Longer than the parts drawn need, if none of them is open. A supply without a bleeder needs more.' };
}

/** A wait as it is told: rounded up to one that a person counts. */
export function waited(seconds: number): number {
  return WAITS.find((wait) => wait >= seconds) ?? Math.ceil(seconds / 600) * 600;
}

/** The safety line of a printed sheet. */
export function dangerLine(volts: number | null, seconds: number | null, capacitors: readonly string[] = [], way: Way = USUAL_WAY): string {
  const which = capacitors.length === 0 ? 'every capacitor' : list(capacitors);
  const them = capacitors.length === 1 ? 'it' : 'them';
  const wait = seconds === null ? 'Expect charge.' : `Wait ${show(waited(seconds), 's', { digits: 6, way })}.`;
  const start = `${show(volts, 'V', { way })}. Unplug. ${wait} Meter ${which}. `;
  return told(`${start}Discharge ${them} through a resistor lead. Then touch. Phone down before power goes on.`, way);
}

/** What stands under every danger, once a page. */
export const DANGER_LAW =
  'Phone down before power goes on. The rules of your country and licensed practice come before anything said here.';
/** What one low reading means. */
export const DANGER_PROOF = 'One low reading does not prove that the rest is discharged.';
