import { bandsWords } from './bands.js';
import type { CalculatorWords, Lead, Situation } from './kinds.js';
import { figure, said, text, texts } from './plain.js';
import { show, split } from './quantity.js';
import { markedUnit } from './units.js';

/** Every text of `marking`. */
export const MARKING: CalculatorWords = {
  id: 'marking',
  title: 'Marking',
  summary: 'Reads what is printed or painted on a part: figures, letter codes, three digits, colour bands.',
  paragraph:
    'Type what stands on a resistor, capacitor or coil: 4k7, 250 mmf, 8 MFD, 472K, or the colours of its bands in ' +
    'words. You get its value and tolerance, the bands and codes that the same value has elsewhere, and the nearest ' +
    'preferred values with how far off each one is.',
  groups: { part: 'The part' },
  inputs: {
    text: {
      label: 'What stands on it',
      help: 'As printed, such as 4k7, 104K or .02. Colours in words from the end nearest to a band: yellow violet red gold.',
    },
    kind: { label: 'Kind of part', help: 'The same marks mean ohms, picofarads or microhenries.' },
  },
  choices: { kind: { resistor: 'resistor', capacitor: 'capacitor', inductor: 'coil' } },
  answers: {
    value: { label: 'Value', phrase: 'the value', help: 'What the marking says.' },
    tolerance: {
      label: 'Tolerance',
      phrase: 'the tolerance',
      help: 'How far the part may be from its marking, to either side.',
      percent: true,
    },
    ppm_per_kelvin: {
      label: 'Drift with heat',
      phrase: 'the temperature coefficient',
      help: 'In parts per million for each degree; the sixth band says it.',
    },
    bands: { label: 'Colour bands', phrase: 'the colour bands', help: 'Read from the end nearest to a band.' },
    letter_code: { label: 'Letter code', phrase: 'the letter code', help: 'IEC 60062: the letter stands where the point would.' },
    tolerance_letter: { label: 'Tolerance letter', phrase: 'the tolerance letter', help: 'What stands behind the code for this tolerance.' },
    three_digit: { label: 'Three digits', phrase: 'the three digits', help: 'Two figures and the number of noughts.' },
    preferred: {
      label: 'Preferred values',
      phrase: 'the preferred values',
      help: 'The nearest of each series of IEC 60063, and how far it is off.',
    },
    'preferred.value': { label: 'Nearest', phrase: 'the nearest value', help: 'The nearest in this series.' },
    'preferred.error_percent': {
      label: 'Off by',
      phrase: 'the distance',
      help: 'How far the nearest lies from the value, in percent of the value.',
      signed: true,
    },
  },
  curves: {},
  how: {
    method:
      'The text is read as a figure with its unit, then as a letter code, three digits or colours. Preferred values are ' +
      'generated from the series’ own rule, with the exceptions that the standard prints.',
    holdsFor: 'Parts marked since about 1920. Colours of moulded mica capacitors with six dots are not read.',
    checkedAgainst: 'The standards’ tables of series, letters and colours, and decoded examples.',
    source: 'IEC 60062, marking codes; IEC 60063, preferred number series.',
  },
  face: {
    lug: { answer: 'value' },
    tables: [
      {
        heading: 'Answers',
        rows: [
          { answer: 'value' },
          { answer: 'tolerance' },
          { answer: 'bands' },
          { answer: 'letter_code' },
          { answer: 'tolerance_letter' },
          { answer: 'three_digit' },
          { answer: 'ppm_per_kelvin' },
          { answer: 'preferred' },
        ],
      },
    ],
    tags: [],
    pictures: [],
    near: {},
    beside: {},
  },
  lead: markingLead,
};

/** The lead of `marking`: the value, its spread and its colours. */
function markingLead({ inputs, outcome, way }: Situation): Lead {
  const answers = outcome.answers ?? {};
  const kind = text(inputs, 'kind');
  const unit = markedUnit(kind);
  const value = figure(answers, 'value');
  const typed = said(inputs, 'text', '1', way);
  const label = typed === '' ? 'Reads as' : `“${typed}” reads as`;
  const sentences: string[] = [];
  const tolerance = figure(answers, 'tolerance');
  if (value !== null && tolerance !== null) {
    const ends = [1 - tolerance, 1 + tolerance].map((share) => show(share * value, unit, { digits: 4, way }));
    sentences.push(`Within ±${show(tolerance * 100, '%', { way })}: from ${ends[0]} to ${ends[1]}.`);
  }
  const bands = texts(answers, 'bands');
  if (bands.length > 0) sentences.push(`Its bands: ${bandsWords(bands, tolerance, way)}.`);
  if (sentences.length === 0) sentences.push('No tolerance is marked.');
  return { label, ...split(value, unit, { digits: 4, way }), sentence: sentences.join(' ') };
}
