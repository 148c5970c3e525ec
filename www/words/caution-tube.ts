import type { CautionContext, CautionMaker } from './caution-kinds.js';
import { waitOf } from './danger.js';
import { nodeWords } from './node-words.js';
import { figure, list, text, texts } from './plain.js';
import { show } from './quantity.js';

function tube(figures: CautionContext['figures']): string {
  const name = text(figures, 'tube');
  return name === '' ? 'the tube' : `the ${name}`;
}

/** How fast the supply falls, as far as the page knows one. */
function fall(figures: CautionContext['figures'], way: CautionContext['way']): string {
  const { kind, seconds } = waitOf(figures);
  if (kind === 'vain') return ' The supply has no bleeder: nothing empties its capacitors, and they stay charged for days.';
  return kind === 'least' ? ' How fast the supply falls hangs on its bleeder: its own page tells.' : ` The supply needs up to ${show(seconds, 's', { digits: 6, way })}.`;
}

/** What can hurt a person, and what exceeds the tube's or a part's rating. */
export const TUBE_CAUTIONS: Readonly<Record<string, CautionMaker>> = {
  danger_volts: ({ figures, f, way }) => {
    const node = text(figures, 'node');
    const place = node === '' ? '' : ` at ${nodeWords(node, text(figures, 'pin'), way)}`;
    const held = texts(figures, 'capacitors');
    const holds =
      held.length === 0
        ? 'Capacitors may hold it after the plug is out.'
        : `${list(held)} may hold ${held.length === 1 ? 'its' : 'their'} charge after the plug is out${held.length === 1 ? '' : ', one that is switched out too'}.`;
    const plate = figure(figures, 'plate_volts') === null ? '' : `The plate has ${f('plate_volts', 'V')}. `;
    const own = figure(figures, 'own_seconds') ?? 0;
    const needs = own < 0.1 ? '' : ` The parts drawn here need ${f('own_seconds', 's', 2)} to bring it under 60 V, once the supply is down.`;
    return {
      heading: `${f('volts', 'V')}${place}`,
      text: `${plate}${holds}${needs}${fall(figures, way)} One low reading does not prove the others low. Phone down, one hand away.`,
    };
  },
  plate_dissipation: ({ f, figures }) => ({
    heading: 'plate dissipation over its rating',
    text:
      `${f('watts', 'W')} of heat in the plate; ${tube(figures)} is rated ${f('rating', 'W')}. A larger plate or cathode ` +
      'resistor or less B+ brings it down.',
    gauge: ['watts', 'rating', 'W'],
  }),
  plate_volts_over: ({ f, figures }) => ({
    heading: 'plate volts over their rating',
    text:
      `${f('volts', 'V')} at the plate; ${tube(figures)} is rated ${f('rating', 'V')}. Less B+, a larger plate resistor or more ` +
      'current brings it down.',
    gauge: ['volts', 'rating', 'V'],
  }),
  supply_over: ({ f, figures }) => ({
    heading: 'B+ over the rating of a cold tube',
    text:
      `Until the heater is warm no current flows and the plate stands at all of B+, ${f('volts', 'V')}; ${tube(figures)} is ` +
      `rated ${f('rating', 'V')}. Less B+, or a supply that rises no sooner than the tube warms, keeps to it.`,
    gauge: ['volts', 'rating', 'V'],
  }),
  cathode_amps_over: ({ f, figures }) => ({
    heading: 'cathode current over its rating',
    text:
      `${f('amps', 'A')} from the cathode; ${tube(figures)} is rated ${f('rating', 'A')}. A larger cathode or plate resistor ` +
      'brings it down.',
    gauge: ['amps', 'rating', 'A'],
  }),
  heater_cathode_over: ({ f, figures }) => ({
    heading: 'heater to cathode over its rating',
    text:
      `The cathode stands ${f('volts', 'V')} from the heater; ${tube(figures)} is rated ${f('rating', 'V')}. Lift the heater ` +
      'winding to volts near the cathode’s, or bring the cathode nearer to ground.',
    gauge: ['volts', 'rating', 'V'],
  }),
  grid_leak_over: ({ f, figures }) => ({
    heading: 'grid resistor over its rating',
    text:
      `${f('ohms', 'Ω')} at the grid; ${tube(figures)} is rated ${f('rating', 'Ω')}. The little current that every grid draws ` +
      `shifts the bias across so much. Fit ${f('rating', 'Ω')} or less.`,
    gauge: ['ohms', 'rating', 'Ω'],
  }),
  coupling_volts: ({ figures, f }) => {
    const parts = texts(figures, 'parts');
    const which = parts.length === 0 ? 'The coupling capacitor' : list(parts);
    const stand = parts.length > 1 ? 'stand' : 'stands';
    return {
      heading: `${which} ${stand} ${f('volts', 'V')} at switch-on`,
      text:
        'Until the tube is warm the plate is at all of B+, here with the mains 5\u00a0% up, and the capacitor with it. Buy ' +
        `${f('volts', 'V')} or more, not the volts of the warm tube.`,
    };
  },
  own_tube_unknown_ratings: () => ({
    heading: 'no ratings for your own tube',
    text: 'Its dissipation, volts and heater are not checked here. Hold the answers against its data sheet.',
  }),
};
