import { css, html, LitElement, nothing } from 'lit';
import { curveWords, dressCurves, told } from '../../words/index.js';
import { SAY } from '../../words/interface.js';
import { ground, hatching, type } from '../shared/look.js';
import type { Curve, Outcome } from '../state/kinds.js';
import type { View } from '../state/view.js';
import '../../plots/ts-plot.js';

/** A curve with its words. */
type Dressed = ReturnType<typeof dressCurves<Curve['lines'][number], Curve>>[number];

/** `<ts-pictures>`: the plots of a calculator in the order of its face, with the curves of pinned states behind. */
export class TsPictures extends LitElement {
  static override styles = [ground, type, hatching, css`
    h2 { margin-bottom: 6px; }
    .plots { display: grid; gap: 22px; }
    @media (min-width: 720px) { .plots.several { grid-template-columns: repeat(auto-fit, minmax(300px, 1fr)); gap: 28px; } }
    .plots:not(.several) { max-width: 620px; }
    .hatched { padding: 8px; }
  `];

  static override properties = { view: {}, bare: { type: Boolean } };
  view: View | null = null;
  /** Without its heading. */
  bare = false;
  #made: { readonly from: View['work']['outcome']; readonly names: string; readonly curves: readonly Dressed[] } | null = null;

  protected override render(): unknown {
    const { view } = this;
    if (view === null || view.situation === null) return nothing;
    const curves = this.#dressed(view);
    const ghosts = view.pins.flatMap(({ outcome }) => (outcome === null ? [] : [dressed(view, outcome)]));
    const shown = view.words.face.pictures.flatMap((picture) => {
      const curve = curves.find(({ key }) => key === picture.curve);
      return curve === undefined ? [] : [{ picture, curve }];
    });
    if (shown.length === 0) return nothing;
    return html`${this.bare ? nothing : html`<h2>${SAY.headings.pictures}</h2>`}
      <div class=${`plots${shown.length > 1 ? ' several' : ''}${view.stale ? ' hatched' : ''}`}>${shown.map(({ picture, curve }, k) => html`<ts-plot
        .curve=${curve} .current=${picture.lines === undefined ? null : (view.columns.find(({ current }) => current)?.name ?? null)}
        .ghosts=${ghosts.flatMap((each) => each.filter(({ key }) => key === curve.key))} .bands=${picture.bands ?? []} .span=${picture.span ?? null}
        .figure=${k + 1} .caption=${told(curveWords(view.calculator.id, curve.key).caption, view.way)} .cursor=${picture.cursor ?? null} .way=${view.way}></ts-plot>`)}</div>`;
  }

  /** The same curves stay the same objects, so that a plot is laid out anew only when there is something new. */
  #dressed(view: View): readonly Dressed[] {
    const names = view.columns.map(({ name }) => name).join();
    const from = view.work.outcome;
    if (this.#made?.from !== from || this.#made.names !== names) this.#made = { from, names, curves: from === null ? [] : dressed(view, from) };
    return this.#made.curves;
  }
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
