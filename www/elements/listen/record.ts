import { Unheard } from './clip.js';
import { waveFile } from './wav.js';

/** Name of the built file, relative to this script. Filled in by the build. */
declare const COLLECTOR: string;

/** Whether this browser can record at all; where it cannot, a file still can be chosen. */
export const canRecord = (): boolean => typeof MediaRecorder !== 'undefined' || typeof AudioWorkletNode !== 'undefined';

/** A recording under way. */
export interface Recording {
  /** What was said, when it has ended. */
  readonly done: Promise<Blob>;
  end(): void;
}

const LONGEST_MILLISECONDS = 20_000;

/** Begins to record: the voice as it is, without the telephone's help. Only ever on a press. */
export async function record(): Promise<Recording> {
  if (!('mediaDevices' in navigator)) throw new Unheard('microphone_framed');
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({ audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false } });
  } catch (fault) {
    throw new Unheard(codeOf(fault));
  }
  const recording = typeof MediaRecorder === 'undefined' ? await collected(stream) : recorded(stream);
  const timer = setTimeout(recording.end, LONGEST_MILLISECONDS);
  void recording.done.then(() => { clearTimeout(timer); });
  return recording;
}

function recorded(stream: MediaStream): Recording {
  const recorder = new MediaRecorder(stream);
  const pieces: Blob[] = [];
  const done = new Promise<Blob>((give) => {
    recorder.addEventListener('dataavailable', ({ data }) => { pieces.push(data); });
    recorder.addEventListener('stop', () => {
      release(stream);
      give(new Blob(pieces, { type: recorder.mimeType }));
    });
  });
  recorder.start();
  return { done, end: () => { if (recorder.state !== 'inactive') recorder.stop(); } };
}

/** Where the browser has no recorder, what the microphone gives is taken sample by sample. */
async function collected(stream: MediaStream): Promise<Recording> {
  const context = new AudioContext();
  try {
    await context.audioWorklet.addModule(new URL(COLLECTOR, import.meta.url));
  } catch {
    release(stream);
    void context.close();
    throw new Unheard('microphone_busy');
  }
  const collector = new AudioWorkletNode(context, 'collector', { numberOfOutputs: 0 });
  const pieces: Float32Array[] = [];
  collector.port.addEventListener('message', ({ data }) => { if (data instanceof Float32Array) pieces.push(data); });
  collector.port.start();
  context.createMediaStreamSource(stream).connect(collector);
  await context.resume();
  let end = (): void => undefined;
  const ended = new Promise<void>((give) => { end = give; });
  const done = ended.then(() => {
    release(stream);
    void context.close();
    return waveFile(pieces, context.sampleRate);
  });
  return { done, end };
}

function release(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}

function codeOf(fault: unknown): string {
  const name = fault instanceof DOMException ? fault.name : '';
  if (name === 'NotFoundError' || name === 'OverconstrainedError') return 'microphone_missing';
  if (name === 'NotReadableError' || name === 'AbortError') return 'microphone_busy';
  // A frame that may not ask is refused like a person's no.
  return window.self === window.top ? 'microphone_refused' : 'microphone_framed';
}
