import { css, html, LitElement, nothing } from 'lit';
import { ground, hatching, tables, type } from '../shared/look.js';
import { BLANK, type Cell } from '../state/answer-cells.js';
import type { Column, Table, TableRow } from '../state/answer-tables.js';
import { PAGE } from '../../words/page-words.js';

/**
 * `<ts-answers>`: the tables of answers, a column for each position of the switch where there is one. The answers of a
 * pinned state stand under the new ones as differences.
 */
export class TsAnswers extends LitElement {
  static override styles = [ground, type, hatching, tables, css`
    table + table { margin-top: 22px; }
    th .note { display: block; font-weight: 400; font-size: 0.9375rem; }
    td.current, thead th.current { background: var(--plate); }
    thead th.current { box-shadow: inset 0 -4px 0 var(--live); border-bottom-color: transparent; padding-right: 8px; }
    td.current, td:not(:last-child) { padding-right: 8px; }
    thead th:not(:first-child, :last-child) { padding-right: 8px; }
    tbody th { overflow-wrap: break-word; }
    .turned th { font-size: 0.9375rem; }
    .turned thead th { white-space: normal; font-size: 0.875rem; overflow-wrap: anywhere; }
    .turned td.figure { font-size: 1rem; }
    .turned .current > * { background: var(--plate); }
    .turned .current > th { box-shadow: inset 4px 0 0 var(--live); padding-left: 12px; font-weight: 700; }
    td.figure:has(.long) { white-space: normal; }
    .line { display: block; }
    .against { display: block; font-size: 0.875rem; font-weight: 400; color: var(--ink-2); white-space: normal; }
    .blank { font-weight: 400; color: var(--ink-2); }
    .why { display: block; font-size: 0.875rem; color: var(--ink-2); font-family: var(--book); }
    :host([stale]) td, :host([stale]) thead th.current { font-weight: 400; color: var(--ink-2); background: none; }
    :host([stale]) .line { text-decoration: underline dashed 1.5px var(--edge); text-underline-offset: 4px; }
    @media (forced-colors: active) { thead th.current { border-bottom: 4px solid CanvasText; } }
    @media (max-width: 359px) { th, td { padding-left: 4px; font-size: 1rem; } }
  `];

  static override properties = { tables: {}, stale: { type: Boolean, reflect: true } };
  tables: readonly Table[] = [];
  stale = false;

  protected override render(): unknown {
    return html`<div class=${this.stale ? 'hatched' : ''}>${this.tables.map(table)}</div>`;
  }
}

/** So many columns of figures fit beside their labels on a phone. */
const COLUMNS = 3;

function table(whole: Table): unknown {
  const { heading, note, columns, rows } = whole;
  if (columns.length > COLUMNS) return turned(whole);
  const shown = rows.some(({ cells }) => cells.length > 1) ? columns : [];
  return html`<table>
    <thead><tr>
      <th scope="col">${heading}${note === '' ? nothing : html`<span class="note">${note}</span>`}</th>
      ${shown.length === 0 ? html`<th class="figure" scope="col"><span class="aside">${PAGE.value}</span></th>` : shown.map(head)}
    </tr></thead>
    <tbody>${rows.map((row) => line(row, shown))}</tbody>
  </table>`;
}

/** A table with more items than fit side by side has a row for each of them instead. */
function turned({ heading, note, columns, rows }: Table): unknown {
  return html`<table class="turned">
    <thead><tr>
      <th scope="col">${heading}${note === '' ? nothing : html`<span class="note">${note}</span>`}</th>
      ${rows.map(({ label, why }) => html`<th scope="col" class="figure">${label}${why === '' ? nothing : html`<span class="why">${why}</span>`}</th>`)}
    </tr></thead>
    <tbody>${columns.map(({ name, value, current }, k) => html`<tr class=${current ? 'current' : ''}>
      <th scope="row">${name}<span class="note">${value}</span>${current ? html`<span class="aside">, ${PAGE.switchedIn}</span>` : nothing}</th>
      ${rows.map(({ cells }) => cell(cells[k] ?? BLANK, false))}
    </tr>`)}</tbody>
  </table>`;
}

function head({ name, value, current }: Column): unknown {
  return html`<th scope="col" class=${current ? 'figure current' : 'figure'}>${name}<span class="note">${value}</span>
    ${current ? html`<span class="aside">, ${PAGE.switchedIn}</span>` : nothing}</th>`;
}

function line({ label, cells, why }: TableRow, columns: readonly Column[]): unknown {
  return html`<tr>
    <th scope="row">${label}${why === '' ? nothing : html`<span class="why">${why}</span>`}</th>
    ${cells.map((each, k) => cell(each, columns[k]?.current === true))}
  </tr>`;
}

function cell({ lines, against, blank }: Cell, current: boolean): unknown {
  return html`<td class=${`figure${current ? ' current' : ''}`}>
    ${lines.map((text) => html`<span class=${`line${blank ? ' blank' : ''}${text.length > 14 ? ' long' : ''}`}>${text}</span>`)}
    ${against.map((text) => html`<span class="against">${text}</span>`)}
  </td>`;
}

customElements.define('ts-answers', TsAnswers);
