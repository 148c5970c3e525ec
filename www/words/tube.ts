import { CHART_AGREEMENT } from './agreement.js';
import { parameterWords } from './caution-fit.js';
import type { CalculatorWords, FieldWords, Figures, Lead, Situation } from './kinds.js';
import { at, counted, figure, list, text, texts } from './plain.js';
import { PLATE_LINES } from './plate-lines.js';
import { show, split } from './quantity.js';

const POINTS: Readonly<Record<string, FieldWords>> = {
  points: {
    label: 'Points from the data sheet',
    help: 'Operating points as printed: two or more, and the further apart the better.',
  },
  'points[]': { label: 'Point', help: 'One operating point as printed.' },
  'points[].plate_volts': { label: 'Plate volts', help: 'Plate to cathode.' },
  'points[].grid_volts': { label: 'Grid volts', help: 'Grid to cathode; nearly always with a minus in front.' },
  'points[].plate_amps': { label: 'Plate current', help: 'At those volts.', prefix: 'm' },
  'points[].gm': {
    label: 'Transconductance',
    help: 'At that point, if it is printed. 1,000 micromhos are 1 mS.',
    prefix: 'm',
  },
  'points[].plate_resistance': { label: 'Plate resistance', help: 'At that point, if it is printed.' },
  'points[].mu': { label: 'Mu', help: 'At that point, if it is printed.' },
  cutoff: { label: 'Cut-off points', help: 'Where the sheet says that the current stops, or falls to 10 µA. Leave it empty otherwise.' },
  'cutoff[]': { label: 'Cut-off', help: 'One pair of volts at which the current stops.' },
  'cutoff[].plate_volts': { label: 'Plate volts', help: 'Plate to cathode.' },
  'cutoff[].grid_volts': { label: 'Grid volts', help: 'Grid to cathode, with its minus.' },
};

/** Every text of `tube`. */
export const TUBE: CalculatorWords = {
  id: 'tube',
  title: 'Tube',
  summary: 'Fits a triode to points of its data sheet, and shows how near it comes and its curves.',
  paragraph:
    'For a triode that is not in the table. Type two or more operating points from its data sheet, with the ' +
    'transconductance or plate resistance where they are printed. You get the four figures of the tube’s law, how far ' +
    'each point lies from it, which figures your points do not settle, and the plate curves to hold beside the printed ' +
    'ones. The tube can then be used in every other calculator.',
  groups: { tube: 'The tube', points: 'Points from the data sheet', capacitances: 'Capacitances' },
  inputs: {
    name: { label: 'Name', help: 'What you call the tube.' },
    ...POINTS,
    grid_plate_farads: { label: 'Grid to plate capacitance', help: 'From the data sheet. 0 for none.' },
    grid_cathode_farads: { label: 'Grid to cathode capacitance', help: 'From the data sheet. 0 for none.' },
    plate_cathode_farads: { label: 'Plate to cathode capacitance', help: 'From the data sheet. 0 for none.' },
  },
  choices: {
    priors: Object.fromEntries(['perveance', 'mu', 'mu_spread', 'contact_volts'].map((name) => [name, parameterWords(name)])),
  },
  answers: {
    perveance: {
      label: 'Perveance',
      phrase: 'the perveance',
      help: 'How much current the tube passes for the volts that pull it.',
      prefix: 'm',
    },
    mu: { label: 'Mu', phrase: 'mu', help: 'How many volts at the plate one volt at the grid is worth, at high current.' },
    mu_spread: {
      label: 'Spread of mu',
      phrase: 'the spread of mu',
      help: 'How far mu differs along the cathode; it is why mu falls at low current.',
    },
    contact_volts: { label: 'Contact volts', phrase: 'the contact volts', help: 'Volts that the grid has without a battery.', prefix: '' },
    mu_error: { label: 'Mu, give or take', phrase: 'the doubt in mu', help: 'Standard deviation, from how well sheets are printed.' },
    perveance_error: {
      label: 'Perveance, give or take',
      phrase: 'the doubt in the perveance',
      help: 'Standard deviation, from how well sheets are printed.',
      prefix: 'm',
    },
    mu_spread_error: {
      label: 'Spread, give or take',
      phrase: 'the doubt in the spread of mu',
      help: 'Standard deviation, from how well sheets are printed.',
    },
    contact_volts_error: {
      label: 'Contact volts, give or take',
      phrase: 'the doubt in the contact volts',
      help: 'Standard deviation, from how well sheets are printed.',
      prefix: '',
    },
    gm_percent: {
      label: 'Transconductance off by',
      phrase: 'the distance in transconductance',
      help: 'How far the fitted transconductance lies from each point that prints one.',
      signed: true,
    },
    mu_percent: {
      label: 'Mu or plate resistance off by',
      phrase: 'the distance in mu',
      help: 'How far the fitted mu or plate resistance lies from each point that prints one.',
      signed: true,
    },
    cutoff_percent: {
      label: 'Current at cut-off off by',
      phrase: 'the distance at cut-off',
      help: 'How far the fitted current lies from 10 µA at each cut-off.',
      signed: true,
    },
    open_amps_percent: {
      label: 'Current left open',
      phrase: 'the doubt in the current',
      help: 'How far your points leave the plate current of a resistance-coupled stage open.',
    },
    open_gain_percent: {
      label: 'Gain left open',
      phrase: 'the doubt in the gain',
      help: 'How far your points leave the gain of a resistance-coupled stage open.',
    },
    tube: {
      label: 'The tube, for use elsewhere',
      phrase: 'the tube',
      help: 'The same figures as a tube of your own, which the other calculators take.',
    },
    residual_percent: {
      label: 'Off by',
      phrase: 'the distance from each point',
      help: 'How far the fitted current lies from each point, in percent.',
      signed: true,
    },
    worst_percent: {
      label: 'Worst point',
      phrase: 'the worst point',
      help: 'The point that lies furthest from the fitted tube, in percent of its current.',
      signed: true,
    },
    priors: {
      label: 'Not settled',
      phrase: 'what is not settled',
      help: 'Figures that stayed at their usual value, because your points do not settle them.',
    },
  },
  curves: {
    plate_curves: {
      title: 'Plate curves',
      caption: 'Plate current against plate volts at several grid volts. Rings: your points.',
      x: 'Plate to cathode',
      y: 'Plate current',
      lines: PLATE_LINES,
    },
  },
  how: {
    method:
      'The current follows the space-charge law with the initial speed of the electrons, averaged over a spread of mu ' +
      'along the cathode. Its four figures are found by least squares on the logarithms of current, transconductance ' +
      'and plate resistance, each weighted by how well data sheets print it. What your points leave open stays near the ' +
      'figure that most triodes have.',
    holdsFor: 'Triodes with a negative grid. Beam tubes and pentodes follow another law.',
    checkedAgainst: `${CHART_AGREEMENT} The law itself against an independent integration.`,
    source: 'Space charge with initial velocities: I. Langmuir, Physical Review 21, 1923. Points: your data sheet.',
  },
  face: {
    lug: { answer: 'mu' },
    tables: [
      {
        heading: 'Answers',
        rows: [
          { answer: 'mu' },
          { answer: 'perveance' },
          { answer: 'mu_spread' },
          { answer: 'contact_volts' },
          { answer: 'worst_percent' },
          { answer: 'open_amps_percent' },
          { answer: 'open_gain_percent' },
          { answer: 'priors' },
        ],
      },
      {
        heading: 'At each point',
        columns: 'points',
        rows: [{ answer: 'residual_percent' }, { answer: 'gm_percent' }, { answer: 'mu_percent' }],
      },
      {
        heading: 'Give or take',
        rows: [
          { answer: 'mu_error' },
          { answer: 'perveance_error' },
          { answer: 'mu_spread_error' },
          { answer: 'contact_volts_error' },
          { answer: 'cutoff_percent' },
        ],
      },
    ],
    tags: [],
    pictures: [{ curve: 'plate_curves' }],
    near: {},
    beside: {},
  },
  lead: tubeLead,
};

/** The lead of `tube`: how near it comes to the point that it misses most. */
function tubeLead({ inputs, outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const name = text(inputs, 'name').trim();
  const points = at(inputs, 'points');
  const label = `${name === '' ? 'Your tube' : name}, mu`;
  const count = Array.isArray(points) ? ` from ${counted(points.length, 'point')}` : '';
  const off = worst(answers);
  const near = off === null ? `It is fitted${count}.` : `It is fitted${count}; the worst is ${show(Math.abs(off), '%', { way })} off.`;
  const open = texts(answers, 'priors').map(parameterWords);
  const kept = open.length === 0 ? '' : ` Your points do not settle ${list(open)}: there the figure that most triodes have stands in.`;
  return { label, ...split(figure(answers, 'mu'), '1', { way }), sentence: near + kept };
}

function worst(answers: Figures): number | null {
  const named = figure(answers, 'worst_percent');
  if (named !== null) return named;
  const each = at(answers, 'residual_percent');
  if (!Array.isArray(each)) return null;
  const figures = each.filter((value): value is number => typeof value === 'number');
  return figures.length === 0 ? null : figures.reduce((most, value) => (Math.abs(value) > Math.abs(most) ? value : most));
}
