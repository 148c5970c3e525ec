import { css } from 'lit';

/** One column on a phone; panels abreast on a tablet; drawing left and answers right where there is room. */
export const calculatorStyle = css`
  :host { padding: 0 var(--margin) var(--panel, 0px); overflow-anchor: none; }
  header { display: flex; justify-content: space-between; align-items: center; gap: 12px; padding: 10px 0 9px; border-bottom: 3px solid var(--ink); position: relative; }
  header::after { content: ""; position: absolute; left: 0; right: 0; bottom: -6px; border-bottom: 1px solid var(--ink); }
  header > div { min-width: 0; }
  /* What does not fit in the line goes to a second one that is not seen: the build's name stands on the strip too. */
  .subtitle { font-size: 0.9375rem; color: var(--ink-2); display: flex; flex-wrap: wrap; height: 1.42em; overflow: hidden; white-space: pre; }
  .sheet { flex: none; }
  .page { padding-top: 4px; }
  /* Not seen before its first answers: they would push down whatever stood there. */
  .unworked { visibility: hidden; }
  .full { margin: 0 calc(-1 * var(--margin)); border: solid var(--edge); border-width: 1px 0; background: var(--plate); min-height: 120px; }
  .probe { padding: 0 var(--margin); }
  .look { display: grid; grid-template-columns: 9px 46px minmax(0, 1fr) auto; align-items: center; border: 1.5px solid var(--ink); background: var(--plate); margin-bottom: 14px; color: inherit; font: inherit; padding: 0; text-align: left; width: 100%; min-height: 48px; }
  .look .edge { align-self: stretch; }
  .look .mark { padding-left: 10px; }
  .look b { padding: 8px; color: var(--ink); font-size: 1rem; font-weight: 700; }
  .look .why { color: var(--touch); border-bottom: 1.6px solid currentcolor; margin-right: 14px; font-weight: 700; }
  .general { border: 3px solid var(--ink); border-bottom-width: 6px; background: var(--plate); padding: 12px; margin: 10px 0; display: grid; grid-template-columns: 30px 1fr; gap: 10px; }
  ts-drawing, ts-answers, ts-pictures { contain: layout style; }
  ts-switch { margin: 18px 0; }
  ts-answers { margin-bottom: 20px; }
  .cautions { display: grid; gap: 14px; padding: 4px 0 8px; }
  .cautions > [data-severity="note"] + [data-severity="note"] { margin-top: -15px; }
  .remarks { display: grid; gap: 8px; margin: 0 0 16px; }
  .remarks p { font-family: var(--book); font-size: 1rem; text-wrap: pretty; }
  .hands { display: grid; gap: 8px; justify-items: start; margin: 0 0 16px; }
  ts-pictures { display: block; padding: 18px 0 20px; }
  .values { padding: 8px 0 0; }
  .values > h2 { margin-bottom: 12px; }
  ts-open-field { position: fixed; z-index: 5; left: var(--strip-side); right: 0; bottom: max(var(--strip-low), var(--under, 0px)); max-height: calc(100dvh - 60px); overflow-y: auto; }
  .waiting { font-family: var(--book); color: var(--ink-2); padding: 24px 0; }
  @media (prefers-reduced-motion: no-preference) {
    ts-open-field { animation: rise 120ms ease-out; }
    @keyframes rise { from { transform: translateY(24px); } }
  }
  @media (max-width: 719.9px) {
    ts-lead[folded] { position: sticky; top: 0; z-index: 4; background: var(--paper); }
  }
  @media (max-height: 430px) { ts-lead[folded] { position: static; } ts-open-field { max-height: 62dvh; } }
  @media (min-width: 720px) {
    header { padding: 14px 0 10px; }
    .page { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); column-gap: 26px; align-items: start; grid-template-areas: "lead lead" "over over" "drawing drawing" "answers pictures" "cautions cautions" "rest rest"; }
    .top { grid-area: lead; }
    .over { grid-area: over; }
    .full { grid-area: drawing; }
    .side { display: contents; }
    .answers { grid-area: answers; min-width: 0; }
    .cautions { grid-area: cautions; }
    ts-pictures { grid-area: pictures; min-width: 0; }
    .rest { grid-area: rest; min-width: 0; }
    ts-open-field { max-width: 620px; margin: 0 auto; border-left: 1px solid var(--edge); border-right: 1px solid var(--edge); }
  }
  @media (min-width: 1100px) {
    .page { grid-template-columns: minmax(0, 1fr) 336px; column-gap: 36px; grid-template-rows: auto auto auto auto 1fr; grid-template-areas: "lead side" "drawing side" "pictures side" "rest side" ". side"; padding-top: 10px; }
    .over { display: none; }
    .full { margin: 0; border-width: 1px; }
    .side { display: flex; flex-direction: column; gap: 14px; grid-area: side; min-width: 0; align-self: stretch; padding-top: 10px; }
    .answers, .cautions { grid-area: auto; }
    ts-switch { margin: 0 0 12px; }
    ts-answers { margin-bottom: 8px; }
    ts-open-field { position: sticky; bottom: 12px; animation: none; max-width: none; margin: 0; overflow: visible; max-height: none; }
  }
`;
