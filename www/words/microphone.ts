import type { FieldWords } from './kinds.js';

/** What is asked of a microphone beyond its volts: its data sheet, and a carbon one's battery. */
export const MICROPHONE_INPUTS: Readonly<Record<string, FieldWords>> = {
  microphone_sensitivity: {
    label: 'Sensitivity on its sheet',
    phrase: 'the microphone’s sensitivity',
    help: 'As its sheet has it: 2 mV/Pa, −54 dB re 1 V/Pa, or −60 dB re 1 V/µbar on an old one. A carbon one’s is at the current its sheet names.',
  },
  microphone_distance: {
    label: 'Talking distance',
    phrase: 'the talking distance',
    help: 'From your lips to the microphone. Nearer than about 5 cm the figure is rough.',
  },
  microphone_ratio: {
    label: 'Transformer steps up',
    phrase: 'the step-up of the microphone’s transformer',
    help: 'Volts out for each volt in. 1 without a transformer.',
  },
  carbon_volts: {
    label: 'Carbon microphone’s battery',
    phrase: 'the carbon microphone’s battery',
    help: 'The dc that feeds a carbon microphone. Leave it empty for any other.',
  },
  carbon_ohms: { label: 'Carbon resistance', phrase: 'the carbon’s resistance', help: 'Of the button with its current flowing: 30 to 500 Ω, and it changes as it is shaken.' },
  carbon_feed_ohms: { label: 'Resistance in its feed', phrase: 'the resistance in the carbon’s feed', help: 'The transformer’s primary and any resistor in line with the battery.' },
};

/** What is told of a microphone. */
export const MICROPHONE_ANSWERS: Readonly<Record<string, FieldWords>> = {
  microphone_speech_db: {
    label: 'Speech at the microphone, dB SPL',
    phrase: 'the speech at the microphone',
    help: 'Normal effort: 62.35 dB SPL at 1 m, and 6 dB more for each halving of the distance.',
  },
  microphone_expected_volts: {
    label: 'Volts to expect of it',
    phrase: 'the volts to expect of the microphone',
    help: 'Rms for speech of normal effort at your distance, with nothing connected. Voices differ by some 6 dB either way.',
  },
  microphone_low_hertz: {
    label: 'Its lowest note',
    phrase: 'the microphone’s lowest note',
    help: 'Where its capacitance and the grid resistor leave 3 dB less. Below, it falls 6 dB an octave.',
  },
  carbon_amps: { label: 'Current through the carbon', phrase: 'the carbon’s current', help: 'Direct, at rest.' },
  carbon_watts: { label: 'Heat in the carbon', phrase: 'the heat in the carbon', help: 'At rest.' },
};
