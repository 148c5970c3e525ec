import { show } from './quantity.js';
import { USUAL_WAY, type Way } from './way.js';

const INCH = 0.0254;

/** A length the way the person likes it: "38.1 mm", or "1.5 in". */
export function lengthWords(metres: number | null, way: Way = USUAL_WAY): string {
  if (way.length === 'mm' || metres === null) return show(metres, 'm', { way });
  return `${show(metres / INCH, '1', { way })}\u00a0in`;
}
