import type { FieldWords } from './kinds.js';

/** The fields of a triode with the parts around it, which more than one calculator takes. */
export const STAGE_INPUTS: Readonly<Record<string, FieldWords>> = {
  tube: {
    label: 'Tube',
    help: 'A type from the table, or a tube of your own with the figures of its law.',
  },
  'tube.name': { label: 'Name of your tube', help: 'What you call it. Nothing is worked from it.' },
  'tube.perveance': {
    label: 'Perveance',
    help: 'How much current the tube passes for the volts that pull it. A small triode has 0.5 to 5 mA/V^1.5.',
    prefix: 'm',
  },
  'tube.mu': { label: 'Mu', help: 'How many volts at the plate one volt at the grid is worth, at high current.' },
  'tube.mu_spread': {
    label: 'Spread of mu',
    help: 'How far mu differs along the cathode; it is why mu falls at low current. 0.25 where you do not know it.',
  },
  'tube.contact_volts': {
    label: 'Contact volts',
    help: 'Volts that the grid has without a battery. 0.31 V where you do not know them.',
  },
  'tube.grid_plate_farads': {
    label: 'Grid to plate capacitance',
    help: 'From the data sheet. The gain multiplies it at the input. 0 for none.',
  },
  'tube.grid_cathode_farads': { label: 'Grid to cathode capacitance', help: 'From the data sheet. 0 for none.' },
  'tube.plate_cathode_farads': { label: 'Plate to cathode capacitance', help: 'From the data sheet. 0 for none.' },
  supply_volts: {
    label: 'B+',
    phrase: 'B+',
    help: 'Volts to ground at the supply’s output, with the stage drawing its current.',
  },
  plate_ohms: {
    label: 'Plate resistor',
    help: 'From B+ to the plate. A larger one gives more gain and less current.',
  },
  cathode_ohms: {
    label: 'Cathode resistor',
    help: 'From the cathode to ground. The volts across it are the bias. 0 for none.',
  },
  cathode_farads: {
    label: 'Cathode bypass',
    help: 'Across the cathode resistor. Without it, 0, the stage has less gain and less distortion.',
  },
  grid_ohms: {
    label: 'Grid resistor',
    help: 'From the grid to ground or to the bias. The data sheet says how large it may be.',
  },
  grid_volts: {
    label: 'Grid bias supply',
    help: 'Volts at the far end of the grid resistor. 0 is ground; a bias battery gives a negative figure.',
  },
  decoupling_ohms: {
    label: 'Decoupling resistor',
    help: 'Between B+ and the plate resistor. 0 for none.',
  },
  decoupling_farads: {
    label: 'Decoupling capacitor',
    help: 'To ground from where the decoupling resistor meets the plate resistor. 0 for none.',
  },
  load_farads: {
    label: 'Load capacitance',
    help: 'The cable’s and the next grid’s capacitance together. 0 for none.',
  },
  ripple_volts: {
    label: 'Ripple on B+',
    phrase: 'the ripple on B+',
    help: 'Volts rms that the supply leaves on B+. The supply’s own page gives it. 0 for none.',
  },
  ripple_hertz: {
    label: 'Ripple frequency',
    phrase: 'the ripple frequency',
    help: 'Twice the mains where the rectifier uses both halves, 100 or 120 Hz. The mains itself where it uses one.',
  },
  meter: {
    label: 'Your meter',
    help: 'What the meter itself draws changes what it reads. Test points are worked with it in place.',
  },
  'meter.ohms': {
    label: 'Meter resistance',
    help: 'For a digital meter, most often 10M on every dc range.',
  },
  'meter.ohms_per_volt': {
    label: 'Meter sensitivity',
    help: 'For a needle meter: the ohms per volt printed on its dial.',
  },
  'meter.range': { label: 'Meter range', help: 'For a needle meter: the full scale it is set to.' },
};

/** The groups that those fields stand under. */
export const STAGE_GROUPS: Readonly<Record<string, string>> = {
  stage: 'The stage',
  hum: 'Hum',
  meter: 'Your meter',
};

/** The answers about the tube at rest, the same for every calculator with a triode. */
export const REST_ANSWERS: Readonly<Record<string, FieldWords>> = {
  plate_amps: {
    label: 'Plate current',
    phrase: 'the plate current',
    help: 'With no signal.',
    prefix: 'm',
  },
  plate_volts: { label: 'Plate', phrase: 'the plate', help: 'Volts to ground, with no signal.' },
  cathode_volts: { label: 'Cathode', phrase: 'the cathode', help: 'Volts to ground, with no signal.' },
  bias_volts: {
    label: 'Bias',
    phrase: 'the bias',
    help: 'Grid to cathode, with no signal. The signal’s peak must stay smaller than this.',
  },
  plate_watts: {
    label: 'Plate dissipation',
    phrase: 'the plate dissipation',
    help: 'Heat in the plate, with no signal.',
    prefix: '',
  },
  gm: {
    label: 'Transconductance',
    phrase: 'the transconductance',
    help: 'At this point, not the data sheet’s. 1 mS is 1 mA per volt, or 1,000 micromhos.',
    prefix: 'm',
  },
  plate_resistance: {
    label: 'Plate resistance',
    phrase: 'the plate resistance',
    help: 'The tube’s own, at this point.',
  },
  mu: { label: 'Mu', phrase: 'mu', help: 'The tube’s amplification factor at this point.' },
};

/** The answers about what is heard beside the signal. */
export const HUM_ANSWERS: Readonly<Record<string, FieldWords>> = {
  hum_volts: { label: 'Hum', phrase: 'the hum', help: 'Volts rms at the load that the ripple on B+ leaves there.' },
  hum_db: {
    label: 'Hum against the signal',
    phrase: 'the hum',
    help: 'Against the output that the page judges. −60 dB is a thousandth of its volts: it is not heard with a voice.',
  },
  hiss_volts: {
    label: 'Hiss',
    phrase: 'the hiss',
    help: 'Volts rms at the load from 300 to 3,000 Hz, of every resistor at 20 °C and of the tube. A noisy tube has more.',
  },
  hiss_db: { label: 'Hiss against the signal', phrase: 'the hiss', help: 'Against the same output as the hum.' },
  hum_cure_farads: {
    label: 'Decoupling against hum',
    phrase: 'the decoupling capacitor against hum',
    help: 'The smallest preferred decoupling capacitor that brings the hum 60 dB under the signal.',
  },
  hum_cure_ohms: {
    label: 'With a resistor of',
    phrase: 'the decoupling resistor against hum',
    help: 'The stage has no decoupling resistor yet. A tenth of the plate resistor, nearest preferred value.',
  },
  hum_cure_db: { label: 'Hum with them', phrase: 'the hum with them', help: 'Against the signal, with that decoupling in place.' },
};
