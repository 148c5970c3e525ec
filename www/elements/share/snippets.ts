import { EMBED } from '../../words/embed-words.js';
import { byGravity, cautionText } from '../../words/index.js';
import { attributesOf, quoted } from '../embed/attributes.js';
import type { Figures } from '../state/kinds.js';
import { tablesOf, type View } from '../state/view.js';

/** What is put on a page, made from what stands on this one. */
export interface Scene {
  readonly view: View;
  /** Only what differs from the calculator's own values. */
  readonly inputs: Figures;
  /** Where this release stands, for good. */
  readonly site: string;
  /** The text behind `#` that says everything. */
  readonly hash: string;
  /** The hash of the element's script; empty where the host does not let another page hold it to that. */
  readonly integrity: string;
  /** The address of the drawing as a picture; empty where there is none. */
  readonly picture: string;
}

/** The ways to put a calculator on a page. */
export type Way = 'link' | 'frame' | 'element';

/** The markup to paste. */
export function codeOf(way: Way, scene: Scene): string {
  return { link, frame, element }[way](scene);
}

const address = ({ view, site, hash }: Scene): string => quoted(`${site}${view.calculator.id}/#${hash}`);

function link(scene: Scene): string {
  const { view: { calculator, lead } } = scene;
  const answer = lead === null ? '' : `: ${lead.label} ${lead.figure} ${lead.unit}`;
  return `<a href="${address(scene)}">${quoted(`${calculator.title}${answer}`.trim())}</a>`;
}

function frame({ view: { calculator }, site, hash }: Scene): string {
  return `<iframe src="${quoted(`${site}frame/#${hash}`)}" title="${quoted(EMBED.frameTitle(calculator.title))}" data-tagstrip
  sandbox="allow-scripts allow-popups allow-popups-to-escape-sandbox" loading="lazy" width="100%" height="1500"></iframe>
<script src="${quoted(site)}frame/holder.js" async></script>`;
}

function element(scene: Scene): string {
  const { view: { calculator, lug }, inputs, site, integrity } = scene;
  const position = lug.position === 0 ? '' : ` position="${lug.position + 1}"`;
  const held = integrity === '' ? '' : ` integrity="${integrity}" crossorigin="anonymous"`;
  return `<tag-strip calculator="${calculator.id}"${position}${attributesOf(inputs)} home="${quoted(site)}">
${standIn(scene)}
</tag-strip>
<script src="${quoted(site)}element.js"${held} async></script>`;
}

/** What a reader sees before the script has come, and where a site takes it out: picture, danger, table, link. */
function standIn(scene: Scene): string {
  const { view, picture } = scene;
  const { calculator, lead, situation, way } = view;
  const dangers = byGravity(situation?.outcome.cautions ?? []).filter(({ severity }) => severity !== 'note').map((caution) => cautionText(caution, situation?.inputs, way));
  const image = picture === '' ? '' : `<img alt="${quoted(EMBED.drawingOf(calculator.title))}" src="${picture}">\n`;
  const rows = tablesOf(view).flatMap(({ heading, columns, rows: lines }) => {
    const several = lines.some(({ cells }) => cells.length > 1);
    const heads = several ? columns.map(({ name }) => `<th>${quoted(name)}</th>`).join('') : `<th>${EMBED.value}</th>`;
    return [`<tr><th>${quoted(heading)}</th>${heads}</tr>`, ...lines.map(({ label, cells }) =>
      `<tr><td>${quoted(label)}</td>${cells.map(({ lines: said }) => `<td>${quoted(said.join(', '))}</td>`).join('')}</tr>`)];
  });
  const first = lead === null ? '' : `<p><b>${quoted(`${lead.label}: ${lead.figure} ${lead.unit}`.trim())}</b>. ${quoted(lead.sentence)}</p>\n`;
  return `<figure>
${first}${image}${dangers.map((text) => `<p><strong>${quoted(text)}</strong></p>\n`).join('')}<table>
${rows.join('\n')}
</table>
<figcaption><a href="${address(scene)}">${quoted(calculator.title)}: ${EMBED.full}</a></figcaption>
</figure>`;
}
