import type { LitElement } from 'lit';

const CLEAR = 10;

/** Scrolls so that the part whose field is open stands clear between the folded lead and the open field. */
export function keepInView(drawing: LitElement | null, path: string, panel: HTMLElement, lead: HTMLElement | null): void {
  if (getComputedStyle(panel).position !== 'fixed') {
    panel.scrollIntoView({ block: 'nearest' });
    return;
  }
  const part = drawing?.renderRoot.querySelector(`[data-field="${CSS.escape(path)}"]`)?.getBoundingClientRect();
  if (part === undefined) return;
  const sticky = lead !== null && getComputedStyle(lead).position === 'sticky';
  const top = (sticky ? lead.offsetHeight : 0) + CLEAR;
  // Its place, not where it is on its way up.
  const bottom = panel.offsetTop - CLEAR;
  // The top of a part that is taller than what is left matters more than its foot.
  if (part.top < top || part.height > bottom - top) scrollBy({ top: part.top - top });
  else if (part.bottom > bottom) scrollBy({ top: part.bottom - bottom });
}

/** A part's reference as its field is headed; the supply's rail and the microphone are called by their fields alone. */
export function besideOf(reference: string): string {
  return /\d/.test(reference) ? reference : '';
}
