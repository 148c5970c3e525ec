// What stands on somebody else's page: the script of the element, engine and all, and the page for a frame.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { inOne, integrity, packed } from './in-one.mjs';

/**
 * A length in the root's letters would follow the page that the element stands on, and a width would be the window's:
 * lengths go by the element's own measure, widths by its column.
 */
const ownMeasure = {
  name: 'own-measure',
  setup(build) {
    build.onLoad({ filter: /www[/\\](elements|drawings|plots)[/\\].*\.ts$/ }, ({ path }) => ({
      contents: readFileSync(path, 'utf8')
        .replaceAll(/(?<![\w.-])(\d*\.?\d+)rem\b/g, 'calc($1 * var(--rem, 1rem))')
        .replaceAll(/@media \((min|max)-width: ([\d.]+px)\) \{/g, '@container ($1-width: $2) {'),
      loader: 'ts',
    }));
  },
};

const engineInside = (root) => ({
  name: 'engine-inside',
  setup(build) {
    build.onResolve({ filter: /^packed:engine$/ }, ({ path }) => ({ path, namespace: 'packed' }));
    build.onLoad({ filter: /.*/, namespace: 'packed' }, () => ({
      contents: packed(readFileSync(join(root, 'www/package/wasm/tagstrip.wasm'))), loader: 'text',
    }));
  },
});

/** Writes `element.js` and `frame/`; gives the hash that a page may hold the script to. */
export async function buildElement(root, put, pages) {
  const element = await inOne(root, 'www/pages/element-start.ts', { plugins: [ownMeasure, engineInside(root)], loader: { '.css': 'text' } });
  put('element.js', element);
  put('frame/holder.js', await inOne(root, 'www/pages/holder.ts'));
  const [script, style] = [await inOne(root, 'www/pages/frame.ts'), readFileSync(join(root, 'www/styles/frame.css'), 'utf8').trim()];
  put('frame/index.html', `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${pages.framePolicy(integrity(script), integrity(style))}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${pages.FRAME_TITLE}</title>
<link rel="icon" href="data:,">
<style>${style}</style>
</head>
<body>
${pages.FRAME_BODY}
<script>${script}</script>
</body>
</html>
`);
  return integrity(element, 'sha384');
}
