import { css } from 'lit';

/** Danger is solid, a limit has a hatched edge, a note has rules above and below. */
export const cautionStyle = css`
  [role="group"] { scroll-margin: 16px; }
  h2 { font: 700 1rem/1.35 var(--instrument); }
  p { font-size: 1rem; line-height: 1.45; }
  .danger { background: var(--ink); color: var(--paper); padding: 16px 15px; border: 1px solid var(--ink); }
  .danger :focus-visible { outline-color: var(--paper); }
  .danger .head { display: flex; gap: 16px; align-items: flex-start; }
  .danger .head > div { min-width: 0; flex: 1; }
  .danger > ol:not(.long) { display: flex; flex-wrap: wrap; gap: 8px 16px; border-top: 1px solid var(--paper); margin-top: 14px; padding-top: 8px; }
  .danger > ol:not(.long) li { display: flex; flex-direction: column; max-width: 6.2em; font-size: 0.875rem; line-height: 1.3; }
  @media (min-width: 480px) { .danger > ol:not(.long) li { font-size: 0.9375rem; } }
  .danger details { margin-top: 6px; }
  summary { min-height: 44px; display: flex; align-items: center; cursor: pointer; font-size: 0.9375rem; }
  summary span { border-bottom: 1.6px solid currentcolor; }
  .long { display: grid; gap: 8px; font-size: 1rem; padding-bottom: 8px; }
  .law { font-size: 0.9375rem; border-top: 1px solid var(--paper); margin-top: 4px; padding-top: 10px; }
  .limit { position: relative; display: grid; grid-template-columns: 9px 46px minmax(0, 1fr); border: 1.5px solid var(--ink); background: var(--plate); }
  .limit .mark { padding: 14px 0 0 12px; }
  .body { padding: 14px 16px 16px 8px; min-width: 0; }
  .body button { margin-top: 12px; }
  .gauge { margin: 8px 0 2px; }
  .gauge svg { width: 100%; }
  .rated { font-size: 0.9375rem; text-align: right; }
  .note-box { display: grid; grid-template-columns: 46px minmax(0, 1fr); border: solid var(--edge); border-width: 1px 0; padding: 2px 0; }
  .note-box .mark { padding: 14px 0 0 4px; }
  .note-box .body { padding-left: 4px; }
  @media (forced-colors: active) { .danger { border: 3px solid CanvasText; background: Canvas; color: CanvasText; } }
`;
