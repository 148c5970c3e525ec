import { css } from 'lit';

/** A plain field: label above, 48 high, frame 1.5 with a foot of 3, steps at both sides, the echo below. */
export const fieldStyle = css`
  :host { scroll-margin: 120px 0; }
  .label { display: block; font-size: 1rem; margin-bottom: 5px; overflow-wrap: anywhere; }
  .label b { font-weight: 700; margin-right: 4px; }
  .line { display: grid; grid-template-columns: 52px minmax(0, 1fr) 52px; gap: 8px; }
  .line.alone { grid-template-columns: minmax(0, 1fr); }
  input.text, select {
    width: 100%; min-width: 0; height: 48px; padding: 0 12px; border: 1.5px solid var(--touch); border-bottom-width: 3px; border-radius: 3px;
    background: var(--plate); color: var(--touch); font: 700 1.25rem/1 var(--instrument); font-variant-numeric: inherit; appearance: none;
  }
  select { padding-right: 40px; cursor: pointer; }
  .select { position: relative; }
  .select svg { position: absolute; right: 14px; top: 17px; color: var(--touch); pointer-events: none; }
  option { font-weight: 400; color: var(--ink); background: var(--plate); }
  .step { padding: 0; min-height: 48px; height: 48px; }
  .refused input.text, .refused select { border: 3px solid var(--ink); border-bottom-width: 6px; color: var(--ink); padding: 0 10px; }
  .echo { font-size: 0.9375rem; color: var(--ink-2); margin-top: 4px; overflow-wrap: anywhere; }
  .help { font: 400 0.875rem/1.4 var(--book); color: var(--ink-2); margin-top: 3px; }
  /* A field that has its echo tells what it is for only while it is being filled in. */
  .echo:not(:empty) + .help { display: none; }
  :focus-within > .echo + .help { display: block; }
  .flag { display: flex; align-items: center; gap: 12px; min-height: 48px; cursor: pointer; font-size: 1rem; }
  .flag input { width: 26px; height: 26px; margin: 0; accent-color: var(--touch); flex: none; }
`;

/** Why a text was not read, and the press that mends it. */
export const refusalStyle = css`
  .refusal { display: grid; grid-template-columns: 30px minmax(0, 1fr); gap: 4px 10px; margin-top: 8px; font-size: 1rem; }
  .refusal p { grid-column: 2; overflow-wrap: anywhere; }
  .refusal svg { grid-row: 1; }
  .doubt { margin-top: 6px; font-size: 0.9375rem; }
  .mends { grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: 8px; margin-top: 4px; }
  .mends button { flex: 1 1 auto; }
`;
