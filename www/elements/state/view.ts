import {
  answerFigure, answerWords, inputWords, labelOf, partEcho, problemText, readAs, roleWords, told, wordsOf, type Lead,
} from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { lowered } from '../../words/plain.js';
import { show } from '../../words/quantity.js';
import { answerTables, oneAnswer, type Column, type Pinned, type Table } from './answer-tables.js';
import { answerText, type CellContext } from './answer-cells.js';
import { suppliesBeside, withSupplies } from './charge.js';
import type { Desk } from './desk.js';
import { pinName } from './wants.js';
import { asFigures } from './figures.js';
import type { CalculatorWords, Situation } from './from-words.js';
import type { BareProblem, Calculator, Figures, Lug, Netlist, Refusal, Value } from './kinds.js';
import { Memo } from './memo.js';
import { leaves, leafText, rowFor, textsOf, type Leaf } from './leaves.js';
import { general, valueAt } from './paths.js';
import type { Preferences } from './preferences.js';
import { waitingFor, type Waiting } from './stale.js';
import { switched } from './switched.js';
import type { Work } from './works.js';

/** Everything that the page of one lug shows, made from the desk. */
export interface View {
  readonly lug: Lug;
  readonly calculator: Calculator;
  readonly words: CalculatorWords;
  readonly way: Preferences;
  readonly full: Figures;
  readonly leaves: readonly Leaf[];
  readonly texts: ReadonlyMap<string, string>;
  readonly work: Work;
  readonly situation: Situation | null;
  readonly lead: Lead | null;
  readonly circuit: Netlist | null;
  readonly problems: ReadonlyMap<string, Refusal>;
  /** The values go together badly: a problem of no one field. */
  readonly general: Refusal | null;
  readonly waiting: readonly Waiting[];
  readonly stale: boolean;
  readonly columns: readonly Column[];
  readonly pins: readonly Pinned[];
}

/** The view of the open lug, or nothing where it is unknown here. `memo` keeps what has not changed since the last one. */
export function viewOf(desk: Desk, memo = new Memo()): View | null {
  const { lug, preferences: way } = desk;
  const calculator = lug === undefined ? undefined : desk.calculator(lug.calculator);
  const words = lug === undefined ? undefined : wordsOf(lug.calculator);
  if (lug === undefined || calculator === undefined || words === undefined) return null;
  const full = desk.full(lug.calculator, lug.inputs);
  const all = memo.get('leaves', [calculator, full], () => leaves(calculator.inputs, full));
  const work = desk.works.get(lug.id);
  const { outcome, good, problems } = work;
  const count = columnCount(words, good ?? full);
  const position = Math.min(lug.position, Math.max(0, count - 1));
  const circuit = memo.get('circuit', [outcome?.circuit, position], () => switched(outcome?.circuit, position));
  const inputs = memo.get('inputs', [calculator, good, desk.readings.count], () =>
    memo.settle('figures', asFigures(good ?? {}, leaves(calculator.inputs, good ?? {}), desk.readings)));
  // Readings and wiring come later and change nothing of what the rest is made from.
  const { answers, cautions: own, parts } = outcome ?? {};
  const supplies = suppliesBeside(desk);
  const cautions = memo.get('cautions', [own, ...supplies], () => (own === undefined ? undefined : withSupplies(own, supplies)));
  const situation = memo.get('situation', [answers, cautions, parts, good === null, inputs, circuit, position, way], () =>
    outcome === null || good === null ? null : { inputs, outcome: { ...outcome, ...(cautions === undefined ? {} : { cautions }), circuit }, position, way });
  const said = memo.get('said', [calculator, problems, full, way], () => refusals(problems, words, calculator, full, way));
  const outcomes = lug.pins.map((pin) => desk.works.get(pinName(lug, pin)).outcome);
  return {
    lug: memo.get('lug', [lug, position], () => ({ ...lug, position })),
    calculator,
    words,
    way,
    full,
    leaves: all,
    texts: memo.get('texts', [all, way], () => textsOf(words, calculator.inputs, full, all, way)),
    work,
    situation,
    lead: memo.get('lead', [situation], () => (situation === null ? null : words.lead(situation))),
    circuit,
    problems: said,
    general: said.get('') ?? null,
    waiting: memo.get('waiting', [outcome, problems, good, way], () => waitingFor(words, outcome?.circuit, problems, good, way)),
    stale: problems.length > 0,
    columns: memo.get('columns', [full, position], () => (words.face.switch === undefined ? [] : columnsOf(words.face.switch, full, position))),
    pins: memo.get('pins', [lug.pins, ...outcomes], () => lug.pins.map(({ name }, k) => ({ name, outcome: outcomes[k] ?? null }))),
  };
}

function refusals(
  problems: readonly BareProblem[], words: CalculatorWords, calculator: Calculator, full: Figures, way: Preferences,
): ReadonlyMap<string, Refusal> {
  const said = new Map<string, Refusal>();
  for (const problem of problems) {
    if (said.has(problem.field)) continue;
    said.set(problem.field, { problem, text: problemText(problem, { words, rows: calculator.inputs, inputs: full, way }) });
  }
  return said;
}

function columnCount(words: CalculatorWords, full: Figures): number {
  const list = words.face.switch === undefined ? undefined : valueAt(full, words.face.switch);
  return Array.isArray(list) ? list.length : 1;
}

/** The items of a list, such as the positions of the switch, as columns of the answers; `position` is the one in use. */
function columnsOf(path: string, full: Figures, position: number): readonly Column[] {
  const list = valueAt(full, path);
  if (!Array.isArray(list)) return [];
  return (list as readonly Value[]).map((item, k) => {
    const record = typeof item === 'object' && item !== null ? (item as Figures) : {};
    const texts = Object.entries(record).flatMap(([key, value]) => (typeof value === 'string' && value !== '' && key !== 'label' ? [value] : []));
    const label = typeof record['label'] === 'string' ? record['label'].trim() : '';
    return { name: label === '' ? `${k + 1}` : `${k + 1} ${label}`, value: texts.join(', '), current: k === position };
  });
}

/** What cells of answers are made with. */
export function cellsOf(view: View): CellContext {
  const { words, calculator, situation, way } = view;
  return { words, answers: calculator.answers, inputs: situation?.inputs ?? {}, way };
}

/** The tables of answers. */
export function tablesOf(view: View): readonly Table[] {
  if (view.situation === null) return [];
  const list = view.words.face.switch;
  const columns = (path: string): readonly Column[] => (path === list ? view.columns : columnsOf(path, view.work.good ?? view.full, -1));
  return answerTables(view.words.face, cellsOf(view), view.situation, columns, view.pins);
}

/** The tags that stand at nodes. */
export function tagsOf(view: View): ReadonlyMap<string, { readonly text: string; readonly second?: string }> {
  const answers = view.situation?.outcome.answers ?? {};
  const tags = view.words.face.tags.flatMap(({ node, answer, each, second }): [string, { text: string; second?: string }][] => {
    const value = oneAnswer(answers, answer, each, view.lug.position);
    if (value === undefined) return [];
    const text = answerText(cellsOf(view), answer, value);
    const under = second === undefined ? undefined : oneAnswer(answers, second.answer, each, view.lug.position);
    return [[node, second === undefined || under === undefined ? { text } : { text, second: second.words(answerText(cellsOf(view), second.answer, under)) }]];
  });
  return new Map(tags);
}

/** What each part is called aloud, by its reference. */
export function labelsOf(view: View): ReadonlyMap<string, string> {
  const parts = view.circuit?.parts ?? [];
  const name = (field: string, role: string): string =>
    field === '' || rowFor(view.calculator.inputs, field) === undefined ? roleWords(role, view.way) : lowered(labelOf(view.words, field, view.full, view.way));
  return new Map(parts.map((part) => [part.reference, name(part.field, part.role)]));
}

/** The answer nearest to an open part, for the folded lead. */
export function nearest(view: View, path: string): Lead | null {
  const key = view.words.face.near[general(path)];
  if (key === undefined || view.situation === null) return null;
  const row = view.calculator.answers.find((answer) => answer.key === key);
  const value = oneAnswer(view.situation.outcome.answers ?? {}, key, true, view.lug.position);
  const { figure, unit } = answerFigure(view.words, key, value ?? null, row?.unit ?? '1', view.situation.inputs, view.way);
  return { label: told(answerWords(view.words, key).label, view.way), figure, unit, sentence: '' };
}

/** What stands under a field, or under the text typed into it just now: the reading in a sentence, and what the circuit says of the part. */
export function echoOf(desk: Desk, view: View, path: string, typed?: string): string {
  const leaf = view.leaves.find((each) => each.path === path);
  const text = typed ?? leaf?.value;
  if (leaf === undefined || leaf.row.shape !== 'quantity' || typeof text !== 'string') return '';
  const said = desk.reading(text, leaf.row.unit ?? '1');
  if (said === undefined || !('value' in said)) return '';
  if (said.value === 0 && leaf.row.zero === 'none') return PAGE.readNone;
  if (inputWords(view.words, path).percent === true) return `Read as ${knobWords(view, path, said.value)}.`;
  const circuit = view.stale || view.situation === null ? '' : partEcho(path, view.situation.outcome, view.way);
  return `${readAs(leaf.row.unit ?? '1', said, view.way)} ${circuit}`.trim();
}

/** A knob's place, and the ohms below its wiper where the pot is known: "45 %: 450 kΩ below the wiper". */
export function knobWords(view: View, path: string, place: number): string {
  const percent = show(place * 100, '%', { digits: 3, way: view.way });
  const pot = view.circuit?.parts.find((part) => part.field === path && part.kind === 'potentiometer');
  if (typeof pot?.value !== 'number') return percent;
  return PAGE.belowWiper(percent, show(place * pot.value, 'Ω', { way: view.way }));
}

/** The text of a field as it stands. */
export function fieldText(view: View, path: string): string {
  const row = rowFor(view.calculator.inputs, path);
  return row === undefined ? '' : leafText(view.words, path, row, valueAt(view.full, path) ?? '', view.way);
}

/** The reference of the part that a field belongs to. */
export function referenceOf(view: View, path: string): string {
  return view.circuit?.parts.find((part) => part.field === path)?.reference ?? '';
}
