import type { Rendered } from '../../package/kinds.js';
import { Unheard } from './clip.js';
import { Graph } from './graph.js';
import type { Levels } from './levels.js';

/** How long the sound comes up, and goes. */
const RISE = 0.3;
const FALL = 0.05;
/** A device that has not begun by then is none. */
const PATIENCE = 3000;

/** What plays, and what is saved. */
export class Player {
  #context: AudioContext | undefined;
  #graph: Graph | undefined;
  #fade: GainNode | undefined;

  get playing(): boolean {
    return this.#graph !== undefined;
  }

  /** Must be called in the press itself: a browser lets nothing sound otherwise. */
  async open(): Promise<void> {
    this.#context ??= new AudioContext({ latencyHint: 'interactive' });
    const { state } = this.#context;
    if (state === 'running') return;
    let timer: ReturnType<typeof setTimeout> | undefined;
    // Without a device this never comes to an end.
    const late = new Promise<never>((_, refuse) => { timer = setTimeout(() => { refuse(new Unheard('no_device')); }, PATIENCE); });
    try {
      await Promise.race([this.#context.resume(), late]);
    } catch {
      throw new Unheard('no_device');
    } finally {
      clearTimeout(timer);
    }
  }

  play(tracks: ReadonlyMap<string, Rendered>, chosen: string, levels: Levels, highest: number): void {
    const context = this.#context;
    if (context === undefined) return;
    this.stop();
    const fade = context.createGain();
    fade.gain.setValueAtTime(0, context.currentTime);
    fade.gain.linearRampToValueAtTime(1, context.currentTime + 0.03 + RISE);
    fade.connect(context.destination);
    this.#fade = fade;
    this.#graph = new Graph(context, fade, tracks, chosen, highest);
    this.#graph.set(levels);
  }

  put(key: string, track: Rendered): void {
    this.#graph?.put(key, track);
  }

  choose(key: string): void {
    this.#graph?.choose(key);
  }

  set(levels: Levels): void {
    this.#graph?.set(levels);
  }

  stop(): void {
    const [context, fade] = [this.#context, this.#fade];
    this.#graph = undefined;
    this.#fade = undefined;
    if (context === undefined || fade === undefined) return;
    const now = context.currentTime;
    fade.gain.cancelScheduledValues(now);
    fade.gain.setValueAtTime(fade.gain.value, now);
    fade.gain.linearRampToValueAtTime(0, now + FALL);
    setTimeout(() => { fade.disconnect(); }, 4 * FALL * 1000);
  }

  close(): void {
    this.stop();
    void this.#context?.close().catch(() => undefined);
    this.#context = undefined;
  }
}
