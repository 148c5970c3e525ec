import { html, type TemplateResult } from 'lit';

import { show } from '../words/quantity.js';
import type { Way } from '../words/way.js';
import type { Curve } from './kinds.js';
import { evens } from './place.js';
import { heightAt } from './reading.js';
import type { Scale } from './scales.js';

/** Rows of a table at most. */
const ROWS = 25;

/** The same picture as a table: a row for each of some even places along the axis, a column for each line. */
export function table(curve: Curve, x: Scale, way: Way): TemplateResult {
  return html`<table>
    <thead><tr><th scope="col">${curve.x.label || curve.x.unit}</th>${curve.lines.map(({ label }) => html`<th scope="col">${label}</th>`)}</tr></thead>
    <tbody>${places(curve, x).map((at) => html`<tr><th scope="row">${show(at, curve.x.unit, { way })}</th>${curve.lines.map((line) =>
      html`<td>${show(heightAt(line, at, curve.x.scale === 'log'), curve.y.unit, { way })}</td>`)}</tr>`)}</tbody>
  </table>`;
}

/** Round figures along the axis: those of its ticks and as many between them as there is room for in a table. */
function places(curve: Curve, x: Scale): readonly number[] {
  const [from, to] = x.domain;
  if (curve.x.scale !== 'log') {
    const found = evens(x.domain, 20);
    return found.filter((value) => value >= from && value <= to).slice(0, ROWS + 10);
  }
  const found: number[] = [];
  const decades = Math.log10(to / from);
  const steps = decades <= 2.5 ? [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8] : decades <= 5 ? [1, 2, 3, 5] : [1, 3];
  for (let power = Math.floor(Math.log10(from)); power <= Math.log10(to); power += 1) {
    for (const step of steps) {
      const value = Number(`${step}e${power}`);
      if (value >= from * (1 - 1e-9) && value <= to * (1 + 1e-9)) found.push(value);
    }
  }
  return found;
}
