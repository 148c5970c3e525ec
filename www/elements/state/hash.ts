import { readBuild, written, type Read } from './build.js';
import { flatten, unflatten } from './flat.js';
import type { Build, Figures } from './kinds.js';

/** Links shorter than this stay readable. */
const READABLE = 400;
/** A build that unpacks to more is not one of ours. */
const MOST = 2_000_000;
const READABLE_MARK = '1&';
const PACKED_MARK = '1z';

/** What a link says: a build, and the lug that is looked at. */
export interface Linked {
  readonly build: Build;
  readonly at: string;
}

/** The text behind `#`: readable while that is short, packed where it helps. */
export async function toHash({ build, at }: Linked): Promise<string> {
  const whole: Figures = { ...written(build), at };
  const readable = READABLE_MARK + flatten(withoutForm(whole));
  if (readable.length <= READABLE) return readable;
  const packed = PACKED_MARK + toBase64Url(await deflated(JSON.stringify(whole)));
  return packed.length < readable.length ? packed : readable;
}

/** Whether a text behind `#` claims to hold a build at all. */
export function isLink(hash: string): boolean {
  return hash.length > 1;
}

/** A build from the text behind `#`. */
export async function fromHash(hash: string): Promise<(Read & { readonly at?: string }) | null> {
  const whole = await unpacked(hash.replace(/^#/, ''));
  if (whole === null) return { refused: 'not_ours' };
  const { at, ...rest } = whole;
  const read = readBuild(rest);
  return typeof at === 'string' ? { ...read, at } : read;
}

async function unpacked(text: string): Promise<Figures | null> {
  // The first character is the form; a later one is told from nonsense by the same mark behind it.
  const form = /^(\d+)(&|z)/.exec(text);
  if (form === null) return null;
  const [mark = '', number = '', kind] = form;
  const body = text.slice(mark.length);
  if (kind === '&') {
    const flat = unflatten(body);
    return flat === null ? null : { ...flat, tagstrip: Number(number) };
  }
  if (Number(number) > 1) return { tagstrip: Number(number) };
  try {
    const bytes = fromBase64Url(body);
    return JSON.parse(await inflated(bytes)) as Figures;
  } catch {
    return null;
  }
}

function withoutForm({ tagstrip: _, ...rest }: Figures): Figures {
  return rest;
}

async function deflated(text: string): Promise<Uint8Array> {
  return whole(new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw')));
}

async function inflated(bytes: Uint8Array): Promise<string> {
  const stream = new Blob([bytes as BlobPart]).stream().pipeThrough(new DecompressionStream('deflate-raw'));
  return new TextDecoder().decode(await whole(stream));
}

async function whole(stream: ReadableStream<Uint8Array>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  const reader = stream.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > MOST) throw new RangeError('more than a build holds');
    chunks.push(value);
  }
  const bytes = new Uint8Array(length);
  let from = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, from);
    from += chunk.length;
  }
  return bytes;
}

/** Bytes as letters that an address carries unchanged. */
export function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** The bytes again. */
export function fromBase64Url(text: string): Uint8Array {
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
}
