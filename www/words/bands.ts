import { show } from './quantity.js';
import { USUAL_WAY, type Way } from './way.js';

/** The colours of the figures, in their order; the position is the figure (IEC 60062). */
const DIGITS = ['black', 'brown', 'red', 'orange', 'yellow', 'green', 'blue', 'violet', 'grey', 'white'];
const UNDER_ONE: Readonly<Record<string, number>> = { gold: 0.1, silver: 0.01, pink: 0.001 };

/**
 * Colour bands read aloud: "yellow 4, violet 7, red × 100, gold ±5 %". Up to four bands have two figures, more have
 * three; `tolerance` is a fraction.
 */
export function bandsWords(bands: readonly string[], tolerance: number | null = null, way: Way = USUAL_WAY): string {
  const count = bands.length > 4 ? 3 : 2;
  const meanings = bands.map((band, index) => {
    const digit = DIGITS.indexOf(band);
    if (index < count) return digit < 0 ? '' : String(digit);
    if (index === count) {
      const factor = UNDER_ONE[band] ?? (digit < 0 ? null : 10 ** digit);
      return factor === null ? '' : `× ${show(factor, '1', { digits: 6, way })}`;
    }
    return index === count + 1 && tolerance !== null ? `±${show(tolerance * 100, '%', { way })}` : '';
  });
  return bands.map((band, index) => `${band} ${meanings[index] ?? ''}`.trim()).join(', ');
}
