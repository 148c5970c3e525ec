import { css, html, LitElement, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { labelOf, SAY } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { lowered } from '../../words/plain.js';
import { tell } from '../shared/events.js';
import { controls, ground, type } from '../shared/look.js';
import type { Desk } from '../state/desk.js';
import { leaves } from '../state/leaves.js';
import type { Pin } from '../state/kinds.js';
import { referenceOf, type View } from '../state/view.js';

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** `<ts-pins>`: states kept to compare with. Fires `ts-pin`, `ts-unpin`, `ts-name-pin` and `ts-take-pin`. */
export class TsPins extends LitElement {
  static override styles = [ground, type, controls, css`
    :host { border-top: 1px solid var(--edge); padding: 12px 0; }
    .head { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: 6px 16px; }
    .head p { flex: 1 1 200px; font-family: var(--book); font-size: 0.9375rem; color: var(--ink-2); }
    li { border-top: 1px solid var(--rule); padding: 10px 0 4px; margin-top: 10px; }
    label { display: flex; align-items: center; gap: 10px; font-size: 0.9375rem; }
    input { flex: 1; min-width: 0; height: 46px; padding: 0 10px; border: 1.5px solid var(--touch); border-bottom-width: 3px; border-radius: 3px; background: var(--plate); color: var(--touch); font: 700 1.0625rem/1 var(--instrument); }
    .differs { font-size: 0.9375rem; color: var(--ink-2); margin-top: 6px; overflow-wrap: anywhere; }
    li .row { gap: 2px 18px; }
  `];

  static override properties = { view: { hasChanged: differs }, desk: { attribute: false } };
  view: View | null = null;
  desk: Desk | null = null;

  protected override render(): unknown {
    const { view } = this;
    if (view === null) return nothing;
    const { pins } = view.lug;
    const free = [...LETTERS].find((letter) => pins.every(({ name }) => name !== letter)) ?? 'A';
    return html`<section aria-label=${SAY.pin.pinned}>
      <div class="head"><button @click=${() => { tell(this, 'ts-pin', free); }} ?disabled=${view.stale || view.situation === null}>${SAY.pin.pin}</button><p>${SAY.pin.help}</p></div>
      ${pins.length === 0 ? nothing : html`<ul>${pins.map((pin, k) => this.#pin(view, pin, k))}</ul>`}</section>`;
  }

  #pin(view: View, pin: Pin, index: number): unknown {
    return html`<li>
      <label>${SAY.pin.pinned} <input type="text" maxlength="24" autocomplete="off" .value=${live(pin.name)} @change=${(event: Event) => { tell(this, 'ts-name-pin', { index, name: (event.target as HTMLInputElement).value }); }}></label>
      <p class="differs">${this.#differs(view, pin)}</p>
      <div class="row">
        <button class="link" @click=${() => { tell(this, 'ts-take-pin', index); }}><span>${PAGE.goBack}<i class="aside">, ${pin.name}</i></span></button>
        <button class="link" @click=${() => { tell(this, 'ts-unpin', index); }}><span>${SAY.pin.unpin}<i class="aside">, ${pin.name}</i></span></button>
      </div></li>`;
  }

  /** What is now otherwise than it was pinned: "R3 was 220k. C4 was 470 mmf." */
  #differs(view: View, pin: Pin): string {
    if (this.desk === null) return '';
    const then = leaves(view.calculator.inputs, this.desk.full(view.lug.calculator, pin.inputs));
    const changed = then.flatMap(({ path, value }) => {
      const now = view.leaves.find((each) => each.path === path)?.value;
      if (now === value || typeof value !== 'string') return [];
      const name = referenceOf(view, path) || lowered(labelOf(view.words, path, view.full, view.way));
      return [PAGE.was(name, value)];
    });
    const turned = pin.position === view.lug.position ? [] : [PAGE.switchWas(view.columns[pin.position]?.name ?? String(pin.position + 1))];
    const all = [...changed, ...turned];
    return all.length === 0 ? PAGE.sameAsNow : all.join(' ');
  }
}

/** Without a pin there is nothing to compare. */
function differs(now: View | null, before: View | null | undefined): boolean {
  if (now === null || before === null || before === undefined) return now !== before;
  return now.lug.pins.length > 0 || before.lug.pins.length > 0 || now.stale !== before.stale || (now.situation === null) !== (before.situation === null);
}

customElements.define('ts-pins', TsPins);
