import { html, nothing, type TemplateResult } from 'lit';
import { mendButton, SAY } from '../../words/index.js';
import { ICONS } from '../shared/icons.js';
import type { Refusal } from '../state/kinds.js';

/** "Not read.", what to write instead, and a button for each text that would be read. */
export function refusalOf(refusal: Refusal, id: string, use: (text: string) => void): TemplateResult {
  const mends = refusal.problem.mends ?? [];
  return html`<div class="refusal">${ICONS.refused(26)}<p id=${id}><b>${SAY.notRead}</b> ${refusal.text}</p>
    ${mends.length === 0 ? nothing : html`<div class="mends">${mends.map((mend) => html`
      <button type="button" @click=${() => { use(mend.text); }}>${mendButton(mend)}</button>`)}</div>`}
  </div>`;
}
