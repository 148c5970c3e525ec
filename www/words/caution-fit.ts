import type { CautionMaker } from './caution-kinds.js';
import { figure, spelled, text } from './plain.js';
import { show } from './quantity.js';

/** A parameter of the tube law as a sentence calls it. */
export function parameterWords(name: string): string {
  const known: Readonly<Record<string, string>> = {
    perveance: 'perveance',
    mu: 'mu',
    mu_spread: 'the spread of mu',
    contact_volts: 'the contact volts',
  };
  return (Object.hasOwn(known, name) ? known[name] : undefined) ?? (spelled(name) || 'one figure of the tube');
}

/** What is worth knowing about a tube fitted to points. */
export const FIT_CAUTIONS: Readonly<Record<string, CautionMaker>> = {
  prior_kept: ({ figures, f }) => {
    const name = text(figures, 'parameter');
    const near = figure(figures, 'value') === null ? '' : `, ${f('value', '1')}`;
    return {
      heading: `your points do not settle ${parameterWords(name)}`,
      text: `The figure that most triodes have stands in${near}. ${MORE[name] ?? 'One more point far from the others would settle it.'}`,
    };
  },
  residual_large: ({ figures, way }) => {
    const percent = figure(figures, 'residual_percent') ?? figure(figures, 'percent');
    const off = percent === null ? 'further off than the law allows' : `${show(Math.abs(percent), '%', { way })} off`;
    const number = figure(figures, 'point');
    return {
      heading: number === null ? 'a point does not fit' : `point ${number} does not fit`,
      text: `It is ${off}. Look at its figures again; a minus left out before the grid volts is the usual cause.`,
    };
  },
};

const MORE: Readonly<Record<string, string>> = {
  mu_spread: 'A point at low current, or the grid volts at which the current stops, would settle it.',
  contact_volts: 'A point near zero grid volts would settle them.',
  mu: 'Two points at different plate volts would settle it.',
  perveance: 'A point with its plate current would settle it.',
};
