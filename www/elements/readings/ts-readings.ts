import { css, html, LitElement } from 'lit';
import { nodeWords, readingsNote, SAY, USUAL_WAY, type Way } from '../../words/index.js';
import { raised } from '../../words/plain.js';
import { show } from '../../words/quantity.js';
import { ground, tables, type } from '../shared/look.js';
import type { TestPoint } from '../state/kinds.js';

/** `<ts-readings>`: what the meter should say at each point: least, expect, most. */
export class TsReadings extends LitElement {
  static override styles = [ground, type, tables, css`
    .usual { display: block; font-size: 0.875rem; font-weight: 400; color: var(--ink-2); }
    .edge { font-weight: 400; }
    p { margin-top: 8px; }
  `];

  static override properties = { points: {}, meter: {}, way: {} };
  points: readonly TestPoint[] = [];
  meter = '';
  way: Way = USUAL_WAY;

  protected override render(): unknown {
    const { point, least, expect, most, usual } = SAY.table;
    const volts = (value: number, unit: string): string => show(value, unit, { way: this.way });
    return html`<table><thead><tr><th scope="col">${point}</th><th scope="col" class="figure">${least}</th><th scope="col" class="figure">${expect}</th><th scope="col" class="figure">${most}</th></tr></thead>
      <tbody>${this.points.map((row) => html`<tr>
        <th scope="row">${raised(nodeWords(row.name, row.pin, this.way))}<span class="usual">${usual}: ${volts(row.usual_least, row.unit)} to ${volts(row.usual_most, row.unit)}</span></th>
        <td class="figure edge">${volts(row.least, row.unit)}</td><td class="figure">${volts(row.nominal, row.unit)}</td><td class="figure edge">${volts(row.most, row.unit)}</td></tr>`)}</tbody></table>
      <p class="small">${readingsNote(this.meter, this.way)}</p>`;
  }
}

customElements.define('ts-readings', TsReadings);
