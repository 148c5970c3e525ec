// The catalogue, from the package as built.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './run.mjs';

export async function catalogueOf() {
  const { init, catalogue } = await import(pathToFileURL(join(root, 'dist/package/index.js')).href);
  await init();
  return catalogue();
}
