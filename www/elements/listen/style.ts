import { css } from 'lit';

export const listenStyle = css`
  section { display: grid; gap: 18px; }
  fieldset { border: 0; padding: 0; margin: 0; min-width: 0; }
  legend { font: 700 1rem/1.3 var(--instrument); padding: 0 0 6px; }
  .tracks { display: grid; gap: 8px; grid-template-columns: repeat(auto-fit, minmax(150px, 1fr)); }
  .tracks button { justify-content: space-between; min-height: 50px; overflow-wrap: anywhere; }
  button[aria-pressed='true'] { background: var(--touch); color: var(--plate); }
  .key { font-weight: 400; font-size: 0.875rem; }
  /* A phone has no keys to name. */
  @media (hover: none) { .key { display: none; } }
  .choices { display: flex; flex-wrap: wrap; gap: 0 22px; }
  .choices label { display: inline-flex; align-items: center; gap: 10px; min-height: 44px; cursor: pointer; }
  input[type='radio'] { width: 22px; height: 22px; accent-color: var(--touch); margin: 0; }
  input[type='file'] { position: absolute; inset: 0; opacity: 0; cursor: pointer; width: 100%; }
  .file { position: relative; }
  .file:has(:focus-visible) { outline: 3px solid var(--ink); outline-offset: 2px; }
  td.figure, th.figure { white-space: normal; padding-left: 10px; }
  td.figure { font-size: 1rem; }
  progress { width: 100%; height: 10px; accent-color: var(--ink); }
  .halt { position: fixed; z-index: 3; right: max(12px, env(safe-area-inset-right)); bottom: calc(96px + env(safe-area-inset-bottom)); border-width: 3px; }
  @media (min-width: 720px) { .halt { bottom: 20px; } }
  @media (forced-colors: active) { button[aria-pressed='true'] { forced-color-adjust: none; background: Highlight; color: HighlightText; } }
`;
