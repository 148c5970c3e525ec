import { USUAL_WAY, type Way } from '../../words/index.js';
import type { Shelf } from './keep.js';
import { isRecord } from './paths.js';

/** Light, dark, or as the device is set. */
export type Theme = 'system' | 'light' | 'dark';

/** How one person likes the page. */
export interface Preferences extends Way {
  readonly theme: Theme;
}

const KEY = 'tagstrip.preferences';

/** What can be chosen, in the order of the page. */
export const CHOICES = {
  theme: ['system', 'light', 'dark'],
  length: ['mm', 'inch'],
  wire: ['awg', 'swg', 'mm'],
  mains: [50, 60],
  tube: ['tube', 'valve'],
  supply: ['B+', 'HT'],
  decimal: ['point', 'comma'],
  resistor: ['zigzag', 'box'],
} as const satisfies { readonly [Key in keyof Preferences]: readonly Preferences[Key][] };

/** What stands until the person chooses. */
export const USUAL: Preferences = { ...USUAL_WAY, theme: 'system' };

/** What the person chose, as far as it is known. */
export function readPreferences(shelf: Shelf | null): Preferences {
  try {
    const given: unknown = JSON.parse(shelf?.getItem(KEY) ?? 'null');
    if (!isRecord(given)) return USUAL;
    const known = Object.entries(CHOICES).flatMap(([key, choices]) => {
      const chosen = (choices as readonly unknown[]).find((choice) => choice === given[key]);
      return chosen === undefined ? [] : [[key, chosen]];
    });
    return { ...USUAL, ...(Object.fromEntries(known) as Partial<Preferences>) };
  } catch {
    return USUAL;
  }
}

/** Remembers them, where the browser lets us. */
export function writePreferences(shelf: Shelf | null, preferences: Preferences): void {
  try {
    shelf?.setItem(KEY, JSON.stringify(preferences));
  } catch {
    // They hold until the page is closed; the page says elsewhere that nothing is kept.
  }
}
