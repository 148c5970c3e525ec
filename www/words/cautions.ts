import type { CautionContext, CautionMaker, CautionText, CautionWords } from './caution-kinds.js';
import { SIGNAL_CAUTIONS } from './caution-signal.js';
import { TUBE_CAUTIONS } from './caution-tube.js';
import { COIL_CAUTIONS } from './caution-coil.js';
import { RF_CAUTIONS } from './caution-rf.js';
import { FIT_CAUTIONS } from './caution-fit.js';
import { POWER_CAUTIONS } from './caution-power.js';
import { MARKING_CAUTIONS } from './caution-marking.js';
import { SUPPLY_CAUTIONS } from './caution-supply.js';
import type { BareCaution, Figures, Severity } from './kinds.js';
import { figure, raised, said, spelled } from './plain.js';
import { show } from './quantity.js';
import { told, USUAL_WAY, type Way } from './way.js';

const FAMILIES: readonly Readonly<Record<string, CautionMaker>>[] = [
  TUBE_CAUTIONS, SIGNAL_CAUTIONS, FIT_CAUTIONS, COIL_CAUTIONS, MARKING_CAUTIONS, RF_CAUTIONS, SUPPLY_CAUTIONS, POWER_CAUTIONS,
];

/** The codes that have a text of their own, each once. */
export const CAUTION_CODES: readonly string[] = FAMILIES.flatMap((family) => Object.keys(family));

const MAKERS: Readonly<Record<string, CautionMaker>> = Object.fromEntries(FAMILIES.flatMap((family) => Object.entries(family)));

/** The kind of a caution in words. */
export const SEVERITIES: Readonly<Record<Severity, string>> = { danger: 'Danger', limit: 'Limit', note: 'Note' };

const ORDER: readonly Severity[] = ['danger', 'limit', 'note'];

/** Names of figures that carry their unit at their end. */
const ENDINGS: Readonly<Record<string, string>> = {
  volts: 'V', amps: 'A', ohms: 'Ω', watts: 'W', farads: 'F', henries: 'H', hertz: 'Hz', seconds: 's', db: 'dB', percent: '%',
};

/** A caution for people. A code without a text of its own is spelled out with its figures. */
export function cautionWords(caution: BareCaution, inputs: Figures = {}, way: Way = USUAL_WAY): CautionWords {
  const figures = caution.figures ?? {};
  const f = (name: string, unit: string, digits?: number): string => show(figure(figures, name), unit, { digits, way });
  const context: CautionContext = { figures, about: caution.about ?? null, inputs, f, way };
  const made = Object.hasOwn(MAKERS, caution.code) ? MAKERS[caution.code] : undefined;
  const { heading, text, gauge, hazard = 'charge' } = made === undefined ? bare(caution.code, figures, way) : made(context);
  const words = {
    severity: caution.severity,
    heading: `${SEVERITIES[caution.severity] ?? SEVERITIES.note}: ${told(heading, way)}`,
    text: told(raised(text.trim()), way),
    hazard,
  };
  if (gauge === undefined) return words;
  const [value, rating] = [figure(figures, gauge[0]), figure(figures, gauge[1])];
  return value === null || rating === null ? words : { ...words, gauge: { value, rating, unit: gauge[2] } };
}

/** The same as one text, as the package gives it. */
export function cautionText(caution: BareCaution, inputs: Figures = {}, way: Way = USUAL_WAY): string {
  const { heading, text } = cautionWords(caution, inputs, way);
  return text === '' ? `${heading}.` : `${heading}. ${text}`;
}

/** Dangers first, then limits, then notes; in each the order found. */
export function byGravity<C extends { readonly severity: Severity }>(cautions: readonly C[]): readonly C[] {
  return ORDER.flatMap((severity) => cautions.filter((caution) => caution.severity === severity));
}

/** The one line that leads to the box: only for what can hurt or is over a rating. */
export function cautionLine(cautions: readonly BareCaution[], inputs: Figures = {}, way: Way = USUAL_WAY): string {
  const [worst] = byGravity(cautions).filter((caution) => caution.severity !== 'note');
  return worst === undefined ? '' : `${cautionWords(worst, inputs, way).heading}.`;
}

function bare(code: string, figures: Figures, way: Way): CautionText {
  const given = Object.keys(figures).map((name) => {
    const unit = ENDINGS[name.split('_').at(-1) ?? ''] ?? '1';
    const value = said(figures, name, unit, way);
    return value === '' ? '' : `${spelled(name)} ${value}`;
  });
  const all = given.filter((each) => each !== '');
  return { heading: spelled(code), text: all.length === 0 ? '' : `${all.join(', ')}.` };
}
