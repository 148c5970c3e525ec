const UNITS: Readonly<Record<string, string>> = { resistor: 'Ω', capacitor: 'F', inductor: 'H' };

/** The unit of a marked part, by its kind. */
export function markedUnit(kind: string): string {
  return (Object.hasOwn(UNITS, kind) ? UNITS[kind] : undefined) ?? 'Ω';
}
