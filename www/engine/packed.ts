/** Bytes that were packed into a text: gzip, then the letters of base64. */
export async function unpacked(text: string): Promise<ArrayBuffer> {
  const letters = atob(text.trim());
  const packed = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
  return new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'))).arrayBuffer();
}
