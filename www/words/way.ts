/** How one person likes figures and the trade's words; remembered by the page, the same for every text. */
export interface Way {
  readonly length: 'mm' | 'inch';
  readonly wire: 'awg' | 'swg' | 'mm';
  readonly mains: 50 | 60;
  readonly tube: 'tube' | 'valve';
  readonly supply: 'B+' | 'HT';
  readonly decimal: 'point' | 'comma';
  readonly resistor: 'zigzag' | 'box';
}

/** What stands until the person chooses otherwise. */
export const USUAL_WAY: Way = {
  length: 'mm',
  wire: 'awg',
  mains: 60,
  tube: 'tube',
  supply: 'B+',
  decimal: 'point',
  resistor: 'zigzag',
};

const VALVES: readonly (readonly [RegExp, string])[] = [
  [/\btube/g, 'valve'],
  [/\bTube/g, 'Valve'],
];

/** A decimal figure in a text of ours; not the number of a standard, such as S3.5. */
const POINT = /(?<![\w.])(\d+)\.(\d+)(?![\w.])/g;

/**
 * A text of ours in the person's own trade words. Texts are written once, with "tube" and "B+"; names that the person
 * typed must not be passed through here.
 */
export function told(text: string, way: Way = USUAL_WAY): string {
  let said = text;
  if (way.tube === 'valve') {
    for (const [pattern, word] of VALVES) said = said.replace(pattern, word);
  }
  if (way.decimal === 'comma') said = said.replace(POINT, '$1,$2');
  return way.supply === 'HT' ? said.replaceAll('B+', 'HT') : said;
}
