import type { Lug, Pin, Want } from './kinds.js';

/** What is on screen of every open lug, whatever else is looked at. */
export const ALWAYS: readonly Want[] = ['answers', 'cautions', 'curves', 'circuit', 'parts'];
/** What nobody looks at yet is worked when a person has stopped typing. */
export const LATER = 1200;
/** Of the lugs beside it, for the strip. */
export const BESIDE: readonly Want[] = ['answers', 'cautions'];
export const PINNED: readonly Want[] = ['answers', 'curves'];

/** What a pin's work is kept under. */
export function pinName(lug: Lug, pin: Pin): string {
  return `${lug.id} pin ${pin.name}`;
}
