import { spelled } from './plain.js';

/** What an answer without a figure means, by the code in the catalogue. */
const NULLS: Readonly<Record<string, string>> = {
  level_at_zero: 'Level is at 0, so nothing passes.',
  no_swing: 'The tube has no room to swing.',
  out_of_reach: 'No capacitor gives that lift here.',
  no_current: 'The tube passes no current.',
  outside_range: 'Outside 0.01 Hz to 100 MHz.',
  not_reached: 'The stage does not reach that output.',
  nothing_passes: 'Nothing reaches the load.',
  no_bound: 'It goes on rising to the end of the range.',
  no_dropper: 'No value that is sold keeps all of the regulator’s limits.',
  no_output: 'Nothing comes out that it could be held against.',
  no_cure: 'No capacitor up to 0.1 F does it.',
  past_resonance: 'At and above its own resonance the coil is no inductance.',
  beyond_coil: 'The whole coil has too little for it.',
  no_turns: 'No number of turns that has room comes to it.',
  never_discharges: 'Nothing empties the capacitors.',
  collapsed: 'The last node has no volts.',
  never_continuous: 'No choke does it here.',
  strays_alone: 'The strays alone are too much: the coil must be smaller.',
  not_printed: 'The sheet prints none at this point.',
};

/** The codes that have a sentence. */
export const NULL_CODES: readonly string[] = Object.keys(NULLS);

/** Why an answer has no figure. */
export function nullWords(code: string): string {
  return NULLS[code] ?? `No figure: ${spelled(code)}.`;
}
