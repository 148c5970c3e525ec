import type { CautionMaker } from './caution-kinds.js';
import { figure, text } from './plain.js';
import { show } from './quantity.js';

/** What is worth knowing, or can hurt, about transformers, rails and heaters. */
export const POWER_CAUTIONS: Readonly<Record<string, CautionMaker>> = {
  danger_transformer: ({ f }) => ({
    heading: `mains ${f('mains_volts', 'V')} and ${f('volts', 'V')} at the secondary`,
    text:
      'Both kill. Measure resistances with the plug out and every winding disconnected, then test with 6 to 12 V from an isolated ' +
      'transformer. On the mains: line through fuse and switch, earth to core and chassis, nothing bare, no meter lead held by hand.',
  }),
  danger_test: ({ f }) => ({
    hazard: 'none',
    heading: `${f('volts', 'V')} in the test`,
    text: `That is no low voltage. ${f('safe_volts', 'V', 2)} on the primary keeps every reading under 30 V, and the ratio is the same.`,
  }),
  winding_differs: ({ figures, f, way }) => {
    const percent = figure(figures, 'percent');
    const off = percent === null ? 'more than they should' : show(Math.abs(percent), '%', { digits: 2, way });
    return {
      heading: `load and ohmmeter differ by ${off}`,
      text:
        `The load says ${f('loaded_ohms', 'Ω')}, the ohmmeter ${f('dc_ohms', 'Ω')}. Much more by the load: the volts put in fell as well, or a joint ` +
        'is poor. Less: the volts were read at the wrong winding, or the ohmmeter’s own leads were not taken off.',
    };
  },
  rail_rises: ({ f }) => ({
    heading: `with nothing drawn the rail rises to ${f('volts', 'V')}`,
    text: `So it does until the tubes are warm. Capacitors on a rail of ${f('rail_volts', 'V')} must stand all of it; a bleeder holds it down.`,
  }),
  rail_starved: ({ f }) => ({
    heading: 'nothing is left at the most current',
    text: `This dropper passes ${f('most_amps', 'A')} into a short; ${f('amps', 'A')} is more. Give the rail more volts to start from, or a regulator.`,
  }),
  regulator_no_strike: ({ figures, f }) => {
    const ohms = figure(figures, 'ohms');
    const mend = ohms === null ? 'No dropper lets it, with this load: more supply volts would.' : `Up to ${f('ohms', 'Ω')} it does; or let the load come on later.`;
    return {
      heading: `the ${text(figures, 'tube') || 'regulator'} does not strike`,
      text: `Before it glows it gets ${f('volts', 'V')} at the least supply, and it needs ${f('rating', 'V')}. ${mend}`,
    };
  },
  regulator_amps_over: ({ figures, f }) => ({
    heading: `too much current in the ${text(figures, 'tube') || 'regulator'}`,
    text:
      `${f('amps', 'A')} at the most supply and the least load; it is rated ${f('rating', 'A')}. That asks for ${f('least_ohms', 'Ω')} or more, and to stay ` +
      `alight it must be ${f('most_ohms', 'Ω')} or less. A steadier supply or a load that is never off brings them together.`,
    gauge: ['amps', 'rating', 'A'],
  }),
  regulator_farads_over: ({ f }) => ({
    heading: 'too much capacitance across the regulator',
    text: `${f('farads', 'F')} across a gas tube makes it an oscillator; its sheet allows ${f('rating', 'F')}. Put the capacitor at the supply.`,
    gauge: ['farads', 'rating', 'F'],
  }),
  danger_heater: ({ figures, f }) => {
    const string = (figure(figures, 'winding_volts') ?? 0) > 30;
    return {
      heading: `${f('volts', 'V')} on the heater wiring`,
      text: string
        ? 'A string this long can kill at its far end. Feed it from an isolated winding, never from the mains, insulate every pin, and unplug before a tube is pulled.'
        : 'Lifted heaters stand at this voltage everywhere, also at a pilot lamp. Feed the lift through 100 kΩ or so, with its own capacitor, and insulate the pins.',
    };
  },
  winding_amps_over: ({ f }) => ({
    heading: 'the winding gives more than its rating',
    text: `${f('amps', 'A')} of ${f('rating', 'A')}. It runs hot and takes the other windings with it. A second transformer for some of the heaters mends it.`,
    gauge: ['amps', 'rating', 'A'],
  }),
  heater_volts_high: ({ figures, f, way }) => ({
    heading: `${heater(text(figures, 'heater'))} gets ${f('percent', '%', 2)} too much`,
    text:
      `${f('volts', 'V')} instead of ${f('rating', 'V')}. Heaters want it within 10\u00a0%, and live longest within 5\u00a0%. ` +
      (figure(figures, 'ohms') === null || figure(figures, 'ohms') === 0 ? 'Fewer volts bring it down.' : `${show(figure(figures, 'ohms'), 'Ω', { digits: 2, way })} in line sets it right.`),
    gauge: ['volts', 'rating', 'V'],
  }),
  heater_volts_low: ({ figures, f, way }) => ({
    heading: `${heater(text(figures, 'heater'))} gets ${show(Math.abs(figure(figures, 'percent') ?? 0), '%', { digits: 2, way })} too little`,
    text:
      `${f('volts', 'V')} instead of ${f('rating', 'V')}. A cool cathode gives less current and wears under load. Heavier leads, a resistor less or a winding of more volts mends it.`,
  }),
  heater_volts_unlike: ({ f }) => ({
    heading: 'these heaters do not stand side by side',
    text: `They are rated from ${f('least', 'V')} to ${f('most', 'V')}. Give each kind a winding of its own, or a resistor to those of fewer volts.`,
  }),
  heater_amps_unlike: ({ f }) => ({
    heading: 'these heaters do not go in one string',
    text: `They are rated from ${f('least', 'A')} to ${f('most', 'A')}, and a string has one current. A resistor across those of less carries the rest.`,
  }),
  heater_string_surge: () => ({
    heading: 'a string surges at switch-on',
    text: 'The tube that warms last takes too much for some seconds. Tubes of one warm-up time, or a resistor that starts cold and high, spare it. Common practice, no source.',
  }),
};

function heater(reference: string): string {
  return reference === '' ? 'a heater' : `the heater of ${reference}`;
}
