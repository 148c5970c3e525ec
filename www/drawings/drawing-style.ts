import { css } from 'lit';

/** The drawing's three inks and its line weights, in drawing units. */
export const drawingStyle = css`
  :host {
    display: block;
    --d-plate: var(--plate, #fbfbf7);
    --d-ink: var(--ink, #171a19);
    --d-ink-2: var(--ink-2, #454a47);
    --d-edge: var(--edge, #6c726d);
    --d-rule: var(--rule, #bfc3ba);
    --d-copper: var(--copper, #8a3d10);
    --d-live: var(--live, #a34a14);
    --d-touch: var(--touch, #005259);
    --d-wash: var(--wash, #dceae8);
    background: var(--d-plate);
    color: var(--d-ink);
    font-family: system-ui, sans-serif;
    font-variant-numeric: tabular-nums lining-nums;
  }
  svg { display: block; max-width: 100%; height: auto; margin: 0 auto; overflow: hidden; }
  text { fill: var(--d-ink); }
  .wire, .stroke, .ground, .register, .outline, .underline, .dotted, .frame, .hatching {
    fill: none; stroke: var(--d-ink); stroke-linecap: round; stroke-linejoin: round;
  }
  .wire { stroke-width: 1.5; }
  .wire.live { stroke: var(--d-live); stroke-width: 2.8; }
  .dot { fill: var(--d-ink); }
  .dot.live { fill: var(--d-live); }
  .end { fill: var(--d-plate); stroke: var(--d-ink); stroke-width: 1.8; }
  .end.live { stroke: var(--d-live); stroke-width: 2.4; }
  .ground { stroke-width: 1.8; }
  .stroke.part { stroke-width: 2; }
  .stroke.thin { stroke-width: 1.8; stroke-linecap: butt; }
  .stroke.iron { stroke-width: 1.3; }
  .stroke.envelope { stroke-width: 2.2; stroke-linecap: butt; }
  .stroke.grid { stroke-width: 2.4; stroke-linecap: butt; }
  .stroke.electrode { stroke-width: 2.6; }
  .stroke.solid { fill: var(--d-ink); stroke-width: 0.8; }
  .stroke.ring { fill: var(--d-plate); stroke-width: 1.8; }
  .stroke.live { stroke: var(--d-live); stroke-width: 2.8; }
  .reference, .value, .note, .plain, .pin { stroke: none; }
  .plain { font-weight: 700; }
  .printed { font-size: 22px; font-weight: 700; letter-spacing: 0.04em; }
  .word { font-size: 14px; }
  .swatch { fill: none; stroke: var(--d-ink); stroke-width: 1.3; }
  .swatch.spot, .swatch.gilt { fill: var(--d-ink); stroke: none; }
  .swatch.gilt { fill: var(--d-copper); }
  .fill-black { fill: var(--d-ink); }
  .fill-white, .fill-body { fill: var(--d-plate); }
  .fill-silver { fill: var(--d-plate); stroke: var(--d-copper); }
  .fill-gold { fill: url(#swatch-gold); stroke: var(--d-copper); }
  .fill-brown { fill: url(#swatch-brown); }
  .fill-red { fill: url(#swatch-red); }
  .fill-orange { fill: url(#swatch-orange); }
  .fill-yellow { fill: url(#swatch-yellow); }
  .fill-green { fill: url(#swatch-green); }
  .fill-blue { fill: url(#swatch-blue); }
  .fill-violet { fill: url(#swatch-violet); }
  .fill-grey { fill: url(#swatch-grey); }
  .fill-pink { fill: url(#swatch-pink); }
  .note, .pin { fill: var(--d-ink-2); }
  .pin { font-size: 13px; }
  .value { fill: var(--d-touch); font-weight: 700; }
  .value.unread { fill: var(--d-ink); }
  .wash { fill: var(--d-wash); }
  .frame { fill: var(--d-plate); stroke-width: 2; }
  .underline { stroke: var(--d-touch); stroke-width: 1.6; stroke-linecap: butt; }
  .dotted { stroke-width: 1.6; stroke-dasharray: 1.6 1.6; stroke-linecap: butt; }
  .outline { fill: var(--d-plate); stroke: var(--d-copper); stroke-width: 1.5; }
  .leader { fill: none; stroke: var(--d-copper); stroke-width: 1.4; }
  .answer { font-weight: 700; }
  .tag.stale .outline { stroke: var(--d-edge); stroke-dasharray: 3 2.4; }
  .tag.stale text { fill: var(--d-ink-2); font-weight: 400; }
  .join { font: italic 600 15px "Iowan Old Style", "Palatino Linotype", Palatino, "Noto Serif", serif; }
  .triangle { fill: var(--d-ink); stroke: var(--d-ink); stroke-width: 1.6; stroke-linejoin: round; }
  .flash { fill: var(--d-plate); stroke: none; }
  .opened { fill: var(--d-wash); opacity: 0.6; }
  .hatched { fill: url(#hatch); }
  .hatching { stroke: var(--d-edge); stroke-width: 0.9; stroke-linecap: butt; }
  .register { stroke: var(--d-touch); stroke-width: 3; stroke-linecap: butt; stroke-linejoin: miter; }
  .register.unread { stroke: var(--d-ink); }
  .hit { fill: transparent; stroke: none; pointer-events: all; }
  .button { cursor: pointer; outline: none; }
  .focus { display: none; fill: none; stroke: var(--d-ink); stroke-width: 3; vector-effect: non-scaling-stroke; }
  .button:focus-visible .focus { display: block; }
  .button:active .wash { fill: var(--d-touch); }
  .button:active .value { fill: var(--d-plate); }
  .button:active .underline { stroke: var(--d-plate); }
  @media (forced-colors: active) {
    :host {
      --d-plate: Canvas; --d-ink: CanvasText; --d-ink-2: CanvasText; --d-edge: CanvasText; --d-rule: CanvasText;
      --d-copper: CanvasText; --d-live: CanvasText; --d-touch: LinkText; --d-wash: Canvas;
    }
    svg { forced-color-adjust: none; }
  }
  @media print {
    :host {
      --d-plate: #fff; --d-ink: #000; --d-ink-2: #000; --d-edge: #000; --d-rule: #000; --d-copper: #000; --d-live: #000;
      --d-touch: #000; --d-wash: #fff;
    }
    .underline, .dotted, .register, .opened, .hatched, .focus { display: none; }
  }
`;
