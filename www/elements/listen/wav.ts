import type { Rendered } from '../../package/kinds.js';
import { Graph } from './graph.js';
import type { Levels } from './levels.js';

/** What is heard of one track, noise and receiver and all, as a WAV file: 16 bits, 48 kHz, one channel. */
export async function wavOf(key: string, track: Rendered, levels: Levels, highest: number): Promise<Blob> {
  const lead = Math.ceil(0.03 * track.rate);
  const context = new OfflineAudioContext(1, lead + track.samples.length, track.rate);
  const graph = new Graph(context, context.destination, new Map([[key, track]]), key, highest);
  graph.set(levels);
  return waveFile([(await context.startRendering()).getChannelData(0).subarray(lead)], track.rate);
}

/** Samples, in one piece or many, as a WAV file of 16 bits and one channel. */
export function waveFile(pieces: readonly Float32Array[], rate: number): Blob {
  const count = pieces.reduce((sum, { length }) => sum + length, 0);
  return new Blob([header(count, rate), ...pieces.map(whole)], { type: 'audio/wav' });
}

function whole(samples: Float32Array): ArrayBuffer {
  const out = new DataView(new ArrayBuffer(2 * samples.length));
  samples.forEach((sample, n) => { out.setInt16(2 * n, Math.round(32767 * Math.max(-1, Math.min(1, sample))), true); });
  return out.buffer;
}

function header(count: number, rate: number): ArrayBuffer {
  const out = new DataView(new ArrayBuffer(44));
  const text = (at: number, letters: string): void => { [...letters].forEach((letter, k) => { out.setUint8(at + k, letter.charCodeAt(0)); }); };
  text(0, 'RIFF');
  out.setUint32(4, 36 + 2 * count, true);
  text(8, 'WAVEfmt ');
  out.setUint32(16, 16, true);
  out.setUint16(20, 1, true);
  out.setUint16(22, 1, true);
  out.setUint32(24, rate, true);
  out.setUint32(28, 2 * rate, true);
  out.setUint16(32, 2, true);
  out.setUint16(34, 16, true);
  text(36, 'data');
  out.setUint32(40, 2 * count, true);
  return out.buffer;
}
