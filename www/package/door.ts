import * as wasm from './wasm/tagstrip.js';
import { pack, unpack, type Packed } from './crossing.js';
import type { BareCalculator, BareOutcome, BareReading, BareProblem, Figures, Rendered } from './kinds.js';

/** What the compiled engine refuses, field by field, before it has its words. */
export class Refusal extends Error {
  readonly problems: readonly BareProblem[];

  constructor(problems: readonly BareProblem[]) {
    super(problems.map(({ field, code }) => `${field}: ${code}`).join('; '));
    this.name = 'Refusal';
    this.problems = problems;
  }
}

/** Where the engine's bytes come from: bytes, a response, an address; nothing means beside this module. */
export type Source = BufferSource | Response | URL | string | WebAssembly.Module;

let compiled: WebAssembly.Module | undefined;

/** Loads the engine. */
export async function open(source?: Source): Promise<void> {
  compiled = await moduleOf(source ?? new URL('./tagstrip.wasm', import.meta.url));
  wasm.renew(compiled);
}

async function moduleOf(source: Source): Promise<WebAssembly.Module> {
  if (source instanceof WebAssembly.Module) return source;
  if (typeof source === 'string' || source instanceof URL) {
    const address = String(source);
    return moduleOf(address.startsWith('file:') ? await readFile(address) : await fetch(source));
  }
  // A server that gives the wrong type of content makes streaming compilation fail; bytes always do.
  if (typeof Response !== 'undefined' && source instanceof Response) {
    if (!source.ok) throw new Error(`The engine did not arrive: ${source.status}.`);
    return WebAssembly.compile(await source.arrayBuffer());
  }
  return WebAssembly.compile(source as BufferSource);
}

async function readFile(address: string): Promise<BufferSource> {
  const files = 'node:fs/promises';
  const { readFile: read } = (await import(/* @vite-ignore */ files)) as typeof import('node:fs/promises');
  return new Uint8Array(await read(new URL(address)));
}

function calling<T>(call: () => T): T {
  try {
    return call();
  } catch (fault) {
    if (Array.isArray(fault)) throw new Refusal(unpack(fault as unknown as Packed) as BareProblem[]);
    // Whatever else is thrown leaves the instance in an unknown state: the next call has a fresh one.
    if (compiled !== undefined) wasm.renew(compiled);
    throw fault;
  }
}

/** What the engine answers, unpacked; the generated types say `any[]` of all of it. */
const answered = <T>(call: () => unknown): T => unpack(calling(call) as Packed) as T;

/** Every calculator, without its words. */
export const catalogue = (): readonly BareCalculator[] => answered(() => wasm.catalogue());

/** Works a calculator. */
export const work = (id: string, inputs: Figures, want?: readonly string[]): BareOutcome => {
  const given = pack([inputs, want]);
  return answered(() => wasm.work(id, ...given));
};

/** Reads a figure as typed. */
export const read = (text: string, unit: string, shown?: string): BareReading =>
  answered(() => wasm.read_quantity(text, unit, shown));

/** What the engine of the whole does with sound; the generated types say `any` for most of it. */
interface Sound {
  render(...args: [...Packed, Float32Array, number]): [...Packed, Float32Array];
  from_mulaw(bytes: Uint8Array): Float32Array;
}

const sound = (): Sound => wasm as unknown as Sound;

/** Sends a clip through a circuit. */
export const render = (inputs: Figures, samples: Float32Array, rate: number, how: Figures): Rendered => {
  const given = pack([inputs, how]);
  const [figures, text, rendered] = calling(() => sound().render(...given, samples, rate));
  return { ...(unpack([figures, text]) as Omit<Rendered, 'samples'>), samples: rendered };
};

/** Samples of −1 to 1 from bytes of 8-bit µ-law. */
export const fromMulaw = (bytes: Uint8Array): Float32Array => calling(() => sound().from_mulaw(bytes));

/** The next preferred value of a series, or nothing. */
export const step = (value: number, series: string, up: boolean): number | null => wasm.step(value, series, up) ?? null;
