import type { Rendered } from '../../package/kinds.js';
import { pinkNoise, type Levels } from './levels.js';

/** The joint of the loop, and of one position and the next, in seconds. */
const JOINT = 0.01;

/** One track: its source, and the tap that lets it through. */
interface Voice {
  source: AudioBufferSourceNode;
  readonly level: GainNode;
  readonly tap: GainNode;
}

/**
 * Tracks that run side by side from one moment on, one of them let through, with the noise, as a receiver passes them.
 * The same graph is heard and saved.
 */
export class Graph {
  readonly #context: BaseAudioContext;
  readonly #from: number;
  readonly #out: AudioNode;
  readonly #voices = new Map<string, Voice>();
  readonly #noise: GainNode;
  #chosen: string;

  constructor(context: BaseAudioContext, out: AudioNode, tracks: ReadonlyMap<string, Rendered>, chosen: string, highest: number) {
    this.#context = context;
    this.#chosen = chosen;
    this.#from = context.currentTime + 0.03;
    // Two in a row, of the fourth order together (Butterworth).
    const [first, second] = [0.5412, 1.3066].map((q) => {
      const filter = context.createBiquadFilter();
      Object.assign(filter, { type: 'lowpass' });
      filter.frequency.value = Math.min(highest, 0.49 * context.sampleRate);
      filter.Q.value = 20 * Math.log10(q);
      return filter;
    }) as [BiquadFilterNode, BiquadFilterNode];
    first.connect(second).connect(out);
    this.#out = first;
    this.#noise = context.createGain();
    this.#noise.gain.value = 0;
    this.#noise.connect(first);
    for (const [key, track] of tracks) this.put(key, track);
    const length = [...tracks.values()][0]?.samples.length ?? 1;
    this.#loop(pinkNoise(length), 48_000).connect(this.#noise);
  }

  /** A track in the place of the one before, in step with the others. */
  put(key: string, { samples, rate }: Rendered): void {
    const known = this.#voices.get(key);
    if (known !== undefined) {
      const before = known.source;
      known.source = this.#loop(faded(samples, rate), rate);
      known.source.connect(known.level);
      before.stop();
      return;
    }
    const [level, tap] = [this.#context.createGain(), this.#context.createGain()];
    level.gain.value = 0;
    tap.gain.value = key === this.#chosen ? 1 : 0;
    const source = this.#loop(faded(samples, rate), rate);
    source.connect(level).connect(tap).connect(this.#out);
    this.#voices.set(key, { source, level, tap });
  }

  /** Lets another track through, without a gap. */
  choose(key: string): void {
    this.#chosen = key;
    for (const [each, { tap }] of this.#voices) ramp(this.#context, tap.gain, each === key ? 1 : 0);
  }

  set({ tracks, noise }: Levels): void {
    for (const [key, { level }] of this.#voices) ramp(this.#context, level.gain, tracks.get(key) ?? 0);
    ramp(this.#context, this.#noise.gain, noise);
  }

  #loop(samples: Float32Array<ArrayBuffer>, rate: number): AudioBufferSourceNode {
    const buffer = this.#context.createBuffer(1, samples.length, rate);
    buffer.copyToChannel(samples, 0);
    const source = this.#context.createBufferSource();
    source.buffer = buffer;
    source.loop = true;
    const late = Math.max(0, this.#context.currentTime + 0.01 - this.#from);
    source.start(this.#from + late, late % buffer.duration);
    return source;
  }
}

function ramp(context: BaseAudioContext, gain: AudioParam, to: number): void {
  const now = context.currentTime;
  gain.cancelScheduledValues(now);
  gain.setValueAtTime(gain.value, now);
  gain.linearRampToValueAtTime(to, now + JOINT);
}

/** Both ends go to nothing, so that the loop's joint is not heard. */
function faded(samples: Float32Array, rate: number): Float32Array<ArrayBuffer> {
  const out = Float32Array.from(samples);
  const joint = Math.min(Math.floor(JOINT * rate), out.length >> 1);
  for (let n = 0; n < joint; n += 1) {
    out[n] = (out[n] ?? 0) * (n / joint);
    out[out.length - 1 - n] = (out[out.length - 1 - n] ?? 0) * (n / joint);
  }
  return out;
}
