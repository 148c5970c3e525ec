import { CHART_AGREEMENT } from './agreement.js';
import type { CalculatorWords, FieldWords } from './kinds.js';
import { HUM_ANSWERS, REST_ANSWERS, STAGE_GROUPS, STAGE_INPUTS } from './triode.js';
import { MICROPHONE_ANSWERS, MICROPHONE_INPUTS } from './microphone.js';
import { VOICE_FACE } from './voice-face.js';
import { voiceLead, voiceRemarks } from './voice-lead.js';

const TONE_PARTS: Readonly<Record<string, FieldWords>> = {
  tone_parts: { label: 'Parts of the tone network', help: 'The resistors and capacitors around the two knobs.' },
  'tone_parts.r_in': { label: 'Bass feed resistor', help: 'From the switch to the top of Bass.' },
  'tone_parts.r_low': { label: 'Bass foot resistor', help: 'From the bottom of Bass to ground.' },
  'tone_parts.r_mix': { label: 'Mixing resistor', help: 'From the wiper of Bass to the wiper of Treble.' },
  'tone_parts.c_bass_top': { label: 'Upper bass capacitor', help: 'From the top of Bass to its wiper.' },
  'tone_parts.c_bass_bottom': { label: 'Lower bass capacitor', help: 'From the wiper of Bass to its bottom.' },
  'tone_parts.c_treble_top': { label: 'Upper treble capacitor', help: 'From the switch to the top of Treble.' },
  'tone_parts.c_treble_bottom': { label: 'Lower treble capacitor', help: 'From the bottom of Treble to ground.' },
};

/** Every text of `voice`. */
export const VOICE: CalculatorWords = {
  id: 'voice',
  title: 'Voice',
  summary: 'A microphone stage with a switched coupling capacitor, two tone knobs and a level: what each does to speech.',
  paragraph:
    'Set up one triode after a microphone, with up to six coupling capacitors on a switch, bass and treble knobs and a ' +
    'level control. You get the gain at each position, the lift of the consonants from 2.2 to 2.8 kHz, the headroom for ' +
    'your microphone, the volts to expect at every pin with your own meter, what to buy, and how to wire it seen from ' +
    'below the socket. Everything is worked from one circuit, here in the page, with or without a network.',
  groups: {
    ...STAGE_GROUPS,
    microphone: 'Microphone',
    switch: 'Coupling switch',
    tone: 'Tone',
    level: 'Level',
    load: 'What it feeds',
    hearing: 'On the air',
    wish: 'Which capacitor?',
  },
  inputs: {
    ...STAGE_INPUTS,
    microphone_volts: {
      label: 'Microphone',
      phrase: 'the microphone’s volts',
      help: 'Volts rms that your voice gives at your distance, with nothing connected to the microphone.',
    },
    microphone_ohms: {
      label: 'Microphone resistance',
      help: 'Its own resistance, or as seen through its transformer: times the ratio squared. Dynamic ones have some 200 Ω, or 50 k with a transformer. 0 for none.',
    },
    microphone_farads: {
      label: 'Microphone capacitance',
      help: 'For a crystal or ceramic microphone, its own capacitance, in series: with the grid resistor it sets the bass. Leave it empty for any other.',
    },
    ...MICROPHONE_INPUTS,
    positions: { label: 'Positions of the switch', help: 'One coupling capacitor each, one to six.' },
    'positions[]': { label: 'Position', help: 'A name and a coupling capacitor.' },
    'positions[].label': { label: 'Name', help: 'What you will write beside the switch.' },
    'positions[].farads': {
      label: 'Coupling capacitor',
      help: 'From the plate to the tone network. A smaller one thins the low notes and leaves the consonants.',
    },
    tone: { label: 'Tone network', help: 'Two knobs, bass and treble, or none.' },
    bass_ohms: { label: 'Bass pot', help: 'The whole resistance of the control.' },
    treble_ohms: { label: 'Treble pot', help: 'The whole resistance of the control.' },
    ...TONE_PARTS,
    bass: {
      label: 'Bass',
      phrase: 'Bass',
      help: 'Resistance below the wiper, in percent of the whole. Up is more bass.',
      percent: true,
    },
    treble: {
      label: 'Treble',
      phrase: 'Treble',
      help: 'Resistance below the wiper, in percent of the whole. Up is more treble.',
      percent: true,
    },
    level_ohms: { label: 'Level pot', help: 'The whole resistance of the control.' },
    level: {
      label: 'Level',
      phrase: 'Level',
      help: 'Resistance below the wiper, in percent of the whole. At 0 nothing passes.',
      percent: true,
    },
    load_ohms: { label: 'Load', help: 'The resistance that follows the level wiper: most often the next grid’s resistor.' },
    noise: {
      label: 'Noise',
      help: 'What the listener hears beside you. Band noise is as strong as your speech, heavy noise 6 dB stronger.',
    },
    receiver_hertz: {
      label: 'Receiver passes up to',
      phrase: 'the receiver’s highest frequency',
      help: 'The highest note that the far receiver lets through. Bands above it count as lost.',
    },
    want_lift_db: {
      label: 'Lift wanted',
      help: 'How far the consonants should rise against the first position. The capacitor for it is worked out.',
    },
    want_intelligibility: {
      label: 'Intelligibility wanted',
      phrase: 'the wanted intelligibility',
      help: 'How well speech is to be understood in the noise, 0 to 1. The capacitor for it is worked out. At equal peaks it may help less.',
    },
    want_position: { label: 'At position', phrase: 'the position for the wish', help: 'The position whose capacitor is to give it, counted from 1.' },
  },
  choices: {
    tube: {},
    tone: { none: 'none', 'two-knob': 'bass and treble' },
    noise: { quiet: 'quiet', band: 'band noise', heavy: 'heavy noise' },
  },
  answers: {
    gain_db_1k: {
      label: 'Gain at 1 kHz',
      phrase: 'the gain at 1 kHz',
      help: 'From the microphone to the load. 20 dB is ten times the volts; under 0 dB comes out less than goes in.',
    },
    lift_db: {
      label: 'Lift, 2.2–2.8 kHz',
      phrase: 'the lift',
      help: 'How far 2.2 to 2.8 kHz rises against 300 to 500 Hz, compared with position 1.',
      signed: true,
    },
    output_volts: {
      label: 'Output at 1 kHz',
      phrase: 'the output',
      help: 'Volts rms at the load from your microphone’s volts.',
    },
    level_change_db: {
      label: 'Speech power',
      phrase: 'the change of speech power',
      help: 'How much more or less power average speech has at the load, against position 1.',
      signed: true,
    },
    loudness_change_db: {
      label: 'Loudness',
      phrase: 'the change of loudness',
      help: 'The same as the ear weighs it (A-weighting): how much louder or quieter it seems.',
      signed: true,
    },
    intelligibility: {
      label: 'Intelligibility, 0 to 1',
      phrase: 'the intelligibility',
      help:
        'How much of what makes speech understood stands above the noise, every position brought to equal power. It ' +
        'ranks positions for an average voice and ear; a higher one may help in noise, and at equal peaks it need not.',
    },
    headroom_db: {
      label: 'Before it clips',
      phrase: 'the headroom',
      help: 'How much louder than your microphone’s volts the position with the least room takes.',
    },
    ...MICROPHONE_ANSWERS,
    lift_farads: {
      label: 'Capacitor for the lift',
      phrase: 'the capacitor for the lift',
      help: 'The exact value that gives the lift you asked for.',
    },
    intelligibility_farads: {
      label: 'Capacitor for the index',
      phrase: 'the capacitor for the intelligibility',
      help: 'The exact value that makes speech as well understood as you asked, in the noise chosen above.',
    },
    sold_farads: {
      label: 'To buy',
      phrase: 'the preferred values',
      help: 'The E12 value nearest to the exact one, in the middle, and its neighbours. With two wishes they are for the lift.',
    },
    sold_lift_db: { label: 'Lift with each', phrase: 'the lift with each', help: 'What each gives against the first position.', signed: true },
    sold_intelligibility: {
      label: 'Intelligibility with each',
      phrase: 'the intelligibility with each',
      help: 'At equal power in the noise chosen. A higher one may help in noise, and at equal peaks it need not.',
    },
    sold_output_volts: { label: 'Output with each', phrase: 'the output with each', help: 'At 1 kHz: what the meter shows falls as the lift grows.' },
    ...REST_ANSWERS,
    ...HUM_ANSWERS,
    source_ohms_seen: {
      label: 'Resistance ahead of it',
      phrase: 'the resistance ahead of the capacitor',
      help: 'What the coupling capacitor sees at the plate: the tube and the plate resistor together.',
    },
    load_ohms_seen: {
      label: 'What it works into',
      phrase: 'what the capacitor works into',
      help: 'Tone, level and load together, at 1 kHz.',
    },
  },
  curves: {
    response: {
      title: 'Gain against frequency',
      caption: 'Gain, microphone to load. Hatched: the two bands compared.',
      x: 'Frequency',
      y: 'Gain',
      positions: true,
    },
    speech: {
      title: 'Speech against noise',
      caption: 'Average speech at equal power in each one-third octave, and the noise.',
      x: 'Frequency',
      y: 'Level in the band',
      positions: true,
      lines: { noise: 'noise' },
    },
  },
  how: {
    method:
      'The whole drawing is solved node by node: first at rest, then at each frequency for each position of the switch, ' +
      'with the knobs and the load in place. The tube is a space-charge law with the initial speed of the electrons and ' +
      'the spread of mu along the cathode, fitted to data-sheet points. Lift is the mean of the response in dB over ' +
      '2,200 to 2,800 Hz less that over 300 to 500 Hz, spaced by ratio, less the same at position 1. Intelligibility is the ' +
      'one-third octave index of ANSI S3.5 for speech of normal effort, brought to equal power, over pink noise. Hiss is ' +
      'the thermal noise of every resistor at 293 K and of the tube, as 2.5/gm in its grid’s lead, from 300 to 3,000 Hz.',
    holdsFor:
      'Plates from about 60 V up and grids that stay negative. Grid current is left out and said where it begins. Parts ' +
      'are taken as pure; wiring adds a few picofarads of its own.',
    checkedAgainst:
      `${CHART_AGREEMENT} A first-order network in closed form, where a time constant of 157 µs gives 8.00 dB of lift. ` +
      'The tone network, whole stages, their hum and their hiss by an independent nodal analysis. The index in 19 cases computed apart, to 0.000001.',
    source:
      'Tone network: E. J. James, Wireless World, February 1949. Space charge with initial velocities: I. Langmuir, ' +
      'Physical Review 21, 1923. Noise: H. Nyquist, Physical Review 32, 1928; W. A. Harris, RCA ' +
      'Review 5, 1941. Speech: ANSI S3.5-1997. A-weighting: IEC 61672-1. Nodal analysis: Ho, Ruehli and Brennan, 1975.',
  },
  face: VOICE_FACE,
  lead: voiceLead,
  remarks: voiceRemarks,
};
