import { css } from 'lit';

/** The strip at the foot of a phone or at the left; the page beside it, clear of it and of the phone's own bar. */
export const appStyle = css`
  /* The margins of what stands in it stay in it, before the page is there as after: nothing then moves. */
  :host { background: var(--paper); min-height: 100dvh; display: flow-root; }
  .unread { padding: 12px var(--margin) 36px; }
  main { display: block; padding-bottom: calc(var(--strip-low) + 36px + env(safe-area-inset-bottom)); margin-left: var(--strip-side); }
  main:focus-visible { outline-offset: -3px; }
  /* What the page has to say lies over its foot: it comes while somebody reads, and must push nothing away. */
  .notices { position: fixed; z-index: 4; left: var(--strip-side); right: 0; bottom: calc(var(--strip-low) + env(safe-area-inset-bottom)); max-width: 620px; max-height: 45dvh; overflow-y: auto; margin: 0 auto; }
  main.told { padding-bottom: calc(var(--strip-low) + 45dvh + env(safe-area-inset-bottom)); }
  .notices:empty { display: none; }
  ts-notice { margin: 12px var(--margin) 0; }
  .skip { position: absolute; left: 8px; top: -80px; z-index: 9; padding: 12px 16px; background: var(--ink); color: var(--paper); font-weight: 700; }
  .skip:focus { top: 8px; }
  ts-strip { position: fixed; z-index: 6; left: 0; bottom: 0; right: 0; height: calc(84px + env(safe-area-inset-bottom)); }
  ts-calculator { max-width: 1560px; }
  @media (max-height: 430px) and (max-width: 719.9px) { ts-strip { position: static; } main { padding-bottom: 36px; --strip-low: 0px; } }
  @media (min-width: 720px) {
    ts-strip { top: 0; right: auto; width: var(--strip-side); height: auto; }
  }
  @media (max-height: 430px) and (min-width: 720px) { ts-strip { position: absolute; bottom: auto; min-height: 100%; } }
  @media print {
    :host { min-height: 0; }
    main, ts-calculator, ts-build { padding: 0; margin: 0; }
    :host([printing]) .frame { display: none; }
    ts-strip, .skip, .notices { display: none; }
  }
`;
