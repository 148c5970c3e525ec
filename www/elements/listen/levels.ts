import type { Rendered } from '../../package/kinds.js';

export type Match = 'ear' | 'transmitter';
export type Noise = 'none' | 'band' | 'heavy';

/** What each track and the noise are multiplied by. */
export interface Levels {
  readonly tracks: ReadonlyMap<string, number>;
  readonly noise: number;
}

/** Half of full scale: 6 dB under it, all together. */
const MOST = 0.5;
/** Peaks of this noise over its rms. */
const NOISE_PEAK = 4.5;
/** Heavy noise is twice the volts of the speech, 6 dB. */
const HEAVY = 2;
/** A peak below this is nothing to match. */
const NOTHING = 1e-9;

/** Whether anything comes out. */
export const passes = ({ peak_volts }: Rendered): boolean => peak_volts > NOTHING;

/** Rms of all bands together. */
const rms = ({ bands_db }: Rendered): number => Math.sqrt(bands_db.reduce((sum, db) => sum + 10 ** (db / 10), 0));

/** Brings tracks to equal loudness or equal peaks; the noise is as strong as the first of them. */
export function levels(tracks: ReadonlyMap<string, Rendered>, match: Match, noise: Noise): Levels {
  const heard = [...tracks].filter(([, track]) => passes(track));
  const gain = (track: Rendered): number => (match === 'ear' ? 10 ** (-track.loudness_db / 20) : 1 / track.peak_volts);
  const first = heard[0]?.[1];
  const beside = first === undefined || noise === 'none' ? 0 : rms(first) * gain(first) * (noise === 'heavy' ? HEAVY : 1);
  const peak = Math.max(0, ...heard.map(([, track]) => track.peak_volts * gain(track))) + NOISE_PEAK * beside;
  const all = peak > 0 ? MOST / peak : 0;
  return { tracks: new Map([...tracks].map(([key, track]) => [key, passes(track) ? all * gain(track) : 0])), noise: all * beside };
}

/** Pink noise of rms 1, the same each time: the speech of every position meets the same. */
export function pinkNoise(length: number): Float32Array<ArrayBuffer> {
  const out = new Float32Array(length);
  const poles: readonly [number, number][] = [[0.997, 0.029591], [0.985, 0.032534], [0.95, 0.048056], [0.85, 0.090579], [0.62, 0.108990], [0.25, 0.255784]];
  const states = poles.map(() => 0);
  let seed = 0x2545F491;
  let sum = 0;
  for (let n = 0; n < length; n += 1) {
    seed ^= seed << 13;
    seed ^= seed >>> 17;
    seed ^= seed << 5;
    const white = seed / 0x80000000;
    let pink = 0.2 * white;
    poles.forEach(([pole, gain], k) => {
      states[k] = pole * (states[k] ?? 0) + gain * white;
      pink += states[k] ?? 0;
    });
    out[n] = pink;
    sum += pink * pink;
  }
  const scale = 1 / Math.sqrt(sum / Math.max(1, length));
  return out.map((sample) => sample * scale);
}
