import type { CalculatorWords, Lead, Situation } from './kinds.js';
import { figure } from './plain.js';
import { show, split } from './quantity.js';

/** Every text of `transformer`. */
export const TRANSFORMER: CalculatorWords = {
  id: 'transformer',
  title: 'Transformer',
  summary: 'An unknown transformer from what a bench can measure: ratio, volts at the mains, winding resistance, fuse.',
  paragraph:
    'Measure the resistance of the windings with everything unplugged, then put a low alternating voltage on the primary and ' +
    'read what comes out. You get the turns ratio, what it will give at the mains, the winding resistance that a supply ' +
    'works with, an estimate of the power it is built for, and a fuse. For an audio transformer you get the load that its ' +
    'primary shows to the tube.',
  groups: { test: 'Measured at low voltage', loaded: 'The same with a load on', use: 'In use' },
  inputs: {
    applied_volts: {
      label: 'Volts put on the primary',
      phrase: 'the volts put on the primary',
      help: 'Rms, from a small isolated transformer of 6 to 12 V. Never the mains, and never 6 V on a low winding: the others would step it up.',
    },
    secondary_open_volts: {
      label: 'Read at the secondary',
      phrase: 'the volts read at the secondary',
      help: 'Rms, with nothing else connected. For a centre-tapped winding, from one end to the tap.',
    },
    primary_dc_ohms: { label: 'Primary resistance', help: 'With an ohmmeter, unplugged and everything disconnected. The winding for your mains.' },
    secondary_dc_ohms: { label: 'Secondary resistance', help: 'Likewise, from end to end.' },
    secondary_side_ohms: { label: 'One side of the tap', phrase: 'the resistance of one side', help: 'For a centre-tapped winding, from one end to the tap: the larger of the two. Else leave it empty.' },
    loaded_volts: { label: 'Read under load', phrase: 'the volts read under load', help: 'At the secondary with a resistor across it, the volts on the primary unchanged. Optional: it checks the resistances.' },
    loaded_amps: { label: 'Current of that load', help: 'Rms: the volts read under load over the resistor’s ohms.' },
    mains_volts: { label: 'Mains', phrase: 'the mains', help: 'Rms, as it is at your socket.' },
    load_ohms: { label: 'Load on the secondary', help: 'For an audio transformer: the loudspeaker or line. Leave it empty for a mains transformer.' },
  },
  choices: {},
  answers: {
    ratio: { label: 'Ratio, secondary to primary', phrase: 'the ratio', help: 'Turns, as the open volts tell them.' },
    secondary_volts: { label: 'Secondary at the mains', phrase: 'the secondary at the mains', help: 'Rms, with nothing drawn. It goes into the supply’s page.' },
    winding_ohms: { label: 'Winding resistance', phrase: 'the winding resistance', help: 'What the supply works with: the secondary’s path and the primary as it comes through. From the reading under load where there is one.' },
    winding_dc_ohms: { label: 'By the ohmmeter', phrase: 'the winding resistance by the ohmmeter', help: 'Secondary, plus primary times the square of the ratio.' },
    winding_loaded_ohms: { label: 'By the load', phrase: 'the winding resistance by the load', help: 'Volts lost under load, over its current. Leakage between the windings and warmth are in it.' },
    winding_difference_percent: { label: 'Load over ohmmeter', phrase: 'how far the load’s figure is over the ohmmeter’s', help: 'A few percent more is usual.', signed: true },
    reflected_ohms: { label: 'Load seen at the primary', phrase: 'the load seen at the primary', help: 'The load over the square of the ratio: what the tube works into.' },
    volt_amps_estimate: {
      label: 'Power, estimated',
      phrase: 'the estimated power',
      help: 'From the copper: one of 50 VA loses a tenth of its volts at full load, a larger one less. Within half as much or twice; heater windings take their share of it.',
    },
    secondary_amps_estimate: { label: 'Secondary current, estimated', phrase: 'the estimated secondary current', help: 'Rms, of that power. Behind a capacitor the dc drawn must stay well below it.', prefix: 'm' },
    primary_amps: { label: 'Mains current', phrase: 'the mains current', help: 'At that power.', prefix: 'm' },
    fuse_amps: { label: 'Mains fuse, slow', phrase: 'the mains fuse', help: 'The next rated value over 1.5 times that current. Slow, for the surge of a cold transformer.' },
  },
  curves: {},
  how: {
    method:
      'The ratio is the open volts over those put in, and all volts grow with the mains. The primary’s resistance comes through ' +
      'as the square of the ratio and adds to the secondary’s. Power: the volts lost at full load are taken as 10 % at 50 VA, ' +
      'going with the power to the −0.4. Fuse: 1.5 times the mains current at that power, next rated value.',
    holdsFor:
      'Mains and audio transformers on iron, measured well under their mains volts. The little current that magnetises the core, and what ' +
      'leaks past a winding, are not in the ohmmeter’s figure.',
    checkedAgainst: 'Handbook arithmetic of ratios, resistances carried over and reflected loads.',
    source: 'Any handbook for the ratios. Power and fuse: common practice, no source. Fuse values: IEC 60127, from memory.',
  },
  face: {
    lug: { answer: 'secondary_volts' },
    tables: [
      {
        heading: 'Answers',
        rows: [
          { answer: 'ratio' },
          { answer: 'winding_ohms' },
          { answer: 'winding_dc_ohms' },
          { answer: 'winding_loaded_ohms' },
          { answer: 'winding_difference_percent' },
          { answer: 'reflected_ohms' },
        ],
      },
      {
        heading: 'Rules of thumb',
        note: 'from the copper alone',
        rows: [{ answer: 'volt_amps_estimate' }, { answer: 'secondary_amps_estimate' }, { answer: 'primary_amps' }, { answer: 'fuse_amps' }],
      },
    ],
    tags: [],
    pictures: [],
    near: {
      applied_volts: 'ratio', secondary_open_volts: 'ratio', primary_dc_ohms: 'winding_ohms', secondary_dc_ohms: 'winding_ohms',
      secondary_side_ohms: 'winding_ohms', loaded_volts: 'winding_ohms', loaded_amps: 'winding_ohms', mains_volts: 'secondary_volts', load_ohms: 'reflected_ohms',
    },
    beside: { loaded_volts: ['loaded_amps'], secondary_dc_ohms: ['secondary_side_ohms'] },
  },
  lead: transformerLead,
  remarks: () => [
    'Unplug first. Disconnect every winding, and read the resistances with the ohmmeter; note the colours of the leads.',
    'Then put 6 to 12 V ac on the primary, from a small isolated transformer with a fuse of 1 A, and read every other winding. A high winding still gives tens of volts.',
    'The ratio you read is that of the turns. Last, with the loaded reading if you want one, compare what the load says with what the ohmmeter says.',
  ],
};

/** The lead of `transformer`: what it gives at the mains. */
function transformerLead({ inputs, outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const mains = figure(inputs, 'mains_volts');
  const label = mains === null ? 'Secondary at the mains' : `Secondary at ${show(mains, 'V', { way })} mains`;
  const shown = split(figure(answers, 'secondary_volts'), 'V', { way });
  const ohms = show(figure(answers, 'winding_ohms'), 'Ω', { way });
  const reflected = figure(answers, 'reflected_ohms');
  const seen = reflected === null ? '' : ` The load looks like ${show(reflected, 'Ω', { way })} at the primary.`;
  return { label, ...shown, sentence: `With nothing drawn. Behind it stand ${ohms} of winding: both figures go into the supply.${seen}` };
}
