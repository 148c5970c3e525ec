import { PANEL, type Drawing, type Panel } from './kinds.js';

/** A panel's left upper corner in the whole. */
export interface Spot {
  readonly panel: Panel;
  readonly x: number;
  readonly y: number;
}

/** A letter in serif italic where a wire goes on in another panel. */
export interface Letter {
  readonly letter: string;
  readonly x: number;
  readonly y: number;
  readonly align: 'start' | 'end';
}

/** The panels in their places, and the letters that the arrangement needs. */
export interface Arrangement {
  readonly spots: readonly Spot[];
  readonly letters: readonly Letter[];
  readonly width: number;
  readonly height: number;
}

/** Room in pixels from which panels stand abreast. */
export const ABREAST = 640;
/** A drawing is never larger than this many pixels a unit. */
export const LARGEST = 1.5;

/** How many panels fit side by side without drawing them smaller than 1 : 1 (0.98 is allowed). */
export function abreast(room: number, panels: number): number {
  const fit = Math.floor((room / PANEL) * 1.0204);
  return room * 1.0204 < ABREAST ? 1 : Math.max(1, Math.min(panels, fit));
}

/** Panels in rows of at most `across`; in a row they keep their heights, so that a wire goes straight on. */
export function arrange(drawing: Drawing, across: number): Arrangement {
  const spots: Spot[] = [];
  const letters: Letter[] = [];
  let height = 0;
  for (let start = 0; start < drawing.panels.length; start += across) {
    const row = drawing.panels.slice(start, start + across);
    const top = Math.min(...row.map((panel) => panel.top));
    const bottom = Math.max(...row.map((panel) => panel.bottom));
    row.forEach((panel, index) => spots.push({ panel, x: index * PANEL, y: height - top }));
    height += bottom - top;
  }
  drawing.joins.forEach((join, index) => {
    const [from, to] = [spots[index], spots[index + 1]];
    if (from === undefined || to === undefined) return;
    letters.push({ letter: join.letter, x: from.x + PANEL - 5, y: from.y + join.y - 6, align: 'end' });
    if (to.x === 0) letters.push({ letter: join.letter, x: 3, y: to.y + join.y - 6, align: 'start' });
  });
  return { spots, letters, width: PANEL * Math.min(across, drawing.panels.length), height };
}
