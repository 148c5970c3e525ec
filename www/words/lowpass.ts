import type { CalculatorWords, Lead, Situation } from './kinds.js';
import { figure, said, text } from './plain.js';
import { show, split } from './quantity.js';
import { SPURIOUS_RULE } from './spurious.js';

/** Every text of `lowpass`. */
export const LOWPASS: CalculatorWords = {
  id: 'lowpass',
  title: 'Low-pass filter',
  summary: 'Butterworth and Chebyshev ladders that keep harmonics from the antenna, exact or with capacitors as sold.',
  paragraph:
    'Choose a family, how many parts, and where it cuts off. You get the capacitors and coils, the loss at your carrier, ' +
    'what each harmonic loses, and the volts and amperes of every part. With E12 or E24 the capacitors are those that are ' +
    'sold, and the coils are fitted again so that the filter comes as near to the exact one as it can.',
  groups: { filter: 'Filter', parts: 'Parts', carrier: 'Carrier' },
  inputs: {
    family: { label: 'Family', help: 'Butterworth is flat; Chebyshev ripples a little and falls off faster.' },
    ripple_db: { label: 'Ripple', help: 'The most that is lost up to the cut-off. Small ripple is a good match: 0.01 dB reflects less than half a percent.' },
    order: { label: 'Number of parts', help: 'Capacitors and coils together, 2 to 9; a Chebyshev ladder has an odd number.', phrase: 'the number of parts' },
    cutoff_hertz: { label: 'Cut-off', help: 'Butterworth: 3 dB are lost here. Chebyshev: the ripple ends here.' },
    ohms: { label: 'Resistance at both ends', help: 'Of the line, 50 or 75 Ω.' },
    first: { label: 'First part', help: 'At the transmitter. A capacitor needs fewer coils.' },
    series: { label: 'Capacitors', help: 'Exact, or the nearest that are sold, with the coils fitted to them.' },
    coil_q: { label: 'Q of the coils', help: 'Unloaded: 100 for a small toroid, 200 to 300 for open coils.', phrase: 'the Q of the coils' },
    carrier_hertz: { label: 'Carrier', help: 'The frequency that is to pass.' },
    carrier_watts: { label: 'Carrier power', help: 'In the load, without modulation.' },
  },
  choices: {
    family: { butterworth: 'Butterworth', chebyshev: 'Chebyshev' },
    first: { capacitor: 'capacitor to ground', coil: 'coil in line' },
    series: { exact: 'exact', E12: 'E12', E24: 'E24' },
  },
  answers: {
    capacitors: { label: 'Capacitors', phrase: 'the capacitors', help: 'From the transmitter to the antenna.' },
    coils: { label: 'Coils', phrase: 'the coils', help: 'From the transmitter to the antenna.' },
    loss_db: { label: 'Loss at the carrier', phrase: 'the loss at the carrier', help: 'By reflection and in the coils.' },
    return_loss_db: { label: 'Return loss at the carrier', phrase: 'the return loss', help: 'How far the reflection is under what comes in: 20 dB is a standing-wave ratio of 1.22.' },
    harmonic_db: { label: 'Harmonics', phrase: 'the harmonics', help: 'What the filter itself takes off, from the 2nd to the 7th.' },
    capacitor_peak_volts: { label: 'Volts on the capacitors', phrase: 'the volts on the capacitors', help: 'Peak, at the carrier. Full modulation doubles them.' },
    coil_amps: { label: 'Coil currents', phrase: 'the coil currents', help: 'At the carrier, rms.' },
    loss_watts: { label: 'Heat in the coils', phrase: 'the heat in the coils', help: 'At the carrier; full modulation adds half.' },
    pass_deviation_db: { label: 'Off in the pass band', phrase: 'the deviation in the pass band', help: 'The farthest that the loss is from the exact filter’s, up to the cut-off, coils fitted again.' },
    rounded_pass_deviation_db: { label: 'The same, coils not fitted', phrase: 'the deviation in the pass band by rounding alone', help: 'With the exact filter’s coils.' },
    harmonic_deviation_db: { label: 'Off at the 2nd harmonic', phrase: 'the deviation at the 2nd harmonic', help: 'Likewise at twice the carrier.' },
    rounded_harmonic_deviation_db: { label: 'The same, coils not fitted', phrase: 'the deviation at the 2nd harmonic by rounding alone', help: 'With the exact filter’s coils.' },
  },
  curves: {
    response: {
      title: 'What passes',
      caption: 'Power in the load against a matched load without the filter.',
      x: 'Frequency',
      y: 'Level',
      lines: { response: 'level', carrier: 'carrier', second: '2nd harmonic', third: '3rd harmonic' },
    },
  },
  how: {
    method:
      'The ladder comes from closed formulas; loss, reflection, volts and amperes from the circuit of its parts. With ' +
      'capacitors as sold the coils are moved, in a fixed number of steps, until the worst deviation from the exact filter is least.',
    holdsFor: 'Coils of a constant Q, capacitors without loss and leads without length. Above some 50 MHz leads and boxes decide.',
    checkedAgainst:
      'Prototype tables, the closed form of the loss, a published standard-value design, and ladders with lossy coils worked with other tools.',
    source: 'Matthaei, Young and Jones, 1964; fitting by C. L. Lawson’s weights, 1961.',
  },
  face: {
    lug: { answer: 'loss_db' },
    tables: [
      { heading: 'Parts', note: 'from the transmitter on', rows: [{ answer: 'capacitors' }, { answer: 'coils' }] },
      {
        heading: 'What it does',
        rows: [{ answer: 'loss_db' }, { answer: 'return_loss_db' }, { answer: 'harmonic_db' }],
      },
      {
        heading: 'What the parts must stand',
        rows: [{ answer: 'capacitor_peak_volts' }, { answer: 'coil_amps' }, { answer: 'loss_watts' }],
      },
      {
        heading: 'With capacitors as sold',
        rows: [
          { answer: 'pass_deviation_db' }, { answer: 'rounded_pass_deviation_db' }, { answer: 'harmonic_deviation_db' },
          { answer: 'rounded_harmonic_deviation_db' },
        ],
      },
    ],
    tags: [{ node: 'output', answer: 'loss_db' }],
    pictures: [{ curve: 'response' }],
    hands: [{ answer: 'coils', unit: 'H', name: 'L1', to: 'coil', as: 'henries', along: { hertz: 'carrier_hertz', amps: 'coil_amps' }, fixed: { taps: [] } }],
    near: { cutoff_hertz: 'harmonic_db', order: 'harmonic_db', coil_q: 'loss_db', series: 'pass_deviation_db', ohms: 'return_loss_db' },
    beside: {},
  },
  lead: lowpassLead,
  remarks: () => [SPURIOUS_RULE, 'The filter’s own share adds to what the tank and the tube’s pulses leave. Put it in a closed metal box, or the harmonics walk around it.'],
};

/** The lead of `lowpass`: what the second harmonic loses, then the loss of the carrier. */
function lowpassLead({ inputs, outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const second = figure(answers, 'harmonic_db[0]');
  const [loss, match] = [figure(answers, 'loss_db'), figure(answers, 'return_loss_db')];
  const carrier = said(inputs, 'carrier_hertz', 'Hz', way, 4);
  const label = carrier === '' ? '2nd harmonic' : `2nd harmonic of ${carrier}`;
  const fitted = figure(answers, 'pass_deviation_db');
  const sold = fitted === null ? '' : ` With ${text(inputs, 'series')} capacitors it is at most ${show(fitted, 'dB', { way })} off the exact filter in the pass band.`;
  const lost = loss === null ? 'The carrier does not come through.' : `The carrier loses ${show(loss, 'dB', { way })}; its return loss is ${show(match, 'dB', { way })}.`;
  return { label, ...split(second, 'dB', { way }), sentence: `${lost}${sold}` };
}
