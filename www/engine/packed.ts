/** Letters that markup and scripts carry as they are: no quote, no bracket of a tag, no ampersand, no backslash. */
const LETTERS = Array.from({ length: 94 }, (_, k) => String.fromCharCode(33 + k)).filter((letter) => !'"&\'<>\\`'.includes(letter)).slice(0, 85);
const VALUES = new Map(LETTERS.map((letter, k) => [letter.charCodeAt(0), k]));

/** Four bytes stand as five letters; a last group of fewer bytes as one letter more than those. */
export function fromLetters(text: string): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(Math.floor((text.length * 4) / 5));
  for (let from = 0, to = 0; from < text.length; from += 5, to += 4) {
    let group = 0;
    for (let k = 0; k < 5; k += 1) group = group * 85 + (from + k < text.length ? (VALUES.get(text.charCodeAt(from + k)) ?? 0) : 84);
    for (let k = 0; k < 4 && to + k < bytes.length; k += 1) bytes[to + k] = Math.floor(group / 256 ** (3 - k)) % 256;
  }
  return bytes;
}

/** The way there. */
export function toLetters(bytes: Uint8Array): string {
  const groups: string[] = [];
  for (let from = 0; from < bytes.length; from += 4) {
    let group = 0;
    for (let k = 0; k < 4; k += 1) group = group * 256 + (bytes[from + k] ?? 0);
    let letters = '';
    for (let k = 0; k < 5; k += 1, group = Math.floor(group / 85)) letters = (LETTERS[group % 85] ?? '') + letters;
    groups.push(letters.slice(0, Math.min(4, bytes.length - from) + 1));
  }
  return groups.join('');
}

/** Bytes that were packed into a text: gzip, then letters. */
export async function unpacked(text: string): Promise<ArrayBuffer> {
  return new Response(new Blob([fromLetters(text.trim())]).stream().pipeThrough(new DecompressionStream('gzip'))).arrayBuffer();
}
