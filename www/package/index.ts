/**
 * Tagstrip: what a home-built vacuum-tube station does, worked out before it is soldered.
 *
 * ```js
 * import { init, work } from 'tagstrip';
 * await init();
 * const { answers } = work('stage', { tube: '12AX7', supply_volts: '250 V', plate_ohms: '100k', cathode_ohms: '1k5' });
 * ```
 */
import '../words/all.js';
import { dressCatalogue, dressCautions, dressCurves, dressProblems, readingWords, unreadText } from '../words/index.js';
import * as door from './door.js';
import type { BareProblem, Clip, Dressed, Figures, Outcome, Problem, Reading, Rendered, RenderHow, TitledCurve, Want } from './kinds.js';

export { show_quantity } from '../words/index.js';
export type * from './kinds.js';

/** Inputs that cannot be used: every wrong field at once, each with what to do about it. */
export class InputError extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(({ text }) => text).join(' '));
    this.name = 'InputError';
    this.problems = problems;
  }
}

let opened: Promise<void> | undefined;
let dressed: readonly Dressed[] | undefined;

/** Loads the engine once; every other call is synchronous after it. Without a source it is found beside this module. */
export async function init(source?: door.Source | Promise<door.Source>): Promise<void> {
  opened ??= Promise.resolve(source).then((given) => door.open(given));
  try {
    await opened;
  } catch (fault) {
    opened = undefined;
    throw fault;
  }
}

/** Every calculator with its inputs, answers and words: enough to build a form, a check or a page from. */
export function catalogue(): readonly Dressed[] {
  dressed ??= dressCatalogue(door.catalogue());
  return dressed;
}

/** Works a calculator. `want` says what is computed; answers and cautions if it is left out. */
export function work(id: string, inputs: Figures = {}, { want }: { readonly want?: readonly Want[] } = {}): Outcome {
  const { cautions, curves, ...rest } = refused(() => door.work(id, inputs, want), (problems) =>
    dressProblems(problems, catalogue().find((calculator) => calculator.id === id), inputs),
  );
  return {
    ...rest,
    ...(cautions === undefined ? {} : { cautions: dressCautions(cautions, inputs) }),
    ...(curves === undefined ? {} : { curves: dressCurves(id, curves) as readonly TitledCurve[] }),
  };
}

/**
 * Sends a clip of speech through the whole circuit of a `voice`, in one position of its switch. The clip's scale does not
 * matter: where it speaks its rms becomes `microphone_volts`. What comes out is a quarter of a second longer.
 */
export function render(inputs: Figures, clip: Clip, { position = 1, seconds = 20, linear = false }: RenderHow = {}): Rendered {
  const samples = clip?.samples instanceof Float32Array ? clip.samples : Float32Array.from(clip?.samples ?? []);
  const dressed = (problems: readonly BareProblem[]): readonly Problem[] =>
    dressProblems(problems, catalogue().find((calculator) => calculator.id === 'voice'), inputs);
  return refused(() => door.render(inputs, samples, Number(clip?.rate), { position, seconds, linear }), dressed);
}

/** Samples of −1 to 1 from bytes of 8-bit µ-law, which the built-in clip is kept as. */
export const from_mulaw = (bytes: Uint8Array): Float32Array => door.fromMulaw(bytes);

/** Reads a figure as a person writes it; `reading` is the echo to check it by. */
export function read_quantity(text: string, unit: string, shown_prefix?: string): Reading {
  const reading = refused(() => door.read(text, unit, shown_prefix), (problems) =>
    problems.map((problem) => ({ ...problem, text: unreadText(problem, text, unit) })),
  );
  const { value, tolerance } = reading;
  return {
    value,
    ...(tolerance === undefined || tolerance === null ? {} : { tolerance }),
    reading: readingWords(text, unit, reading),
  };
}

function refused<T>(call: () => T, told: (problems: readonly BareProblem[]) => readonly Problem[]): T {
  try {
    return call();
  } catch (fault) {
    throw fault instanceof door.Refusal ? new InputError(told(fault.problems)) : fault;
  }
}
