import type { Rendered } from '../../package/kinds.js';
import type { Desk } from '../state/desk.js';
import { Lost, Refused } from '../../engine/index.js';
import { sent } from '../state/full.js';
import type { Figures, Sounding } from '../state/kinds.js';
import type { View } from '../state/view.js';
import type { Clip } from './clip.js';

/** One thing to listen to: a position of the switch, or a state that was pinned. */
export interface Track {
  readonly key: string;
  readonly name: string;
  readonly inputs: Figures;
  /** From 1. */
  readonly position: number;
}

/** Every position as it is now, then every pinned state. */
export function tracksOf(view: View, desk: Desk): readonly Track[] {
  const { inputs: rows } = view.calculator;
  const inputs = sent(rows, view.work.good ?? view.full);
  const columns = view.columns.length === 0 ? [{ name: view.calculator.title }] : view.columns;
  const now = columns.map(({ name }, k) => ({ key: `position ${k + 1}`, name, inputs, position: k + 1 }));
  const pinned = view.lug.pins.map((pin, k) => ({
    key: `pinned ${k + 1}`, name: pin.name, inputs: sent(rows, desk.full(view.lug.calculator, pin.inputs)), position: pin.position + 1,
  }));
  return [...now, ...pinned];
}

/** How far the work is. */
export interface Progress {
  readonly done: number;
  readonly all: number;
  readonly straight: boolean;
}

export interface Hearing {
  track(key: string, rendered: Rendered, straight: boolean): void;
  progress(progress: Progress | null): void;
  fault(code: 'refused' | 'lost'): void;
}

/** Works out tracks in their order of need: the tubes straight first, all of them, then whole. A new call ends the one before. */
export class Tracks {
  readonly #sound: Sounding;
  readonly #hearing: Hearing;
  #call = 0;

  constructor(sound: Sounding, hearing: Hearing) {
    this.#sound = sound;
    this.#hearing = hearing;
  }

  async work(clip: Clip, tracks: readonly Track[], chosen: string): Promise<void> {
    this.#call += 1;
    const call = this.#call;
    const ordered = [...tracks].sort((a, b) => Number(b.key === chosen) - Number(a.key === chosen));
    try {
      for (const linear of [true, false]) {
        for (const [k, { key, inputs, position }] of ordered.entries()) {
          this.#hearing.progress({ done: k + 1, all: ordered.length, straight: linear });
          const rendered = await this.#sound.call('render', inputs, clip.samples, clip.rate, { position, linear });
          if (call !== this.#call) return;
          this.#hearing.track(key, rendered, linear);
        }
      }
      this.#hearing.progress(null);
    } catch (fault) {
      if (call !== this.#call) return;
      this.#hearing.progress(null);
      this.#hearing.fault(fault instanceof Refused ? 'refused' : 'lost');
      if (!(fault instanceof Refused || fault instanceof Lost)) throw fault;
    }
  }

  /** Stops the work at once, the engine with it if it can be ended. */
  stop(): void {
    this.#call += 1;
    this.#sound.end?.('stopped');
    this.#hearing.progress(null);
  }
}
