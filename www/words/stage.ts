import { CHART_AGREEMENT } from './agreement.js';
import type { CalculatorWords, Lead, Situation } from './kinds.js';
import { figure } from './plain.js';
import { show, split } from './quantity.js';
import { PLATE_LINES } from './plate-lines.js';
import { HUM_ANSWERS, REST_ANSWERS, STAGE_GROUPS, STAGE_INPUTS } from './triode.js';

/** Every text of `stage`. */
export const STAGE: CalculatorWords = {
  id: 'stage',
  title: 'Stage',
  summary: 'One resistance-coupled triode: gain, corners, swing, distortion, and the volts at every pin.',
  paragraph:
    'One triode with a plate resistor, a cathode resistor and a coupling capacitor. You get where the tube rests, its ' +
    'gain and the two frequencies where the gain falls off, how many volts it can give and how much it bends them, what ' +
    'your meter should read at each pin, what to buy, and the wiring pin by pin. The plate curves carry the load lines ' +
    'of your own parts.',
  groups: { ...STAGE_GROUPS, source: 'What drives it', load: 'What it feeds' },
  inputs: {
    ...STAGE_INPUTS,
    source_ohms: {
      label: 'Source resistance',
      help: 'Of whatever drives the grid. With the input capacitance it sets the upper corner. 0 for none.',
    },
    coupling_farads: {
      label: 'Coupling capacitor',
      help: 'From the plate to the load. A smaller one passes less of the low notes.',
    },
    load_ohms: { label: 'Load', help: 'The resistance that follows: most often the next grid’s resistor.' },
    output_volts: {
      label: 'Output for the distortion',
      help: 'Volts rms at the load at which distortion is told. Empty: half of the most it can give.',
    },
  },
  choices: { tube: {} },
  answers: {
    gain: {
      label: 'Gain',
      phrase: 'the gain',
      help: 'Volts at the load for one volt at the grid, at the frequency where most gets through.',
    },
    gain_db: { label: 'Gain in dB', phrase: 'the gain', help: 'The same: 20 dB is ten times the volts.' },
    ...REST_ANSWERS,
    output_ohms: {
      label: 'Output resistance',
      phrase: 'the output resistance',
      help: 'At the plate, the plate resistor included.',
    },
    input_farads: {
      label: 'Input capacitance',
      phrase: 'the input capacitance',
      help: 'What the grid shows to the source, multiplied by the gain.',
    },
    low_corner_hertz: {
      label: 'Lower corner',
      phrase: 'the lower corner',
      help: 'Here 3 dB of the low notes are gone.',
    },
    high_corner_hertz: {
      label: 'Upper corner',
      phrase: 'the upper corner',
      help: 'Here 3 dB of the high notes are gone.',
    },
    max_output_volts: {
      label: 'Most it can give',
      phrase: 'the most it can give',
      help: 'Volts rms at the load at 1 kHz when the grid just reaches its cathode or the current just stops.',
    },
    distortion_percent: {
      label: 'Distortion',
      phrase: 'the distortion',
      help: 'Second to seventh harmonic together, at the output named, at 1 kHz.',
    },
    harmonics_db: {
      label: 'Harmonics',
      phrase: 'the harmonics',
      help: 'Second to seventh, against the note itself.',
    },
    ...HUM_ANSWERS,
  },
  curves: {
    plate_curves: {
      title: 'Plate curves',
      caption: 'Plate current against plate volts at several grid volts, with the load lines of your parts.',
      x: 'Plate to cathode',
      y: 'Plate current',
      lines: PLATE_LINES,
    },
    response: { title: 'Gain against frequency', caption: 'Gain, source to load.', x: 'Frequency', y: 'Gain', lines: { response: 'gain' } },
  },
  how: {
    method:
      'The drawing is solved node by node: at rest by Newton’s method, then for small signals at each frequency. Swing ' +
      'and distortion come from the whole circuit going through one cycle at 1 kHz again and again until it repeats. The ' +
      'tube is a space-charge law with the initial speed of the electrons and the spread of mu along the cathode. Hiss is ' +
      'the thermal noise of every resistor at 293 K and of the tube, as 2.5/gm in its grid’s lead, summed by power from ' +
      '300 to 3,000 Hz.',
    holdsFor:
      'Plates from about 60 V up and grids that stay negative. Grid current is left out and said where it begins. So is the flicker of ' +
      'old or poor tubes, and what a heater or a lead near the grid picks up.',
    checkedAgainst: `${CHART_AGREEMENT} Whole stages worked independently, node by node and in time; their hum and hiss so too, within 0.01 dB.`,
    source:
      'Space charge with initial velocities: I. Langmuir, Physical Review 21, 1923. Nodal analysis: Ho, Ruehli and ' +
      'Brennan, 1975. Noise: H. Nyquist, Physical Review 32, 1928; W. A. Harris, RCA Review 5, 1941. Tubes: the makers’ data sheets, named with each tube.',
  },
  face: {
    lug: { answer: 'gain' },
    tables: [
      {
        heading: 'Answers',
        rows: [
          { answer: 'plate_volts' },
          { answer: 'cathode_volts' },
          { answer: 'plate_amps' },
          { answer: 'gain_db' },
          { answer: 'max_output_volts' },
          { answer: 'distortion_percent' },
          { answer: 'low_corner_hertz' },
          { answer: 'high_corner_hertz' },
          { answer: 'output_ohms' },
          { answer: 'input_farads' },
          { answer: 'bias_volts' },
          { answer: 'plate_watts' },
          { answer: 'gm' },
          { answer: 'plate_resistance' },
          { answer: 'mu' },
          { answer: 'harmonics_db' },
        ],
      },
      {
        heading: 'Hum and hiss',
        note: 'at the output named, or half of the most',
        rows: [
          { answer: 'hum_db' },
          { answer: 'hiss_db' },
          { answer: 'hum_volts' },
          { answer: 'hiss_volts' },
          { answer: 'hum_cure_farads' },
          { answer: 'hum_cure_ohms' },
          { answer: 'hum_cure_db' },
        ],
      },
    ],
    tags: [
      { node: 'plate', answer: 'plate_volts' },
      { node: 'cathode', answer: 'cathode_volts' },
      { node: 'output', answer: 'max_output_volts' },
    ],
    pictures: [{ curve: 'plate_curves' }, { curve: 'response', cursor: 1000 }],
    near: {
      tube: 'plate_volts',
      supply_volts: 'plate_volts',
      plate_ohms: 'plate_volts',
      cathode_ohms: 'cathode_volts',
      cathode_farads: 'gain_db',
      grid_volts: 'bias_volts',
      source_ohms: 'high_corner_hertz',
      coupling_farads: 'low_corner_hertz',
      load_ohms: 'max_output_volts',
      load_farads: 'high_corner_hertz',
      output_volts: 'distortion_percent',
      ripple_volts: 'hum_db',
      ripple_hertz: 'hum_db',
      decoupling_ohms: 'plate_volts',
      decoupling_farads: 'low_corner_hertz',
    },
    beside: {},
  },
  lead: stageLead,
};

/** The lead of `stage`: the gain, and where the tube rests. */
function stageLead({ outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const gain = figure(answers, 'gain');
  const label = 'Gain, grid to load';
  const volts = (path: string, digits = 3): string => show(figure(answers, path), 'V', { digits, way });
  const most = answers['max_output_volts'];
  const room = most === null ? ' It has no room to swing.' : ` It can give ${volts('max_output_volts', 2)} rms before the tube runs out.`;
  const sentence = `That is ${show(figure(answers, 'gain_db'), 'dB', { way })}. The plate rests at ${volts('plate_volts')}.${most === undefined ? '' : room}`;
  const shown = split(gain, '1', { way });
  return { label, figure: shown.figure, unit: gain === null ? '' : 'times', sentence };
}
