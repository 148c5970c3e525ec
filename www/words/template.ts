import { show } from './quantity.js';
import { USUAL_WAY, type Way } from './way.js';

const MARKS: Readonly<Record<string, string>> = {
  cold_end: 'cold end, hole', hot_end: 'hot end, hole', tap: 'tap', link_start: 'link, hole', link_end: 'link, hole',
};

/** What is written on and around the winding template. */
export const TEMPLATE = {
  heading: 'Winding template',
  print: 'Print sheet and template',
  about:
    'Prints at true size behind the sheet, on A4 and Letter. In the print window choose actual size, 100 %. Then hold a ruler to ' +
    'the bars on the page: if one is off, the printer has scaled it.',
  wrap:
    'Cut along the frame, wrap it once around the form, print outward, seam to seam. Prick the holes through. Wind along the lines ' +
    'from the cold end; each line crosses the seam into the next.',
  bar: (millimetres: number): string => `${millimetres}\u00a0mm: hold a ruler to it`,
  windRight: 'Wind from left to right, downwards',
  windDown: 'Wind from top to bottom, to the right',
  page: (place: number, count: number): string => (count === 1 ? 'One strip' : `Strip ${place} of ${count}: join equal letters edge to edge`),
  picture: (place: number): string => `Winding template, strip ${place}`,
  none: 'The template appears with the answers.',
} as const;

/** A mark of the template: "tap, turn 10". */
export function markWords(mark: string, turn: number, way: Way = USUAL_WAY): string {
  const name = (Object.hasOwn(MARKS, mark) ? MARKS[mark] : undefined) ?? mark.replaceAll('_', ' ');
  return mark === 'tap' ? `${name}, turn ${show(turn, '1', { way, digits: 4 })}` : name;
}
