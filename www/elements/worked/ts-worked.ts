import { css, html, LitElement, nothing } from 'lit';
import { SAY, told, USUAL_WAY, type HowWorked, type Way } from '../../words/index.js';
import { ground, type } from '../shared/look.js';

/** `<ts-worked>`: method, range, published check and source of the answers. */
export class TsWorked extends LitElement {
  static override styles = [ground, type, css`
    dl { display: grid; gap: 12px; }
    dt { font-weight: 700; font-size: 1rem; }
    dd { font-family: var(--book); max-width: 40em; text-wrap: pretty; }
  `];

  static override properties = { how: {}, way: {} };
  how: HowWorked | null = null;
  way: Way = USUAL_WAY;

  protected override render(): unknown {
    const { how, way } = this;
    if (how === null) return nothing;
    const { method, holds, checked, source } = SAY.headings;
    const rows = [[method, how.method], [holds, how.holdsFor], [checked, how.checkedAgainst], [source, how.source]] as const;
    return html`<dl>${rows.map(([name, text]) => html`<div><dt>${name}</dt><dd>${told(text, way)}</dd></div>`)}</dl>`;
  }
}

customElements.define('ts-worked', TsWorked);
