import { show, type FaceHand } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { html, nothing, type TemplateResult } from 'lit';
import type { Figures, Value } from '../state/kinds.js';
import { valueAt } from '../state/paths.js';
import type { View } from '../state/view.js';

/** A lug to be made, with what it starts from. */
export interface Handed {
  readonly calculator: string;
  readonly inputs: Figures;
}

/** One value that can be handed on: what its button says, and the lug that it makes. */
interface Offer {
  readonly text: string;
  readonly handed: Handed;
}

/** The buttons that hand an answer on to another calculator. */
export function handsOf(view: View, give: (handed: Handed) => void): TemplateResult | typeof nothing {
  const offers = (view.words.face.hands ?? []).flatMap((hand) => offersOf(view, hand));
  if (offers.length === 0 || view.stale) return nothing;
  return html`<div class="hands">${offers.map(({ text, handed }) => html`<button class="link" @click=${() => { give(handed); }}>${text}</button>`)}</div>`;
}

function offersOf(view: View, hand: FaceHand): readonly Offer[] {
  const answers = view.situation?.outcome.answers ?? {};
  const found = valueAt(answers, hand.answer);
  const values = (Array.isArray(found) ? found : [found]) as readonly (Value | undefined)[];
  const seen = new Set<string>();
  return values.flatMap((value, k): readonly Offer[] => {
    if (typeof value !== 'number') return [];
    const name = values.length > 1 ? `L${k + 1}` : hand.name;
    const text = show(value, hand.unit, { digits: 5, way: view.way });
    // Coils alike need one winding sheet.
    if (seen.has(text)) return [];
    seen.add(text);
    const along = Object.entries(hand.along).map(([there, here]): [string, Value] => {
      const own = valueAt(view.full, here);
      const answer = valueAt(answers, here);
      return [there, own ?? (Array.isArray(answer) ? ((answer as readonly Value[])[k] ?? null) : (answer ?? null))];
    });
    const inputs = Object.fromEntries([...along.filter(([, each]) => each !== null), [hand.as, text.replaceAll('\u00a0', ' ')], ...Object.entries(hand.fixed)]);
    return [{ text: PAGE.handOn(name, text), handed: { calculator: hand.to, inputs } }];
  });
}
