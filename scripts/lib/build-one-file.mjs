// The whole suite as one file, for a memory stick: page, style, program and engine, under a policy that names each by its hash.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';

import { version } from './release.mjs';
import { inOne, integrity, packed } from './in-one.mjs';

export async function buildOneFile(root, dist, { catalogue, pages }) {
  const [loader, program] = [await inOne(root, 'www/pages/one-file-loader.ts'), await inOne(root, 'www/pages/one-file.ts')];
  const styles = await build({ entryPoints: [join(root, 'www/styles/index.css')], bundle: true, minify: true, write: false });
  const style = styles.outputFiles[0].text.trim();
  const policy = pages.inOnePolicy(`'${integrity(loader)}' '${integrity(program)}'`, integrity(style));
  const { title, summary, body } = pages.oneFileText(catalogue);
  writeFileSync(join(dist, 'tagstrip.html'), `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover">
<title>${title}</title>
<meta name="description" content="${summary}">
<meta name="color-scheme" content="light dark">
<link rel="icon" href="data:,">
<style>${style}</style>
</head>
<body>
<ts-app id="main" release="${version(root)}">
${body}
</ts-app>
<script type="text/plain" id="program">${packed(program)}</script>
<script type="text/plain" id="engine">${packed(readFileSync(join(root, 'www/package/wasm/tagstrip.wasm')))}</script>
<script>${loader}</script>
</body>
</html>
`);
}
