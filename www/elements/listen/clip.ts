/** A clip in one channel, with what is worth saying of it, by code. */
export interface Clip {
  readonly name: string;
  readonly samples: Float32Array;
  readonly rate: number;
  readonly notes: readonly string[];
}

/** What stopped a clip, by code. */
export class Unheard extends Error {}

/** No more is taken. */
const LONGEST = 20;
/** The rate that files are decoded to. */
const RATE = 48_000;
/** A larger file is read from its beginning alone: twenty seconds of any usual kind are within it. */
const BEGINNING = 14e6;
const TOO_BIG = 80e6;
/** So many samples in a row at full scale are no peak of a voice. */
const FLAT = 3;
const FULL = 0.999;

/** Name of the built file, relative to this script. Filled in by the build. */
declare const CLIP: string;

/** The project's own sentence. */
export async function builtIn(name: string, decode: (bytes: Uint8Array) => Promise<Float32Array>): Promise<Clip> {
  try {
    const answer = await fetch(new URL(CLIP, import.meta.url));
    if (!answer.ok) throw new Error(String(answer.status));
    return { name, samples: await decode(new Uint8Array(await answer.arrayBuffer())), rate: 12_000, notes: [] };
  } catch {
    throw new Unheard('built_in_away');
  }
}

/** Any file that the browser decodes, or what it recorded. */
export async function decoded(file: Blob, name: string): Promise<Clip> {
  const beginning = file.size > BEGINNING;
  let sound: AudioBuffer;
  try {
    sound = await decode(beginning ? file.slice(0, BEGINNING) : file);
  } catch {
    if (!beginning) throw new Unheard('undecodable');
    if (file.size > TOO_BIG) throw new Unheard('too_big');
    sound = await decode(file).catch(() => { throw new Unheard('undecodable'); });
  }
  return taken(sound, name, beginning);
}

async function decode(file: Blob): Promise<AudioBuffer> {
  return new OfflineAudioContext(1, 1, RATE).decodeAudioData(await file.arrayBuffer());
}

function taken(sound: AudioBuffer, name: string, cut: boolean): Clip {
  const { numberOfChannels: channels, sampleRate: rate, length } = sound;
  const samples = new Float32Array(Math.min(length, LONGEST * rate));
  let clipped = false;
  for (let channel = 0; channel < channels; channel += 1) {
    // A copy: some browsers take the array away while it is in use.
    const one = Float32Array.from(sound.getChannelData(channel).subarray(0, samples.length));
    clipped ||= isClipped(one);
    one.forEach((sample, n) => { samples[n] = (samples[n] ?? 0) + sample / channels; });
  }
  if (samples.every((sample) => Math.abs(sample) < 1e-5)) throw new Unheard('silent');
  const long = length > samples.length || (cut && samples.length >= LONGEST * rate);
  return { name, samples, rate, notes: [...(long ? ['too_long'] : []), ...(channels > 1 ? ['stereo'] : []), ...(clipped ? ['clipped'] : [])] };
}

function isClipped(samples: Float32Array): boolean {
  let flat = 0;
  for (const sample of samples) {
    flat = Math.abs(sample) >= FULL ? flat + 1 : 0;
    if (flat >= FLAT) return true;
  }
  return false;
}
