import { svg, html, type TemplateResult } from 'lit';

const frame = (inner: unknown, size = 28): TemplateResult => html`<svg viewBox="0 0 24 24" width=${size} height=${size}
  fill="none" stroke="currentColor" stroke-width="2.2" stroke-linecap="round" stroke-linejoin="round" aria-hidden="true">${inner}</svg>`;

/** The eight marks, on a grid of 24; each stands beside its word. */
export const ICONS = {
  danger: (size?: number) => frame(svg`<path d="M12 2.6 22.4 20.8H1.6Z"/><path d="M13.4 8.2 9.9 13.6h3.9l-2.3 4.6" stroke-width="1.9"/>`, size),
  limit: (size?: number) => frame(svg`<path d="M3 4.2h18" stroke-width="3"/><path d="M12 21V9.2M6.8 14.2 12 9l5.2 5.2" stroke-width="2.4"/>`, size),
  note: (size?: number) => frame(svg`<path d="M12 3.4v17.2M4.6 7.7l14.8 8.6M19.4 7.7 4.6 16.3"/>`, size),
  refused: (size?: number) => frame(svg`<circle cx="12" cy="12" r="9.2"/><path d="M5.6 18.4 18.4 5.6"/>`, size),
  stale: (size?: number) => frame(svg`<circle cx="12" cy="12" r="9.2" stroke-dasharray="3.6 2.2" stroke-linecap="butt"/><path d="M12 7.2V12l3.2 2.2"/>`, size),
  sheet: (size?: number) => frame(svg`<path d="M4.6 2.6h10.2l4.6 4.6v14.2H4.6Z"/><path d="M14.6 2.8v4.6h4.6M8 12.2h8M8 16.2h8"/>`, size),
  ring: (size?: number) => frame(svg`<path d="M1.5 12H11" stroke="var(--live)" stroke-width="2.8"/><circle cx="16.4" cy="12" r="5" stroke="var(--live)" stroke-width="2.6"/>`, size),
  up: (size?: number) => frame(svg`<path d="M12 5.4 22 18.6H2Z" fill="currentColor" stroke="none"/>`, size ?? 20),
  down: (size?: number) => frame(svg`<path d="M12 18.6 2 5.4h20Z" fill="currentColor" stroke="none"/>`, size ?? 20),
} as const;

/** A mark on solid ink for the foot of a lug: arrow against a bar, struck ring, broken ring. */
export type LugMark = 'limit' | 'refused' | 'waiting';
