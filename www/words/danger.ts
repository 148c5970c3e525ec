import type { Figures } from './kinds.js';
import { figure, list, texts } from './plain.js';
import { show } from './quantity.js';
import { told, USUAL_WAY, type Way } from './way.js';

/** One step of the row under a danger: the word that stands there, and what it means. */
export interface DangerStep {
  readonly word: string;
  readonly more: string;
}

/** How long a wait is rounded up to: nobody waits 9.6 s. */
const WAITS = [2, 5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 300, 600];

/** What a danger asks for: stored charge, the same with a transmitter's key before it, or no hand at all. */
export type Hazard = 'charge' | 'radio' | 'none';

/** How long to wait: until the parts drawn have emptied all, at least so long, or in vain. */
export interface Wait {
  readonly kind: 'until' | 'least' | 'vain';
  readonly seconds: number;
}

/** The wait to ask for where no supply is known. Common practice, no source. */
const LEAST = 60;

/** The wait that a caution's figures tell: only a supply's own can be the whole of it. */
export function waitOf(figures: Figures | undefined): Wait {
  const own = figures?.['wait_seconds'];
  if (own === null) return { kind: 'vain', seconds: 0 };
  if (typeof own === 'number' && Number.isFinite(own)) return { kind: 'until', seconds: own };
  return { kind: 'least', seconds: figure(figures, 'least_wait_seconds') ?? LEAST };
}

/** What must be done before a hand goes in, in this order. */
export function dangerSteps(figures: Figures | undefined, hazard: Hazard = 'charge', way: Way = USUAL_WAY): readonly DangerStep[] {
  if (hazard === 'none') return [];
  const which = charged(figures);
  return [
    ...(hazard === 'radio' ? [{ word: 'Key off', more: 'Stop transmitting: RF burns at a touch, with the plug still in or not.' }] : []),
    { word: 'Unplug', more: 'Pull the plug out of the wall. A switch is not enough.' },
    waiting(waitOf(figures), way),
    { word: 'Meter', more: `Read the volts across the leads of ${which}, one after the other. One low reading does not prove the next.` },
    { word: 'Discharge', more: `Bridge ${which} with the leads of a resistor, held where it is insulated; never with a screwdriver.` },
    { word: 'Touch', more: 'Only now, one hand away while you can.' },
  ];
}

function waiting({ kind, seconds }: Wait, way: Way): DangerStep {
  if (kind === 'vain') return { word: 'Expect charge', more: 'The supply has no bleeder, and no part brings it down: waiting does not help.' };
  const wait = show(waited(seconds), 's', { digits: 6, way });
  if (kind === 'until') return { word: `Wait\u00a0${wait}`, more: 'Longer than the parts drawn need, if none of them is open.' };
  return {
    word: `Wait\u00a0${wait} or more`,
    more: 'The page of your supply tells how long it needs. Without a bleeder it stays charged for days, and waiting does not help.',
  };
}

function charged(figures: Figures | undefined): string {
  const capacitors = texts(figures, 'capacitors');
  // A supply elsewhere has capacitors that are not drawn here.
  return capacitors.length === 0 ? 'every capacitor' : `${list(capacitors)}${waitOf(figures).kind === 'least' ? ' and those of the supply' : ''}`;
}

/** A wait as it is told: rounded up to one that a person counts. */
export function waited(seconds: number): number {
  return WAITS.find((wait) => wait >= seconds) ?? Math.ceil(seconds / 600) * 600;
}

/** The safety line of a printed sheet. */
export function dangerLine(figures: Figures | undefined, hazard: Hazard = 'charge', way: Way = USUAL_WAY): string {
  const [volts, wait] = [figure(figures, 'volts'), waiting(waitOf(figures), way).word];
  const start = `${volts === null ? '' : `${show(volts, 'V', { way })}. `}${hazard === 'radio' ? 'Key off. ' : ''}Unplug. ${wait}. Meter ${charged(figures)}. `;
  return told(`${start}Discharge each through a resistor lead. Then touch. Phone down before power goes on.`, way);
}

/** What stands under every danger, once a page. */
export const DANGER_LAW =
  'Phone down before power goes on. The rules of your country and licensed practice come before anything said here.';
/** What one low reading means. */
export const DANGER_PROOF = 'One low reading does not prove that the rest is discharged.';
