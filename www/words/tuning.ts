import type { CalculatorWords, Lead, Situation } from './kinds.js';
import { at, figure, list, said } from './plain.js';
import { show, split } from './quantity.js';

/** Every text of `tuning`. */
export const TUNING: CalculatorWords = {
  id: 'tuning',
  title: 'Tuning range',
  summary: 'What a coil and a variable capacitor reach, and what brings a frequency in that they miss.',
  paragraph:
    'Give the coil, the least and the most of the variable capacitor, and the strays. You get the range, the capacitance ' +
    'for your frequency, and where that is out of reach the capacitor to put beside it or in series, or the turns to add ' +
    'or take off. With a crystal you also see which of its harmonics the tank can be tuned to by mistake.',
  groups: { tank: 'Coil and capacitor', question: 'What you ask' },
  inputs: {
    henries: { label: 'Coil', help: 'Its inductance.' },
    turns: { label: 'Turns of the coil', help: 'If you know them: turns to add or take off are then told as a number.' },
    capacitor_least: { label: 'Capacitor, least', help: 'With the plates all the way out.' },
    capacitor_most: { label: 'Capacitor, most', help: 'With the plates all the way in.' },
    stray_farads: { label: 'Strays', help: 'Tube, socket, wiring and the coil’s own, together: some 20 pF. 0 for none.' },
    target_hertz: { label: 'Frequency wanted', help: 'Where the tank is to be tuned.' },
    crystal_hertz: { label: 'Crystal', help: 'What drives the stage; leave it empty where that is the frequency wanted itself.' },
  },
  choices: {},
  answers: {
    hertz_low: { label: 'Lowest', phrase: 'the lowest frequency', help: 'With the capacitor all the way in.' },
    hertz_high: { label: 'Highest', phrase: 'the highest frequency', help: 'With the capacitor all the way out.' },
    needed_farads: { label: 'Capacitor for it', phrase: 'the capacitor needed', help: 'What the variable capacitor must be for the frequency wanted.' },
    in_range: { label: 'Reached', phrase: 'whether it is reached', help: 'Whether the variable capacitor goes there.' },
    pad_farads: { label: 'Beside it, at least', phrase: 'the least pad', help: 'A fixed capacitor in parallel; with this one the variable stands all the way in.' },
    pad_most_farads: { label: 'Beside it, at most', phrase: 'the largest pad', help: 'With this one the variable stands all the way out.' },
    series_farads: { label: 'In series, at most', phrase: 'the largest series capacitor', help: 'In line with the variable one, which then stands all the way out.' },
    series_least_farads: { label: 'In series, at least', phrase: 'the least series capacitor', help: 'The variable one then stands all the way in.' },
    henries_change: { label: 'Or change the coil by', phrase: 'the change of the coil', help: 'Brings the nearer end of the range to the frequency wanted.', signed: true },
    turns_percent: { label: 'Turns, by', phrase: 'the change of turns', help: 'While the winding keeps its shape, inductance goes with the square of turns. A long coil needs somewhat more.', signed: true },
    turns_change: { label: 'Turns to add or take off', phrase: 'the turns to add or take off', help: 'Minus is off. Do it half a turn at a time and measure.', signed: true },
    harmonics_in_range: { label: 'Harmonics in reach', phrase: 'the harmonics in reach', help: 'Of the crystal, or of the frequency wanted where there is none.' },
    harmonic_hertz: { label: 'They are at', phrase: 'the harmonics’ frequencies', help: 'The tank peaks at each of them.' },
  },
  curves: {
    tuning: {
      title: 'Frequency against the capacitor',
      caption: 'With the strays beside it.',
      x: 'Variable capacitor',
      y: 'Frequency',
      lines: { tuning: 'frequency', target: 'wanted' },
    },
  },
  how: {
    method: 'Resonance of the coil with all the capacitance across it, by Thomson’s formula.',
    holdsFor: 'Tanks of a loaded Q of 5 and more. A coil near its own resonance looks larger than it is.',
    checkedAgainst: 'The handbook’s constant 25 330, and each remedy put in and worked again.',
    source: 'W. Thomson, 1853; the ARRL Handbook, from memory.',
  },
  face: {
    lug: { answer: 'needed_farads' },
    tables: [
      { heading: 'Range', rows: [{ answer: 'hertz_low' }, { answer: 'hertz_high' }, { answer: 'needed_farads' }] },
      {
        heading: 'To bring it in',
        rows: [
          { answer: 'pad_farads' }, { answer: 'pad_most_farads' }, { answer: 'series_farads' }, { answer: 'series_least_farads' },
          { answer: 'henries_change' }, { answer: 'turns_percent' }, { answer: 'turns_change' },
        ],
      },
      { heading: 'Harmonics', rows: [{ answer: 'harmonics_in_range' }, { answer: 'harmonic_hertz' }] },
    ],
    tags: [{ node: 'tank', answer: 'needed_farads' }],
    pictures: [{ curve: 'tuning' }],
    near: { henries: 'needed_farads', capacitor_least: 'hertz_high', capacitor_most: 'hertz_low', stray_farads: 'hertz_high', crystal_hertz: 'harmonic_hertz' },
    beside: {},
  },
  lead: tuningLead,
};

/** The lead of `tuning`: the capacitor for the frequency wanted, or what is missing to it. */
function tuningLead({ inputs, outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const f = (key: string, unit: string): string => show(figure(answers, key), unit, { way });
  const target = said(inputs, 'target_hertz', 'Hz', way, 4);
  const range = `The tank goes from ${f('hertz_low', 'Hz')} to ${f('hertz_high', 'Hz')}.`;
  const label = target === '' ? 'Capacitor for it' : `Capacitor for ${target}`;
  return { label, ...split(figure(answers, 'needed_farads'), 'F', { way }), sentence: `${range} ${remedy()}`.trim() };

  function remedy(): string {
    if (at(answers, 'in_range') === true) return '';
    const ways = [
      ...(figure(answers, 'pad_farads') === null ? [] : [`${f('pad_farads', 'F')} beside the capacitor`]),
      ...(figure(answers, 'series_farads') === null ? [] : [`${f('series_farads', 'F')} in series with it`]),
      `a coil with ${show(Math.abs(figure(answers, 'henries_change') ?? 0), 'H', { way })} ${(figure(answers, 'henries_change') ?? 0) > 0 ? 'more' : 'less'}`,
    ];
    return `Out of reach: ${list(ways, 'or')} brings it in.`;
  }
}
