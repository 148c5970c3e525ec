import type { Dressed, Row } from '../words/index.js';
import '../words/all.js';
import { HOW_WE_KNOW, HOW_WE_KNOW_TITLE, type Section } from '../words/how-we-know.js';
import { KEEPERS_HOST, KEEPERS_HOST_WAITS, KEEPERS_TITLE, keepersSections, type Costs } from '../words/keepers.js';
import { SAY, wordsOf } from '../words/index.js';

/** What a page loads, relative to the site's root. */
export interface Assets {
  readonly script: string;
  /** What the script imports as soon as it runs. */
  readonly preload: readonly string[];
  /** What the script fetches as soon as it runs. */
  readonly fetched?: readonly string[];
  /** A small script that asks for that before. */
  readonly early: string;
  readonly style: string;
  /** The hash of the script that makes the element for other pages. */
  readonly element: string;
  /** The number of the release. */
  readonly release: string;
  readonly icon: string;
  readonly touchIcon: string;
}

export { FRAME_BODY, FRAME_TITLE, framePolicy, inOnePolicy } from './frame-page.js';

/** As strict as it goes; `frame-ancestors` works only as a header. */
export const POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "worker-src 'self'",
  "connect-src 'self'",
  "img-src 'self' data:",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types lit-html tagstrip',
].join('; ');

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (mark) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[mark] ?? mark);

interface Frame {
  readonly title: string;
  readonly summary: string;
  /** The way to the site's root: `.` or `..`. */
  readonly root: string;
  readonly body: string;
}

function frame({ title, summary, root, body }: Frame, assets: Assets, attributes: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover">
<title>${escaped(title)}</title>
<meta name="description" content="${escaped(summary)}">
<meta name="color-scheme" content="light dark">
<meta name="theme-color" content="#EDEEE8" media="(prefers-color-scheme: light)">
<meta name="theme-color" content="#16120E" media="(prefers-color-scheme: dark)">
<link rel="icon" href="${root}/${assets.icon}" type="image/svg+xml">
<link rel="apple-touch-icon" href="${root}/${assets.touchIcon}">
<link rel="manifest" href="${root}/tagstrip.webmanifest">
<link rel="stylesheet" href="${root}/${assets.style}">
${[assets.script, ...assets.preload].map((name) => `<link rel="modulepreload" href="${root}/${name}">`).join('\n')}
${early(assets, root)}<script type="module" src="${root}/${assets.script}"></script>
</head>
<body>
<ts-app id="main" ${attributes} release="${assets.release}" element="${assets.element}">
${body}
</ts-app>
</body>
</html>
`;
}

function early({ early: script, fetched }: Assets, root: string): string {
  if (fetched === undefined) return '';
  return `<script type="module" async src="${root}/${script}" data-fetch="${fetched.map((name) => `${root}/${name}`).join(' ')}"></script>\n`;
}

function rowsText(rows: readonly Row[], depth = 0): string {
  const items = rows.map((row) => {
    const inner = row.fields ?? row.item?.fields ?? [];
    const help = row.help === '' ? '' : `: ${escaped(row.help)}`;
    return `<li><b>${escaped(row.label)}</b>${help}${inner.length === 0 || depth > 1 ? '' : rowsText(inner, depth + 1)}</li>`;
  });
  return `<ul>\n${items.join('\n')}\n</ul>`;
}

/** The page of one calculator, readable without scripts. */
export function calculatorPage(calculator: Dressed, all: readonly Dressed[], assets: Assets): string {
  const worked = wordsOf(calculator.id)?.how;
  const headings = SAY.headings;
  const told = worked === undefined ? '' : `<h2>${headings.worked}</h2>
<dl>
<dt>${headings.method}</dt><dd>${escaped(worked.method)}</dd>
<dt>${headings.holds}</dt><dd>${escaped(worked.holdsFor)}</dd>
<dt>${headings.checked}</dt><dd>${escaped(worked.checkedAgainst)}</dd>
<dt>${headings.source}</dt><dd>${escaped(worked.source)}</dd>
</dl>`;
  const answers = calculator.answers.map(({ label, help }) => `<li><b>${escaped(label)}</b>${help === '' ? '' : `: ${escaped(help)}`}</li>`);
  const body = `<main class="static">
<h1>${escaped(calculator.title)}</h1>
<p>${escaped(calculator.summary)}</p>
<p>${escaped(wordsOf(calculator.id)?.paragraph ?? '')}</p>
<noscript><p>${escaped(SAY.noscript)}</p></noscript>
<h2>${headings.values}</h2>
${rowsText(calculator.inputs)}
<h2>${headings.answers}</h2>
<ul>
${answers.join('\n')}
</ul>
${told}
${shelf(all, '..')}
</main>`;
  const title = `${calculator.title}, ${SAY.site}`;
  return frame({ title, summary: calculator.summary, root: '..', body }, assets, `calculator="${calculator.id}" root=".."`);
}

/** What the one file says where scripts do not run: every calculator, what it does and how. */
export function oneFileText(all: readonly Dressed[]): { readonly title: string; readonly summary: string; readonly body: string } {
  const each = all.map(({ id, title, summary }) => {
    const words = wordsOf(id);
    return `<h2>${escaped(title)}</h2>
<p>${escaped(summary)}</p>
<p>${escaped(words?.paragraph ?? '')}</p>
<p>${escaped(words?.how.method ?? '')}</p>`;
  });
  const body = `<main class="static">
<h1>${escaped(SAY.site)}</h1>
<p>${escaped(SAY.siteLine)}</p>
<p>${escaped(SAY.siteText)}</p>
<noscript><p>${escaped(SAY.noscript)}</p></noscript>
${each.join('\n')}
</main>`;
  return { title: escaped(SAY.site), summary: escaped(SAY.siteLine), body };
}

function shelf(all: readonly Dressed[], root: string): string {
  const links = all.map(({ id, title, summary }) => `<li><a href="${root}/${id}/">${escaped(title)}</a>: ${escaped(summary)}</li>`);
  return `<nav aria-label="${escaped(SAY.strip.name)}">
<ul>
${links.join('\n')}
<li><a href="${root}/how-we-know/">${escaped(HOW_WE_KNOW_TITLE)}</a></li>
<li><a href="${root}/for-your-page/">${escaped(KEEPERS_TITLE)}</a></li>
</ul>
</nav>`;
}

/** The site's first page: the build, and every calculator by name. */
export function indexPage(all: readonly Dressed[], assets: Assets): string {
  const body = `<main class="static">
<h1>${escaped(SAY.site)}</h1>
<p>${escaped(SAY.siteLine)}</p>
<noscript><p>${escaped(SAY.noscript)}</p></noscript>
${shelf(all, '.')}
</main>`;
  return frame({ title: SAY.site, summary: SAY.siteText, root: '.', body }, assets, 'root="."');
}

/** A tab-separated table, its first line the heads. */
function table(rows: string): string {
  const [heads = '', ...lines] = rows.trim().split('\n');
  const cells = (line: string, tag: string): string =>
    `<tr>${line.split('\t').map((cell) => `<${tag}>${escaped(cell)}</${tag}>`).join('')}</tr>`;
  return `<div class="scrolls" tabindex="0" role="region" aria-label="${escaped(TUBES_TITLE)}"><table>
<thead>${cells(heads, 'th')}</thead>
<tbody>${lines.map((line) => cells(line, 'td')).join('\n')}</tbody>
</table></div>`;
}

const TUBES_TITLE = 'The fitted tubes';

/** A page of sentences, with no calculator and no script of ours. */
function bookPage(title: string, inside: string, all: readonly Dressed[], assets: Assets): string {
  const body = `<main class="static">
<h1>${escaped(title)}</h1>
${inside}
${shelf(all, '..')}
</main>`;
  const page = { title: `${title}, ${SAY.site}`, summary: SAY.siteLine, root: '..', body };
  return frame(page, assets, 'root=".."').replace(/<ts-app[^>]*>|<\/ts-app>/g, '').replace(/<script type="module".*\n|<link rel="modulepreload".*\n/g, '');
}

function sectionsText(sections: readonly Section[]): string {
  return sections.map(({ heading, paragraphs }) => `<h2>${escaped(heading)}</h2>\n${paragraphs.map((line) => `<p>${escaped(line)}</p>`).join('\n')}`).join('\n');
}

/** How far the figures were held against what others published. */
export function knownPage(all: readonly Dressed[], assets: Assets, tubes: string): string {
  return bookPage(HOW_WE_KNOW_TITLE, `${sectionsText(HOW_WE_KNOW)}\n<h2>${escaped(TUBES_TITLE)}</h2>\n${table(tubes)}`, all, assets);
}

/** What a web keeper needs to know, and what this host sends. */
export function keepersPage(all: readonly Dressed[], assets: Assets, costs: Costs, script: string, engine: string): string {
  const host = `<h2>${escaped(KEEPERS_HOST)}</h2>
<div id="host" role="status" data-engine="../${engine}"><p>${escaped(KEEPERS_HOST_WAITS)}</p></div>
<script type="module" src="../${script}"></script>`;
  return bookPage(KEEPERS_TITLE, `${sectionsText(keepersSections(costs))}\n@host@`, all, assets).replace('@host@', host);
}

/** What a device asks for before it puts the site among its own programs. */
export function manifest(icons: Readonly<Record<string, string>>): string {
  const icon = (stem: string, sizes: string, type: string, purpose: string): object => ({ src: icons[stem], sizes, type, purpose });
  return JSON.stringify({
    name: SAY.site, short_name: SAY.site, description: SAY.siteLine, lang: 'en', id: './', start_url: './', scope: './',
    display: 'standalone', background_color: '#EDEEE8', theme_color: '#EDEEE8',
    icons: [
      icon('icon', 'any', 'image/svg+xml', 'any'), icon('icon-192', '192x192', 'image/png', 'any'),
      icon('icon-512', '512x512', 'image/png', 'any'), icon('icon-512', '512x512', 'image/png', 'maskable'),
    ],
  }, null, 2);
}
