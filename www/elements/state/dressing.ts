import { isAway } from '../../words/fetched.js';
import { dressCatalogue, wordsOf } from '../../words/index.js';
import { ownFigure, valueOf, type Readings } from './figures.js';
import type { BareCalculator } from './from-words.js';
import { fill } from './full.js';
import type { Calculator } from './kinds.js';
import { leaves } from './leaves.js';
import type { Preferences } from './preferences.js';

/** The calculators whose words are at hand. Their own values need no reader: their figures are in the catalogue. */
export function dressed(bare: readonly BareCalculator[], preferences: Preferences, readings: Readings): readonly Calculator[] {
  const catalogue = dressCatalogue(bare.filter(({ id }) => !isAway(id)), preferences) as readonly Calculator[];
  for (const { id, inputs: rows } of catalogue) {
    for (const { path, row, value } of leaves(rows, fill({ words: wordsOf(id), rows }, {}))) {
      const figure = row.shape === 'quantity' ? ownFigure(rows, path) : null;
      if (typeof value !== 'string' || figure === null) continue;
      if (valueOf(readings.get(value, row.unit ?? '1')) === null) readings.set(value, row.unit ?? '1', { value: figure });
    }
  }
  return catalogue;
}
