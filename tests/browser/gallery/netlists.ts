import type { CircuitPart, Netlist } from '../../../www/drawings/kinds.js';

/** What may differ from one netlist of a triode stage to the next. */
export interface Choice {
  readonly positions?: number;
  readonly closed?: number;
  readonly tone?: boolean;
  readonly decoupling?: boolean;
  readonly decouplingCapacitor?: boolean;
  readonly bypass?: boolean;
  readonly cathode?: boolean;
  readonly bias?: boolean;
  readonly source?: boolean;
  readonly ownCapacitor?: boolean;
  readonly loadCapacitance?: boolean;
  readonly twin?: boolean;
}

const ALL: Required<Choice> = {
  positions: 2, closed: 2, tone: true, decoupling: false, decouplingCapacitor: true, bypass: true, cathode: true, bias: false,
  source: true, ownCapacitor: false, loadCapacitance: true, twin: true,
};
const VOLTS: Readonly<Record<string, number>> = {
  supply: 263, decoupled: 250, plate: 135, cathode: 1.28, grid_return: -3, ground: 0,
};
const COUPLING = ['C3', 'C4', 'C9', 'C10', 'C11', 'C12'];

class List {
  readonly parts: CircuitPart[] = [];
  add(reference: string, role: string, kind: string, field: string, nodes: string[], value: number | string | null): void {
    this.parts.push({ reference, role, kind, field, nodes, value });
  }
  netlist(twin: boolean, tube: boolean): Netlist {
    const names = [...new Set(['ground', ...this.parts.flatMap(({ nodes }) => nodes)])];
    const pins = [
      ...(twin ? [['1', 'grid_2'], ['2', 'plate_2'], ['3', 'cathode_2']] : []),
      ['4', 'grid_1'], ['5', 'plate_1'], ['6', 'cathode_1'], ['7', 'heater'], ['8', 'heater'],
    ].map(([pin = '', electrode = '']) => ({ pin, electrode, node: null }));
    return {
      nodes: names.map((name) => ({ name, volts: VOLTS[name] ?? 0 })),
      parts: this.parts,
      tubes: tube ? [{ reference: 'V1', type: '6SL7GT', base: 'octal', pins }] : [],
    };
  }
}

/** One triode with its surroundings, as the calculators build it. */
function amplifier(list: List, given: Required<Choice>, voice: boolean): void {
  const node = voice ? 'mic' : 'source';
  const series = voice ? 'R9' : 'R6';
  const own = voice && given.ownCapacitor;
  const behind = given.source ? (own ? 'feed' : node) : 'grid';
  const emf = own || given.source ? node : 'grid';
  list.add(voice ? 'Mic' : 'Vin', voice ? 'microphone' : 'source', 'source', voice ? 'microphone_volts' : '', [emf, 'ground'], 0);
  if (own) list.add('C14', 'microphone_capacitance', 'capacitor', 'microphone_farads', [node, behind], 1e-9);
  if (given.source) list.add(series, 'source_resistance', 'resistor', voice ? 'microphone_ohms' : 'source_ohms', [behind, 'grid'], 50e3);
  list.add('B+', 'supply', 'source', 'supply_volts', ['supply', 'ground'], 263);
  if (given.decoupling) {
    list.add(voice ? 'R7' : 'R4', 'decoupling_resistor', 'resistor', 'decoupling_ohms', ['supply', 'decoupled'], 22e3);
    if (given.decouplingCapacitor) list.add('C1', 'decoupling', 'capacitor', 'decoupling_farads', ['decoupled', 'ground'], 8e-6);
  }
  list.add('R3', 'plate_resistor', 'resistor', 'plate_ohms', [given.decoupling ? 'decoupled' : 'supply', 'plate'], 220e3);
  if (given.cathode) {
    list.add('R2', 'cathode_resistor', 'resistor', 'cathode_ohms', ['cathode', 'ground'], 2200);
    if (given.bypass) list.add('C2', 'cathode_bypass', 'capacitor', 'cathode_farads', ['cathode', 'ground'], 25e-6);
  }
  if (given.bias) list.add('Bias', 'bias_supply', 'source', 'grid_volts', ['grid_return', 'ground'], -3);
  list.add('R1', 'grid_resistor', 'resistor', 'grid_ohms', ['grid', given.bias ? 'grid_return' : 'ground'], 1e6);
  list.add('V1', 'tube', 'triode', 'tube', ['plate', 'grid', given.cathode ? 'cathode' : 'ground'], null);
}

/** A netlist of `voice`. */
export function voiceNetlist(choice: Choice = {}): Netlist {
  const given = { ...ALL, ...choice };
  const list = new List();
  amplifier(list, given, true);
  if (given.positions === 1) {
    list.add('C3', 'coupling', 'capacitor', 'positions[0].farads', ['plate', 'a'], 20e-9);
  } else {
    const throws = COUPLING.slice(0, given.positions).map((reference, index) => {
      list.add(reference, 'coupling', 'capacitor', `positions[${index}].farads`, ['plate', `throw_${index + 1}`], 20e-9);
      return `throw_${index + 1}`;
    });
    list.add('S1', 'coupling_switch', 'switch', 'positions', ['a', ...throws], Math.min(given.closed, given.positions));
  }
  if (given.tone) {
    list.add('R4', 'bass_in', 'resistor', 'tone_parts.r_in', ['a', 'bass_top'], 100e3);
    list.add('Bass', 'bass', 'potentiometer', 'bass', ['bass_top', 'bass_wiper', 'bass_bottom'], 1e6);
    list.add('C5', 'bass_top', 'capacitor', 'tone_parts.c_bass_top', ['bass_top', 'bass_wiper'], 2.2e-9);
    list.add('C6', 'bass_bottom', 'capacitor', 'tone_parts.c_bass_bottom', ['bass_wiper', 'bass_bottom'], 22e-9);
    list.add('R5', 'bass_low', 'resistor', 'tone_parts.r_low', ['bass_bottom', 'ground'], 10e3);
    list.add('R6', 'mixing', 'resistor', 'tone_parts.r_mix', ['bass_wiper', 'b'], 100e3);
    list.add('C7', 'treble_top', 'capacitor', 'tone_parts.c_treble_top', ['a', 'treble_top'], 220e-12);
    list.add('Treble', 'treble', 'potentiometer', 'treble', ['treble_top', 'b', 'treble_bottom'], 1e6);
    list.add('C8', 'treble_bottom', 'capacitor', 'tone_parts.c_treble_bottom', ['treble_bottom', 'ground'], 2.2e-9);
  }
  list.add('Level', 'level', 'potentiometer', 'level', [given.tone ? 'b' : 'a', 'output', 'ground'], 500e3);
  list.add('R8', 'load', 'resistor', 'load_ohms', ['output', 'ground'], 1e6);
  if (given.loadCapacitance) list.add('C13', 'load_capacitance', 'capacitor', 'load_farads', ['output', 'ground'], 100e-12);
  return list.netlist(given.twin, true);
}

/** A netlist of `stage`. */
export function stageNetlist(choice: Choice = {}): Netlist {
  const given = { ...ALL, ...choice };
  const list = new List();
  amplifier(list, given, false);
  list.add('C3', 'coupling', 'capacitor', 'coupling_farads', ['plate', 'output'], 20e-9);
  list.add('R5', 'load', 'resistor', 'load_ohms', ['output', 'ground'], 470e3);
  if (given.loadCapacitance) list.add('C4', 'load_capacitance', 'capacitor', 'load_farads', ['output', 'ground'], 100e-12);
  return list.netlist(given.twin, given.twin);
}

/** One branch of a ladder, its kinds from `RCL`. */
export interface BranchChoice {
  readonly place: 'series' | 'shunt';
  readonly parts: string;
  readonly parallel?: boolean;
}

const SORTS: Readonly<Record<string, readonly [kind: string, key: string, role: string, value: number]>> = {
  R: ['resistor', 'ohms', 'branch_resistor', 470e3], C: ['capacitor', 'farads', 'branch_capacitor', 1e-9],
  L: ['coil', 'henries', 'branch_coil', 10],
};

/** A netlist of `filter`. */
export function filterNetlist(branches: readonly BranchChoice[], source = true): Netlist {
  const list = new List();
  const counts: Record<string, number> = {};
  let [left, rung, inner] = [branches.filter(({ place }) => place === 'series').length, 0, 0];
  const next = (): string => (left === 0 ? 'output' : `n${(rung += 1)}`);
  list.add('Source', 'source', 'source', '', ['source', 'ground'], 0);
  let here = 'source';
  if (source) {
    here = next();
    list.add('Rs', 'source_resistance', 'resistor', 'source_ohms', ['source', here], 50e3);
  }
  branches.forEach((branch, index) => {
    let to = 'ground';
    if (branch.place === 'series') {
      left -= 1;
      to = next();
    }
    let from = here;
    [...branch.parts].forEach((letter, place) => {
      const [kind, key, role, value] = SORTS[letter] ?? ['resistor', 'ohms', '', 1];
      counts[letter] = (counts[letter] ?? 0) + 1;
      const last = place + 1 === branch.parts.length;
      const end = branch.parallel === true || last ? to : `m${(inner += 1)}`;
      list.add(`${letter}${counts[letter]}`, role, kind, `branches[${index}].${key}`, [branch.parallel === true ? here : from, end], value);
      from = end;
    });
    if (to !== 'ground') here = to;
  });
  list.add('RL', 'load', 'resistor', 'load_ohms', [here, 'ground'], 1e6);
  return list.netlist(false, false);
}
