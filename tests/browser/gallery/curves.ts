import type { Curve, Line } from '../../../www/plots/kinds.js';

function line(label: string, from: number, to: number, log: boolean, height: (x: number) => number, code?: string): Line {
  const x = Float64Array.from({ length: 200 }, (_, k) => (log ? from * (to / from) ** (k / 199) : from + ((to - from) * k) / 199));
  return { label, x, y: x.map(height), ...(code === undefined ? {} : { code }) };
}

const db = (power: number) => 10 * Math.log10(power);
/** A first-order high-pass with its corner at `corner`, in decibels, and a slow fall above. */
const response = (corner: number, gain: number) => (x: number) => gain + db(1 / (1 + (corner / x) ** 2)) - db(1 + (x / 15e3) ** 2);

const hertz = { label: 'Frequency', unit: 'Hz', scale: 'log' };
const decibels = { label: 'Gain', unit: 'dB', scale: 'linear' };

/** Pictures to look at: invented figures in the shapes that the calculators give. */
export const CURVES: Readonly<Record<string, Curve>> = {
  two: {
    key: 'response', title: 'Gain against frequency', x: hertz, y: decibels, marks: [],
    lines: [line('1 Round', 10, 1e5, true, response(30, 10)), line('2 Clear', 10, 1e5, true, response(900, 10))],
  },
  pinned: {
    key: 'response', title: 'Gain against frequency', x: hertz, y: decibels, marks: [],
    lines: [line('1 Round', 10, 1e5, true, response(60, 7)), line('2 Clear', 10, 1e5, true, response(1400, 7))],
  },
  six: {
    key: 'response', title: 'Gain against frequency', x: hertz, y: decibels, marks: [],
    lines: [30, 90, 200, 500, 1000, 2200].map((corner, index) => line(`${index + 1} Way ${index + 1}`, 10, 1e5, true, response(corner, 10))),
  },
  holes: {
    key: 'response', title: 'Gain with holes', x: hertz, y: decibels, marks: [],
    lines: [
      line('1 Round', 10, 1e5, true, (x) => (x > 800 && x < 1500 ? Number.NaN : response(30, 10)(x))),
      line('2 None', 10, 1e5, true, () => Number.NaN),
    ],
  },
  flat: { key: 'response', title: 'One height', x: hertz, y: decibels, marks: [], lines: [line('gain', 10, 1e5, true, () => 0)] },
  plate: {
    key: 'plate_curves', title: 'Plate curves',
    x: { label: 'Plate to cathode', unit: 'V', scale: 'linear' }, y: { label: 'Plate current', unit: 'A', scale: 'linear' },
    lines: [
      ...[0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4].map((grid) => {
        const full = line(`${grid === 0 ? '' : '−'}${grid} V`, 0, 300, false, (volts) => 0.65e-3 * Math.max(0, 0.31 - grid + volts / 74) ** 1.5, 'grid');
        const last = full.y.findIndex((amps) => amps > 2e-3);
        return last < 0 ? full : { ...full, x: full.x.slice(0, last), y: full.y.slice(0, last) };
      }),
      { label: 'load line at rest', code: 'dc_load', x: Float64Array.of(0, 263), y: Float64Array.of(263 / 222e3, 0) },
      { label: 'load line for signal', code: 'signal_load', x: Float64Array.of(30, 240), y: Float64Array.of(0.58e-3 + 105 / 180e3, 0.58e-3 - 105 / 180e3) },
      line('1 W in the plate', 400, 1000, false, (volts) => 1 / volts, 'plate_watts'),
    ].map((each) => (each.code === 'plate_watts' ? line('0.3 W in the plate', 150, 300, false, (volts) => 0.3 / volts, 'plate_watts') : each)),
    marks: [{ label: 'at rest', x: 135, y: 0.58e-3 }],
  },
};
