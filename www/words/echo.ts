import type { BareOutcome, CircuitPart, PartRow } from './kinds.js';
import { figure } from './plain.js';
import { ratingWords, wattsWords } from './part-words.js';
import { show } from './quantity.js';
import { USUAL_WAY, type Way } from './way.js';

/**
 * What the circuit adds to the echo of a part's field: "It drops 128 V and takes 0.07 W: fit ½ W." Empty where the
 * outcome says nothing about the part.
 */
export function partEcho(field: string, outcome: BareOutcome, way: Way = USUAL_WAY): string {
  const part = outcome.circuit?.parts.find((each) => each.field === field);
  const row = outcome.parts?.find((each) => each.field === field);
  if (part?.kind === 'resistor') return resistor(part, row, outcome, way);
  if (part?.kind === 'capacitor') return capacitor(part, row, outcome, way);
  const rating = row === undefined ? '' : ratingWords(row, way);
  return rating === '' ? '' : `Fit ${rating}.`;
}

/** The same for the line under a plain field: "0.07 W: use ½ W", "400 V or more". */
export function partEchoShort(field: string, outcome: BareOutcome, way: Way = USUAL_WAY): string {
  const row = outcome.parts?.find((each) => each.field === field);
  if (row === undefined) return '';
  if (typeof row.watts === 'number') {
    // A pot's own figure is its knob's: what it takes is not told.
    const part = outcome.circuit?.parts.find((each) => each.field === field && each.kind === 'resistor');
    const taken = part === undefined ? null : watts(part, outcome);
    const takes = taken === null || taken < LEAST_WATTS ? '' : `${heat(taken, way)}: `;
    return `${takes}use ${wattsWords(row.watts, way)}`;
  }
  return typeof row.volts === 'number' ? `${show(row.volts, 'V', { way })} or more` : '';
}

function resistor(part: CircuitPart, row: PartRow | undefined, outcome: BareOutcome, way: Way): string {
  const [drop, taken] = [across(part, outcome), watts(part, outcome)];
  const fit = typeof row?.watts === 'number' ? `: fit ${wattsWords(row.watts, way)}` : '';
  if (drop === null || taken === null) return fit === '' ? '' : `Fit ${wattsWords(row?.watts ?? 0, way)}.`;
  if (taken < LEAST_WATTS && drop < LEAST_VOLTS) return `It takes next to no power${fit}.`;
  if (taken < LEAST_WATTS) return `It drops ${show(drop, 'V', { way })} and takes next to no power${fit}.`;
  return `It drops ${show(drop, 'V', { way })} and takes ${heat(taken, way)}${fit}.`;
}

function capacitor(part: CircuitPart, row: PartRow | undefined, outcome: BareOutcome, way: Way): string {
  const stands = across(part, outcome);
  const fit = typeof row?.volts === 'number' ? `fit ${show(row.volts, 'V', { way })} or more` : '';
  if (stands === null || stands < LEAST_VOLTS) return fit === '' ? '' : `It stands next to no dc: ${fit}.`;
  const first = row?.rule === 'switch_on' ? ', and all of B+ until the tube is warm' : '';
  const told = `It stands ${show(stands, 'V', { way })}${first}`;
  return fit === '' ? `${told}.` : `${told}: ${fit}.`;
}

/** Under this a resistor's heat is not worth a figure. */
const LEAST_WATTS = 0.005;
/** Under this a capacitor's dc is not worth a figure. */
const LEAST_VOLTS = 0.05;

function heat(taken: number, way: Way): string {
  return show(taken, 'W', { prefix: '', digits: taken < 0.1 ? 1 : 2, way });
}

function watts(part: CircuitPart, outcome: BareOutcome): number | null {
  const drop = across(part, outcome);
  const ohms = typeof part.value === 'number' && part.value > 0 ? part.value : null;
  return drop === null || ohms === null ? null : (drop * drop) / ohms;
}

function across(part: CircuitPart, outcome: BareOutcome): number | null {
  const [from, to] = part.nodes.map((name) => {
    if (name === 'ground') return 0;
    return figure(outcome.circuit?.nodes.find((node) => node.name === name) ?? null, 'volts');
  });
  return from === null || to === null || from === undefined || to === undefined ? null : Math.abs(from - to);
}
