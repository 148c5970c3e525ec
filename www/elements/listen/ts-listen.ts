import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { LISTEN, LISTEN_FAULTS, louder } from '../../words/listen.js';
import { show } from '../../words/quantity.js';
import type { Rendered } from '../../package/kinds.js';
import { controls, ground, tables, type } from '../shared/look.js';
import type { Desk } from '../state/desk.js';
import type { View } from '../state/view.js';
import { builtIn, decoded, Unheard, type Clip } from './clip.js';
import { levels, passes, type Match, type Noise } from './levels.js';
import { spectra, wave } from './pictures.js';
import { Player } from './player.js';
import { canRecord, record, type Recording } from './record.js';
import { listenStyle } from './style.js';
import { Tracks, tracksOf, type Progress, type Track } from './tracks.js';
import { wavOf } from './wav.js';
import '../../plots/ts-plot.js';

/** A knob at rest for so long is done with, in milliseconds. */
const SETTLED = 140;

/** `<ts-listen>`: a clip through every position of the switch and every pinned state, to hear, to see and to save. */
export class TsListen extends LitElement {
  static override styles = [ground, type, controls, tables, listenStyle];
  static override properties = {
    view: { attribute: false }, desk: { attribute: false }, clip: { state: true }, chosen: { state: true }, match: { state: true },
    noise: { state: true }, progress: { state: true }, said: { state: true }, recording: { state: true }, rendered: { state: true }, playing: { state: true },
  };
  view: View | null = null;
  desk: Desk | null = null;
  private clip: Clip | null = null;
  private chosen = '';
  private match: Match = 'ear';
  private noise: Noise = 'none';
  private progress: Progress | null = null;
  private said = '';
  private recording: Recording | null = null;
  private rendered: ReadonlyMap<string, Rendered> = new Map();
  private playing = false;
  readonly #player = new Player();
  #tracks: Tracks | null = null;
  #whole = false;
  #begin = false;
  #timer: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.#key);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('keydown', this.#key);
    clearTimeout(this.#timer);
    this.#tracks?.stop();
    this.recording?.end();
    this.#player.close();
    this.playing = false;
  }

  protected override updated(changed: PropertyValues<this>): void {
    const before = changed.get('view');
    if (!changed.has('view') || before === undefined || before === null || this.clip === null || this.view === null) return;
    // Knobs stay live: what is new is worked again, the sound going on meanwhile.
    if (before.work.good !== this.view.work.good || before.lug.pins !== this.view.lug.pins) {
      clearTimeout(this.#timer);
      this.#timer = setTimeout(() => { this.#work(); }, SETTLED);
    }
  }

  protected override render(): unknown {
    if (this.view === null || this.desk === null) return nothing;
    return html`<section aria-label=${LISTEN.positions} aria-busy=${this.progress === null ? 'false' : 'true'}>
      <div><p class="book">${LISTEN.intro}</p><p class="small">${LISTEN.care}</p></div>
      ${this.#source()}
      <div role="status">${this.#status()}</div>
      ${this.clip === null ? nothing : [this.#choices(), this.#comparison(), this.#pictures()]}
      ${this.playing ? html`<button class="halt" @click=${this.#stop}>${LISTEN.stop} <span class="key">${LISTEN.stopKey}</span></button>` : nothing}
    </section>`;
  }

  #source(): unknown {
    const { clip } = this;
    const recording = this.recording !== null;
    return html`<fieldset><legend>${LISTEN.clip}</legend><div class="row">
      <button @click=${this.#takeBuiltIn}>${LISTEN.builtIn}</button>
      <span class="button file">${LISTEN.choose}<input type="file" accept="audio/*,video/*" aria-label=${LISTEN.choose} @change=${this.#takeFile}></span>
      ${canRecord() ? html`<button aria-pressed=${recording ? 'true' : 'false'} @click=${this.#takeVoice}>${recording ? LISTEN.endRecording : LISTEN.record}</button>` : nothing}</div>
      ${clip === null ? nothing : html`<p class="small">${LISTEN.clipName(clip.name, clip.samples.length / clip.rate, this.view?.way)}. ${clip.notes.map((note) => LISTEN_FAULTS[note]).join(' ')}</p>`}</fieldset>`;
  }

  #status(): unknown {
    const { progress } = this;
    if (progress !== null) {
      const { done, all, straight } = progress;
      return html`<p>${LISTEN.work(done, all, straight)}</p><progress max=${2 * all} value=${done + (straight ? 0 : all)} aria-label=${LISTEN.work(done, all, straight)}></progress>
        <button class="link" @click=${this.#halt}><span>${LISTEN.ends}</span></button>`;
    }
    if (this.said !== '') return html`<p>${this.said}</p>`;
    const track = this.rendered.get(this.chosen);
    if (track === undefined) return nothing;
    if (!passes(track)) return html`<p>${LISTEN.level}</p>`;
    return html`<p>${LISTEN.ready} ${track.grid_current ? LISTEN.grid : ''}</p>`;
  }

  #choices(): unknown {
    const radio = <T extends string>(name: string, now: T, choices: readonly (readonly [T, string])[], set: (value: T) => void): unknown =>
      html`<div class="choices">${choices.map(([value, label]) => html`<label><input type="radio" name=${name} .checked=${now === value} @change=${() => { set(value); }}>${label}</label>`)}</div>`;
    return html`<fieldset><legend>${LISTEN.positions}</legend><div class="tracks">${this.#all().map((track, k) => html`
        <button aria-pressed=${this.playing && track.key === this.chosen ? 'true' : 'false'} @click=${() => void this.#listen(track.key)}>${track.name}${k < 9 ? html` <span class="key">${LISTEN.key(String(k + 1))}</span>` : nothing}</button>`)}</div></fieldset>
      <fieldset><legend>${LISTEN.match}</legend>${radio<Match>('match', this.match, [['ear', LISTEN.ear], ['transmitter', LISTEN.transmitter]], (match) => { this.match = match; this.#level(); })}</fieldset>
      <fieldset><legend>${LISTEN.noise}</legend>${radio<Noise>('noise', this.noise, [['none', LISTEN.none], ['band', LISTEN.band], ['heavy', LISTEN.heavy]], (noise) => { this.noise = noise; this.#level(); })}</fieldset>`;
  }

  /** What each does to this very clip, by ear and by transmitter. */
  #comparison(): unknown {
    const way = this.view?.way;
    const heard = this.#heard();
    const first = heard[0]?.[1];
    if (first === undefined) return nothing;
    const row = ([name, track]: readonly [string, Rendered], k: number): unknown => {
      const by = track.loudness_db - first.loudness_db;
      const peaks = 20 * Math.log10(track.peak_volts / first.peak_volts);
      return html`<tr><th scope="row">${name}</th><td class="figure">${show(track.peak_volts, 'V', { way })}</td>
        <td class="figure">${k === 0 ? '' : louder(by, way)}</td><td class="figure">${k === 0 ? '' : louder(by - peaks, way)}</td></tr>`;
    };
    return html`<div><table><thead><tr>${LISTEN.table.map((head, k) => html`<th scope="col" class=${k === 0 ? '' : 'figure'}>${head}</th>`)}</tr></thead>
      <tbody>${heard.map(row)}</tbody></table><p class="small">${LISTEN.honest}</p></div>`;
  }

  #pictures(): unknown {
    const track = this.rendered.get(this.chosen);
    const heard = this.#heard();
    const name = this.#all().find(({ key }) => key === this.chosen)?.name ?? '';
    if (track === undefined || !passes(track)) return nothing;
    return html`<ts-plot .curve=${spectra(heard)} .current=${name} .figure=${1} .caption=${LISTEN.spectrum} .way=${this.view?.way} .cursor=${2500}></ts-plot>
      <ts-plot .curve=${wave(name, track)} .current=${name} .figure=${2} .caption=${LISTEN.wave} .way=${this.view?.way}></ts-plot>
      <button @click=${() => void this.#save(name, track)}>${LISTEN.save(name)}</button>`;
  }

  #all(): readonly Track[] {
    return this.view === null || this.desk === null ? [] : tracksOf(this.view, this.desk);
  }

  /** What comes out of something, by name. */
  #heard(): readonly (readonly [string, Rendered])[] {
    return this.#all().flatMap(({ key, name }) => {
      const track = this.rendered.get(key);
      return track === undefined || !passes(track) ? [] : [[name, track] as const];
    });
  }

  #highest(): number {
    const typed = this.view?.situation?.inputs['receiver_hertz'];
    return typeof typed === 'number' ? typed : 4000;
  }

  readonly #takeBuiltIn = (): void => {
    void this.#take(() => builtIn(LISTEN.builtIn, (bytes) => this.#sound().call('mulaw', bytes)));
  };

  readonly #takeFile = (event: Event): void => {
    const chooser = event.target as HTMLInputElement;
    const file = chooser.files?.[0];
    chooser.value = '';
    if (file !== undefined) void this.#take(() => decoded(file, file.name));
  };

  readonly #takeVoice = (): void => {
    if (this.recording !== null) { this.recording.end(); return; }
    void this.#take(async () => {
      this.#stop();
      const recording = await record();
      this.recording = recording;
      this.said = LISTEN.recording(20);
      const blob = await recording.done;
      this.recording = null;
      return decoded(blob, LISTEN.record);
    });
  };

  /** A new clip in the place of the old one, which stays where the new one cannot be had. */
  async #take(from: () => Promise<Clip>): Promise<void> {
    this.said = '';
    // The press that chooses a clip also lets it sound.
    const open = this.#player.open().catch(this.#told);
    try {
      this.clip = await from();
      this.said = '';
    } catch (fault) {
      this.recording = null;
      this.#told(fault);
      return;
    }
    await open;
    this.#stop();
    this.rendered = new Map();
    this.#begin = true;
    this.#work();
  }

  readonly #told = (fault: unknown): void => {
    this.said = LISTEN_FAULTS[fault instanceof Unheard ? fault.message : ''] ?? LISTEN.lost;
  };

  async #listen(key: string): Promise<void> {
    this.chosen = key;
    this.said = '';
    try {
      await this.#player.open();
    } catch (fault) {
      this.#told(fault);
      return;
    }
    if (this.#player.playing) this.#player.choose(key);
    else if (this.rendered.has(key)) this.#play();
    else this.#begin = true;
    if (!this.#whole && this.progress === null) this.#work();
  }

  #play(): void {
    const tracks = new Map(this.#all().flatMap(({ key }) => (this.rendered.has(key) ? [[key, this.rendered.get(key) as Rendered] as const] : [])));
    this.#player.play(tracks, this.chosen, levels(tracks, this.match, this.noise), this.#highest());
    this.playing = this.#player.playing;
  }

  readonly #stop = (): void => {
    this.#begin = false;
    this.#player.stop();
    this.playing = false;
  };

  #level(): void {
    this.#player.set(levels(this.rendered, this.match, this.noise));
  }

  #sound() {
    const sound = this.desk?.sound;
    if (sound === undefined) throw new Unheard('lost');
    return sound;
  }

  #work(): void {
    const { clip } = this;
    if (clip === null) return;
    const all = this.#all();
    if (!all.some(({ key }) => key === this.chosen)) this.chosen = (all[this.view?.lug.position ?? 0] ?? all[0])?.key ?? '';
    this.rendered = new Map([...this.rendered].filter(([key]) => all.some((track) => track.key === key)));
    this.#whole = false;
    this.#tracks ??= new Tracks(this.#sound(), {
      track: (key, rendered, straight) => { this.#arrived(key, rendered, straight); },
      progress: (progress) => { this.progress = progress; },
      fault: (code) => { this.said = LISTEN[code]; },
    });
    void this.#tracks.work(clip, all, this.chosen);
  }

  #arrived(key: string, rendered: Rendered, straight: boolean): void {
    this.rendered = new Map([...this.rendered, [key, rendered]]);
    this.said = '';
    this.#whole = !straight;
    if (this.#player.playing) this.#player.put(key, rendered);
    else if (this.#begin && key === this.chosen && passes(rendered)) { this.#begin = false; this.#play(); }
    this.#level();
  }

  readonly #halt = (): void => {
    this.#tracks?.stop();
    this.said = LISTEN.stopped;
  };

  async #save(name: string, track: Rendered): Promise<void> {
    try {
      const file = await wavOf(this.chosen, track, levels(this.rendered, this.match, this.noise), this.#highest());
      const link = document.createElement('a');
      link.href = URL.createObjectURL(file);
      link.download = `${name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, '') || 'voice'}.wav`;
      link.click();
      setTimeout(() => { URL.revokeObjectURL(link.href); }, 10_000);
      this.said = LISTEN.saved;
    } catch {
      this.said = LISTEN_FAULTS['not_saved'] ?? '';
    }
  }

  /** One key for each position, one for stop; never while someone types. */
  readonly #key = (event: KeyboardEvent): void => {
    if (this.clip === null || event.ctrlKey || event.metaKey || event.altKey || typesIn(event)) return;
    if (event.key === '0' && this.playing) this.#stop();
    const track = this.#all()[Number(event.key) - 1];
    if (track !== undefined && /^[1-9]$/.test(event.key)) void this.#listen(track.key);
  };
}

function typesIn(event: KeyboardEvent): boolean {
  const [target] = event.composedPath();
  return target instanceof HTMLElement && (target.isContentEditable || (/^(input|select|textarea)$/.test(target.localName) && !/^(radio|file)$/.test(target.getAttribute('type') ?? '')));
}

customElements.define('ts-listen', TsListen);
