import { css } from 'lit';

/** A plot's inks and weights, in pixels: it is laid out to its width and never scaled. */
export const plotStyle = css`
  :host {
    display: block;
    --p-paper: var(--paper, #edeee8);
    --p-plate: var(--plate, #fbfbf7);
    --p-ink: var(--ink, #171a19);
    --p-ink-2: var(--ink-2, #454a47);
    --p-edge: var(--edge, #6c726d);
    --p-rule: var(--rule, #bfc3ba);
    --p-copper: var(--copper, #8a3d10);
    --p-live: var(--live, #a34a14);
    --p-touch: var(--touch, #005259);
    color: var(--p-ink);
    font-family: system-ui, sans-serif;
    font-variant-numeric: tabular-nums lining-nums;
  }
  figure { margin: 0; }
  svg { display: block; overflow: visible; max-width: 100%; touch-action: pan-y; }
  text { fill: var(--p-ink-2); font-size: 14px; }
  .axis { fill: none; stroke: var(--p-ink); stroke-width: 1.4; }
  .hair { fill: none; stroke: var(--p-rule); stroke-width: 1; }
  .hatching { fill: none; stroke: var(--p-edge); stroke-width: 0.8; opacity: 0.75; }
  .band, .ground { fill: url(#hatch); stroke: none; }
  .line { fill: none; stroke: var(--p-ink); stroke-width: 2.2; stroke-linejoin: round; }
  .line.current { stroke: var(--p-live); stroke-width: 3.2; }
  .line.dash-1 { stroke-dasharray: 8 4.5; }
  .line.dash-2 { stroke-dasharray: 2 4; }
  .line.family { stroke-width: 1.5; }
  .line.limit { stroke-width: 1.4; }
  .ghost { fill: none; stroke: var(--p-edge); stroke-width: 1.5; }
  .name { fill: var(--p-ink); font-weight: 700; stroke: var(--p-paper); stroke-width: 4; paint-order: stroke; stroke-linejoin: round; }
  .name.current { fill: var(--p-copper); }
  .name.faint { fill: var(--p-ink-2); font-weight: 400; }
  .mark { fill: var(--p-paper); stroke: var(--p-live); stroke-width: 3; }
  .cursor { cursor: ew-resize; outline: none; touch-action: none; }
  .cursor line { stroke: var(--p-touch); stroke-width: 1.8; }
  .handle { fill: var(--p-plate); stroke: var(--p-touch); stroke-width: 2; stroke-linejoin: miter; }
  .grip { fill: none; stroke: var(--p-touch); stroke-width: 1.8; }
  .focus { display: none; fill: none; stroke: var(--p-ink); stroke-width: 3; }
  .cursor:focus-visible .focus { display: block; }
  .cursor:active .handle { fill: var(--p-touch); }
  .cursor:active .grip { stroke: var(--p-plate); }
  .hit { fill: transparent; pointer-events: all; }
  figcaption { margin-top: 4px; font: italic 15px/1.42 "Iowan Old Style", "Palatino Linotype", Palatino, "Noto Serif", serif; color: var(--p-ink-2); }
  .reading { margin: 6px 0 0; font-size: 16px; line-height: 1.5; display: flex; flex-wrap: wrap; gap: 0 16px; }
  .reading b { font-weight: 700; }
  .reading .old { color: var(--p-ink-2); }
  .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; margin: 0; }
  details { margin-top: 8px; font-size: 16px; }
  summary { min-height: 44px; display: flex; align-items: center; gap: 10px; cursor: pointer; color: var(--p-touch); font-weight: 600; list-style: none; }
  summary::-webkit-details-marker { display: none; }
  summary::before { content: ""; width: 0; height: 0; border: 6px solid transparent; border-left: 9px solid var(--p-touch); border-right: 0; }
  details[open] summary::before { border: 6px solid transparent; border-top: 9px solid var(--p-touch); border-bottom: 0; }
  summary span { border-bottom: 1.6px solid var(--p-touch); }
  summary:focus-visible { outline: 3px solid var(--p-ink); outline-offset: 2px; }
  .table { overflow-x: auto; }
  .table:focus-visible { outline: 3px solid var(--p-ink); outline-offset: 2px; }
  table { border-collapse: collapse; }
  th, td { padding: 5px 0 5px 18px; text-align: right; white-space: nowrap; border-bottom: 1px solid var(--p-rule); }
  th:first-child, td:first-child { padding-left: 0; }
  thead th { border-bottom: 1.5px solid var(--p-ink); }
  tbody th { font-weight: 400; }
  @media (forced-colors: active) {
    :host {
      --p-paper: Canvas; --p-plate: Canvas; --p-ink: CanvasText; --p-ink-2: CanvasText; --p-edge: CanvasText; --p-rule: GrayText;
      --p-copper: CanvasText; --p-live: CanvasText; --p-touch: LinkText;
    }
    svg { forced-color-adjust: none; }
  }
  @media print {
    :host {
      --p-paper: #fff; --p-plate: #fff; --p-ink: #000; --p-ink-2: #000; --p-edge: #000; --p-rule: #000; --p-copper: #000;
      --p-live: #000; --p-touch: #000;
    }
    :host { break-inside: avoid; }
    .hair { stroke-width: 0.5; }
    .cursor, .reading, details { display: none; }
    /* The cursor's handle had its room here. */
    svg { margin-bottom: -20px; }
  }
`;
