import { COIL_ANSWERS, COIL_FACE } from './coil-answers.js';
import type { CalculatorWords, Lead, Situation } from './kinds.js';
import { at, figure, said } from './plain.js';
import { show, split } from './quantity.js';

/** Within this many percent of the wish nobody measures the difference. */
const CLOSE_PERCENT = 0.5;

/** Every text of `coil`. */
export const COIL: CalculatorWords = {
  id: 'coil',
  title: 'Coil',
  summary: 'Single-layer coils: from the pipe and wire at hand to inductance, Q, taps and a winding template.',
  paragraph:
    'Give the form, the wire, how the turns are set, and either the turns or the inductance you want. You get the ' +
    'inductance or the turns, the loss and Q, the coil’s own capacitance and resonance, taps and a link with their ' +
    'coupling, the wire to cut, and a template that prints at true size. Measure the finished coil once, and it tells ' +
    'how many turns to take off.',
  groups: {
    form: 'Form and wire',
    winding: 'Winding',
    use: 'In use',
    taps: 'Taps and bands',
    link: 'Link',
    measured: 'As measured',
    core: 'On a core instead',
  },
  inputs: {
    form_diameter: { label: 'Form, outside', help: 'The outer diameter of the pipe or tube that you wind on.' },
    wire: { label: 'Wire', help: 'By gauge or by diameter.' },
    'wire.awg': { label: 'American gauge', help: 'The AWG number; 0 is 1/0, −1 is 2/0.' },
    'wire.swg': { label: 'Imperial gauge', help: 'The SWG number.' },
    'wire.diameter': { label: 'Wire diameter', help: 'Of the bare copper.' },
    'wire.overall_diameter': { label: 'With insulation', help: 'Outer diameter of enamelled or covered wire. Leave it empty for bare wire.' },
    turns: { label: 'Turns', help: 'From end to end. Part turns count.' },
    henries: { label: 'Inductance wanted', help: 'Instead of the turns: whole turns are found for it. For a frequency and a capacitor the page of the tuning range tells how much to wind.' },
    close: { label: 'Close-wound', help: 'Turn against turn; the pitch is the wire with its insulation.' },
    pitch: { label: 'Pitch', help: 'From the middle of one turn to that of the next.' },
    turns_per_metre: { label: 'Turns in a length', help: 'As ready-made coil stock is sold, such as 8 turns per inch.' },
    winding_length: { label: 'Winding length', help: 'Turns times pitch: the turns are spread evenly over it.' },
    lead_length: { label: 'Each lead', help: 'Wire left at each end for connections.' },
    hertz: { label: 'Frequency', help: 'Where the coil works.' },
    amps: { label: 'Current', help: 'RF current through the coil, rms, if you want its volts and heat.' },
    temperature: { label: 'Temperature', help: 'Of the wire.' },
    taps: { label: 'Taps', help: 'Counted in turns from the cold end, which is the end nearest to ground.' },
    'taps[]': { label: 'Tap', help: 'Turns from the cold end.' },
    tap_use: { label: 'The rest of the coil', help: 'What happens to the turns beyond a tap.' },
    bands: { label: 'Bands', help: 'For each band its frequency and the capacitor across the tapped turns. The tap for it is found.' },
    'bands[]': { label: 'Band', help: 'One frequency with its capacitor.' },
    'bands[].hertz': { label: 'Frequency', help: 'In the middle of the band.' },
    'bands[].farads': { label: 'Capacitor', help: 'At that frequency, with all strays.' },
    link_turns: { label: 'Link turns', help: 'Of the same wire, at the same pitch. Leave it empty for no link.' },
    link_place: { label: 'Link lies', help: 'At the cold end: over its turns in a second layer, or beside them on the form.' },
    measured_hertz: { label: 'Dips at', help: 'Where the finished coil resonates with a known capacitor.' },
    measured_farads: { label: 'With', help: 'The known capacitor across it.' },
    second_hertz: { label: 'Second dip at', help: 'With another capacitor. With two readings an unknown stray drops out.' },
    second_farads: { label: 'With', help: 'The second capacitor.' },
    core_henries: { label: 'Core, for one turn', help: 'AL of a toroid: inductance over turns squared, such as 4.9 nH.', prefix: 'n' },
  },
  choices: {
    tap_use: { open: 'left open', shorted: 'shorted' },
    link_place: { over: 'over the cold end', beside: 'beside the cold end' },
  },
  answers: COIL_ANSWERS,
  curves: {
    coil_inductance: {
      title: 'Inductance over frequency',
      caption: 'Of the coil alone, and as it acts with its own capacitance. Ring: where you work.',
      x: 'Frequency',
      y: 'Inductance',
      lines: { coil_alone: 'coil alone', with_self_capacitance: 'with its capacitance', working: 'where you work' },
    },
    coil_q: {
      title: 'Q over frequency',
      caption: 'Reactance over resistance. Ring: where you work.',
      x: 'Frequency',
      y: 'Q',
      lines: { coil_q: 'Q', working: 'where you work' },
    },
  },
  how: {
    method:
      'Inductance is that of a current sheet, by Lorenz’s exact formula, with Rosa’s exact corrections for round wire. Under ' +
      '12 turns, with wire over a tenth of the diameter or turns far apart, each turn is taken as a ring, and all rings are ' +
      'summed by Maxwell’s formula. The inside of the wire counts as far as the current enters it at the frequency. ' +
      'Resistance is that of the straight wire with its skin, and Medhurst’s factor for the neighbours.',
    holdsFor:
      'One even layer of round copper wire in the open. A can or a chassis nearby lowers inductance and Q; iron is another matter.',
    checkedAgainst:
      'Nagaoka’s coefficient in 230 printed and computed rows, Rosa’s corrections, Maxwell’s examples, Bessel functions for ' +
      'the skin, and 10,000 coils summed ring by ring outside the project.',
    source:
      'L. Lorenz 1879; E. B. Rosa 1906; J. C. Maxwell 1873; NBS Circular 74; R. G. Medhurst, Wireless Engineer 1947 (his ' +
      'tables partly from memory).',
  },
  face: COIL_FACE,
  lead,
  remarks,
};

function lead({ inputs, outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const wish = at(inputs, 'henries') !== undefined && at(inputs, 'henries') !== null && figure(answers, 'exact_turns') !== null;
  const value = figure(answers, wish ? 'turns' : 'henries');
  const { figure: shown, unit } = split(value, wish ? '1' : 'H', { digits: wish ? 6 : 4, way });
  const label = wish ? 'Turns to wind' : 'Inductance';
  if (value === null) return { label, figure: shown, unit, sentence: 'No answer for these values.' };
  if (wish) {
    const off = figure(answers, 'rounding_percent') ?? 0;
    const close = Math.abs(off) < CLOSE_PERCENT ? 'as good as what you want' : `${show(Math.abs(off), '%', { digits: 2, way })} ${off > 0 ? 'more' : 'less'} than you want`;
    return { label, figure: shown, unit: value === 1 ? 'turn' : 'turns', sentence: `They give ${show(figure(answers, 'henries'), 'H', { digits: 4, way })}, ${close}.` };
  }
  const q = show(figure(answers, 'q'), '1', { digits: 2, way });
  const hertz = said(inputs, 'hertz', 'Hz', way);
  return { label, figure: shown, unit, sentence: `Q is about ${q}${hertz === '' ? '' : ` at ${hertz}`}.` };
}

/** What the rounding does and what mends it, what a measurement says, and what to buy. */
function remarks({ inputs, outcome, way }: Situation): readonly string[] {
  const answers = outcome.answers ?? {};
  const [fix, pitch] = [figure(answers, 'fix_turns'), figure(answers, 'fix_pitch')];
  const said: string[] = [];
  if (fix !== null && pitch !== null) {
    const length = show(fix * pitch, 'm', { digits: 4, way });
    said.push(`To meet it to the last digit, spread ${show(fix, '1', { way })} turns evenly over ${length}, ${show(pitch, 'm', { digits: 4, way })} from turn to turn.`);
  }
  const [factor, turns, now] = [figure(answers, 'correction'), figure(answers, 'corrected_turns'), figure(answers, 'turns')];
  if (factor !== null && turns !== null && now !== null) {
    const off = 100 * (factor - 1);
    const change = turns - now;
    const reads = Math.abs(off) < 0.05 ? 'as computed' : `${show(Math.abs(off), '%', { digits: 2, way })} ${off > 0 ? 'high' : 'low'}`;
    const act = Math.abs(change) < 0.05 ? 'leave it' : `${change > 0 ? 'put on' : 'take off'} ${show(Math.abs(change), '1', { digits: 2, way })} of a turn`;
    said.push(`Your coil is ${reads}: ${Math.abs(change) >= 1.05 ? act.replace(' of a turn', ' turns') : act}.`);
  }
  const wire = figure(answers, 'wire_to_cut');
  if (wire !== null) {
    const form = at(inputs, 'form_diameter');
    const pipe = typeof form === 'number' ? show(form, 'm', { way }) : typeof form === 'string' && form.trim() !== '' ? form.trim() : '';
    said.push(`To buy: ${pipe === '' ? 'the form' : `pipe ${pipe} across outside`}, and ${show(wire, 'm', { digits: 3, way })} of wire with both leads.`);
  }
  return said;
}
