import { css } from 'lit';

/** Over the page on a phone, in its column where there is room; the double rule marks where it begins. */
export const openFieldStyle = css`
  :host { contain: layout style; background: var(--plate); border: solid var(--ink); border-width: 3px 0 0; }
  .panel { border-top: 1px solid var(--ink); margin-top: 2px; padding: 6px 12px 12px; }
  .head { display: flex; align-items: center; justify-content: space-between; gap: 12px; margin-bottom: 6px; padding-left: 4px; }
  h2 { font: 700 1.0625rem/1.3 var(--instrument); overflow-wrap: anywhere; }
  .line { display: grid; grid-template-columns: minmax(72px, 86px) minmax(0, 1fr) minmax(72px, 86px); gap: 6px; }
  .step { flex-direction: column; gap: 3px; min-height: 56px; height: 56px; padding: 4px 2px; line-height: 1.1; overflow: hidden; }
  .step span { max-width: 100%; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; font-variant-numeric: inherit; }
  input.text { width: 100%; min-width: 0; height: 56px; padding: 0 8px; text-align: center; border: 1.5px solid var(--touch); border-bottom-width: 3px; border-radius: 3px; background: var(--plate); color: var(--touch); font: 700 1.625rem/1 var(--instrument); font-variant-numeric: inherit; }
  input.text.words { text-align: left; font-size: 1.25rem; }
  input.text.long { font-size: 1.125rem; }
  .refused input.text { border: 3px solid var(--ink); border-bottom-width: 6px; color: var(--ink); }
  .echo { font: 400 1.0625rem/1.42 var(--book); margin-top: 8px; padding: 0 4px; min-height: 2.84em; text-wrap: pretty; overflow-wrap: anywhere; }
  .keys { display: grid; grid-auto-flow: column; grid-auto-columns: minmax(44px, 1fr); gap: 6px; margin-top: 8px; }
  .keys button { padding: 0 2px; min-height: 46px; font-size: 1.0625rem; }
  .choices { display: grid; gap: 6px; max-height: min(38dvh, 420px); overflow-y: auto; padding: 3px; margin: 0 -3px; overscroll-behavior: contain; }
  .choices.many { grid-template-columns: repeat(auto-fill, minmax(136px, 1fr)); }
  .choices button { min-height: 46px; justify-content: flex-start; text-align: left; padding: 6px 12px; }
  .choices .current { background: var(--touch); color: var(--plate); }
  .choices svg { fill: none; stroke: currentcolor; stroke-width: 2; }
  .choices small { font-weight: 400; font-size: 0.9375rem; }
  .beside { margin-top: 10px; border-top: 1px solid var(--rule); padding-top: 10px; }
  @media (max-height: 560px) { .echo { min-height: 1.42em; } }
  @media (min-width: 1100px) {
    :host { border: 1px solid var(--edge); border-top: 3px solid var(--ink); }
    .panel { padding: 12px 14px 14px; }
    .line { grid-template-columns: 72px minmax(0, 1fr) 72px; }
  }
`;
