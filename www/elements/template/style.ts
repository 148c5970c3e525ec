import { css } from 'lit';

/** On the screen as wide as there is room; on paper at true size, a page for each strip. */
export const templateStyle = css`
  :host { display: block; }
  p { font: 400 1.0625rem/1.42 var(--book); max-width: 40rem; }
  svg { display: block; max-width: 100%; height: auto; background: #fff; border: 1px solid var(--rule); margin: 0.75rem 0; }
  .page { break-before: page; break-inside: avoid; }
  :host([paper]) svg { border: 0; margin: 0; max-width: none; }
  :host([paper]) p { font-size: 10pt; line-height: 1.3; max-width: none; }
  .turn { stroke: #000; stroke-width: 0.18; fill: none; }
  .frame { stroke: #000; stroke-width: 0.25; stroke-dasharray: 2 1; fill: none; }
  .hole { stroke: #000; stroke-width: 0.3; fill: #fff; }
  .bar { stroke: #000; stroke-width: 0.35; fill: none; }
  .ground { fill: #fff; fill-opacity: 0.85; }
  text { font: 600 3.4px system-ui, sans-serif; fill: #000; }
  .small { font-weight: 400; font-size: 3px; }
`;
