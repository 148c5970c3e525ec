import { area, label, type Draft } from './draft.js';
import type { CircuitPart, Form, Point } from './kinds.js';
import { COIL, PLATES, rectifier, SECONDARY } from './power-symbols.js';

/** The transformer's middle, and where the rectified node begins, all from the left of the first panel. */
const T1 = 56;
export const HEAD = 224;
/** How far the winding's ends stand off the main line. */
const SPREAD = 72;
const LEG = 110;

/** Places along the head for the main line at `y`. */
interface Rails {
  readonly y: number;
  readonly top: number;
  readonly bottom: number;
}

/** Winding and rectifiers, up to the rectified node at `HEAD` on the main line at `y`; how far down it reaches. */
export function head(draft: Draft, y: number): number {
  const winding = draft.circuit.parts.find(({ kind }) => kind === 'winding');
  if (winding === undefined) return y;
  const rails = { y, top: y - SPREAD, bottom: y + SPREAD };
  const parts = draft.circuit.parts.filter(({ role }) => role === 'rectifier');
  const to = parts[0]?.nodes.at(-1) ?? '';
  draft.put(winding, draft.form(winding), T1, y, 0, {
    label: label(12, rails.top - 18, 'start', 'row', 96),
    touch: [area(10, rails.top - 36, 150, rails.top - 4), area(10, rails.top - 4, T1 + SECONDARY + 10, y + COIL + 6)],
  });
  const x = T1 + SECONDARY;
  draft.wire('winding_a', x, y - COIL, x, rails.top, LEG, rails.top);
  draft.bolt = { x: 176, y: rails.top - 14 };
  const twin = parts.find(({ nodes }) => nodes.length === 3);
  const singles = parts.filter(({ nodes }) => nodes.length === 2);
  if (winding.nodes.length === 3) tapped(draft, rails, twin, singles, to);
  else if (winding.nodes[1] === 'ground') half(draft, rails, singles, to);
  else if (winding.nodes[1] === 'middle') doubler(draft, rails, singles, to);
  else bridge(draft, rails, twin, singles, to);
  return rails.bottom + (winding.nodes[1] === 'winding_b' ? 100 : 28);
}

const X = T1 + SECONDARY;

/** The output's way from a rectifier's cathode at `from` to the main line. */
function gather(draft: Draft, to: string, { y }: Rails, from: Point): void {
  draft.wire(to, from.x, from.y, HEAD - 16, from.y, HEAD - 16, y, HEAD, y);
}

function across(draft: Draft, part: CircuitPart | undefined, y: number, below: boolean): void {
  if (part === undefined) return;
  const [from, to] = [{ x: LEG, y }, { x: HEAD - 16, y }];
  const middle = 168;
  const tube = part.kind === 'rectifier';
  const reach = tube ? 32 : 12;
  const place = below ? y + reach + 16 : y - reach - 12;
  draft.run(part, '', from, to, { x: middle, y }, {
    label: label(middle, place, 'middle', 'row', 76),
    touch: [area(middle - 40, Math.min(y - reach, place - 14), middle + 40, Math.max(y + reach, place + 14))],
  });
}

/** A rectifier from ground up to a rail, standing on its own ground. */
function foot(draft: Draft, part: CircuitPart | undefined, rail: number): void {
  if (part === undefined) return;
  const tube = part.kind === 'rectifier';
  const [middle, ground] = [rail + (tube ? 40 : 24), rail + (tube ? 76 : 44)];
  draft.run(part, '', { x: LEG, y: rail }, { x: LEG, y: ground }, { x: LEG, y: middle }, {
    label: label(LEG + (tube ? 36 : 14), middle + 4, 'start', 'over', 60),
    touch: [area(LEG - 16, middle - 20, LEG + 64, middle + 24)],
  }, true);
  draft.ground(LEG, ground);
}

function tapped(draft: Draft, rails: Rails, twin: CircuitPart | undefined, singles: readonly CircuitPart[], to: string): void {
  const { y, top, bottom } = rails;
  draft.wire('ground', X, y, X + 22, y, X + 22, y + 18);
  draft.ground(X + 22, y + 18);
  draft.wire('winding_b', X, y + COIL, X, bottom, LEG, bottom);
  if (twin === undefined) {
    across(draft, singles[0], top, true);
    across(draft, singles[1], bottom, true);
    draft.wire(to, HEAD - 16, top, HEAD - 16, bottom);
    draft.wire(to, HEAD - 16, y, HEAD, y);
    return;
  }
  const middle = 168;
  both(draft, twin, rails, middle);
  draft.wire(to, middle + PLATES.cathode.x, y, HEAD, y);
}

/** A twin with its plates on the two rails. */
function both(draft: Draft, twin: CircuitPart, { y, top, bottom }: Rails, middle: number): void {
  const { first, second } = PLATES;
  draft.wire('winding_a', LEG, top, LEG + 12, top, LEG + 12, y + first.y, middle + first.x, y + first.y);
  draft.wire('winding_b', LEG, bottom, LEG + 12, bottom, LEG + 12, y + second.y, middle + second.x, y + second.y);
  draft.put(twin, twinForm(draft, twin), middle, y, 0, {
    label: label(middle, y - 46, 'middle', 'row', 84),
    touch: [area(middle - 36, y - 60, middle + 44, y + 32)],
  });
}

function twinForm(draft: Draft, part: CircuitPart): Form {
  const pins = draft.circuit.tubes?.find(({ reference }) => reference === part.reference)?.pins ?? [];
  const pin = (...names: readonly string[]): string => pins.find(({ electrode }) => names.includes(electrode))?.pin ?? '';
  const plates = part.nodes.length === 3 ? [pin('plate_1'), pin('plate_2')] : [pin('plate_1')];
  return rectifier(part.nodes.length === 3 ? 2 : 1, [...plates, pin('cathode_1', 'filament')]);
}

function half(draft: Draft, rails: Rails, singles: readonly CircuitPart[], to: string): void {
  draft.wire('ground', X, rails.y + COIL, X, rails.bottom);
  draft.ground(X, rails.bottom);
  across(draft, singles[0], rails.top, true);
  gather(draft, to, rails, { x: HEAD - 16, y: rails.top });
}

function doubler(draft: Draft, rails: Rails, singles: readonly CircuitPart[], to: string): void {
  across(draft, singles[0], rails.top, true);
  gather(draft, to, rails, { x: HEAD - 16, y: rails.top });
  foot(draft, singles[1], rails.top);
  draft.wire('middle', X, rails.y + COIL, X, rails.y + SPREAD, HEAD, rails.y + SPREAD);
}

function bridge(draft: Draft, rails: Rails, twin: CircuitPart | undefined, singles: readonly CircuitPart[], to: string): void {
  draft.wire('winding_b', X, rails.y + COIL, X, rails.bottom, LEG, rails.bottom);
  const lower = twin === undefined ? singles.slice(2) : singles;
  if (twin !== undefined) {
    both(draft, twin, rails, 168);
    draft.wire(to, 168 + PLATES.cathode.x, rails.y, HEAD, rails.y);
  } else {
    across(draft, singles[0], rails.top, false);
    across(draft, singles[1], rails.bottom, false);
    draft.wire(to, HEAD - 16, rails.top, HEAD - 16, rails.bottom);
    draft.wire(to, HEAD - 16, rails.y, HEAD, rails.y);
  }
  foot(draft, lower[0], rails.top);
  foot(draft, lower[1], rails.bottom);
}
