import type { CautionMaker } from './caution-kinds.js';
import { figure } from './plain.js';
import { show } from './quantity.js';

/** What is worth knowing about a coil. */
export const COIL_CAUTIONS: Readonly<Record<string, CautionMaker>> = {
  coil_burn: ({ f }) => ({
    hazard: 'radio',
    heading: `${f('volts', 'V')} of RF at the hot end`,
    text:
      `The peak is ${f('peak_volts', 'V')}. It burns deep on touch, before anything is felt, and plate volts may stand on the coil ` +
      'too. Power off and capacitors discharged before a hand, a pencil or a test lead goes near; a guard around it in use.',
  }),
  hot_end: () => ({
    heading: 'the hot end burns',
    text:
      'In a transmitter the end away from ground carries RF volts that burn on touch. Give the current through the coil, and ' +
      'the volts there are told.',
  }),
  past_resonance: ({ f }) => ({
    heading: 'past its own resonance',
    text: `With its own capacitance the coil resonates at ${f('hertz', 'Hz')}. Above that it acts as a capacitor: fewer turns, or spread further.`,
  }),
  resonance_near: ({ f }) => ({
    heading: 'its own resonance is near',
    text: `It lies at ${f('hertz', 'Hz')}. At the working frequency the coil acts as if it had ${f('percent', '%', 2)} more inductance, and that hangs on what is near it.`,
  }),
  insulation_thick: ({ f, figures }) => {
    const [overall, bare] = [figure(figures, 'overall') ?? 1, figure(figures, 'bare') ?? 1];
    return {
      heading: 'insulation as thick as plastic',
      text:
        `${f('overall', 'm')} with insulation on ${f('bare', 'm')} of wire, ${show(overall / bare, '1', { digits: 2 })} times as thick. Right for hook-up wire; for enamelled ` +
        'wire it is too much. If you changed the gauge, change this too.',
    };
  },
  wire_hot: ({ f }) => ({
    heading: 'the wire runs hot',
    text:
      `About ${f('celsius', '°C', 2)} above the air around it, which softens wax, varnish and plastic pipe. Take thicker wire, ` +
      'set apart by its own diameter, or ceramic. An estimate: still air, 10 W for each square metre and degree.',
  }),
  bare_turns_touch: () => ({
    heading: 'bare turns touch',
    text: 'Bare wire wound so close shorts from turn to turn. Take enamelled wire and give its overall diameter, or set the turns apart.',
  }),
  loss_uncertain: ({ f }) => ({
    heading: `Q may be off by ${f('percent', '%', 2)}`,
    text:
      `Self-capacitance by ${f('farads_percent', '%', 2)}. Both come from Medhurst’s measurements of bare coils in the open. ` +
      'Forms, varnish, tarnish, joints and a chassis nearby lower Q and add capacitance.',
  }),
  shorted_turns: () => ({
    heading: 'shorted turns carry current',
    text: 'A shorted rest lowers the inductance and Q of what is left, and its switch carries a current of its own. It keeps the open end from resonating by itself.',
  }),
  measured_far: ({ figures, way }) => {
    const percent = figure(figures, 'percent');
    const by = percent === null ? 'far' : `${show(Math.abs(percent), '%', { digits: 2, way })} too ${percent > 0 ? 'high' : 'low'}`;
    return {
      heading: `the coil measures ${by}`,
      text: 'That is more than winding does. Look for a shorted turn, a miscount, the capacitor’s true value, or the dip of something else.',
    };
  },
  stray_negative: () => ({
    heading: 'the two readings leave less than no stray',
    text: 'Read both dips again, with loose coupling, and look at the values of both capacitors.',
  }),
};
