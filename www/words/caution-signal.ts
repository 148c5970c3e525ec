import type { CautionContext, CautionMaker } from './caution-kinds.js';
import { counted, figure, raised, said, spelled, text } from './plain.js';
import { show } from './quantity.js';
import { positionName } from './voice-lead.js';

/** What is worth knowing about the signal: room, bias, lift, corners. */
export const SIGNAL_CAUTIONS: Readonly<Record<string, CautionMaker>> = {
  grid_current: ({ figures, way }) => ({
    heading: `the grid sits at ${show(figure(figures, 'bias_volts'), 'V', { prefix: '', digits: 2, way })}`,
    text:
      'From about half a volt below its cathode upward a grid draws a little current. The answers leave that out: expect more distortion and a ' +
      'lower gain. A larger cathode resistor moves it away.',
  }),
  cut_off: ({ f }) => ({
    heading: 'the tube is cut off',
    text:
      `${f('plate_amps', 'A')} of plate current is next to none, and the gain is small and bent. A smaller cathode ` +
      'resistor, or a grid less negative, opens it.',
  }),
  no_plate_current: () => ({
    heading: 'no plate current',
    text: 'The bias shuts the tube. A smaller cathode resistor, a grid less negative or more B+ opens it.',
  }),
  bottomed: ({ f }) => ({
    heading: `the plate rests at ${f('plate_volts', 'V')}`,
    text:
      'Nearly all of B+ is lost on the way to the plate, so there is no room to swing down. A smaller plate resistor or ' +
      'a larger cathode resistor raises it.',
  }),
  output_not_reached: ({ f }) => ({
    heading: `${f('want_volts', 'V')} is more than it gives`,
    text:
      `The stage gives ${f('most_volts', 'V')} rms at most before the grid reaches its cathode or the current stops. ` +
      'Distortion at the output you named has no figure.',
  }),
  headroom_low: (context) => ({
    heading: `${context.f('headroom_db', 'dB', 2)} before it clips`,
    text:
      `${raised(where(context))} ${microphone(context)} leaves little room, and the peaks of speech stand well above ` +
      'its rms volts. More distance to the microphone, or less gain, makes room.',
  }),
  headroom_none: (context) => ({
    heading: 'it clips',
    text:
      `${raised(where(context))} ${microphone(context)} is ${past(context)} more than the tube takes. More distance to ` +
      'the microphone, no cathode bypass or a pad ahead of the grid makes room.',
  }),
  microphone_differs: ({ f }) => ({
    heading: `${f('expected_volts', 'V', 2)} is to be expected of this microphone`,
    text:
      `Its sensitivity and your distance give that; the answers are worked with ${f('microphone_volts', 'V', 2)}. Put it in as the microphone’s ` +
      'volts, unless you have measured yours.',
  }),
  crystal_thin: ({ f, figures }) => ({
    heading: `the microphone’s bass ends at ${f('hertz', 'Hz', 2)}`,
    text:
      'Its capacitance works into the grid resistor, and below that it falls 6 dB an octave. ' +
      ((figure(figures, 'ohms') ?? 0) > 0 ? `${f('ohms', 'Ω', 2)} at the grid would bring it to ${f('full_hertz', 'Hz')}, if the tube’s sheet allows so much.` : 'A larger grid resistor keeps it.'),
  }),
  carbon_hot: ({ f, figures }) => ({
    heading: `${f('amps', 'A', 2)} through the carbon`,
    text:
      `More than about ${f('rating', 'A')} burns the granules together, and they hiss first. ` +
      ((figure(figures, 'ohms') ?? 0) > 0 ? `${f('ohms', 'Ω', 2)} in the feed hold it to that.` : 'Fewer volts hold it down.'),
    gauge: ['amps', 'rating', 'A'],
  }),
  carbon_faint: ({ f }) => ({
    heading: `${f('amps', 'A', 2)} through the carbon`,
    text: `Under about ${f('rating', 'A')} it gives little, and its sheet’s volts are not reached. More volts, or less in the feed, wakes it.`,
  }),
  lift_out_of_reach: (context) => ({
    heading: 'that lift is out of reach',
    text:
      `${wanted(context)}No capacitor at ${place(context)} gives it here: from the smallest to the largest the lift ` +
      `runs from ${signed(context, 'least_db')} to ${signed(context, 'most_db')}. The load and the tone knobs set these ends.`,
  }),
  intelligibility_out_of_reach: (context) => ({
    heading: 'that intelligibility is out of reach',
    text:
      `No capacitor at ${place(context)} makes speech so well understood in this noise: from the smallest to the largest ` +
      `the index runs from ${context.f('least', '1', 2)} to ${context.f('most', '1', 2)}. Less noise or a wider receiver moves these ends.`,
  }),
  lift_spread: (context) => ({
    heading: `${text(context.figures, 'part') || 'The capacitor'}’s ${tolerance(context)}`,
    text:
      `It moves the lift of ${place(context)} between ${context.f('least_db', 'dB')} and ${context.f('most_db', 'dB')}. ` +
      'Measure the part if you have a meter for it.',
  }),
  hum_heard: ({ figures, f, way }) => {
    const db = figure(figures, 'hum_db');
    const under = db === null ? 'too loud' : `${show(Math.abs(db), 'dB', { digits: 2, way })} ${db < 0 ? 'under' : 'over'} the signal`;
    const farads = figure(figures, 'farads');
    const ohms = figure(figures, 'ohms') === null ? 'the decoupling resistor that is there' : `${f('ohms', 'Ω')} between B+ and the plate resistor`;
    return {
      heading: `hum ${under}`,
      text:
        farads === null
          ? 'No decoupling brings it to 60 dB under the signal. Smooth B+ at the supply, with one more section there.'
          : `${f('farads', 'F')} to ground after ${ohms} brings it to ${f('cured_db', 'dB', 2)}. Smoothing B+ at the supply does as much.`,
    };
  },
  level_zero: () => ({
    heading: 'Level is at 0',
    text: 'Nothing reaches the load, so gain and lift have no figure. Turn Level up.',
  }),
  position_not_there: (context) => {
    const count = context.inputs['positions'];
    const there = Array.isArray(count) ? ` The switch has ${counted(count.length, 'position')}.` : '';
    return {
      heading: 'the switch has no such position',
      text: `The lift was wanted at ${place(context)}.${there} Name one of them, or add one.`,
    };
  },
  corner_outside: ({ figures }) => ({
    heading: `the ${corner(text(figures, 'which'))} is out of range`,
    text: 'The response has not fallen by 3 dB anywhere from 0.01 Hz to 100 MHz on that side, so it has no figure.',
  }),
  nothing_passes: () => ({
    heading: 'nothing passes',
    text: 'No signal reaches the load at any frequency: a branch blocks it or shorts it. Gain and corners have no figure.',
  }),
  best_unbounded: () => ({
    heading: 'no single best frequency',
    text: 'More and more passes, or ever as much, towards an end of the range. The best gain told is the one there.',
  }),
  corner_none: () => ({
    heading: 'no corner',
    text: 'The response stays within 3 dB of its best over the whole range.',
  }),
};

function corner(which: string): string {
  if (which.startsWith('low')) return 'lower corner';
  return which.startsWith('high') ? 'upper corner' : `${spelled(which)} corner`.trim();
}

function place({ figures, inputs }: CautionContext): string {
  const named = text(figures, 'position');
  if (named !== '') return named;
  const number = figure(figures, 'position') ?? figure(figures, 'want_position') ?? figure(inputs, 'want_position');
  return number === null ? 'that position' : positionName(inputs, number - 1);
}

function where(context: CautionContext): string {
  return context.figures['position'] === undefined ? '' : `in ${place(context)}`;
}

function microphone({ figures, inputs, way }: CautionContext): string {
  const given = said(figures, 'microphone_volts', 'V', way) || said(inputs, 'microphone_volts', 'V', way);
  return given === '' ? 'the microphone' : `${given} from the microphone`;
}

function past({ figures, way }: CautionContext): string {
  const room = figure(figures, 'headroom_db');
  return room === null ? 'much' : show(Math.abs(room), 'dB', { way });
}

function signed({ figures, way }: CautionContext, name: string): string {
  return show(figure(figures, name), 'dB', { signed: true, way });
}

function wanted({ inputs, way }: CautionContext): string {
  const lift = figure(inputs, 'want_lift_db');
  return lift === null ? '' : `You want ${show(lift, 'dB', { signed: true, way })}. `;
}

function tolerance({ figures, way }: CautionContext): string {
  const share = figure(figures, 'tolerance');
  return share === null ? 'tolerance' : `±${show(share * 100, '%', { way })}`;
}
