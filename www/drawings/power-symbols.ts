import type { Form, Point, Stroke } from './kinds.js';

/** Half the height of a transformer's coils, and how far the secondary stands from the middle. */
export const COIL = 48;
export const SECONDARY = 18;
/** Where the wires of a twin rectifier end. */
export const PLATES = { first: { x: -15, y: -14 }, second: { x: -15, y: 14 }, cathode: { x: 12, y: 0 } } as const;

const turns = (count: number, step: number, sweep: 0 | 1): string => `a${step / 2} ${step / 2} 0 0 ${sweep} 0 ${step}`.repeat(count);

/** A transformer, standing: the primary on the left, the secondary's ends (and its tap) on the right. */
export function transformer(tapped: boolean): Form {
  const count = 8;
  const step = (2 * COIL) / count;
  const ends: Point[] = [{ x: SECONDARY, y: -COIL }, { x: SECONDARY, y: COIL }];
  if (tapped) ends.splice(1, 0, { x: SECONDARY, y: 0 });
  const strokes: Stroke[] = [
    { d: `M${-SECONDARY} ${-COIL}${turns(count, step, 1)}`, weight: 'part' },
    { d: `M${SECONDARY} ${-COIL}${turns(count, step, 0)}`, weight: 'part' },
    { d: `M-3 ${-COIL - 4}V${COIL + 4}M3 ${-COIL - 4}V${COIL + 4}`, weight: 'iron' },
    { d: `M${-SECONDARY} ${-COIL}H-34V-12M${-SECONDARY} ${COIL}H-34V12`, weight: 'part' },
    { d: 'M-37.4 -9a3.4 3.4 0 1 0 6.8 0a3.4 3.4 0 1 0 -6.8 0M-37.4 9a3.4 3.4 0 1 0 6.8 0a3.4 3.4 0 1 0 -6.8 0', weight: 'ring' },
  ];
  return { terminals: ends, strokes, box: { x: -38, y: -COIL - 5, width: 38 + SECONDARY + 7, height: 2 * COIL + 10 } };
}

/** A silicon diode, lying, its cathode to the right. */
export function diode(): Form {
  return {
    terminals: [{ x: -9, y: 0 }, { x: 9, y: 0 }],
    strokes: [{ d: 'M-9 -8.5L9 0L-9 8.5Z', weight: 'solid' }, { d: 'M9 -9V9', weight: 'part' }],
    box: { x: -10, y: -10, width: 20, height: 20 },
  };
}

const ENVELOPE_STROKE: Stroke = { d: 'M-30 0a30 30 0 1 0 60 0a30 30 0 1 0 -60 0', weight: 'envelope' };
const CATHODE: Stroke = { d: 'M16 -12H12V12H16', weight: 'electrode' };

/** A vacuum rectifier, lying, its cathode to the right: one plate or two. */
export function rectifier(plates: 1 | 2, pins: readonly string[]): Form {
  const single = { x: -15, y: 0 };
  const places: readonly Point[] = plates === 2 ? [PLATES.first, PLATES.second] : [single];
  const reach = plates === 2 ? 8 : 12;
  const bars = places.map(({ x, y }) => `M${x} ${y - reach}V${y + reach}`).join('');
  const spots: readonly (readonly [Point, 'start' | 'end'])[] = [
    ...places.map(({ y }): readonly [Point, 'end'] => [{ x: -32, y: y - 6 }, 'end']),
    [{ x: 33, y: -6 }, 'start'],
  ];
  const marks = spots.map(([at, align], k) => ({ at, text: pins[k] ?? '', align })).filter(({ text }) => text !== '');
  return {
    terminals: [...places, PLATES.cathode],
    strokes: [ENVELOPE_STROKE, { d: bars, weight: 'electrode' }, CATHODE],
    box: { x: -31, y: -31, width: 62, height: 62 },
    marks,
  };
}

/** What draws a current, lying: a circle with an arrow through it. */
export function drain(): Form {
  return {
    terminals: [{ x: -13, y: 0 }, { x: 13, y: 0 }],
    strokes: [{ d: 'M-13 0a13 13 0 1 0 26 0a13 13 0 1 0 -26 0', weight: 'part' }, { d: 'M-8 0H3', weight: 'part' }, { d: 'M9 0L1 -4V4Z', weight: 'solid' }],
    box: { x: -14, y: -14, width: 28, height: 28 },
  };
}

/** A gas regulator, lying, its anode first. */
export function regulator(): Form {
  return {
    terminals: [{ x: -8, y: 0 }, { x: 6, y: 0 }],
    strokes: [
      { d: 'M-20 0a20 20 0 1 0 40 0a20 20 0 1 0 -40 0', weight: 'envelope' },
      { d: 'M-8 -9V9', weight: 'electrode' },
      { d: 'M6 -7V7', weight: 'electrode' },
      { d: 'M-2.5 12a2.2 2.2 0 1 0 4.4 0a2.2 2.2 0 1 0 -4.4 0', weight: 'solid' },
    ],
    box: { x: -21, y: -21, width: 42, height: 42 },
  };
}
