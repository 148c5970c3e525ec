import { css } from 'lit';

/** Black on white; laid out to the paper's width before it is printed, so that nothing moves on the way. */
export const sheetStyle = css`
  :host { width: 182mm; color: #000; background: #fff; font-size: 10.5pt; line-height: 1.4;
    --paper: #fff; --plate: #fff; --ink: #000; --ink-2: #000; --edge: #000; --rule: #000; --copper: #000; --live: #000; --touch: #000; --wash: transparent; }
  :host(:not([printing])) { display: none; }
  header { display: flex; justify-content: space-between; align-items: flex-end; gap: 12mm; border-bottom: 2.25pt solid #000; padding-bottom: 1.6mm; position: relative; }
  header::after { content: ""; position: absolute; left: 0; right: 0; bottom: -4.6pt; border-bottom: 0.75pt solid #000; }
  h1 { font-size: 19pt; }
  .by { text-align: right; line-height: 1.65; white-space: nowrap; }
  .blank { display: inline-block; border-bottom: 0.75pt solid #000; width: 32mm; }
  .blank.short { width: 22mm; }
  .lead { display: flex; gap: 6mm; align-items: flex-start; padding: 3.4mm 0 2.4mm; }
  .lead .figure { font-size: 25pt; font-weight: 600; line-height: 1.05; white-space: nowrap; }
  .lead p { font: 400 11.5pt/1.4 var(--book); }
  .drawing { border: 0.9pt solid #000; break-inside: avoid; padding: 1mm 0; }
  ts-drawing { background: #fff; }
  .under { font: italic 400 10.5pt/1.4 var(--book); padding: 1mm 0 2.4mm; }
  .safety { border: 1.6pt solid #000; display: grid; grid-template-columns: 15mm 1fr; align-items: center; padding: 2mm 3mm 2mm 2mm; break-inside: avoid; }
  .cols { display: grid; grid-template-columns: minmax(0, 1.36fr) minmax(0, 1fr); gap: 0 7mm; padding-top: 2.4mm; align-items: start; }
  h2 { font-size: 13pt; margin: 0 0 0.4mm; break-after: avoid; }
  .cols > div > section:not(.long) { break-inside: avoid; }
  section + section { margin-top: 3mm; }
  .whole { break-inside: avoid; padding-top: 3mm; }
  .halves { display: grid; grid-template-columns: 1fr 1fr; gap: 7mm; align-items: start; }
  @media print { :host { width: 100%; } }
  table { border-collapse: collapse; width: 100%; font-size: 10pt; }
  th, td { text-align: left; padding: 0 1.2mm 0 0; height: 7.2mm; vertical-align: middle; font-weight: 400; white-space: nowrap; }
  .parts th, .parts td { height: 6.1mm; }
  th.wrap, td.wrap { white-space: normal; line-height: 1.15; }
  thead th { font-weight: 700; border-bottom: 1pt solid #000; height: 6.4mm; }
  tbody tr > * { border-bottom: 0.6pt solid #000; }
  .parts th[scope="row"] { font-weight: 700; }
  tr { break-inside: avoid; }
  .note { font-size: 9.5pt; color: #000; padding-top: 1mm; }
  .flow { columns: 2; column-gap: 7mm; margin-top: 2mm; }
  footer { display: flex; justify-content: space-between; gap: 8mm; border-top: 0.9pt solid #000; margin-top: 2mm; padding-top: 1mm; font-size: 9.5pt; break-inside: avoid; }
  footer p:last-child { white-space: nowrap; }
  .limits { font-size: 10.5pt; padding-top: 2mm; }
`;
