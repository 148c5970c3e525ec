import { css } from 'lit';

/** Groups under hairlines; items of a list with their buttons in the heading's row. */
export const formStyle = css`
  :host { content-visibility: auto; }
  section { border-top: 1px solid var(--edge); padding: 16px 0 22px; display: grid; gap: 18px; }
  section > h3 { margin-bottom: -6px; }
  fieldset { border: 0; padding: 0; margin: 0; min-width: 0; display: grid; gap: 18px; }
  legend { padding: 0; font-weight: 700; font-size: 1rem; margin-bottom: 10px; }
  .own { border-left: 3px solid var(--rule); padding-left: 14px; }
  ol { display: grid; gap: 22px; }
  li { display: grid; gap: 14px; border-left: 3px solid var(--rule); padding-left: 14px; }
  .item { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: 0 12px; }
  h4 { margin: 0; font: 700 1rem/1.3 var(--instrument); }
  .item .row { gap: 0 14px; }
  .item .link:disabled { background: none; }
  .item .link:disabled span { border-bottom-color: transparent; }
  .refused { border-left: 6px solid var(--ink); padding-left: 10px; }
  .one-of { display: grid; gap: 16px; }
  .alternatives { display: grid; grid-template-columns: repeat(auto-fit, minmax(132px, 1fr)); border: 1.5px solid var(--touch); border-radius: 3px; overflow: hidden; }
  .alternatives label { position: relative; display: flex; align-items: center; justify-content: center; text-align: center; min-height: 46px; padding: 6px 10px; color: var(--touch); background: var(--plate); font: 700 0.9375rem/1.2 var(--instrument); cursor: pointer; }
  .alternatives label + label { border-left: 1.5px solid var(--touch); }
  .alternatives .current { background: var(--touch); color: var(--plate); }
  .alternatives input { position: absolute; inset: 0; width: 100%; height: 100%; margin: 0; opacity: 0; cursor: pointer; }
  .alternatives label:has(:focus-visible) { outline: 3px solid var(--ink); outline-offset: -4px; }
  @media (min-width: 720px) {
    section { grid-template-columns: repeat(auto-fill, minmax(270px, 1fr)); gap: 18px 28px; align-items: start; }
    section > h3, section > fieldset { grid-column: 1 / -1; }
    fieldset { grid-template-columns: repeat(auto-fill, minmax(270px, 1fr)); gap: 18px 28px; align-items: start; }
    legend, fieldset > ol, fieldset > .refused { grid-column: 1 / -1; }
    fieldset > button { justify-self: start; }
    li { grid-template-columns: repeat(auto-fill, minmax(250px, 1fr)); align-items: start; }
    .item { grid-column: 1 / -1; justify-content: flex-start; }
  }
  @media (forced-colors: active) { .alternatives .current { forced-color-adjust: none; background: Highlight; color: HighlightText; } }
`;
