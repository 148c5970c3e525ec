import type { Form, Point, Stroke } from './kinds.js';

/** Half a resistor's length, and how far its zigzag or box stands off the line. */
const HALF = 18;
const STAND = 6.5;
/** Half the gap between a capacitor's plates; its leads end there, so that a live lead is copper up to the plate. */
const GAP = 3;
const PLATE = 11;
/** Where a wiper's wire ends and its arrowhead begins. */
const WIPER = 16;
/** Radius of a tube's envelope. */
export const ENVELOPE = 30;

const ends = (reach: number): readonly Point[] => [{ x: -reach, y: 0 }, { x: reach, y: 0 }];
const around = (x: number, y: number) => ({ x: -x, y: -y, width: 2 * x, height: 2 * y });

/** A resistor, lying; zigzag or box as the person prefers. */
export function resistor(boxes: boolean): Form {
  return { terminals: ends(HALF), strokes: [body(boxes)], box: around(HALF, STAND + 1) };
}

function body(boxes: boolean): Stroke {
  const d = boxes
    ? `M${-HALF} ${-STAND}H${HALF}V${STAND}H${-HALF}Z`
    : `M${-HALF} 0L-15 ${-STAND}L-9 ${STAND}L-3 ${-STAND}L3 ${STAND}L9 ${-STAND}L15 ${STAND}L${HALF} 0`;
  return { d, weight: 'part' };
}

/** A capacitor, lying, its curved plate to the right; with its plus beside the first plate if it has one. */
export function capacitor(polarised: boolean): Form {
  const plates = `M${-GAP} ${-PLATE}V${PLATE}M8.5 ${-PLATE}Q-2.5 0 8.5 ${PLATE}`;
  const strokes: Stroke[] = [{ d: plates, weight: 'part' }];
  if (polarised) strokes.push({ d: 'M-14 9H-7M-10.5 5.5V12.5', weight: 'thin' });
  return { terminals: ends(GAP), strokes, box: { x: polarised ? -15 : -4, y: -12, width: polarised ? 25 : 14, height: polarised ? 26 : 24 } };
}

/** A coil, lying, of four turns; with the two lines of an iron core above it if it has one. */
export function coil(iron: boolean): Form {
  const turns = 'M-20 0a5 5 0 0 1 10 0a5 5 0 0 1 10 0a5 5 0 0 1 10 0a5 5 0 0 1 10 0';
  const strokes: Stroke[] = [{ d: turns, weight: 'part' }];
  if (iron) strokes.push({ d: 'M-20 -9H20M-20 -12.5H20', weight: 'iron' });
  return { terminals: ends(20), strokes, box: { x: -20, y: iron ? -13.5 : -6, width: 40, height: iron ? 15 : 8 } };
}

/** Two coils in one field, standing side by side. */
export function coupled(): Form {
  const turns = (x: number, bulge: 0 | 1): string => `M${x} -20${'a5 5 0 0 B 0 10'.replace('B', String(bulge)).repeat(4)}`;
  return {
    terminals: [{ x: -12, y: -20 }, { x: -12, y: 20 }, { x: 12, y: -20 }, { x: 12, y: 20 }],
    strokes: [{ d: `${turns(-12, 1)}${turns(12, 0)}`, weight: 'part' }],
    box: { x: -13, y: -20, width: 26, height: 40 },
  };
}

/** A potentiometer, standing: top, wiper and bottom, the wiper to the right or left. */
export function potentiometer(boxes: boolean, side: 'right' | 'left'): Form {
  const way = side === 'right' ? 1 : -1;
  const upright = boxes
    ? `M${-STAND} ${-HALF}H${STAND}V${HALF}H${-STAND}Z`
    : `M0 ${-HALF}L${STAND} -15L${-STAND} -9L${STAND} -3L${-STAND} 3L${STAND} 9L${-STAND} 15L0 ${HALF}`;
  const arrow = `M${8.5 * way} 0L${WIPER * way} -3.6V3.6Z`;
  return {
    terminals: [{ x: 0, y: -HALF }, { x: WIPER * way, y: 0 }, { x: 0, y: HALF }],
    strokes: [{ d: upright, weight: 'part' }, { d: arrow, weight: 'solid' }],
    box: { x: way > 0 ? -STAND - 1 : -WIPER, y: -HALF, width: STAND + 1 + WIPER, height: 2 * HALF },
  };
}

/** A switch: its common, and its throws where the drawing puts them; the arm lies on the one that makes. */
export function selector(throws: readonly Point[], closed: number | null): Form {
  const rings = [{ x: 0, y: 0 }, ...throws].map(({ x, y }) => `M${x - 3.2} ${y}a3.2 3.2 0 1 0 6.4 0a3.2 3.2 0 1 0 -6.4 0`).join('');
  const strokes: Stroke[] = [{ d: rings, weight: 'ring' }];
  const to = closed === null ? undefined : throws[closed];
  const first = throws[0] ?? { x: -28, y: 0 };
  const end = to ?? { x: first.x * 0.9, y: first.y * 0.4 };
  const length = Math.hypot(end.x, end.y) || 1;
  const [ux, uy] = [end.x / length, end.y / length];
  const off = to === undefined ? 0 : 5.4;
  strokes.unshift({
    d: `M${round(ux * 3.2)} ${round(uy * 3.2)}L${round(end.x - ux * off)} ${round(end.y - uy * off)}`,
    weight: to === undefined ? 'part' : 'live',
  });
  const xs = [0, ...throws.map(({ x }) => x)];
  const ys = [0, ...throws.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs) - 4, Math.min(...ys) - 4];
  return {
    terminals: [{ x: 0, y: 0 }, ...throws],
    strokes,
    box: { x: left, y: top, width: Math.max(...xs) + 4 - left, height: Math.max(...ys) + 4 - top },
  };
}

/** Where the wires of a triode end at its electrodes, from its middle. */
export const TRIODE = { plate: { x: 0, y: -14 }, grid: { x: -19, y: 0 }, cathode: { x: -12, y: 20 } } as const;

/** A triode; one section of a twin has a solid left arc and a dashed right one. Pins stand outside the envelope. */
export function triode(twin: boolean, pins: { readonly plate?: string; readonly grid?: string; readonly cathode?: string }): Form {
  const r = ENVELOPE;
  const strokes: Stroke[] = twin
    ? [
        { d: `M10.3 -28.2A${r} ${r} 0 1 0 7.8 29`, weight: 'envelope' },
        { d: `M10.3 -28.2A${r} ${r} 0 0 1 7.8 29`, weight: 'envelope', dash: '4.2 5.4' },
      ]
    : [{ d: `M${-r} 0a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`, weight: 'envelope' }];
  strokes.push(
    { d: 'M-14 -14H14', weight: 'electrode' },
    { d: 'M-18 0H-9M-4.5 0H4.5M9 0H18', weight: 'grid' },
    { d: 'M-12 20V14H12V18.5', weight: 'electrode' },
  );
  const marks = [
    { at: { x: 6, y: -34 }, text: pins.plate ?? '', align: 'start' as const },
    { at: { x: -35, y: -5 }, text: pins.grid ?? '', align: 'end' as const },
    { at: { x: -6, y: 44 }, text: pins.cathode ?? '', align: 'start' as const },
  ].filter(({ text }) => text !== '');
  return { terminals: [TRIODE.plate, TRIODE.grid, TRIODE.cathode], strokes, box: around(r + 1, r + 1), marks };
}

/** A microphone, standing: its capsule against the plate that is spoken at. */
export function microphone(): Form {
  return {
    terminals: [{ x: 0, y: -14 }, { x: 0, y: 14 }],
    strokes: [{ d: 'M-14 0a14 14 0 1 0 28 0a14 14 0 1 0 -28 0', weight: 'part' }, { d: 'M-14 -14V14', weight: 'electrode' }],
    box: around(15, 15),
  };
}

/** A source of signal, standing. */
export function generator(): Form {
  return {
    terminals: [{ x: 0, y: -14 }, { x: 0, y: 14 }],
    strokes: [
      { d: 'M-14 0a14 14 0 1 0 28 0a14 14 0 1 0 -28 0', weight: 'part' },
      { d: 'M-7.5 0c2.5 -7 5 -7 7.5 0s5 7 7.5 0', weight: 'part' },
    ],
    box: around(15, 15),
  };
}

/** The end of a supply's wire: a ring. The supply's other end is ground and not drawn. */
export function rail(): Form {
  return { terminals: [{ x: 0, y: 0 }], strokes: [], box: around(6, 6) };
}

/** A heater, lying: its hairpin in a ring. */
export function heater(): Form {
  return {
    terminals: ends(16),
    strokes: [{ d: 'M-14 0a14 14 0 1 0 28 0a14 14 0 1 0 -28 0', weight: 'thin' }, { d: 'M-16 0H-9L0 -8L9 0H16', weight: 'part' }],
    box: around(16, 15),
  };
}

/** Half a transformer, lying: a winding, with the core on its far side where it carries it. */
export function winding(core: boolean): Form {
  const { terminals, strokes } = coil(false);
  return {
    terminals,
    strokes: core ? [...strokes, { d: 'M-20 -12H20M-20 -15.5H20', weight: 'iron' }] : strokes,
    box: { x: -20, y: core ? -17 : -6, width: 40, height: core ? 18 : 8 },
  };
}

/** Danger: a solid triangle with a bolt in it, its foot at the origin. */
export const BOLT = {
  ground: 'M0 -18.6L10 -1.4H-10Z',
  bolt: 'M1.4 -13.4L-3 -7.2H-0.3L-1.6 -3L3 -8.6H0.3Z',
} as const;

/** Ground, hung from the origin. */
export const GROUND_STROKES = 'M-10.5 0H10.5M-6.2 4.5H6.2M-2.4 9H2.4';

function round(figure: number): number {
  return Math.round(figure * 100) / 100;
}
