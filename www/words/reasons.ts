import { nodeWords } from './node-words.js';
import { spelled } from './plain.js';
import { told, USUAL_WAY, type Way } from './way.js';

const START = 'These values fit one by one and have no answer together:';

/** Why inputs in range have no solution; `where` is the node that it shows at, or empty. */
const REASONS: Readonly<Record<string, (where: string) => string>> = {
  no_convergence: (where) => `the volts${where} did not settle. Bring the last change nearer to usual values.`,
  undamped: (where) => `the volts${where} have no single value, as in a coil and a capacitor without any resistance. Give the coil its winding resistance.`,
  shorted: (where) => `sources of different volts meet${where} without resistance between them. Put a resistor there.`,
  doubler_begins_with_capacitors: () => 'a doubler begins with its two capacitors. Choose nothing as the first section’s lead.',
  no_such_corner: () => 'no value of that part puts the corner there. Choose another part or another corner.',
  even_chebyshev: () => 'a Chebyshev ladder of an even number of parts needs ends of different resistance, and both ends are alike here. Choose an odd number.',
  network_q_low: () => 'a network of so low a Q does not span the tube’s load and the antenna. Raise the Q.',
  network_reactance: () => 'the antenna’s own reactance is more than the last part can make up for. Bring the antenna nearer to resonance, or raise the Q.',
  network_middle: () => 'the resistance in the middle of a pi-L must be over the antenna’s. Raise it.',
  tube_capacitance: () => 'the tube’s own capacitance is all and more than the input capacitor may be. Raise the Q, or choose a smaller load.',
  undetermined: () =>
    'the points leave the tube open: too few, too much alike, or without transconductance, plate resistance or mu. Add one that differs.',
  turns_overlap: () => 'the turns lie over each other. Spread them further, or take thinner wire or fewer turns.',
  less_than_a_turn: () => 'a twentieth of a turn has more than that. Take a thinner form.',
  too_many_turns: () => 'the most turns that have room have less than that. Take a larger form, or set them closer.',
  readings_disagree: () => 'the two dips contradict each other: the larger capacitor must give the lower frequency.',
  source_under_regulator: () => 'the least supply is under the regulator’s own volts. It needs some 20\u00a0% more to strike.',
  outside_law: () => 'no triode passes near these points. Look at the units, and at the minus before the grid volts.',
};

/** The reasons that have a sentence. */
export const REASON_CODES: readonly string[] = Object.keys(REASONS);

/** Why there is no solution, and what to do. */
export function reasonWords(about: string, node = '', way: Way = USUAL_WAY): string {
  const reason = Object.hasOwn(REASONS, about) ? REASONS[about] : undefined;
  const where = node === '' ? '' : ` at the node “${nodeWords(node)}”`;
  if (reason !== undefined) return told(`${START} ${reason(where)}`, way);
  return told(about === '' ? `${START.slice(0, -1)}${where}.` : `${START} ${spelled(about)}${where}.`, way);
}
