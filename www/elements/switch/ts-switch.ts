import { css, html, LitElement, nothing } from 'lit';
import { tell } from '../shared/events.js';
import { ground } from '../shared/look.js';
import type { Column } from '../state/answer-tables.js';

/** What `ts-turn` carries: the position, from 0. */
export interface TurnDetail {
  readonly position: number;
}

/** `<ts-switch>`: the positions of the one switch, side by side; the chosen one is filled and dotted. Fires `ts-turn`. */
export class TsSwitch extends LitElement {
  static override styles = [ground, css`
    fieldset { border: 0; padding: 0; margin: 0; min-width: 0; }
    .positions { display: grid; grid-template-columns: repeat(auto-fit, minmax(132px, 1fr)); border: 1.5px solid var(--touch); border-radius: 3px; background: var(--touch); gap: 1.5px; overflow: hidden; }
    label { position: relative; display: flex; flex-wrap: wrap; align-items: center; justify-content: center; gap: 2px 10px; min-height: 50px; padding: 6px 10px; background: var(--plate); color: var(--touch); cursor: pointer; font: 700 1rem/1.2 var(--instrument); touch-action: manipulation; }
    label.current { background: var(--touch); color: var(--plate); }
    input { position: absolute; inset: 0; opacity: 0; margin: 0; width: 100%; height: 100%; cursor: pointer; }
    label:has(:focus-visible) { outline: 3px solid var(--ink); outline-offset: -5px; box-shadow: inset 0 0 0 2px var(--plate); }
    .value { font-weight: 400; font-size: 0.9375rem; }
    .name { display: inline-flex; align-items: center; gap: 8px; overflow-wrap: anywhere; }
    svg { fill: none; stroke: currentcolor; stroke-width: 2; }
    @media (forced-colors: active) { label.current { forced-color-adjust: none; background: Highlight; color: HighlightText; } }
  `];

  static override properties = { positions: {}, label: {} };
  positions: readonly Column[] = [];
  label = '';

  protected override render(): unknown {
    return html`<fieldset>
      <legend class="aside">${this.label}</legend>
      <div class="positions">${this.positions.map((position, k) => html`
        <label class=${position.current ? 'current' : ''}>
          <input type="radio" name="position" .checked=${position.current} @change=${() => { this.#turn(k); }}>
          <span class="name">${position.current ? dot() : nothing}${position.name}</span>
          <span class="value">${position.value}</span>
        </label>`)}
      </div>
    </fieldset>`;
  }

  #turn(position: number): void {
    tell(this, 'ts-turn', { position } satisfies TurnDetail);
  }
}

function dot(): unknown {
  return html`<svg viewBox="0 0 18 18" width="18" height="18" aria-hidden="true"><circle cx="9" cy="9" r="7.6"></circle><circle cx="9" cy="9" r="3.6" fill="currentColor"></circle></svg>`;
}

customElements.define('ts-switch', TsSwitch);
