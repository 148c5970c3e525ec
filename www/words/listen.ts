import { show } from './quantity.js';
import type { Way } from './way.js';

/** Words of the panel in which a clip is heard; fetched with it. */
export const LISTEN = {
  intro: 'Hear a voice through this circuit before you solder it. Nothing leaves this page, and nothing is kept unless you save it.',
  care: 'Begin with the volume low, above all with headphones on. The sound comes up slowly and stays 6 dB under full.',
  clip: 'Whose voice',
  builtIn: 'The built-in sentence',
  choose: 'Choose a file',
  record: 'Record your voice',
  recording: (seconds: number): string => `Recording, ${seconds} s. It ends by itself after 20 s.`,
  endRecording: 'End the recording',
  positions: 'Listen to',
  key: (key: string): string => `key ${key}`,
  stop: 'Stop the sound',
  stopKey: 'key 0',
  match: 'Matched',
  ear: 'by ear: equally loud',
  transmitter: 'by transmitter: equal peaks',
  noise: 'Noise',
  none: 'off',
  band: 'band',
  heavy: 'heavy',
  ends: 'Stop the work',
  stopped: 'The work was stopped. Choose a position to begin again.',
  save: (name: string): string => `Save ${name} as WAV`,
  saved: 'Handed to your browser as a WAV file.',
  level: 'Level is at 0: nothing comes out to hear. Turn Level up.',
  lost: 'The engine stopped. Choose a position to try again; if it stays so, load the page anew.',
  refused: 'These inputs do not work yet: the last sound stays until they do.',
  work: (done: number, all: number, straight: boolean): string =>
    straight ? `Working out a first sound, ${done} of ${all}.` : `You hear the stage as if it never bent the wave. The whole circuit follows, ${done} of ${all}.`,
  ready: 'You hear the whole circuit, tube and grid current and all.',
  clipName: (name: string, seconds: number, way?: Way): string => `${name}, ${show(seconds, 's', { digits: 2, way })}`,
  wave: 'What comes out of the position you hear, over time.',
  waveTitle: 'Wave at the load',
  spectrum: 'What is in it, in one-third octaves, as it leaves the circuit.',
  spectrumTitle: 'Speech at the load',
  level_axis: 'Level',
  volts: 'Volts',
  time: 'Time',
  frequency: 'Frequency',
  table: ['Position', 'Peak', 'Loudness', 'At equal peaks'] as readonly string[],
  grid: 'The grid reaches its cathode here: current flows and bends the peaks.',
  honest:
    'Loudness is your clip’s own, as the ear weighs it, against the first row. A leaner position may help in noise at equal loudness or equal power; ' +
    'at equal peaks it need not, since thinning the low notes leaves sharper peaks.',
} as const;

/** What may be wrong with a clip, a microphone or a loudspeaker, by code. */
export const LISTEN_FAULTS: Readonly<Record<string, string>> = {
  undecodable: 'This file is not sound that your browser reads. Try a WAV or MP3 file, or record your voice here.',
  too_big: 'The file is too large to open here, and its beginning cannot be read alone. Cut out 20 seconds and choose that.',
  silent: 'There is no sound in the clip. Choose another, or record one nearer to the microphone.',
  too_long: 'The clip is longer than 20 s: its first 20 s are taken.',
  stereo: 'Its channels are mixed into one, as one microphone gives.',
  clipped: 'Its loudest peaks were already cut off when it was recorded: that is heard in every position alike.',
  microphone_refused: 'The microphone was refused. Allow it beside the page’s address, or choose a file.',
  microphone_missing: 'No microphone was found. Plug one in and try again, or choose a file.',
  microphone_busy: 'The microphone is in use by something else. Close that and try again, or choose a file.',
  microphone_framed: 'Inside another page the microphone is out of reach. Open the page itself, or choose a file.',
  no_device: 'No loudspeaker or headphones answered. Plug one in, or turn the sound on, and press again. The pictures and the WAV file need none.',
  built_in_away: 'The built-in sentence did not arrive. Choose a file, or try again with a network.',
  not_saved: 'The file was not made: the device may be full. Nothing here is lost; make room and try again.',
};

/** A level against another: "2.3 dB quieter". */
export function louder(db: number, way?: Way): string {
  if (Math.abs(db) < 0.05) return 'as loud';
  return `${show(Math.abs(db), 'dB', { digits: 2, way })} ${db > 0 ? 'louder' : 'quieter'}`;
}
