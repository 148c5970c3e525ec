import { STAGE_GROUPS, STAGE_INPUTS } from './triode.js';
import type { CalculatorWords } from './kinds.js';
import { SUPPLY_FACE } from './supply-face.js';
import { supplyLead } from './supply-lead.js';

const METER = Object.fromEntries(Object.entries(STAGE_INPUTS).filter(([path]) => path.startsWith('meter')));
const NODE = (number: number): string => `node ${number}`;

/** Every text of `supply`. */
export const SUPPLY: CalculatorWords = {
  id: 'supply',
  title: 'Supply',
  summary: 'A rectifier supply: volts and ripple at every capacitor, peak currents, what stays charged and for how long.',
  paragraph:
    'A winding, silicon or tube rectifiers, and up to six filter sections with their loads. You get the volts and the ' +
    'ripple at every capacitor, the currents in rectifier, winding and capacitors, what everything stands at while the ' +
    'tubes are cold, how long it stays dangerous after the plug is out, and what is over its rating.',
  groups: {
    mains: 'Transformer and mains',
    rectifier: 'Rectifier',
    filter: 'Filter, from the rectifier on',
    loads: 'What is drawn',
    regulator: 'Gas regulator',
    warming: 'Warming up',
    meter: STAGE_GROUPS['meter'] ?? 'Your meter',
  },
  inputs: {
    ...METER,
    secondary_volts: {
      label: 'Secondary',
      phrase: 'the secondary volts',
      help: 'Volts rms with nothing drawn. For a tapped winding, each side: of 275-0-275 write 275.',
    },
    mains_hertz: { label: 'Mains frequency', help: '50 or 60 Hz at the wall.' },
    mains_percent: { label: 'Mains now', help: 'In per cent of what the transformer is made for.' },
    winding_ohms: {
      label: 'Winding resistance',
      help:
        'Of one conducting path: the secondary (one side of a tap) and the primary’s share, which is its resistance times ' +
        'the square of the turns ratio. A resistor in each plate lead adds to it.',
    },
    winding_amps: { label: 'Winding rating', help: 'Amperes rms that the secondary is made for. Empty if unknown.', prefix: 'm' },
    rectifier_circuit: { label: 'Circuit', help: 'How winding and rectifiers are joined.' },
    rectifier: { label: 'Rectifier', help: 'Silicon, a tube from the table, or the perveance of one plate of your own.' },
    'rectifier.name': { label: 'Name of your rectifier', help: 'What you call it. Nothing is worked from it.' },
    'rectifier.perveance': {
      label: 'Perveance of a plate',
      help: 'From the sheet’s drop: amperes over volts to the power 1.5.',
      prefix: 'm',
    },
    diode_drop: { label: 'Drop of a diode', help: 'Of one silicon diode; a bridge has two in the way. 0.8 V will do.' },
    sections: { label: 'Filter sections', help: 'Each is what leads to a node and the capacitor that stands there.' },
    'sections[]': { label: 'Section', help: 'What leads to the node, and its capacitor.' },
    'sections[].series': { label: 'Leads to it', help: 'None at the first: capacitor input. A choke at the first: choke input.' },
    'sections[].ohms': { label: 'Resistance', help: 'Of the resistor, or of the choke’s winding.' },
    'sections[].henries': { label: 'Choke', help: 'With its direct current through it.' },
    'sections[].farads': { label: 'Capacitor', help: 'From this node to ground. In a doubler the first is each of the two.' },
    'sections[].volts': { label: 'Rated volts', help: 'Working volts printed on the capacitor. Empty if unknown.' },
    'sections[].ripple_amps': {
      label: 'Rated ripple current',
      help: 'From the capacitor’s sheet. Empty if unknown.',
      prefix: 'm',
    },
    loads: { label: 'Loads', help: 'One for each section.' },
    'loads[]': { label: 'Load', help: 'What is drawn from this node.' },
    'loads[].amps': { label: 'Current', help: 'As tubes draw it, whatever the volts. 0 for none.', prefix: 'm' },
    'loads[].ohms': { label: 'Resistor', help: 'A resistor to ground, such as a divider. Empty for none.' },
    bleeder_ohms: {
      label: 'Bleeder',
      help: 'Across the last capacitor, always there: it empties the capacitors when the plug is out. Empty for none.',
    },
    regulator: { label: 'Gas regulator', help: 'At the last node, fed through the last section’s resistor. Empty for none.' },
    'regulator.volts': { label: 'Its volts', help: 'In the middle of its range.' },
    'regulator.striking_volts': { label: 'Striking volts', help: 'What must be there for it to light.' },
    'regulator.amps_least': { label: 'Least current', help: 'Under this it may go out.', prefix: 'm' },
    'regulator.amps_most': { label: 'Most current', help: 'Over this it wears fast.', prefix: 'm' },
    'regulator.regulation_volts': { label: 'Rise over its range', help: 'How much its volts move from least to most current.' },
    amps_least: { label: 'Regulated load, least', help: 'The least that its load draws.', prefix: 'm' },
    amps_most: { label: 'Regulated load, most', help: 'The most that its load draws.', prefix: 'm' },
    mains_least_percent: { label: 'Mains, lowest', help: 'In per cent; 90 where nobody knows.' },
    mains_most_percent: { label: 'Mains, highest', help: 'In per cent; 110 where nobody knows. Capacitors must stand it.' },
    rectifier_warm_seconds: {
      label: 'Rectifier warm after',
      help: 'Empty: at once for silicon, 2 s for a filament, 11 s for a cathode.',
    },
    load_warm_seconds: { label: 'Tubes draw after', help: 'Until then nothing is drawn, and the capacitors stand at their highest.' },
  },
  choices: {
    rectifier_circuit: {
      'half-wave': 'half-wave', 'centre-tap': 'full-wave, tapped winding', bridge: 'bridge', doubler: 'full-wave doubler',
    },
    'sections[].series': { none: 'nothing, a wire', resistor: 'a resistor', choke: 'a choke' },
    rectifier: {},
    regulator: {},
  },
  answers: {
    node_volts: { label: 'Volts', phrase: 'the volts', help: 'To ground, mean, with the loads drawn.' },
    node_ripple_pp: { label: 'Ripple, peak to peak', phrase: 'the ripple', help: 'What stands on the volts, lowest to highest.' },
    node_ripple_rms: { label: 'Ripple, rms', phrase: 'the ripple', help: 'The same as a meter of true rms has it.' },
    output_volts: { label: 'B+', phrase: 'B+', help: 'At the last node, mean, with the loads drawn.' },
    output_no_load_volts: { label: 'Cold tubes, at most', phrase: 'the volts with cold tubes', help: 'At the last node, loads off, bleeder kept.' },
    output_ripple_pp: { label: 'Ripple at B+', phrase: 'the ripple', help: 'At the last node, lowest to highest.' },
    rectifier_dc_amps: { label: 'Direct current', phrase: 'the direct current', help: 'All that the rectifiers deliver, bleeder included.', prefix: 'm' },
    peak_rectifier_amps: { label: 'Peak in the rectifier', phrase: 'the peak current', help: 'Each cycle, once everything is steady.', prefix: 'm' },
    winding_rms_amps: { label: 'Winding, rms', phrase: 'the winding current', help: 'What heats the winding; of one half where it is tapped.', prefix: 'm' },
    peak_inverse_volts: { label: 'Inverse across one rectifier', phrase: 'the inverse volts', help: 'The most while it does not conduct, nothing drawn.' },
    no_load_volts: { label: 'Tubes cold', phrase: 'the volts with cold tubes', help: 'Loads off, bleeder kept: what the capacitors must stand.' },
    turn_on_peak_amps: { label: 'First peak', phrase: 'the first peak', help: 'At switch-on, capacitors empty, rectifier hot, at the worst moment.', prefix: '' },
    discharge_seconds: { label: 'To 60 V, unplugged', phrase: 'the time to 60 V', help: 'Until every node is under 60 V, loads off, the bleeder alone.' },
    discharge_50_seconds: { label: 'To 50 V, unplugged', phrase: 'the time to 50 V', help: 'The same to 50 V.' },
    section_watts: { label: 'Heat in resistor or choke', phrase: 'the heat', help: 'In what leads to the node.' },
    capacitor_ripple_amps: { label: 'Capacitor current, rms', phrase: 'the ripple current', help: 'What heats the capacitor.', prefix: 'm' },
    regulation_percent: { label: 'Regulation', phrase: 'the regulation', help: 'How far the last node rises when the loads go, in per cent.' },
    critical_henries: { label: 'Critical choke', phrase: 'the critical inductance', help: 'With less, the choke’s current stops in each cycle and the volts rise.' },
    regulator_amps_least: { label: 'Regulator, least current', phrase: 'the least current', help: 'Mains low, load at its most.', prefix: 'm' },
    regulator_amps_most: { label: 'Regulator, most current', phrase: 'the most current', help: 'Mains high, load at its least.', prefix: 'm' },
    regulator_strikes: { label: 'Regulator strikes', phrase: 'whether it strikes', help: 'With the mains low and the load at its most.' },
    silicon_series_ohms: { label: 'With silicon, in each lead', phrase: 'the resistor for silicon', help: 'In place of the tube, this restores the volts at this load.' },
    silicon_no_load_volts: { label: 'With silicon, tubes cold', phrase: 'the cold volts with silicon', help: 'At the last node; no resistor brings that down.' },
    input_watts: { label: 'From the winding', phrase: 'the power', help: 'Mean power that the winding’s emf gives.', prefix: '' },
    winding_watts: { label: 'Heat in the winding', phrase: 'the heat in the winding', help: 'Of the path’s resistance.', prefix: '' },
    rectifier_watts: { label: 'Heat in the rectifiers', phrase: 'the heat in the rectifiers', help: 'All of them together, without their heaters.', prefix: '' },
  },
  curves: {
    start: {
      title: 'From switching on',
      caption: 'From switching on, cold: means of each half-cycle. The loads begin when the tubes are warm.',
      x: 'Seconds from switching on',
      y: 'Volts',
      lines: { node: NODE, highest: 'highest' },
    },
    ripple: {
      title: 'Ripple over one cycle',
      caption: 'What stands on the volts of each node, over one cycle of the mains.',
      x: 'Time',
      y: 'Volts about the mean',
      lines: { node: NODE },
    },
    charging: {
      title: 'Charging pulses',
      caption: 'The rectifier’s current over one cycle of the mains. It fills the first capacitor in short pulses.',
      x: 'Time',
      y: 'Rectifier current',
      lines: { charging: 'rectifier' },
    },
    regulation: {
      title: 'Volts against current',
      caption: 'Volts of each node as all loads rise together, from none to half as much again.',
      x: 'Current drawn',
      y: 'Volts',
      lines: { node: NODE, here: 'here', rated: 'rated' },
    },
  },
  how: {
    method:
      'The drawing is followed in time. The filter goes from sample to sample exactly, the rectifier’s current being ' +
      'one equation at each; a tube passes k·v^1.5 through its sheet’s published drop. Newton’s method finds the cycle that ' +
      'repeats, so nothing has to be waited for; 512 samples a half-cycle measure it.',
    holdsFor:
      'Transformers told by open volts and resistance: leakage inductance is left out, and a choke keeps its henries at ' +
      'every current. Loads come all at once when the tubes are warm, which is the worst case.',
    checkedAgainst:
      'Whole supplies integrated independently in time; the normalised grid of the circuit that Schade analysed, computed ' +
      'outside; printed points of rectifier sheets, which mostly come out within 1.5 %; energy in against energy out.',
    source:
      'O. H. Schade, Analysis of rectifier operation, Proc. IRE 31, 1943. Makers’ sheets of each rectifier. 60 V: IEC 62368-1; ' +
      '50 V: OSHA 29 CFR 1910.303.',
  },
  face: SUPPLY_FACE,
  lead: supplyLead,
};
