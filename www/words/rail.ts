import type { CalculatorWords, Lead, Situation } from './kinds.js';
import { figure, text } from './plain.js';
import { show, split } from './quantity.js';

/** Every text of `rail`. */
export const RAIL: CalculatorWords = {
  id: 'rail',
  title: 'Rail',
  summary: 'A lower voltage from a higher one: a dropping resistor, or one with a gas regulator tube.',
  paragraph:
    'Give what you have, what you want and what is drawn. You get the dropping resistor with its watts, what the rail rises ' +
    'to when nothing is drawn, and how its volts follow the load. With a gas regulator you get the largest dropper that ' +
    'keeps it alight, the smallest that does not overload it, whether it strikes, and what you can buy in between.',
  groups: { rail: 'The rail', load: 'What is drawn', meter: 'Your meter' },
  inputs: {
    volts_in: { label: 'Volts you have', phrase: 'the volts you have', help: 'At the supply’s output, with this rail’s current drawn. For a plain dropper.' },
    volts_out: { label: 'Volts you want', phrase: 'the volts you want', help: 'On the rail, at the usual current.' },
    regulator: { label: 'Gas regulator', help: 'A regulator tube holds the rail at its own volts. Leave it empty for a plain dropper.' },
    source_volts_least: { label: 'Supply, least', phrase: 'the least supply volts', help: 'With the mains low and everything drawn. The regulator must strike and stay alight on this.' },
    source_volts_most: { label: 'Supply, most', phrase: 'the most supply volts', help: 'With the mains high and little drawn. The regulator takes the most current here.' },
    amps: { label: 'Usual current', help: 'What the rail feeds draws in use. A screen grid’s current is in the tube’s sheet.' },
    amps_least: { label: 'Least current', help: 'While something rests or is switched off; 0 where it can be unplugged. Empty: the usual current.' },
    amps_most: { label: 'Most current', help: 'On peaks. Empty: the usual current.' },
    farads: { label: 'Capacitor on the rail', help: 'To ground. With the dropper it smooths. Across a regulator no more than 0.1 µF. 0 for none.' },
    meter: { label: 'Your meter', help: 'What the meter itself draws changes what it reads. Test points are worked with it in place.' },
    'meter.ohms': { label: 'Meter resistance', help: 'For a digital meter, most often 10M on every dc range.' },
    'meter.ohms_per_volt': { label: 'Meter sensitivity', help: 'For a needle meter: the ohms per volt printed on its dial.' },
    'meter.range': { label: 'Meter range', help: 'For a needle meter: the full scale it is set to.' },
  },
  choices: {
    regulator: {
      '0A3': '0A3, 75 V', VR75: 'VR75, 75 V', '0C2': '0C2, 75 V', '0B2': '0B2, 108 V', '0C3': '0C3, 108 V', VR105: 'VR105, 108 V',
      '0A2': '0A2, 150 V', '0D3': '0D3, 153 V', VR150: 'VR150, 153 V',
    },
  },
  answers: {
    dropper_ohms: {
      label: 'Dropper',
      phrase: 'the dropper',
      help: 'Exact. With a regulator, the largest one that keeps it alight at the least supply and the most load.',
    },
    dropper_watts: { label: 'Heat in the dropper', phrase: 'the heat in the dropper', help: 'At the usual current; with a regulator, at the most supply. Fit twice this.', prefix: '' },
    dropper_preferred_ohms: {
      label: 'Dropper you can buy',
      phrase: 'the dropper you can buy',
      help: 'The nearest preferred value; with a regulator, the largest that lets it strike, stay alight and not take too much.',
    },
    dropper_least_ohms: { label: 'Smallest dropper', phrase: 'the smallest dropper', help: 'A smaller one lets the regulator take more than its rating, at the most supply and the least load.' },
    rail_volts: { label: 'Rail', phrase: 'the rail', help: 'Volts on the rail at the usual current.' },
    open_volts: { label: 'With nothing drawn', phrase: 'the volts with nothing drawn', help: 'What everything on the rail must stand, the regulator out of its socket or not yet alight.' },
    volts_least: { label: 'At the most current', phrase: 'the volts at the most current', help: 'Volts on the rail.' },
    volts_most: { label: 'At the least current', phrase: 'the volts at the least current', help: 'Volts on the rail.' },
    strikes: { label: 'It strikes', phrase: 'whether it strikes', help: 'At the least supply, with the most load already drawn.' },
    strike_volts: { label: 'Volts to strike with', phrase: 'the volts to strike with', help: 'What stands across the tube before it glows, at the least supply and the most load.' },
    regulator_amps_least: { label: 'Regulator, least', phrase: 'the regulator’s least current', help: 'At the least supply and the most load.', prefix: 'm' },
    regulator_amps_most: { label: 'Regulator, most', phrase: 'the regulator’s most current', help: 'At the most supply and the least load.', prefix: 'm' },
    ripple_corner_hertz: {
      label: 'Smooths above',
      phrase: 'the ripple’s corner',
      help: 'Above this, ripple falls by half with every octave. The corner of the dropper and the load with the capacitor.',
    },
  },
  curves: {
    load: {
      title: 'Rail against load',
      caption: 'Volts on the rail against the current drawn.',
      x: 'Current drawn',
      y: 'Rail',
      lines: { rail: 'rail', source_least: 'least supply', source_most: 'most supply', load: 'usual current' },
    },
  },
  how: {
    method:
      'Ohm’s law on the drawing. With a regulator the dropper is the supply’s least volts less the tube’s, over the most load ' +
      'and the tube’s least current together; its heat is told at the most supply. The tube strikes if what is left for it ' +
      'before it glows, with the load drawing, reaches its striking volts.',
    holdsFor:
      'A load that draws the same at any volts, and a regulator that holds its volts exactly; the sheets allow it 1 to 7 V over ' +
      'its range of current, and one tube differs from the next by more than that.',
    checkedAgainst: 'Handbook examples of a screen dropper and of regulators with a fixed and with a removable load.',
    source: 'Regulators: RCA data sheets, from memory. The dropper’s rule: ARRL Handbook, from memory. The margin of two on watts: common practice, no source.',
  },
  face: {
    lug: { answer: 'dropper_ohms' },
    tables: [
      {
        heading: 'Answers',
        rows: [
          { answer: 'dropper_preferred_ohms' },
          { answer: 'dropper_watts' },
          { answer: 'dropper_least_ohms' },
          { answer: 'rail_volts' },
          { answer: 'open_volts' },
          { answer: 'volts_most' },
          { answer: 'volts_least' },
          { answer: 'strikes' },
          { answer: 'strike_volts' },
          { answer: 'regulator_amps_least' },
          { answer: 'regulator_amps_most' },
          { answer: 'ripple_corner_hertz' },
        ],
      },
    ],
    tags: [{ node: 'output', answer: 'rail_volts' }],
    pictures: [{ curve: 'load' }],
    near: { volts_in: 'dropper_watts', volts_out: 'dropper_ohms', amps: 'dropper_watts', farads: 'ripple_corner_hertz', regulator: 'dropper_ohms', source_volts_least: 'strike_volts' },
    beside: { amps: ['amps_least', 'amps_most'], source_volts_least: ['source_volts_most'] },
  },
  lead: railLead,
};

/** The lead of `rail`: the dropper, and what becomes of the rail. */
function railLead({ inputs, outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const ohms = figure(answers, 'dropper_ohms');
  const volts = (key: string): string => show(figure(answers, key), 'V', { way });
  const buy = figure(answers, 'dropper_preferred_ohms');
  const watts = show(figure(answers, 'dropper_watts'), 'W', { prefix: '', digits: 2, way });
  const shown = split(ohms, 'Ω', { way });
  if (ohms === null) return { label: 'Dropper', ...shown, sentence: 'There is no dropper for these values.' };
  const tube = text(inputs, 'regulator');
  if (tube === '') {
    return { label: 'Dropper', ...shown, sentence: `It turns ${watts} into heat. With nothing drawn the rail rises to ${volts('open_volts')}.` };
  }
  const fit = buy === null ? 'No value that is sold keeps all of its limits.' : `${show(buy, 'Ω', { way })} is the one to buy.`;
  const strikes = answers['strikes'] === true ? `The ${tube} strikes and stays alight.` : `The ${tube} does not strike with this one.`;
  return { label: 'Largest dropper', ...shown, sentence: `${strikes} ${fit} It turns ${watts} into heat at most.` };
}
