import type { CalculatorWords, Lead, Situation } from './kinds.js';
import { figure, said, text } from './plain.js';
import { show, split } from './quantity.js';
import { SPURIOUS_RULE } from './spurious.js';

/** Every text of `tank`. */
export const TANK: CalculatorWords = {
  id: 'tank',
  title: 'Tank',
  summary: 'From the load that a tube wants to the antenna: pi, pi-L, or a parallel tank with a link.',
  paragraph:
    'Say what load the tube wants, what antenna there is, the frequency and the Q. You get the capacitors and coils, ' +
    'what the network does to harmonics, what the coil keeps of the power, and the volts, amperes and plate gaps that ' +
    'the parts must stand, at the carrier and under full modulation. Both published meanings of Q are there by name.',
  groups: { network: 'Network', tube: 'Tube', antenna: 'Antenna' },
  inputs: {
    network: { label: 'Network', help: 'Two capacitors and a coil; the same with a second coil; or a tank with a link wound on its cold end.' },
    hertz: { label: 'Frequency', help: 'Where it is tuned.' },
    rf_load_ohms: { label: 'Load for the tube', help: 'What the plate wants to see. In class C about the plate volts over twice the plate current.' },
    tube_farads: { label: 'Tube’s own capacitance', help: 'Plate to ground inside the tube, with socket and leads. 0 for none.' },
    plate_volts: { label: 'Plate volts', help: 'Direct volts of the plate, for the blocking capacitor and for what can hurt.' },
    carrier_watts: { label: 'Carrier power', help: 'At the plate, without modulation.' },
    modulated: { label: 'Plate modulated', help: 'Full modulation doubles every volt at its crests.' },
    q: { label: 'Loaded Q', help: 'Ten to fifteen is usual. More takes out more of the harmonics and heats the coil more.', phrase: 'the loaded Q' },
    q_counts: {
      label: 'What Q counts',
      help: 'Handbooks up to the 1980s count the input side alone; since 1995 both sides. The parts differ by some ten percent.',
    },
    middle_ohms: { label: 'Resistance in the middle', help: 'Between the pi and its second coil. 200 to 300 Ω is customary.' },
    link_q: { label: 'Q of the link', help: 'Its reactance over the antenna’s resistance; 2 is usual.', phrase: 'the Q of the link' },
    coil_q: { label: 'Q of the coils', help: 'By themselves, unloaded: 100 for thin wire, 300 for a good open coil.', phrase: 'the Q of the coils' },
    antenna_ohms: { label: 'Antenna resistance', help: 'The part in series, where the antenna is joined.' },
    antenna_reactance: { label: 'Antenna reactance', help: 'In series with it; above 0 inductive, under 0 capacitive.' },
  },
  choices: {
    network: { pi: 'pi', 'pi-l': 'pi-L', 'parallel-link': 'parallel, with link' },
    q_counts: { 'input-side': 'input side', 'both-sides': 'both sides' },
  },
  answers: {
    input_farads: { label: 'Input capacitor', phrase: 'the input capacitor', help: 'Beside the tube’s own capacitance.' },
    henries: { label: 'Tank coil', phrase: 'the tank coil', help: 'Hand it on to the coil calculator for turns.' },
    output_farads: { label: 'Output capacitor', phrase: 'the output capacitor', help: 'On the antenna’s side; with a link the one in series with it.' },
    second_henries: { label: 'Second coil', phrase: 'the second coil', help: 'From the middle to the antenna.' },
    link_henries: { label: 'Link', phrase: 'the link', help: 'The winding that the antenna is joined to.' },
    link_coupling: { label: 'Coupling of the link', phrase: 'the coupling of the link', help: 'How much of the field is shared, 0 to 1. Move the link until it loads.' },
    loss_percent: { label: 'Lost in the coils', phrase: 'the loss in the coils', help: 'Of the power that the tube gives.' },
    loss_watts: { label: 'Heat in the coils', phrase: 'the heat in the coils', help: 'At the carrier; full modulation adds half.' },
    harmonic_db: {
      label: 'Harmonics',
      phrase: 'the harmonics',
      help: 'Power in the antenna for equal currents at the plate, against the carrier, from the 2nd to the 7th. What the tube’s pulses hold comes on top of it.',
    },
    coil_amps: { label: 'Coil current', phrase: 'the coil current', help: 'At the carrier, rms.' },
    input_peak_volts: { label: 'Volts on the input capacitor', phrase: 'the volts on the input capacitor', help: 'Peak; of full modulation where there is modulation.' },
    output_peak_volts: { label: 'Volts on the output capacitor', phrase: 'the volts on the output capacitor', help: 'Peak; of full modulation where there is modulation.' },
    antenna_peak_volts: { label: 'Volts at the antenna', phrase: 'the volts at the antenna', help: 'Peak, where it is joined.' },
    gap_metres: { label: 'Plate gap, input', phrase: 'the gap of the input capacitor', help: 'By the ARRL Handbook’s table of air capacitors, from memory.', prefix: 'm' },
    output_gap_metres: { label: 'Plate gap, output', phrase: 'the gap of the output capacitor', help: 'By the same table.', prefix: 'm' },
    standard_input_farads: { label: 'Input, as sold', phrase: 'the input capacitor as sold', help: 'The nearest of E12.' },
    standard_output_farads: { label: 'Output, as sold', phrase: 'the output capacitor as sold', help: 'The nearest of E12.' },
    standard_henries: { label: 'Coil for these', phrase: 'the coil for capacitors as sold', help: 'Tuned again, so that the load is without reactance.' },
    standard_load_ohms: { label: 'Load with these', phrase: 'the load with capacitors as sold', help: 'What the tube then sees.' },
    output_pad_farads: { label: 'Fixed part of the output', phrase: 'the fixed part of the output capacitor', help: 'The largest of E12 that leaves a tenth to a variable one.' },
    output_trim_farads: { label: 'Variable part beside it', phrase: 'the variable part of the output capacitor', help: 'What is missing to the whole; choose one that has this near its middle.' },
    blocking_farads: { label: 'Blocking capacitor, at least', phrase: 'the blocking capacitor', help: 'Its reactance is then a fiftieth of the load. Common practice, no source.' },
  },
  curves: {
    response: {
      title: 'What gets to the antenna',
      caption: 'For equal currents at the plate.',
      x: 'Frequency',
      y: 'Against the carrier',
      lines: { response: 'level', carrier: 'carrier', second: '2nd harmonic', third: '3rd harmonic' },
    },
  },
  how: {
    method:
      'The parts come from closed formulas: two L networks back to back, a third for the pi-L, a tuned secondary for the ' +
      'link. Loss, harmonics, volts and amperes come from the circuit of those parts.',
    holdsFor: 'Coils with a resistance that their Q gives at the frequency, held for harmonics; capacitors without loss. Leads and stray coupling are yours.',
    checkedAgainst:
      'A published design by either meaning of Q, a 1947 chart within the 7\u00a0% that it can be read to, and 180 networks worked with other tools.',
    source: 'F. E. Terman, Radio Engineers’ Handbook, 1943; E. Wingfield, QST, August 1983.',
  },
  face: {
    lug: { answer: 'henries' },
    tables: [
      {
        heading: 'Parts',
        rows: [
          { answer: 'input_farads' }, { answer: 'henries' }, { answer: 'output_farads' }, { answer: 'second_henries' },
          { answer: 'link_henries' }, { answer: 'link_coupling' }, { answer: 'blocking_farads' },
        ],
      },
      {
        heading: 'What they must stand',
        rows: [
          { answer: 'input_peak_volts' }, { answer: 'gap_metres' }, { answer: 'output_peak_volts' }, { answer: 'output_gap_metres' },
          { answer: 'antenna_peak_volts' }, { answer: 'coil_amps' }, { answer: 'loss_watts' },
        ],
      },
      { heading: 'What it does', rows: [{ answer: 'loss_percent' }, { answer: 'harmonic_db' }] },
      {
        heading: 'With capacitors as sold',
        rows: [
          { answer: 'standard_input_farads' }, { answer: 'standard_output_farads' }, { answer: 'standard_henries' },
          { answer: 'standard_load_ohms' }, { answer: 'output_pad_farads' }, { answer: 'output_trim_farads' },
        ],
      },
    ],
    tags: [{ node: 'plate', answer: 'input_peak_volts' }, { node: 'antenna', answer: 'antenna_peak_volts' }],
    pictures: [{ curve: 'response' }],
    hands: [
      { answer: 'henries', unit: 'H', name: 'the tank coil', to: 'coil', as: 'henries', along: { hertz: 'hertz', amps: 'coil_amps' }, fixed: { taps: [] } },
      { answer: 'second_henries', unit: 'H', name: 'the second coil', to: 'coil', as: 'henries', along: { hertz: 'hertz' }, fixed: { taps: [] } },
    ],
    near: {
      q: 'henries', coil_q: 'loss_percent', tube_farads: 'input_farads', antenna_ohms: 'output_farads',
      antenna_reactance: 'output_farads', link_q: 'link_henries',
    },
    beside: {},
  },
  lead: tankLead,
  remarks: ({ outcome }) => [
    ...('second_henries' in (outcome.answers ?? {}) ? [] : ['A pi has no second coil to stop what its output capacitor lets by: a low-pass filter after it does that.']),
    SPURIOUS_RULE,
  ],
};

/** The lead of `tank`: the coil, then the capacitors. */
function tankLead({ inputs, outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const hertz = said(inputs, 'hertz', 'Hz', way, 4);
  const label = hertz === '' ? 'Tank coil' : `Tank coil for ${hertz}`;
  const f = (key: string, unit: string): string => show(figure(answers, key), unit, { way });
  const linked = text(inputs, 'network') === 'parallel-link';
  const ends = linked
    ? `${f('input_farads', 'F')} across it; the link has ${f('link_henries', 'H')} and ${f('output_farads', 'F')} in series`
    : `${f('input_farads', 'F')} at the plate, ${f('output_farads', 'F')} at the antenna’s side`;
  return {
    label,
    ...split(figure(answers, 'henries'), 'H', { way }),
    sentence: `${ends}. The coils keep ${show(figure(answers, 'loss_percent'), '%', { way })} of the power.`,
  };
}
