import type { Circuit, CircuitPart } from '../words/kinds.js';

export type { Circuit, CircuitPart };

/** One pin of a tube's base, as the netlist tells it. */
export interface SocketPin {
  readonly pin: string;
  readonly electrode: string;
  readonly node: string | null;
}

/** A tube with its base; own tubes have a reference alone. */
export interface Socket {
  readonly reference: string;
  readonly type?: string;
  readonly base?: string;
  readonly pins?: readonly SocketPin[];
}

/** The netlist with the sockets of its tubes. */
export interface Netlist extends Circuit {
  readonly tubes?: readonly Socket[];
}

/** A place in a panel, in drawing units from its left upper corner. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** An upright rectangle in drawing units. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What a stroke of a symbol is, which sets its weight. */
export type Weight = 'part' | 'envelope' | 'grid' | 'electrode' | 'iron' | 'thin' | 'solid' | 'live' | 'ring';

/** One stroke of a symbol, in the symbol's own units. */
export interface Stroke {
  readonly d: string;
  readonly weight: Weight;
  readonly dash?: string;
  /** A band's colour, shown by its own hatching. */
  readonly fill?: string;
}

/** A symbol's picture: where its terminals are and what is drawn, about its own middle. */
export interface Form {
  readonly terminals: readonly Point[];
  readonly strokes: readonly Stroke[];
  readonly box: Box;
  /** Letters in the symbol, such as a pin's number: place, text, and how it is set. */
  readonly marks?: readonly { readonly at: Point; readonly text: string; readonly align: Align; readonly printed?: true }[];
}

/** How a text stands to its anchor. */
export type Align = 'start' | 'middle' | 'end';

/** How a part's label is set: reference over value, both in a row, or apart (a switch). */
export interface Label {
  readonly x: number;
  /** Middle of the block, or the middle of the row. */
  readonly y: number;
  readonly align: Align;
  readonly set: 'over' | 'row' | 'three';
  /** Width that the value may take, in units. */
  readonly room: number;
  /** Where the value stands if not under or beside the reference. */
  readonly value?: Point;
}

/** A part of the netlist in its place. */
export interface Placed {
  readonly reference: string;
  /** What is written for it, where that is more than the reference: `V1a`. */
  readonly written: string;
  readonly role: string;
  readonly kind: string;
  readonly field: string;
  readonly value: CircuitPart['value'];
  readonly at: Point;
  readonly turn: Turn;
  readonly form: Form;
  /** The terminals in the panel; a terminal that is not drawn is told by the node it stands for. */
  readonly terminals: readonly (Point | string)[];
  readonly box: Box;
  readonly label: Label;
  /** What a finger may hit, one shape of boxes that meet. */
  readonly touch: readonly Box[];
}

/** Quarter turns clockwise, in degrees. */
export type Turn = 0 | 90 | 180 | 270;

/** A line that is one node all along. */
export interface Wire {
  readonly node: string;
  readonly points: readonly Point[];
}

/** Where the answer of a node stands: the tip, and the side of the tip that the body lies on. */
export interface TagPlace {
  readonly node: string;
  readonly tip: Point;
  readonly side: 'left' | 'right' | 'above' | 'below';
  /** Width that there is room for. */
  readonly room: number;
  /** The node itself, where the tag has no room beside it and a leader goes there. */
  readonly leader?: Point;
}

/** A wire that goes on in the next panel at the same height. */
export interface Join {
  readonly letter: string;
  readonly node: string;
  readonly y: number;
}

/** A word that belongs to the drawing itself. */
export interface Note {
  readonly at: Point;
  readonly text: string;
  readonly align: Align;
}

/** 320 units of a drawing. */
export interface Panel {
  readonly parts: readonly Placed[];
  readonly wires: readonly Wire[];
  readonly grounds: readonly Point[];
  readonly rings: readonly { readonly node: string; readonly at: Point }[];
  readonly tags: readonly TagPlace[];
  readonly bolt: Point | null;
  readonly notes: readonly Note[];
  /** First and last used height. */
  readonly top: number;
  readonly bottom: number;
}

/** A schematic as data. */
export interface Drawing {
  readonly panels: readonly Panel[];
  /** `joins[i]` lead from panel i to panel i + 1. */
  readonly joins: readonly Join[];
}

/** Width of a panel in units. */
export const PANEL = 320;
