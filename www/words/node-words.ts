import { raised, spelled } from './plain.js';
import { told, type Way } from './way.js';

/** Nodes, electrodes and terminals as people call them, by their code. */
const NODES: Readonly<Record<string, string>> = {
  ground: 'ground',
  supply: 'B+',
  'B+': 'B+',
  decoupled: 'decoupled B+',
  plate: 'plate',
  grid: 'grid',
  cathode: 'cathode',
  heater: 'heater',
  heater_a: 'heater supply, first lead',
  heater_b: 'heater supply, second lead',
  heater_tap: 'heater tap',
  output: 'output',
  input: 'input',
  antenna: 'antenna',
  radiating: 'inside the antenna',
  between: 'between the coils',
  link: 'link',
  tank: 'hot end of the tank',
  inner: 'between the capacitors',
  source: 'source',
  source_return: 'other lead of the source',
  mic: 'microphone',
  mic_return: 'shield of the microphone',
  output_return: 'other lead of the output',
  supply_return: 'B−',
  microphone: 'microphone',
  feed: 'behind the source’s capacitor',
  grid_return: 'grid bias supply',
  a: 'switch common, A',
  b: 'top of Level, B',
  common: 'common',
  cold_end: 'cold end',
  hot_end: 'hot end',
  top: 'top',
  wiper: 'wiper',
  bottom: 'bottom',
  bass_top: 'top of Bass',
  bass_wiper: 'wiper of Bass',
  bass_bottom: 'bottom of Bass',
  treble_top: 'top of Treble',
  treble_bottom: 'bottom of Treble',
  rectified: 'rectifier’s output',
  winding_a: 'winding, first end',
  winding_b: 'winding, other end',
  middle: 'between the two capacitors',
  end_1: 'first end',
  tap: 'tap',
  end_2: 'other end',
  b1: 'first node',
  b2: 'second node',
  b3: 'third node',
  b4: 'fourth node',
  b5: 'fifth node',
  b6: 'sixth node',
  winding: 'heater winding',
  behind_winding: 'behind the winding',
  behind_leads: 'at the end of the leads',
  behind_resistor: 'behind the resistor',
  heater_feed: 'heater feed',
  end_a: 'one heater end',
  end_b: 'other heater end',
  secondary_open: 'secondary, ac across it, nothing drawn',
  fed: 'B+ of what is fed from there',
  fed_return: 'B− of what is fed from here',
  mains_line: 'mains line',
  mains_neutral: 'mains neutral',
  mains_earth: 'mains earth',
  mains_switch: 'mains switch',
  primary_a: 'primary, one end',
  primary_b: 'primary, other end',
  frame: 'core and chassis',
};

/** The nodes and terminals that have a word of their own. */
export const NODE_CODES: readonly string[] = Object.keys(NODES);

/** A node or electrode for people, with its pin where it has one: "plate, pin 5". A pin may come as `V1.5`. */
export function nodeWords(node: string, pin?: string | null, way?: Way): string {
  const name = told(nodeName(node), way);
  const number = pin?.split('.').at(-1) ?? '';
  return number === '' ? name : `${name}, pin ${number}`;
}

/** What is not measured to ground: its name as a test point says between what the meter goes. */
const ACROSS: Readonly<Record<string, string>> = { heater: 'heater, across its pins' };

/** A test point for people, as a row's heading. */
export function pointWords(point: string, pin?: string | null, way?: Way): string {
  return Object.hasOwn(ACROSS, point) ? raised(told(ACROSS[point] ?? point, way)) : nodeHeading(point, pin, way);
}

/** The same as a heading: "Plate, pin 5". */
export function nodeHeading(node: string, pin?: string | null, way?: Way): string {
  return raised(nodeWords(node, pin, way));
}

/**
 * One end of a join for people: `V1.5` is "V1 pin 5", `S1.2` "S1 throw 2", `Bass.wiper` "wiper of Bass", `ground`
 * "ground", `bass_top` "tie point, top of Bass". A name that follows none of these stands as it is.
 */
export function terminalWords(terminal: string, way?: Way): string {
  const dot = terminal.indexOf('.');
  if (dot < 0) return told(tiePoint(terminal), way);
  const [whole, leg] = [terminal.slice(0, dot), terminal.slice(dot + 1)];
  const number = /^\d/.test(leg);
  if (/^V\d/.test(whole)) return `${whole} ${number ? `pin ${leg}` : nodeName(leg)}`;
  if (/^S\d/.test(whole)) return `${whole} ${number ? `throw ${leg}` : nodeName(leg)}`;
  return number ? `${whole} lead ${leg}` : `${nodeName(leg)} of ${whole}`;
}

/** One join of the wiring as a sentence: "R3 from V1 pin 5 to B+." `plus` is the end for the plus of an electrolytic. */
export function joinWords(from: string, to: string, part: string | null | undefined, way?: Way, plus: 'from' | 'to' | null = null): string {
  const pole = plus === null ? '' : `, plus end at ${terminalWords(plus === 'from' ? from : to, way)}`;
  const ends = `from ${terminalWords(from, way)} to ${terminalWords(to, way)}${pole}.`;
  return part === null || part === undefined || part === '' ? `Wire ${ends}` : `${part} ${ends}`;
}

/** Terminals that are there by themselves; every other node without a pin needs a tie point. */
const STANDING = new Set(['ground', 'supply', 'B+', 'heater_a', 'heater_b', 'output', 'output_return', 'source', 'source_return', 'mic', 'mic_return', 'supply_return', 'grid_return', 'cold_end', 'hot_end', 'fed', 'fed_return',
  'mains_line', 'mains_neutral', 'mains_earth', 'mains_switch', 'primary_a', 'primary_b', 'frame']);

function tiePoint(node: string): string {
  return STANDING.has(node) ? nodeName(node) : `tie point, ${nodeName(node)}`;
}

function nodeName(node: string): string {
  const known = Object.hasOwn(NODES, node) ? NODES[node] : undefined;
  if (known !== undefined) return known;
  const throws = /^throw_(\d+)$/.exec(node);
  if (throws !== null) return `switch throw ${throws[1]}`;
  const tap = /^tap_(\d+)$/.exec(node);
  if (tap !== null) return `tap ${tap[1]}`;
  const inside = /^m(\d+)$/.exec(node);
  if (inside !== null) return `inner node ${inside[1]}`;
  const link = /^h(\d+)$/.exec(node);
  if (link !== null) return `between heaters ${link[1]} and ${Number(link[1]) + 1}`;
  const rung = /^n(\d+)$/.exec(node);
  return rung === null ? spelled(node) : `node ${rung[1]}`;
}

/** What a pin of a socket leads to, by its code: that of the section in use without its number. */
const ELECTRODES: Readonly<Record<string, string>> = {
  plate_1: 'plate',
  grid_1: 'grid',
  cathode_1: 'cathode',
  plate_2: 'second plate',
  grid_2: 'second grid',
  cathode_2: 'second cathode',
  filament: 'filament, B+',
  heater: 'heater',
  heater_tap: 'heater tap',
  internal_shield: 'shield, to ground',
  shell: 'shell, to ground',
  internal_connection: 'joined inside, leave free',
};

const BASES: Readonly<Record<string, string>> = {
  octal: 'octal, 8 pins',
  noval: 'miniature, 9 pins',
  miniature_7: 'miniature, 7 pins',
  ux4: 'four pins',
};

/** The electrodes that have a word. */
export const ELECTRODE_CODES: readonly string[] = Object.keys(ELECTRODES);
/** The bases that have a word. */
export const BASE_CODES: readonly string[] = Object.keys(BASES);

/** What a pin leads to, for people. */
export function electrodeWords(code: string): string {
  return (Object.hasOwn(ELECTRODES, code) ? ELECTRODES[code] : undefined) ?? spelled(code);
}

/** A socket for people: "octal, 8 pins". */
export function baseWords(code: string): string {
  return (Object.hasOwn(BASES, code) ? BASES[code] : undefined) ?? spelled(code);
}
