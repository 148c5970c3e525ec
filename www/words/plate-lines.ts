import type { CurveWords } from './kinds.js';
import { show } from './quantity.js';

/** Names of the lines and marks among plate curves. */
export const PLATE_LINES: NonNullable<CurveWords['lines']> = {
  grid: (volts, way) => show(volts, 'V', { prefix: '', way }),
  dc_load: 'load line at rest',
  signal_load: 'load line for signal',
  plate_watts: (watts, way) => `${show(watts, 'W', { prefix: '', way })} in the plate`,
  rest: 'at rest',
  point: 'your point',
};
