import type { Curve } from '../../plots/kinds.js';
import type { Rendered } from '../../package/kinds.js';
import { LISTEN } from '../../words/listen.js';

/** Columns of the wave's picture: its least and its most in each. */
const COLUMNS = 360;
/** A band this far under the loudest is not worth a line's length. */
const DEEP = 80;

/** The wave of one track. */
export function wave(name: string, { samples, rate }: Rendered): Curve {
  const [x, y] = [new Float64Array(2 * COLUMNS), new Float64Array(2 * COLUMNS)];
  const each = samples.length / COLUMNS;
  for (let k = 0; k < COLUMNS; k += 1) {
    let [least, most] = [Infinity, -Infinity];
    for (const sample of samples.subarray(Math.floor(k * each), Math.max(Math.floor(k * each) + 1, Math.floor((k + 1) * each)))) {
      least = Math.min(least, sample);
      most = Math.max(most, sample);
    }
    x[2 * k] = (k * each) / rate;
    x[2 * k + 1] = ((k + 0.5) * each) / rate;
    y[2 * k] = most;
    y[2 * k + 1] = least;
  }
  return {
    key: 'wave', title: LISTEN.waveTitle, x: { label: LISTEN.time, unit: 's', scale: 'linear' },
    y: { label: LISTEN.volts, unit: 'V', scale: 'linear' }, lines: [{ label: name, x, y }], marks: [],
  };
}

/** What is in every track, band by band. */
export function spectra(tracks: readonly (readonly [name: string, track: Rendered])[]): Curve {
  const most = Math.max(...tracks.flatMap(([, { bands_db }]) => [...bands_db]));
  const lines = tracks.map(([label, { bands_hertz, bands_db }]) => {
    const kept = [...bands_db.keys()].filter((k) => (bands_db[k] ?? -Infinity) > most - DEEP);
    return { label, x: Float64Array.from(kept, (k) => bands_hertz[k] ?? 0), y: Float64Array.from(kept, (k) => bands_db[k] ?? 0) };
  });
  return {
    key: 'spectrum', title: LISTEN.spectrumTitle, x: { label: LISTEN.frequency, unit: 'Hz', scale: 'log' },
    y: { label: LISTEN.level_axis, unit: 'dB', scale: 'linear' }, lines: lines.filter(({ x }) => x.length > 1), marks: [],
  };
}
