import { polarised } from '../words/part-words.js';
import { boxOf, edges, placed } from './geometry.js';
import {
  PANEL, type Align, type Box, type CircuitPart, type Form, type Label, type Netlist, type Note, type Panel, type Placed,
  type Point, type TagPlace, type Turn, type Wire,
} from './kinds.js';
import { diode, drain, rectifier, regulator, transformer } from './power-symbols.js';
import { capacitor, coil, generator, heater, microphone, potentiometer, rail, resistor, winding } from './symbols.js';

/** From this many henries up a coil is wound on iron. */
const IRON = 0.05;

/** How a layout likes its symbols. */
export interface Taste {
  readonly boxes: boolean;
}

/** Where a part's texts and its touch area go; both have a usual place by the label alone. */
export interface Around {
  readonly label: Label;
  readonly touch: readonly Box[];
}

/** A label at a place. */
export function label(x: number, y: number, align: Align, set: Label['set'], room: number, value?: Point): Label {
  return value === undefined ? { x, y, align, set, room } : { x, y, align, set, room, value };
}

/** A touch area from its edges. */
export const area = edges;

/** One panel as it is being laid out, over the netlist that it must show. */
export class Draft {
  readonly parts: Placed[] = [];
  readonly wires: Wire[] = [];
  readonly grounds: Point[] = [];
  readonly rings: { node: string; at: Point }[] = [];
  readonly tags: TagPlace[] = [];
  readonly notes: Note[] = [];
  bolt: Point | null = null;

  constructor(
    readonly circuit: Netlist,
    readonly taste: Taste,
  ) {}

  /** The netlist's part of that reference, if it is there. */
  find(reference: string): CircuitPart | undefined {
    return this.circuit.parts.find((part) => part.reference === reference);
  }

  /** A wire through points given as x, y, x, y … */
  wire(node: string, ...figures: number[]): void {
    const points: Point[] = [];
    for (let index = 0; index + 1 < figures.length; index += 2) {
      points.push({ x: figures[index] ?? 0, y: figures[index + 1] ?? 0 });
    }
    this.wires.push({ node, points });
  }

  /** Ground at the end of a wire of its own. */
  ground(x: number, y: number): void {
    this.grounds.push({ x, y });
  }

  /** The place of a node's answer; with `leader`, a line goes from the tip to the node. */
  tag(node: string, x: number, y: number, side: TagPlace['side'], room = 64, leader?: Point): void {
    const place = { node, tip: { x, y }, side, room };
    this.tags.push(leader === undefined ? place : { ...place, leader });
  }

  /** Puts a part down. Terminals beyond the form's own are told by their nodes: a rail's other end is ground. */
  put(part: CircuitPart, form: Form, x: number, y: number, turn: Turn, around: Around, written = part.reference): Placed {
    const at = { x, y };
    const drawn: (Point | string)[] = form.terminals.map((terminal) => placed(terminal, at, turn));
    while (drawn.length < part.nodes.length) drawn.push('ground');
    const { reference, role, kind, field, value } = part;
    const made: Placed = {
      reference, written, role, kind, field, value, at, turn, form,
      terminals: drawn, box: boxOf(form, at, turn), label: around.label, touch: around.touch,
    };
    this.parts.push(made);
    return made;
  }

  /**
   * A straight run from one place to another with a two-ended part in its middle at `middle` along it, and the wires to
   * it; where the part is absent, one wire. The part's first node is at the start unless `back`.
   */
  run(part: CircuitPart | undefined, node: string, from: Point, to: Point, middle: Point, around: Around, back = false): void {
    if (part === undefined) {
      this.wires.push({ node, points: [from, to] });
      return;
    }
    const flow: Turn = from.x === to.x ? (to.y > from.y ? 90 : 270) : to.x > from.x ? 0 : 180;
    const turn = back ? (((flow + 180) % 360) as Turn) : flow;
    const made = this.put(part, this.form(part), middle.x, middle.y, turn, around);
    const terminals = back ? [made.terminals[1], made.terminals[0]] : made.terminals;
    const nodes = back ? [part.nodes[1], part.nodes[0]] : part.nodes;
    this.lead(nodes[0], from, terminals[0]);
    this.lead(nodes[1], terminals[1], to);
  }

  private lead(node: string | undefined, from: Point | string | undefined, to: Point | string | undefined): void {
    if (node === undefined || typeof from !== 'object' || typeof to !== 'object') return;
    if (Math.hypot(from.x - to.x, from.y - to.y) > 0) this.wires.push({ node, points: [from, to] });
  }

  /** A standing part from `top` down to ground, at `x`. */
  hang(part: CircuitPart | undefined, node: string, x: number, top: number, middle: number, foot: number, around: Around): void {
    if (part === undefined) return;
    this.run(part, node, { x, y: top }, { x, y: foot }, { x, y: middle }, around);
    this.ground(x, foot);
  }

  /** The usual picture of a part by its kind. */
  form(part: CircuitPart): Form {
    const value = typeof part.value === 'number' ? part.value : 0;
    if (part.role === 'heater') return heater();
    if (part.role === 'regulator') return regulator();
    if (part.role === 'heater_winding') return winding(true);
    if (part.kind === 'capacitor') return capacitor(polarised(part));
    if (part.kind === 'coil') return coil(value >= IRON);
    if (part.kind === 'potentiometer') return potentiometer(this.taste.boxes, 'right');
    if (part.kind === 'winding') return transformer(part.nodes.length === 3);
    if (part.kind === 'diode') return diode();
    if (part.kind === 'rectifier') return rectifier(part.nodes.length === 3 ? 2 : 1, []);
    if (part.kind === 'load') return drain();
    if (part.kind === 'regulator') return regulator();
    if (part.kind === 'source') {
      if (/supply/.test(part.role)) return rail();
      return part.role === 'microphone' ? microphone() : generator();
    }
    return resistor(this.taste.boxes);
  }

  /** The panel as data. `margins` are added to what the symbols and labels use. */
  panel(top: number, bottom: number): Panel {
    const { parts, wires, grounds, rings, tags, notes, bolt } = this;
    return { parts, wires, grounds, rings, tags, notes, bolt, top, bottom };
  }
}

/** Right edge of a panel. */
export const EDGE = PANEL;
