import type { CalculatorWords, Lead, Situation } from './kinds.js';
import { at, figure, list, said } from './plain.js';
import { show, split } from './quantity.js';

/** Under this many dB from its best a frequency is said to be at the best. */
const AT_BEST_DB = 0.05;
/** The range looked over, in hertz: a best at its end is no peak and is not placed. */
const RANGE = [0.01, 1e9] as const;

/** Every text of `filter`. */
export const FILTER: CalculatorWords = {
  id: 'filter',
  title: 'Filter',
  summary: 'Ladders of resistors, capacitors and coils: coupling, decoupling, treble cut, hum filter, divider, pad.',
  paragraph:
    'Put up to twelve branches between a source and a load, each in line or to ground, each a resistor, a capacitor, a ' +
    'coil or several of them in series or in parallel. You get what comes through at a frequency of your choice, where ' +
    'most comes through, and the corners where 3 dB are lost. Ask for a corner and name one part, and its value is ' +
    'worked out.',
  groups: { ends: 'Source and load', branches: 'Branches, from source to load', question: 'What you ask' },
  inputs: {
    source_ohms: { label: 'Source resistance', help: 'Of whatever feeds the ladder. 0 for none.' },
    load_ohms: { label: 'Load', help: 'The resistance at the far end.' },
    branches: { label: 'Branches', help: 'From source to load, one to twelve.' },
    'branches[]': { label: 'Branch', help: 'One resistor, capacitor or coil, or several together.' },
    'branches[].place': { label: 'Place', help: 'In line with the signal, or from it to ground.' },
    'branches[].ohms': { label: 'Resistor', help: 'Leave it empty where the branch has none.' },
    'branches[].farads': { label: 'Capacitor', help: 'Leave it empty where the branch has none.' },
    'branches[].henries': { label: 'Coil', help: 'Leave it empty where the branch has none.' },
    'branches[].together': { label: 'Joined', help: 'How the parts of this branch are joined, where it has more than one.' },
    hertz: { label: 'Frequency', help: 'Where gain and phase are told.' },
    want_corner_hertz: {
      label: 'Corner wanted',
      help: 'Give it together with the part that is to be worked out.',
    },
    solve: {
      label: 'Part to work out',
      help: 'The part whose value is to give that corner, such as branches[0].farads for the capacitor of the first branch.',
    },
  },
  choices: {
    'branches[].place': { series: 'in line', shunt: 'to ground' },
    'branches[].together': { series: 'in series', parallel: 'in parallel' },
  },
  answers: {
    gain_db: {
      label: 'Gain',
      phrase: 'the gain',
      help: 'Volts at the load against the volts of the source with nothing connected. Under 0 dB some is lost.',
    },
    phase_degrees: {
      label: 'Phase',
      phrase: 'the phase',
      help: 'Of the load’s volts against the source’s. Above 0 they come early.',
    },
    best_gain_db: { label: 'Best gain', phrase: 'the best gain', help: 'Where most comes through.' },
    best_hertz: { label: 'Best at', phrase: 'the best frequency', help: 'The frequency where most comes through.' },
    corners_hertz: {
      label: 'Corners',
      phrase: 'the corners',
      help: 'Where 3 dB less comes through than at the best, rising.',
    },
    input_ohms: {
      label: 'Input resistance',
      phrase: 'the input resistance',
      help: 'The size of the impedance that the source sees, at your frequency.',
    },
    solved: { label: 'Value worked out', phrase: 'the value worked out', help: 'What the part must be to give the corner.' },
    time_seconds: {
      label: 'Time constant',
      phrase: 'the time constant',
      help: 'Resistance times capacitance; after this time 63\u00a0% of a step has happened.',
    },
  },
  curves: {
    response: {
      title: 'Gain against frequency',
      caption: 'Gain, source to load.',
      x: 'Frequency',
      y: 'Gain',
      lines: { response: 'gain' },
    },
  },
  how: {
    method:
      'The ladder is solved node by node at each frequency with complex figures. Corners are searched from the best ' +
      'frequency outward until the gain has fallen by 3.01 dB.',
    holdsFor: 'Pure parts from 0.01 Hz to 1 GHz. A real coil has winding resistance: put it in as a resistor in series.',
    checkedAgainst:
      'First-order sections in closed form, tables of high-pass and low-pass response, and ladders worked by an ' +
      'independent nodal analysis.',
    source: 'Circuit theory of any handbook; nodal analysis: Ho, Ruehli and Brennan, 1975.',
  },
  face: {
    lug: { answer: 'gain_db' },
    tables: [
      {
        heading: 'Answers',
        rows: [
          { answer: 'gain_db' },
          { answer: 'phase_degrees' },
          { answer: 'best_gain_db' },
          { answer: 'best_hertz' },
          { answer: 'corners_hertz' },
          { answer: 'input_ohms' },
          { answer: 'time_seconds' },
          { answer: 'solved' },
        ],
      },
    ],
    tags: [{ node: 'output', answer: 'gain_db' }],
    pictures: [{ curve: 'response' }],
    near: { source_ohms: 'input_ohms', load_ohms: 'gain_db', 'branches[].farads': 'corners_hertz', 'branches[].ohms': 'corners_hertz', 'branches[].henries': 'corners_hertz' },
    beside: {},
  },
  lead: filterLead,
};

/** The lead of `filter`: the gain at the frequency asked, and where the corners are. */
function filterLead({ inputs, outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const hertz = said(inputs, 'hertz', 'Hz', way, 4);
  const label = hertz === '' ? 'Gain at your frequency' : `Gain at ${hertz}`;
  const [gain, best] = [figure(answers, 'gain_db'), figure(answers, 'best_gain_db')];
  if (gain === null || best === null) return { label, ...split(null, 'dB'), sentence: 'Nothing reaches the load.' };
  const under = best - gain;
  const hertzOfBest = figure(answers, 'best_hertz') ?? 0;
  const inside = hertzOfBest > RANGE[0] * 1.5 && hertzOfBest < RANGE[1] / 1.5;
  const bestAt = inside ? `, at ${show(hertzOfBest, 'Hz', { way })}` : '';
  const place = under < AT_BEST_DB ? 'That is its best.' : `That is ${show(under, 'dB', { way })} under its best${bestAt}.`;
  return { label, ...split(gain, 'dB', { way }), sentence: `${place} ${corners(at(answers, 'corners_hertz'), way)}` };
}

function corners(found: unknown, way: Situation['way']): string {
  const hertz = Array.isArray(found) ? found.filter((each): each is number => typeof each === 'number') : [];
  if (hertz.length === 0) return 'It has no corner in range.';
  const said = list(hertz.slice(0, 4).map((each) => show(each, 'Hz', { way })));
  return hertz.length === 1 ? `Its corner is at ${said}.` : `Its corners are at ${said}.`;
}
