import {
  answerFigure, answerWords, dangerSteps, inputWords, labelOf, partEcho, problemText, readAs, roleWords, told, wordsOf, type Lead,
} from '../../words/index.js';
import { lowered } from '../../words/plain.js';
import { show } from '../../words/quantity.js';
import { answerTables, oneAnswer, type Column, type Pinned, type Table } from './answer-tables.js';
import { answerText, type CellContext } from './answer-cells.js';
import { pinName, type Desk } from './desk.js';
import { asFigures } from './figures.js';
import type { CalculatorWords, Situation } from './from-words.js';
import type { BareProblem, Calculator, Figures, Lug, Netlist, Refusal, Value } from './kinds.js';
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

/** The view of the open lug, or nothing where it is unknown here. */
export function viewOf(desk: Desk): View | null {
  const { lug, preferences: way } = desk;
  const calculator = lug === undefined ? undefined : desk.calculator(lug.calculator);
  const words = lug === undefined ? undefined : wordsOf(lug.calculator);
  if (lug === undefined || calculator === undefined || words === undefined) return null;
  const full = desk.full(lug.calculator, lug.inputs);
  const all = leaves(calculator.inputs, full);
  const work = desk.works.get(lug.id);
  const said = new Map<string, Refusal>();
  const refusal = (problem: BareProblem): Refusal => ({ problem, text: problemText(problem, { words, rows: calculator.inputs, inputs: full, way }) });
  for (const problem of work.problems) if (!said.has(problem.field)) said.set(problem.field, refusal(problem));
  const texts = textsOf(words, all, way);
  const position = work.outcome === null ? lug.position : Math.min(lug.position, Math.max(0, columnCount(words, work.good ?? full) - 1));
  const circuit = switched(work.outcome?.circuit, position);
  const situation = work.outcome === null || work.good === null ? null : situationOf(desk, calculator, work, position, circuit);
  return {
    lug: { ...lug, position },
    calculator,
    words,
    way,
    full,
    leaves: all,
    texts: new Map(Object.entries(texts)),
    work,
    situation,
    lead: situation === null ? null : words.lead(situation),
    circuit,
    problems: said,
    general: said.get('') ?? null,
    waiting: waitingFor(words, work.outcome?.circuit, work.problems, work.good, way),
    stale: work.problems.length > 0,
    columns: columnsOf(words, full, position),
    pins: lug.pins.map((pin) => ({ name: pin.name, outcome: desk.works.get(pinName(lug, pin)).outcome })),
  };
}

/** What sentences are made from: the last good outcome and the inputs that it is for. */
function situationOf(desk: Desk, calculator: Calculator, work: Work, position: number, circuit: Netlist | null): Situation {
  const good = work.good ?? {};
  const inputs = asFigures(good, leaves(calculator.inputs, good), desk.readings);
  return { inputs, outcome: { ...work.outcome, circuit }, position, way: desk.preferences };
}

function columnCount(words: CalculatorWords, full: Figures): number {
  const list = words.face.switch === undefined ? undefined : valueAt(full, words.face.switch);
  return Array.isArray(list) ? list.length : 1;
}

/** The positions of the switch, as columns of the answers. */
function columnsOf(words: CalculatorWords, full: Figures, position: number): readonly Column[] {
  const list = words.face.switch === undefined ? undefined : valueAt(full, words.face.switch);
  if (!Array.isArray(list)) return [];
  return (list as readonly Value[]).map((item, k) => {
    const record = typeof item === 'object' && item !== null ? (item as Figures) : {};
    const texts = Object.entries(record).flatMap(([key, value]) => (typeof value === 'string' && key !== 'label' ? [value] : []));
    const label = typeof record['label'] === 'string' ? record['label'].trim() : '';
    return { name: label === '' ? `${k + 1}` : `${k + 1} ${label}`, value: texts.join(' '), current: k === position };
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
  return answerTables(view.words.face, cellsOf(view), view.situation, view.columns, view.pins);
}

/** The tags that stand at nodes. */
export function tagsOf(view: View): ReadonlyMap<string, { readonly text: string }> {
  const answers = view.situation?.outcome.answers ?? {};
  const tags = view.words.face.tags.flatMap(({ node, answer, each }): [string, { text: string }][] => {
    const value = oneAnswer(answers, answer, each, view.lug.position);
    return value === undefined ? [] : [[node, { text: answerText(cellsOf(view), answer, value) }]];
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

/** What stands under a field: the reading in a sentence, and what the circuit says of the part. */
export function echoOf(desk: Desk, view: View, path: string): string {
  const leaf = view.leaves.find((each) => each.path === path);
  if (leaf === undefined || leaf.row.shape !== 'quantity' || typeof leaf.value !== 'string') return '';
  const said = desk.reading(leaf.value, leaf.row.unit ?? '1');
  if (said === undefined || !('value' in said)) return '';
  if (said.value === 0 && leaf.row.zero === 'none') return 'Read as 0: none.';
  if (inputWords(view.words, path).percent === true) return `Read as ${knobWords(view, path, said.value)}.`;
  const circuit = view.stale || view.situation === null ? '' : partEcho(path, view.situation.outcome, view.way);
  return `${readAs(leaf.row.unit ?? '1', said, view.way)} ${circuit}`.trim();
}

/** A knob's place, and the ohms below its wiper where the pot is known: "45 %: 450 kΩ below the wiper". */
export function knobWords(view: View, path: string, place: number): string {
  const percent = show(place * 100, '%', { digits: 3, way: view.way });
  const pot = view.circuit?.parts.find((part) => part.field === path && part.kind === 'potentiometer');
  if (typeof pot?.value !== 'number') return percent;
  return `${percent}: ${show(place * pot.value, 'Ω', { way: view.way })} below the wiper`;
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

export { dangerSteps };
