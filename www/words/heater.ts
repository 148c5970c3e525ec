import type { CalculatorWords, Lead, Situation } from './kinds.js';
import { figure } from './plain.js';
import { show, split } from './quantity.js';

/** Every text of `heater`. */
export const HEATER: CalculatorWords = {
  id: 'heater',
  title: 'Heater',
  summary: 'Heaters on a winding, side by side or in a string: current, volts at the pins, dropping resistor, heater to cathode.',
  paragraph:
    'List the tubes, or heaters of your own, and the winding that feeds them. You get the current, what arrives at the pins ' +
    'after winding and leads, the resistor that sets it right, which way to use a tapped heater, and the volts between each ' +
    'heater and its cathode against the tube’s limit.',
  groups: { heaters: 'The heaters', winding: 'What feeds them' },
  inputs: {
    heaters: { label: 'Heaters', help: 'One to twelve. In a string the first stands next to the grounded end of the winding.' },
    'heaters[]': { label: 'Heater', help: 'A tube from the table, or volts and amperes from a sheet.' },
    'heaters[].tube': { label: 'Tube', help: 'Its heater and its limit come from the table.' },
    'heaters[].volts': { label: 'Rated volts', help: 'For a tube that is not in the table: from its sheet, end to end.' },
    'heaters[].amps': { label: 'Rated current', help: 'From its sheet, end to end.' },
    'heaters[].tapped': { label: 'It has a tap', help: 'In its middle, so that the halves may stand side by side. Known for a tube of the table.' },
    'heaters[].cathode_volts': { label: 'Cathode', phrase: 'the cathode’s volts', help: 'Volts dc from this tube’s cathode to ground, with no signal.' },
    arrangement: { label: 'Joined', help: 'Side by side on the winding, or one after the other in a string.' },
    winding_volts: { label: 'Winding', phrase: 'the winding’s volts', help: 'Rms, read with nothing connected. A winding marked 6.3 V at 2 A reads more than 6.3 V then.' },
    winding_amps: { label: 'Winding’s rating', help: 'The current that it is marked with.' },
    winding_ohms: { label: 'Winding resistance', help: 'Its own and what comes through from the primary. The transformer’s page gives it. 0 for none.' },
    lead_ohms: { label: 'Leads', phrase: 'the leads', help: 'Both leads together. Two times a metre of 1 mm² has 0.035 Ω. 0 for none.' },
    series_ohms: { label: 'Resistor fitted', phrase: 'the resistor fitted', help: 'In line with them. 0 for none: the answers say which one would set it right.' },
    elevate_volts: { label: 'Winding lifted to', phrase: 'the volts the winding is lifted to', help: 'Volts dc from the winding to chassis; the drawing’s ground is then that point. Some 40 V helps against hum and where a cathode stands high. 0 where it is grounded.' },
  },
  choices: {
    'heaters[].tube': {},
    arrangement: { parallel: 'side by side', series: 'in a string' },
    heater_way: { whole: 'as it is', end_to_end: 'end to end', halves: 'halves side by side' },
  },
  answers: {
    amps: { label: 'From the winding', phrase: 'the current from the winding', help: 'Rms, with the heaters hot.' },
    volts_at_heater: { label: 'At the heater', phrase: 'the volts at the heater', help: 'Rms, end to end; of the heater that is furthest from its rating.' },
    series_resistor_ohms: { label: 'Resistor that sets it right', phrase: 'the resistor that sets it right', help: 'In line with the heaters, the whole of it. 0 where the winding gives no more than they want.' },
    series_resistor_watts: { label: 'Heat in that resistor', phrase: 'the heat in that resistor', help: 'Fit twice this.', prefix: '' },
    heater_volts: { label: 'At each heater', phrase: 'the volts at each heater', help: 'Rms, end to end as joined.' },
    heater_rated_volts: { label: 'Each is rated', phrase: 'the rated volts', help: 'Rms, as joined.' },
    heater_way: { label: 'How each is joined', phrase: 'how each is joined', help: 'A tapped heater goes the way that suits better: end to end with the tap free, or both ends to one side and the tap to the other.' },
    heater_cathode_volts: { label: 'Heater to cathode, dc', phrase: 'the volts from heater to cathode', help: 'Without the heater’s own.' },
    heater_cathode_peak_volts: { label: 'Heater to cathode, peak', phrase: 'the peak volts from heater to cathode', help: 'With the crest of the heater’s own added. This is held against the limit.' },
  },
  curves: {},
  how: {
    method:
      'Each heater is a resistor of its rated volts over its rated current, and the drawing is solved with the winding, its ' +
      'resistance and the leads. A tapped heater is used the way that is nearer to the winding’s volts, or to the string’s current.',
    holdsFor:
      'Hot heaters near their rating: their resistance is taken as constant. In truth it falls when they run cool, so that low ' +
      'volts come out a little less low. Cold, they take five to ten times as much.',
    checkedAgainst: 'Ratings of the data sheets and Ohm’s law, side by side and in strings.',
    source: 'Heaters and limits: the makers’ data sheets, from memory. Within 10 % of the rating: RCA Receiving Tube Manual, from memory.',
  },
  face: {
    lug: { answer: 'volts_at_heater' },
    tables: [
      { heading: 'Answers', rows: [{ answer: 'amps' }, { answer: 'series_resistor_ohms' }, { answer: 'series_resistor_watts' }] },
      {
        heading: 'Each heater',
        rows: [
          { answer: 'heater_volts' },
          { answer: 'heater_rated_volts' },
          { answer: 'heater_way' },
          { answer: 'heater_cathode_volts' },
          { answer: 'heater_cathode_peak_volts' },
        ],
      },
    ],
    tags: [],
    pictures: [],
    near: {
      'heaters[].tube': 'volts_at_heater', 'heaters[].volts': 'volts_at_heater', arrangement: 'volts_at_heater', winding_volts: 'volts_at_heater',
      winding_amps: 'amps', winding_ohms: 'volts_at_heater', lead_ohms: 'volts_at_heater', series_ohms: 'volts_at_heater',
    },
    beside: { 'heaters[].volts': ['heaters[].amps', 'heaters[].tapped'], 'heaters[].tube': ['heaters[].cathode_volts'], winding_volts: ['winding_amps', 'elevate_volts'] },
  },
  lead: heaterLead,
};

/** So near to its rating a heater is well, in percent. */
const WELL = 5;

/** The lead of `heater`: the volts at the pins against the rating. */
function heaterLead({ outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const volts = figure(answers, 'volts_at_heater');
  const shown = split(volts, 'V', { way });
  const amps = show(figure(answers, 'amps'), 'A', { way });
  const label = 'At the heater';
  if (volts === null) return { label, ...shown, sentence: 'There are no volts for these values.' };
  const [rated, got] = [answers['heater_rated_volts'], answers['heater_volts']];
  const index = Array.isArray(got) ? got.indexOf(volts) : -1;
  const want = Array.isArray(rated) && typeof rated[index] === 'number' ? rated[index] : null;
  if (want === null) return { label, ...shown, sentence: `They take ${amps} together.` };
  const off = 100 * (volts / want - 1);
  const against = Math.abs(off) < 0.05 ? 'That is its rating.' : `That is ${show(Math.abs(off), '%', { digits: 2, way })} ${off > 0 ? 'over' : 'under'} its ${show(want, 'V', { way })}.`;
  const ohms = figure(answers, 'series_resistor_ohms') ?? 0;
  const mend = off > WELL && ohms > 0 ? ` ${show(ohms, 'Ω', { digits: 2, way })} in line sets it right.` : '';
  return { label, ...shown, sentence: `${against} They take ${amps} from the winding.${mend}` };
}
