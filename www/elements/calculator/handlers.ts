import { evenSteps, isPreferred, seriesOf, stepTexts } from '../state/steps.js';
import { withoutAnswered } from '../state/answered.js';
import type { Desk } from '../state/desk.js';
import * as edits from '../state/edits.js';
import { valueOf } from '../state/figures.js';
import { rowFor } from '../state/leaves.js';
import { valueAt } from '../state/paths.js';
import type { Lug, Value } from '../state/kinds.js';
import { withReading } from '../state/taken.js';
import type { StepDetail, TypeDetail } from '../field/ts-field.js';
import type { TurnDetail } from '../switch/ts-switch.js';

/** What the page of a lug does with what its elements tell it. */
export class Handlers {
  readonly #page: { readonly desk: Desk | null };

  constructor(page: { readonly desk: Desk | null }) {
    this.#page = page;
  }

  readonly type = ({ detail }: CustomEvent<TypeDetail>): void => {
    this.#page.desk?.type(detail.path, detail.value);
  };

  readonly turn = ({ detail }: CustomEvent<TurnDetail>): void => {
    this.#change((lug) => ({ ...lug, position: detail.position }));
  };

  readonly pin = ({ detail }: CustomEvent<string>): void => {
    this.#change((lug) => edits.withPin(lug, detail));
  };

  readonly unpin = ({ detail }: CustomEvent<number>): void => {
    this.#change((lug) => edits.withoutPin(lug, detail));
  };

  readonly namePin = ({ detail }: CustomEvent<{ readonly index: number; readonly name: string }>): void => {
    this.#change((lug) => edits.withPinNamed(lug, detail.index, detail.name));
  };

  readonly takePin = ({ detail }: CustomEvent<number>): void => {
    this.#change((lug) => edits.withPinTaken(lug, detail));
  };

  readonly read = ({ detail: { point, text } }: CustomEvent<{ readonly point: string; readonly text: string }>): void => {
    this.#change((lug) => withReading(lug, point, text));
  };

  readonly takeNew = (): void => {
    this.#change(withoutAnswered);
  };

  /** ▼ and ▲ of a plain field: the next preferred value, written the way the last was. */
  readonly step = async ({ detail: { path, up } }: CustomEvent<StepDetail>): Promise<void> => {
    const { desk } = this.#page;
    const lug = desk?.lug;
    if (desk === null || lug === undefined) return;
    const table = desk.table(lug.calculator);
    const row = rowFor(table.rows, path);
    const text: Value | undefined = valueAt(desk.full(lug.calculator, lug.inputs), path);
    if (row === undefined || typeof text !== 'string') return;
    const unit = row.unit ?? '1';
    const value = valueOf(desk.reading(text, unit));
    if (value === null) return;
    const steps = isPreferred(row) && value > 0 ? await desk.steps(text, unit, seriesOf(row)) : evenSteps(row, value);
    const texts = stepTexts(table.words, row, path, text, steps);
    const next = up ? texts.higher : texts.lower;
    if (next !== null) desk.type(path, next);
  };

  #change(change: (lug: Lug) => Lug): void {
    const { desk } = this.#page;
    if (desk?.lug !== undefined) desk.change(change(desk.lug));
  }
}
