import { html, nothing, type TemplateResult } from 'lit';
import { mendButton, SAY } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { ICONS } from '../shared/icons.js';
import type { Refusal } from '../state/kinds.js';

/** A figure that was read, and is far from anything usual: what may have been meant, one press away. */
export function doubtOf(meant: string | null, use: (text: string) => void): TemplateResult | typeof nothing {
  if (meant === null) return nothing;
  return html`<div class="doubt"><p>${PAGE.farFromUsual}</p><div class="mends"><button type="button" @click=${() => { use(meant); }}>${mendButton({ text: meant })}</button></div></div>`;
}

/** "Not read.", what to write instead, and a button for each text that would be read. */
export function refusalOf(refusal: Refusal, id: string, use: (text: string) => void): TemplateResult {
  const mends = refusal.problem.mends ?? [];
  return html`<div class="refusal">${ICONS.refused(26)}<p id=${id}><b>${SAY.notRead}</b> ${refusal.text}</p>
    ${mends.length === 0 ? nothing : html`<div class="mends">${mends.map((mend) => html`
      <button type="button" @click=${() => { use(mend.text); }}>${mendButton(mend)}</button>`)}</div>`}
  </div>`;
}
