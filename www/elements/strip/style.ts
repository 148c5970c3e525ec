import { css } from 'lit';

/** Along the bottom of a phone, standing at the left where there is room. */
export const stripStyle = css`
  :host { background: var(--paper); }
  .board { fill: var(--plate); stroke: var(--ink); stroke-width: 1.8; }
  .line { stroke: var(--ink); stroke-width: 2; stroke-linejoin: round; }
  .thin { stroke-width: 1.6; }
  ul { display: flex; }
  li { flex: none; }
  .name { display: none; }
  .cell { position: relative; display: flex; flex-direction: column; color: var(--touch); text-decoration: none; -webkit-tap-highlight-color: transparent; touch-action: manipulation; }
  .title { border-bottom: 1.5px solid currentcolor; }
  .open { color: var(--ink); font-weight: 700; }
  .open .title { border-bottom-color: transparent; }
  .figure { display: none; color: var(--ink); font-weight: 400; font-size: 0.875rem; }
  .low { overflow: visible; }
  .side { display: none; }
  .cell:focus-visible { outline-offset: -3px; }
  .cell:active { box-shadow: inset 0 0 0 1.5px var(--touch); }
  .cell:active .title { background: var(--touch); color: var(--plate); }

  @media (max-width: 719.9px) {
    :host { border-top: 1px solid var(--edge); overflow: hidden; }
    nav { overflow-x: auto; overflow-y: hidden; height: 83px; scrollbar-width: none; overscroll-behavior-x: contain; }
    nav::-webkit-scrollbar { display: none; }
    ul { min-width: 100%; width: max-content; }
    li { width: 80px; }
    .cell { width: 80px; height: 83px; padding-top: 27px; align-items: center; overflow: hidden; }
    .last .cell { cursor: default; }
    .words { font-size: 0.9375rem; line-height: 1.2; margin-top: 4px; max-width: 78px; }
    .title { display: block; max-width: 78px; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
    .mark { position: absolute; left: 52px; top: 38px; }
  }

  @media (min-width: 720px) {
    :host { border-right: 1px solid var(--edge); overflow-y: auto; overflow-x: hidden; scrollbar-width: thin; }
    nav { padding: 10px 0 16px; }
    ul { flex-direction: column; }
    .low { display: none; }
    .side { display: block; overflow: visible; }
    .cell { flex-direction: row; align-items: center; height: 76px; padding-left: 22px; overflow: hidden; }
    .words { margin-left: 8px; min-width: 0; display: flex; flex-direction: column; align-items: flex-start; line-height: 1.25; }
    .title { font-size: 1rem; max-width: 100%; overflow: hidden; text-overflow: ellipsis; }
    .mark { position: absolute; left: 70px; top: 52px; }
  }

  @media (min-width: 1100px) {
    .name { display: block; font: 600 1.0625rem/1.25 var(--book); padding: 6px 16px 4px; overflow-wrap: anywhere; }
    .cell { height: 66px; padding-left: 30px; }
    .words { margin-left: 10px; padding-right: 44px; }
    .figure { display: block; }
    .mark { left: auto; right: 18px; top: 22px; }
  }
  @media (max-height: 430px) and (min-width: 720px) { :host { overflow: visible; } }
`;
