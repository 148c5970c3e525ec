import { lengthWords } from './lengths.js';
import type { CircuitPart } from './kinds.js';
import { lowered, raised, spelled } from './plain.js';
import { show } from './quantity.js';
import { told, USUAL_WAY, type Way } from './way.js';

/** What a part does, by its role in the netlist: short, for a table's column. */
const ROLES: Readonly<Record<string, string>> = {
  supply: 'B+',
  tube: 'tube',
  plate_resistor: 'plate resistor',
  cathode_resistor: 'cathode resistor',
  cathode_bypass: 'cathode bypass',
  grid_resistor: 'grid resistor',
  decoupling: 'decoupling',
  decoupling_resistor: 'decoupling resistor',
  decoupling_capacitor: 'decoupling capacitor',
  bias_supply: 'grid bias supply',
  source: 'source',
  signal: 'source',
  microphone: 'microphone',
  source_resistance: 'source resistance',
  microphone_resistance: 'microphone resistance',
  microphone_capacitance: 'microphone capacitance',
  coupling: 'coupling capacitor',
  coupling_switch: 'coupling switch',
  bass: 'bass knob',
  treble: 'treble knob',
  level: 'level knob',
  bass_in: 'bass feed resistor',
  bass_low: 'bass foot resistor',
  mixing: 'mixing resistor',
  bass_top: 'upper bass capacitor',
  bass_bottom: 'lower bass capacitor',
  treble_top: 'upper treble capacitor',
  treble_bottom: 'lower treble capacitor',
  load: 'load',
  load_capacitance: 'load capacitance',
  branch_resistor: 'resistor',
  branch_capacitor: 'capacitor',
  branch_coil: 'coil',
  transmitter: 'transmitter',
  final_tube: 'final tube',
  tube_capacitance: 'tube’s own capacitance',
  tank_input: 'input capacitor',
  tank_coil: 'tank coil',
  tank_output: 'output capacitor',
  second_coil: 'second coil',
  linked_coils: 'tank coil with link',
  link_tuning: 'link capacitor',
  winding: 'winding',
  antenna_resistance: 'antenna resistance',
  antenna_reactance: 'antenna reactance',
  ladder_capacitor: 'filter capacitor',
  ladder_coil: 'filter coil',
  blocking: 'blocking capacitor',
  tuned_coil: 'coil',
  variable: 'variable capacitor',
  pad: 'pad',
  series: 'series capacitor',
  stray: 'strays',
  meter: 'meter',
  transformer: 'transformer',
  rectifier: 'rectifier',
  filter_choke: 'filter choke',
  filter_resistor: 'filter resistor',
  filter_capacitor: 'filter capacitor',
  doubler_capacitor: 'doubler capacitor',
  load_current: 'load',
  load_resistor: 'load',
  bleeder: 'bleeder',
  regulator: 'gas regulator',
  dropper: 'dropper',
  heater_winding: 'heater winding',
  winding_resistance: 'winding resistance',
  lead: 'leads',
  heater_resistor: 'heater resistor',
  heater: 'heater',
  test_source: 'volts put in',
  primary: 'primary',
  secondary: 'secondary',
  test_load: 'load of the test',
  test_reading: 'volts read',
  mains_fuse: 'mains fuse',
  block: 'dc block',
  coil_form: 'form to wind on',
  coil_wire: 'wire of the coil',
};

/** The roles that have a word. */
/** From this many farads up a capacitor is taken for an electrolytic, as sold today. */
const POLARISED = 1e-6;

/** Whether a part of the netlist has a plus end: it is the first of its nodes. */
export function polarised(part: CircuitPart | undefined): boolean {
  return part?.kind === 'capacitor' && typeof part.value === 'number' && part.value >= POLARISED;
}

export const ROLE_CODES: readonly string[] = Object.keys(ROLES);

const KINDS: Readonly<Record<string, string>> = {
  resistor: 'resistor',
  capacitor: 'capacitor',
  coil: 'coil',
  coupled: 'coils',
  source: 'source',
  potentiometer: 'pot',
  switch: 'switch',
  triode: 'tube',
  winding: 'transformer',
  diode: 'diode',
  rectifier: 'rectifier',
  load: 'load',
  regulator: 'regulator',
  tube: 'tube',
  fuse: 'fuse',
  terminal: 'terminal',
  pipe: 'pipe',
  wire: 'wire',
};

/** The kinds of part that have a word. */
export const KIND_CODES: readonly string[] = Object.keys(KINDS);

/** Margin rules of the parts list: what the rating to buy was made from. */
const RULES: Readonly<Record<string, string>> = {
  '': '',
  twice_watts: 'twice the watts it takes or more, and large enough for its volts',
  twice_volts: 'twice the volts across it or more',
  switch_on: 'all of B+ with the mains 5\u00a0% up: it stands that until the tube is warm',
  signal_only: 'signal only: 100 V or more',
  choke_current: 'its rms current or more, at the henries asked for',
  no_load_high_line: 'all it stands at with the tubes cold and the mains high; amperes are its ripple current',
  winding_rms: 'its rms current or more',
  inverse_half_again: 'half as much again as the inverse volts with the mains high',
  rf_peak: 'half as much again as the greatest peak, full modulation counted where there is some; mica or ceramic for radio frequency',
  rf_gap: 'the gap for the greatest peak; fixed ones for half as much again',
  rf_heat: 'the current that heats it, full modulation counted where there is some',
  blocking: 'half as much again as the plate’s crests; before the network, and in none of its figures',
  slow_fuse: 'slow, the next rated value over 1.5 times full load',
  quarter_watt: 'takes next to nothing: a quarter watt will do',
};

/** The margin rules that have a sentence. */
export const RULE_CODES: readonly string[] = Object.keys(RULES);

/** What a drawing says aloud beyond the names of its parts. */
export const DRAWN = {
  schematic: 'Schematic',
  notRead: 'not read',
  opens: 'opens its field',
  danger: (volts: string): string => `Danger, ${volts}: what to do`,
} as const;

/** What a part does, for people. */
export function roleWords(role: string, way?: Way): string {
  return told(lookUp(ROLES, role), way);
}

/** A kind of part for people. */
export function kindWords(kind: string, way?: Way): string {
  return told(lookUp(KINDS, kind), way);
}

/** A margin rule for people. */
export function ruleWords(rule: string, way?: Way): string {
  return told(lookUp(RULES, rule), way);
}

/** A reference with what the part does: "R3, plate resistor". */
export function partHeading(reference: string, label: string, way?: Way): string {
  const name = lowered(told(label, way));
  const sign = told(reference, way);
  return name === sign || name === lowered(reference) ? raised(name) : `${sign}, ${name}`;
}

const FRACTIONS: Readonly<Record<string, string>> = { '0.125': '⅛', '0.25': '¼', '0.5': '½' };

/** A resistor's size as it is sold: "½ W", "2 W". */
export function wattsWords(watts: number, way: Way = USUAL_WAY): string {
  const fraction = FRACTIONS[String(watts)];
  return fraction === undefined ? show(watts, 'W', { prefix: '', way }) : `${fraction}\u00a0W`;
}

/** What to look for on the part: "½ W", "400 V", or nothing. */
export function ratingWords(row: { readonly watts?: number | null; readonly volts?: number | null; readonly amps?: number | null; readonly gap?: number | null }, way?: Way): string {
  const { watts, volts, amps, gap } = row;
  const ratings = [
    typeof watts === 'number' ? wattsWords(watts, way) : '',
    typeof volts === 'number' ? show(volts, 'V', { way }) : '',
    typeof amps === 'number' ? show(amps, 'A', { way }) : '',
    typeof gap === 'number' ? `gap ${lengthWords(gap, way)}` : '',
  ];
  return ratings.filter((each) => each !== '').join(', ');
}

function lookUp(words: Readonly<Record<string, string>>, code: string): string {
  return (Object.hasOwn(words, code) ? words[code] : undefined) ?? spelled(code);
}
