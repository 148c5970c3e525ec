import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { pointWords, readingsNote, SAY, standing, USUAL_WAY, verdictWords } from '../../words/index.js';
import { show } from '../../words/quantity.js';
import { tell } from '../shared/events.js';
import { ground, tables, type } from '../shared/look.js';
import type { Desk } from '../state/desk.js';
import { readingAt, readingsOf, type Taken } from '../state/taken.js';
import type { TestPoint } from '../state/kinds.js';
import type { View } from '../state/view.js';

/** `<ts-readings>`: what the meter should say at each point, and whether what it says is right. Fires `ts-read`. */
export class TsReadings extends LitElement {
  static override styles = [ground, type, tables, css`
    .usual { display: block; font-size: 0.875rem; font-weight: 400; color: var(--ink-2); }
    .edge { font-weight: 400; }
    p { margin-top: 8px; }
    tr:has(+ .taken) > * { border-bottom: 0; padding-bottom: 0; }
    .taken td { padding-left: 0; padding-right: 0; }
    .taken label { display: flex; align-items: center; gap: 10px; }
    input { width: 6.5em; min-height: 44px; padding: 4px 8px; border: 0; border-bottom: 2px solid var(--touch); background: var(--wash); color: var(--ink); font: 700 1rem var(--instrument); }
    .verdict { margin: 4px 0 0; }
    .wrong { border-left: 6px solid var(--ink); padding-left: 10px; }
  `];

  static override properties = { view: { attribute: false }, desk: { attribute: false }, tick: {}, meter: {} };
  view: View | null = null;
  desk: Desk | null = null;
  tick = 0;
  meter = '';

  /** Brings a point's field onto the screen and the focus into it. */
  lead(point: string): void {
    const field = this.renderRoot.querySelector<HTMLElement>(`input[data-point="${CSS.escape(point)}"]`) ?? this.renderRoot.querySelector<HTMLElement>('input');
    field?.focus({ preventScroll: true });
    // The table has its height only with the next picture.
    requestAnimationFrame(() => { field?.scrollIntoView({ block: 'center' }); });
  }

  protected override render(): unknown {
    const { point, least, expect, most } = SAY.table;
    const way = this.view?.way ?? USUAL_WAY;
    const points = this.view?.work.outcome?.test_points ?? [];
    return html`<table><thead><tr><th scope="col">${point}</th><th scope="col" class="figure">${least}</th><th scope="col" class="figure">${expect}</th><th scope="col" class="figure">${most}</th></tr></thead>
      <tbody>${points.map((row) => this.#point(row))}</tbody></table>
      <p class="small">${readingsNote(this.meter, way)}</p>`;
  }

  #point(row: TestPoint): unknown {
    const { view, desk } = this;
    if (view === null || desk === null) return nothing;
    const { usual, yourMeter } = SAY.table;
    const volts = (value: number): string => show(value, row.unit, { way: view.way });
    const name = pointWords(row.name, row.pin, view.way);
    const taken = readingAt(desk, view, row);
    return html`<tr>
        <th scope="row">${name}<span class="usual">${usual}: ${volts(row.usual_least)} to ${volts(row.usual_most)}</span></th>
        <td class="figure edge">${volts(row.least)}</td><td class="figure">${volts(row.nominal)}</td><td class="figure edge">${volts(row.most)}</td></tr>
      <tr class="taken"><td colspan="4"><label><span>${yourMeter}<i class="aside">, ${name}</i></span>
        <input type="text" inputmode="decimal" maxlength="24" autocomplete="off" data-point=${row.name} .value=${live(readingsOf(view.lug)[row.name] ?? '')}
          @input=${(event: Event) => { tell(this, 'ts-read', { point: row.name, text: (event.target as HTMLInputElement).value }); }}> ${row.unit}</label>
        <div role="status">${taken === null ? nothing : this.#verdict(row, taken, view)}</div></td></tr>`;
  }

  #verdict(row: TestPoint, taken: Taken, view: View): TemplateResult {
    if ('problem' in taken) return html`<p class="verdict wrong">${taken.problem}</p>`;
    const wrong = ['low', 'high'].includes(standing(row, taken.value));
    const { said, next } = verdictWords(row, taken.value, taken.parts, view.way);
    return html`<p class=${wrong ? 'verdict wrong' : 'verdict'}><b>${said}</b> ${next}</p>`;
  }
}

customElements.define('ts-readings', TsReadings);
