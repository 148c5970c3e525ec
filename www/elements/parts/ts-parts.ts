import { css, html, LitElement } from 'lit';
import { ratingWords, roleWords, ruleWords, SAY, USUAL_WAY, type PartRow, type Way } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { show } from '../../words/quantity.js';
import { ground, tables, type } from '../shared/look.js';

const UNITS: Readonly<Record<string, string>> = { pipe: 'm', wire: 'm', resistor: 'Ω', potentiometer: 'Ω', capacitor: 'F', coil: 'H' };

/** A part's value as one asks for it over the counter. */
export function partValue({ kind, value }: PartRow, way: Way): string {
  if (typeof value === 'string') return value;
  if (typeof value !== 'number') return '';
  return kind === 'switch' ? PAGE.ways(value) : show(value, UNITS[kind] ?? '1', { way });
}

/** `<ts-parts>`: what to buy, with the rating to look for and the rule it came from. */
export class TsParts extends LitElement {
  static override styles = [ground, type, tables, css`td.figure { white-space: normal; }`];

  static override properties = { parts: {}, way: {} };
  parts: readonly PartRow[] = [];
  way: Way = USUAL_WAY;

  protected override render(): unknown {
    const { part, value, rating } = SAY.table;
    const rules = [...new Set(this.parts.map((row) => row.rule).filter((rule) => rule !== ''))];
    return html`<table><thead><tr><th scope="col">${part}</th><th scope="col">${value}</th><th scope="col" class="figure">${rating}</th></tr></thead>
      <tbody>${this.parts.map((row) => html`<tr>
        <th scope="row"><b>${row.reference}</b> ${roleWords(row.role, this.way)}</th>
        <td>${partValue(row, this.way)}${row.tolerance === null || row.tolerance === undefined ? '' : html` <span class="small">±${show(row.tolerance * 100, '%', { way: this.way })}</span>`}</td>
        <td class="figure">${ratingWords(row, this.way)}</td></tr>`)}</tbody></table>
      <ul class="small">${rules.map((rule) => html`<li>${this.parts.filter((row) => row.rule === rule).map((row) => row.reference).join(', ')}: ${ruleWords(rule, this.way)}.</li>`)}</ul>`;
  }
}

customElements.define('ts-parts', TsParts);
