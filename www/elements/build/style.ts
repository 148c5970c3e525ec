import { css } from 'lit';

/** The strip stands at the left of its rows; beside it, where there is room, what can be done with the whole. */
export const buildStyle = css`
  :host { padding: 12px var(--margin) 0; }
  header { padding-bottom: 10px; border-bottom: 3px solid var(--ink); position: relative; margin-bottom: 18px; }
  header::after { content: ""; position: absolute; left: 0; right: 0; bottom: -6px; border-bottom: 1px solid var(--ink); }
  .name input { width: 100%; max-width: 460px; min-width: 200px; field-sizing: content; min-height: 44px; border: 0; border-bottom: 1.6px solid var(--touch); border-radius: 0; background: none; color: var(--touch); font: 500 1rem/1.2 var(--instrument); padding: 4px 0; }
  div.board { background: var(--plate); border: solid var(--edge); border-width: 1px 0; margin: 0 calc(-1 * var(--margin)); padding: 14px var(--margin); }
  .low { display: none; }
  .side { display: block; }
  div.board > ul { display: grid; }
  div.board > ul > li { display: grid; grid-template-columns: 44px minmax(0, 1fr); align-items: stretch; gap: 12px; }
  .picture { position: relative; overflow: hidden; min-height: 76px; }
  .picture::before { content: ""; position: absolute; left: 13px; width: 18px; top: 0; bottom: 0; border: solid var(--ink); border-width: 0 2px; background: var(--plate); }
  .picture svg { position: relative; }
  .end { height: 56px; overflow: hidden; }
  .end:first-child svg { margin-top: -20px; }
  .line { stroke: var(--ink); stroke-width: 2; stroke-linejoin: round; }
  .thin { stroke-width: 1.6; }
  rect.board, path.board, circle.board { fill: var(--plate); stroke: var(--ink); stroke-width: 2; }
  .lug { border-bottom: 1px solid var(--rule); padding: 10px 0 6px; min-width: 0; }
  .first { display: flex; justify-content: space-between; align-items: baseline; gap: 12px; }
  .first a { color: var(--touch); text-decoration: none; font-weight: 500; min-height: 44px; display: inline-flex; align-items: center; min-width: 44px; overflow-wrap: anywhere; font-size: 1.125rem; }
  .first a span { border-bottom: 1.6px solid currentcolor; }
  .first b { white-space: nowrap; font-size: 1.125rem; }
  .second { display: flex; justify-content: space-between; align-items: center; flex-wrap: wrap; gap: 0 12px; }
  .second .row { gap: 0 16px; }
  .second .link { font-size: 0.9375rem; }
  .state { display: flex; align-items: center; gap: 8px; border: 1.5px solid var(--ink); padding: 2px 8px 2px 2px; font-weight: 700; font-size: 1rem; width: fit-content; }
  .rename { display: grid; gap: 4px; font-size: 0.9375rem; padding: 4px 0 10px; }
  .rename input { height: 48px; border: 1.5px solid var(--touch); border-bottom-width: 3px; border-radius: 3px; background: var(--plate); color: var(--touch); font: 700 1.125rem/1 var(--instrument); padding: 0 12px; min-width: 0; }
  .sentence { font: 400 1.125rem/1.42 var(--book); padding: 16px 0; }
  .removed { padding: 0 0 12px; }
  .add > button, .shelf button { width: 100%; }
  .shelf { display: grid; gap: 8px; margin-top: 8px; }
  .shelf button { display: grid; justify-content: start; justify-items: start; text-align: left; gap: 3px; padding: 10px 14px; }
  .shelf span { font: 400 0.9375rem/1.4 var(--book); }
  section { padding: 18px 0 16px; }
  h2 { margin: 10px 0; }
  @media (min-width: 720px) { div.board { margin: 0; border-width: 1px; padding: 16px; } }
  @media (min-width: 1100px) {
    .grid { display: grid; grid-template-columns: minmax(0, 1.14fr) minmax(0, 1fr); gap: 36px; align-items: start; }
    .sentence { padding-top: 0; }
  }
`;
