import type { CautionContext, CautionMaker } from './caution-kinds.js';
import { figure, text } from './plain.js';
import { show } from './quantity.js';
import { markedUnit } from './units.js';

/** What is worth knowing about how a part is marked. */
export const MARKING_CAUTIONS: Readonly<Record<string, CautionMaker>> = {
  code_rounded: () => ({
    heading: 'the letter code is rounded',
    text: 'A letter code has room for four figures; the value has more.',
  }),
  reads_both_ways: (context) => ({
    heading: 'the bands read from both ends',
    text:
      `From the other end they are ${value(context)}, ±${percent(context, 'tolerance')}. The band for the tolerance ` +
      'stands further off, or is wider, than the others; a meter settles it.',
  }),
  old_tolerance_colour: (context) => ({
    heading: 'an older tolerance colour',
    text: `On a part with four bands made before these colours stood for less, it is ±${percent(context, 'tolerance')}.`,
  }),
  uneven_tolerance: (context) => ({
    heading: 'the tolerance is not the same both ways',
    text: `The part may be ${percent(context, 'under')} under its marking and ${percent(context, 'over')} over it.`,
  }),
  also_a_code: (context) => ({
    heading: 'it may be a code',
    text:
      `Printed on a small part, these digits mean ${value(context)}: the last one counts the noughts. Here they are ` +
      'read as a plain figure.',
  }),
  also_plain: (context) => ({
    heading: 'it may be a plain figure',
    text: `Taken as picofarads these digits are ${value(context)}. Here they are read as a code, the last one counting the noughts.`,
  }),
};

function value({ figures, inputs, way }: CautionContext): string {
  return show(figure(figures, 'value'), markedUnit(text(inputs, 'kind')), { digits: 4, way });
}

function percent({ figures, way }: CautionContext, name: string): string {
  const share = figure(figures, name);
  return show(share === null ? null : share * 100, '%', { way });
}
