/** The instrument's face: figures, labels and drawings. */
export const FACE = 'system-ui, sans-serif';

/** Width of a text in drawing units at a size and weight. */
export type Measure = (text: string, size: number, weight: 400 | 700) => number;

/** A text set smaller, narrower or cut so that it fits. */
export interface Fitted {
  readonly text: string;
  readonly size: number;
  readonly width: number;
  /** Whether its letters have to be drawn narrower than the face has them to come to `width`. */
  readonly narrowed: boolean;
}

/** The smallest size in a drawing. */
const SMALLEST = 12.5;
/** How narrow letters may be drawn before a text is cut: about what a condensed face has. */
const NARROWEST = 0.78;
/** Widths of a broad face as shares of its size, where there is nothing to measure with; bold is a tenth more. */
const SHARES: readonly (readonly [RegExp, number])[] = [
  [/[.,:;'’|!ilj ]/, 0.29],
  [/[frt()I-]/, 0.38],
  [/[mwMW%@Ω]/, 0.9],
  [/[A-Z&+−=µ]/, 0.66],
];

/** Widths by the kind of letter: for where there is no screen. */
export const guessed: Measure = (text, size, weight) => {
  const shares = [...text].map((letter) => SHARES.find(([pattern]) => pattern.test(letter))?.[1] ?? 0.572);
  return shares.reduce((sum, share) => sum + share, 0) * size * (weight === 700 ? 1.08 : 1);
};

/** Widths as the browser will draw them. */
export function measurer(): Measure {
  const context = document.createElement('canvas').getContext('2d');
  if (context === null) return guessed;
  const known = new Map<string, number>();
  return (text, size, weight) => {
    const key = `${weight} ${size} ${text}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    context.font = `${weight} ${size * 4}px ${FACE}`;
    const width = context.measureText(text).width / 4;
    known.set(key, width);
    return width;
  };
}

/** A text at its size, else at the smallest, else with narrower letters, else cut with an ellipsis: never wider than `room`. */
export function fit(text: string, size: number, weight: 400 | 700, room: number, measure: Measure): Fitted {
  const natural = measure(text, size, weight);
  if (natural <= room) return { text, size, width: natural, narrowed: false };
  for (let length = text.length; length > 0; length -= 1) {
    const cut = length === text.length ? text : `${text.slice(0, length).trimEnd()}…`;
    const width = measure(cut, SMALLEST, weight);
    if (width * NARROWEST <= room) return { text: cut, size: SMALLEST, width: Math.min(width, room), narrowed: width > room };
  }
  return { text: '…', size: SMALLEST, width: measure('…', SMALLEST, weight), narrowed: false };
}
