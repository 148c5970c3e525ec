// The static site: one script, one worker, one style sheet, the engine, a page a calculator, the service worker.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

import { brotli } from './sizes.mjs';
import { buildElement } from './build-element.mjs';
import { firstInOne } from './first-in-one.mjs';
import { hash, sealRelease, version } from './release.mjs';
import { wordsApart } from './words-apart.mjs';

const COMMON = { bundle: true, format: 'esm', target: 'es2022', minify: true, legalComments: 'none', write: false };

export async function buildSite(root, dist, { catalogue, pages }, engine) {
  const site = join(dist, 'site');
  const put = (name, content) => {
    const file = join(site, name);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, content);
    return name;
  };
  const script = async (entry, define = {}) => {
    const made = await build({ ...COMMON, entryPoints: [join(root, entry)], define });
    return made.outputFiles[0].contents;
  };
  const named = (name, ending, content) => put(`assets/${name}-${hash(content).slice(0, 12)}.${ending}`, content);

  const wasm = named('engine', 'wasm', readFileSync(join(root, 'www/package/wasm/tagstrip.wasm')));
  const worker = named('worker', 'js', await script('www/engine/worker.ts'));
  const clip = named('speech', 'ulaw', readFileSync(join(root, 'www/sounds/speech.ulaw')));
  const collector = named('collector', 'js', await script('www/elements/listen/collector.ts'));
  const shelves = engine.parts.map(({ shelf, bytes, ids }) => ({ ids, wasm: named(`engine-${shelf}`, 'wasm', bytes) }));
  const table = named('catalogue', 'json', JSON.stringify(engine.catalogue));
  const names = { WORKER: beside(worker), WASM: beside(wasm), SHELVES: JSON.stringify(shelves.map((shelf) => ({ ...shelf, wasm: besideOf(shelf.wasm) }))), CATALOGUE: beside(table), CLIP: beside(clip), COLLECTOR: beside(collector) };
  const page = await parts(root, join(site, 'assets'), names);
  const style = named('style', 'css', await script('www/styles/index.css'));

  const element = await buildElement(root, put, pages);
  const icons = Object.fromEntries(['icon.svg', 'icon-180.png', 'icon-192.png', 'icon-512.png'].map((name) => {
    const [stem, ending] = name.split('.');
    return [stem, named(stem, ending, readFileSync(join(root, 'www/pages/icons', name)))];
  }));
  const assets = { ...page, preload: [], early: named('early', 'js', await script('www/pages/early.ts')), style, element, release: version(root), icon: icons.icon, touchIcon: icons['icon-180'] };
  put('tagstrip.webmanifest', pages.manifest(icons));
  put('index.html', pages.indexPage(catalogue, assets));
  put('how-we-know/index.html', pages.knownPage(catalogue, assets, readFileSync(join(root, 'www/pages/tubes.tsv'), 'utf8')));
  const check = named('host-check', 'js', await script('www/pages/host-check.ts'));
  const weighed = (...names) => names.reduce((sum, name) => sum + brotli(join(site, name)), 0);
  const costs = { element: weighed('element.js'), frame: weighed('frame/index.html'), frameScripts: weighed('frame/holder.js') };
  put('for-your-page/index.html', pages.keepersPage(catalogue, assets, costs, check, wasm));
  for (const calculator of catalogue) {
    const preload = assets.wordsFor(calculator.id);
    const shelf = shelves.find(({ ids }) => ids.includes(calculator.id));
    const fetched = shelf === undefined ? [wasm] : [shelf.wasm, table];
    put(`${calculator.id}/index.html`, pages.calculatorPage(calculator, catalogue, { ...assets, preload, fetched }));
  }
  await sealRelease(root, site);
}

/** The page's script in pieces: the first is all that the first answers need, the rest is fetched behind them. */
async function parts(root, outdir, define) {
  const made = await build({
    ...COMMON, metafile: true, absWorkingDir: root, define, outdir, splitting: true,
    entryPoints: { page: 'www/pages/start.ts' }, entryNames: '[name]-[hash]', chunkNames: '[name]-[hash]', plugins: [wordsApart],
  });
  const nameOf = (path) => path.split('/').at(-1);
  const outputs = Object.entries(made.metafile.outputs).map(([path, output]) => ({ name: nameOf(path), ...output }));
  const at = (entry) => outputs.find(({ entryPoint }) => entryPoint === entry);
  const imported = ({ imports }) => imports.filter(({ kind }) => kind === 'import-statement').map(({ path }) => nameOf(path));
  const first = at('www/pages/start.ts');
  const early = imported(first);
  const texts = new Map(made.outputFiles.map(({ path, text }) => [nameOf(path), text]));
  const exported = (name) => outputs.find((output) => output.name === name).exports;
  mkdirSync(outdir, { recursive: true });
  for (const [name, text] of await firstInOne(texts, first.name, early, exported, COMMON)) writeFileSync(join(outdir, name), text);
  /** What the page of a calculator needs at once: its words, and what they are made with. */
  const wordsFor = (id) => {
    const words = at(`www/words/${id}.ts`);
    return words === undefined ? [] : [words.name, ...imported(words)].filter((name) => name !== first.name && !early.includes(name)).map((name) => `assets/${name}`);
  };
  return { script: `assets/${first.name}`, wordsFor };
}

/** An asset as a script among the assets names it. */
const besideOf = (name) => `./${name.slice('assets/'.length)}`;
const beside = (name) => JSON.stringify(besideOf(name));

/** The catalogue with its words, from the package as built, and the page maker. */
export async function words(root, dist) {
  const made = await build({ ...COMMON, entryPoints: [join(root, 'www/pages/page.ts')], platform: 'node' });
  const pages = await import(`data:text/javascript;base64,${Buffer.from(made.outputFiles[0].contents).toString('base64')}`);
  const { init, catalogue } = await import(pathToFileURL(join(dist, 'package/index.js')));
  await init();
  return { catalogue: catalogue(), pages };
}
