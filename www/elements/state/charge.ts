import { waitOf } from '../../words/index.js';
import type { BareCaution } from '../../words/kinds.js';
import { figure } from '../../words/plain.js';
import type { Desk } from './desk.js';

/** What the supplies on the same strip say of the time that they stay charged; empty where there is none. */
export function suppliesBeside(desk: Desk): readonly BareCaution[] {
  return desk.build.lugs.filter(({ id }) => id !== desk.at)
    .flatMap(({ id }) => (desk.works.get(id).outcome?.cautions ?? []).filter(({ code }) => code === 'danger_supply'));
}

/** A danger that cannot tell how long its supply stays charged tells what the worst supply beside it does. */
export function withSupplies(cautions: readonly BareCaution[], supplies: readonly BareCaution[]): readonly BareCaution[] {
  const waits = supplies.map(({ figures }) => waitOf(figures));
  if (waits.length === 0) return cautions;
  return cautions.map((caution) => {
    if (caution.severity !== 'danger' || waitOf(caution.figures).kind !== 'least') return caution;
    const own = figure(caution.figures, 'own_seconds') ?? 0;
    const wait = waits.some(({ kind }) => kind === 'vain') ? null : Math.max(own, ...waits.map(({ seconds }) => seconds));
    return { ...caution, figures: { ...caution.figures, wait_seconds: wait } };
  });
}
