// What the built files weigh, as they are and as a server sends them.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';

const options = { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } };

/** Bytes of a file after brotli. */
export const brotli = (file) => brotliCompressSync(readFileSync(file), options).length;

/** Every file under a folder. */
export function filesUnder(folder) {
  return readdirSync(folder, { withFileTypes: true })
    .flatMap((entry) => (entry.isDirectory() ? filesUnder(join(folder, entry.name)) : [join(folder, entry.name)]))
    .sort();
}

/** Prints a line a file: bytes, bytes after brotli, name. */
export function report(dist) {
  const files = filesUnder(dist).filter((file) => /\.(js|wasm|css|html|zip)$/.test(file) && !file.includes('/site/v/'));
  for (const file of files) {
    console.log(`${String(statSync(file).size).padStart(8)} ${String(brotli(file)).padStart(8)}  ${relative(dist, file)}`);
  }
}
