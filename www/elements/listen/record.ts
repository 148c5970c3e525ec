import { Unheard } from './clip.js';

/** Whether this browser can record at all; where it cannot, a file still can be chosen. */
export const canRecord = (): boolean => typeof MediaRecorder !== 'undefined';

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
  const recorder = new MediaRecorder(stream);
  const pieces: Blob[] = [];
  const done = new Promise<Blob>((give) => {
    recorder.addEventListener('dataavailable', ({ data }) => { pieces.push(data); });
    recorder.addEventListener('stop', () => {
      for (const track of stream.getTracks()) track.stop();
      give(new Blob(pieces, { type: recorder.mimeType }));
    });
  });
  const end = (): void => { if (recorder.state !== 'inactive') recorder.stop(); };
  recorder.start();
  const timer = setTimeout(end, LONGEST_MILLISECONDS);
  void done.then(() => { clearTimeout(timer); });
  return { done, end };
}

function codeOf(fault: unknown): string {
  const name = fault instanceof DOMException ? fault.name : '';
  if (name === 'NotFoundError' || name === 'OverconstrainedError') return 'microphone_missing';
  if (name === 'NotReadableError' || name === 'AbortError') return 'microphone_busy';
  // A frame that may not ask is refused like a person's no.
  return window.self === window.top ? 'microphone_refused' : 'microphone_framed';
}
