import { css, html, LitElement, nothing } from 'lit';
import { curveWords, dressCurves, told, type FacePicture } from '../../words/index.js';
import { SAY } from '../../words/interface.js';
import { afterFrame } from '../../drawings/frame.js';
import { ground, hatching, type } from '../shared/look.js';
import type { Curve, Outcome } from '../state/kinds.js';
import { Memo } from '../state/memo.js';
import type { View } from '../state/view.js';
import '../../plots/ts-plot.js';

/** A curve with its words. */
type Dressed = ReturnType<typeof dressCurves<Curve['lines'][number], Curve>>[number];

/** `<ts-pictures>`: the plots of a calculator in the order of its face, with the curves of pinned states behind. */
export class TsPictures extends LitElement {
  static override styles = [ground, type, hatching, css`
    h2 { margin-bottom: 6px; }
    .plots { display: grid; grid-template-columns: minmax(0, 1fr); gap: 22px; }
    @media screen and (min-width: 720px) { .plots.several { grid-template-columns: repeat(auto-fit, minmax(300px, 1fr)); gap: 28px; } }
    .plots:not(.several) { max-width: 620px; }
    .hatched { padding: 8px; }
  `];

  static override properties = { view: { hasChanged: differs }, bare: { type: Boolean }, shows: {} };
  view: View | null = null;
  /** Without its heading. */
  bare = false;
  /** Paper has its first picture beside the readings, and the rest where there is room. */
  shows: 'all' | 'first' | 'rest' = 'all';
  readonly #memo = new Memo();

  /** The figures first, the pictures with the next frame; on paper there is no next one. */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.hasUpdated && !this.bare) await afterFrame(120);
    super.scheduleUpdate();
  }

  protected override render(): unknown {
    const { view } = this;
    if (view === null || view.situation === null) return nothing;
    // The same curves stay the same objects, so that a plot is laid out anew only when there is something new.
    const curves = this.#memo.get('curves', [view.work.outcome?.curves, names(view), view.way], () => (view.work.outcome === null ? [] : dressed(view, view.work.outcome)));
    const shown = view.words.face.pictures.flatMap((picture) => {
      const curve = curves.find(({ key }) => key === picture.curve);
      return curve === undefined ? [] : [{ picture, curve }];
    });
    if (shown.length === 0) return nothing;
    return html`${this.bare ? nothing : html`<h2>${SAY.headings.pictures}</h2>`}
      <div class=${`plots${shown.length > 1 ? ' several' : ''}${view.stale ? ' hatched' : ''}`}>${shown.map(({ picture, curve }, k) => (this.shows === 'first' && k > 0) || (this.shows === 'rest' && k === 0) ? nothing : html`<ts-plot
        .curve=${curve} .current=${liveLine(picture, curve, view)}
        .ghosts=${this.#memo.get(`ghosts ${curve.key}`, [view.pins, view.columns, view.way], () => ghosts(view, curve.key))} .bands=${this.#memo.get(`bands ${curve.key}`, [curve], () => bandsOf(picture, curve))} .span=${picture.span ?? null}
        .figure=${k + 1} .caption=${told(curveWords(view.calculator.id, curve.key).caption, view.way)} .cursor=${picture.cursor ?? null} .way=${view.way}></ts-plot>`)}</div>`;
  }
}

function liveLine(picture: FacePicture, { lines }: Dressed, view: View): string | null {
  if (picture.live === 'last') return lines.at(-1)?.label ?? null;
  return picture.lines === undefined ? null : (view.columns.find(({ current }) => current)?.name ?? null);
}

/** Hatched ground: the face's bands, and all beyond the mark that is its limit. */
function bandsOf({ bands = [], limit }: FacePicture, { marks }: Dressed): readonly (readonly [number, number])[] {
  const at = marks.find(({ code }) => code === limit);
  return limit === undefined || at === undefined ? bands : [...bands, [at.x, Number.MAX_VALUE]];
}

/** Whether a new view has anything new to draw. */
function differs(now: View | null, before: View | null | undefined): boolean {
  if (now === null || before === null || before === undefined) return now !== before;
  return now.work.outcome?.curves !== before.work.outcome?.curves || now.pins !== before.pins || now.stale !== before.stale || now.way !== before.way ||
    now.lug.position !== before.lug.position || now.lug.id !== before.lug.id || names(now) !== names(before);
}

function names(view: View): string {
  return view.columns.map(({ name }) => name).join('\n');
}

function ghosts(view: View, key: string): readonly Dressed[] {
  return view.pins.flatMap(({ outcome }) => (outcome === null ? [] : dressed(view, outcome).filter((curve) => curve.key === key)));
}

/** Curves with their words; lines that belong to the positions of the switch are called by them. */
function dressed(view: View, outcome: Outcome): readonly Dressed[] {
  const named = dressCurves<Curve['lines'][number], Curve>(view.calculator.id, outcome.curves ?? [], view.way);
  return named.map((curve) => {
    const picture = view.words.face.pictures.find((each) => each.curve === curve.key);
    if (picture?.lines === undefined) return curve;
    return { ...curve, lines: curve.lines.map((line, k) => ({ ...line, label: view.columns[k]?.name ?? line.label })) };
  });
}

customElements.define('ts-pictures', TsPictures);
