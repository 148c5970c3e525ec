import { cautionText, labelOf, pointWords, SAY, verdictWords } from '../../words/index.js';
import { show } from '../../words/quantity.js';
import type { Desk } from './desk.js';
import { lugLine } from './lug-line.js';
import { leafText } from './leaves.js';
import { readingAt } from './taken.js';
import { referenceOf, tablesOf, type View } from './view.js';

/** One lug as plain text: what was put in, what came out, what a meter should say and did, what to mind. */
export function viewText(desk: Desk, view: View, address: string): string {
  const { lug, lead, words, way } = view;
  const head = `${view.calculator.title}: ${lug.id}`;
  const answer = lead === null ? [] : ['', `${lead.label}: ${lead.figure}${lead.unit === '' ? '' : ` ${lead.unit}`}`, lead.sentence];
  const values = view.leaves.map(({ path, row, value }) => {
    const name = [referenceOf(view, path), labelOf(words, path, view.full, way)].filter((each) => each !== '').join(' ');
    return `  ${name}: ${leafText(words, path, row, value, way) || SAY.none}`;
  });
  const tables = tablesOf(view).flatMap(({ heading, columns, rows }) => [
    '', heading, ...rows.map(({ label, cells }) => `  ${label}: ${cells.map(({ lines }, k) => `${cells.length > 1 ? `${columns[k]?.name ?? ''} ` : ''}${lines.join(', ')}`).join('; ')}`),
  ]);
  const points = (view.work.outcome?.test_points ?? []).map((point) => {
    const volts = (value: number): string => show(value, point.unit, { way });
    const taken = readingAt(desk, view, point);
    const expected = `  ${pointWords(point.name, point.pin, way)}: ${volts(point.nominal)} (${volts(point.least)} to ${volts(point.most)}).`;
    if (taken === null || 'problem' in taken) return expected;
    const { said, next } = verdictWords(point, taken.value, taken.parts, way);
    return `${expected} ${said} ${next}`.trimEnd();
  });
  const cautions = (view.situation?.outcome.cautions ?? []).map((caution) => cautionText(caution, view.situation?.inputs, way));
  const all = [head, ...answer, '', SAY.headings.values, ...values, ...tables, ...(points.length === 0 ? [] : ['', SAY.headings.readingsOnPaper, ...points]), ...(cautions.length === 0 ? [] : ['', ...cautions]), '', address];
  return `${all.join('\n').replaceAll('\u00a0', ' ')}\n`;
}

/** The strip as plain text. */
export function buildText(desk: Desk, address: string): string {
  const lugs = desk.build.lugs.map((lug) => `  ${lug.id}: ${lugLine(desk, lug).figure}`);
  return `${[desk.build.name || SAY.strip.build, '', ...lugs, '', address].join('\n').replaceAll('\u00a0', ' ')}\n`;
}
