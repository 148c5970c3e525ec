import { css } from 'lit';

/** What every element stands on: boxes, focus, the two voices. */
export const ground = css`
  :host { display: block; color: var(--ink); font: 400 1.0625rem/1.42 var(--instrument); font-variant-numeric: tabular-nums lining-nums; }
  :host([hidden]) { display: none; }
  *, *::before, *::after { box-sizing: border-box; }
  :focus { outline: none; }
  :focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; border-radius: 3px; }
  h1, h2, h3, p, dl, dd, ol, ul, figure { margin: 0; }
  ol, ul { padding: 0; list-style: none; }
  .aside { position: absolute; width: 1px; height: 1px; margin: -1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  svg { display: block; flex: none; }
  @media (prefers-reduced-motion: reduce) { * { transition: none !important; animation: none !important; } }
`;

/** Titles, sentences, captions. */
export const type = css`
  h1 { font: 600 1.5625rem/1.2 var(--book); text-wrap: balance; }
  h2 { font: 600 1.25rem/1.25 var(--book); }
  h3 { font: 700 1rem/1.35 var(--instrument); }
  .book { font-family: var(--book); text-wrap: pretty; }
  .small { font-size: 0.9375rem; color: var(--ink-2); }
  .note { font-size: 0.875rem; color: var(--ink-2); }
`;

/** Everything that can be pressed is 44 px or more and framed or underlined. */
export const controls = css`
  button, .button {
    min-height: 46px; min-width: 44px; padding: 8px 16px; border: 1.5px solid var(--touch); border-radius: 3px;
    background: var(--plate); color: var(--touch); font: 700 1rem/1.2 var(--instrument); font-variant-numeric: inherit;
    display: inline-flex; align-items: center; justify-content: center; gap: 10px; cursor: pointer; text-decoration: none;
    -webkit-tap-highlight-color: transparent; touch-action: manipulation; text-align: center;
  }
  button:active, .button:active { background: var(--touch); color: var(--plate); }
  button:disabled { color: var(--ink-2); border-color: var(--rule); cursor: default; background: var(--paper); }
  .link {
    border: 0; background: none; padding: 8px 4px; min-height: 44px; color: var(--touch); font: 700 1rem/1.2 var(--instrument);
    display: inline-flex; align-items: center; gap: 10px; cursor: pointer; text-decoration: none;
  }
  .link > span { border-bottom: 1.6px solid currentcolor; padding-bottom: 2px; }
  .link:active { background: var(--touch); color: var(--plate); border-radius: 3px; }
  .row { display: flex; flex-wrap: wrap; gap: 12px; align-items: center; }
  @media (forced-colors: active) {
    button:active, .button:active { forced-color-adjust: none; background: Highlight; color: HighlightText; }
  }
`;

/** Tables of figures: hairlines, figures right. */
export const tables = css`
  table { border-collapse: collapse; width: 100%; }
  th { text-align: left; font: 700 1rem/1.3 var(--instrument); padding: 8px 8px 8px 0; vertical-align: bottom; }
  thead th { border-bottom: 2px solid var(--ink); }
  tbody th { font-weight: 400; font-size: 1.0625rem; vertical-align: baseline; }
  td { padding: 8px 0 8px 8px; vertical-align: baseline; }
  tbody tr > * { border-bottom: 1px solid var(--rule); }
  .figure { text-align: right; font-weight: 700; font-size: 1.125rem; white-space: nowrap; }
  th.figure { font-size: 1rem; }
`;

/** Hatching at 45° in ink, for what is exceeded, waits or is forbidden. */
export const hatching = css`
  .hatched { background-image: repeating-linear-gradient(135deg, transparent 0 7px, var(--rule) 7px 8px); }
  .hatched-ink { background-image: repeating-linear-gradient(135deg, var(--ink) 0 2.2px, transparent 2.2px 5px); }
  @media (forced-colors: active) { .hatched, .hatched-ink { forced-color-adjust: none; } }
`;
