import { html, nothing, type TemplateResult } from 'lit';
import { SAY } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { TEMPLATE } from '../../words/template.js';
import type { Desk } from '../state/desk.js';
import type { Want } from '../state/kinds.js';
import { valueAt } from '../state/paths.js';
import type { View } from '../state/view.js';
import '../disclosure/ts-disclosure.js';

const NONE: readonly never[] = [];
/** Less than this is no direct voltage that anyone reads. */
const LEAST_VOLTS = 0.1;

/** Whether a direct voltmeter finds anything here. */
export function isProbed({ circuit }: View): boolean {
  return circuit?.nodes.some(({ volts }) => Math.abs(volts ?? 0) > LEAST_VOLTS) === true;
}

/** What the meter should say, and what it says: before the form, for it is what a builder comes back for. */
export function readingsOn(view: View, desk: Desk, opened: ReadonlySet<string>, tick: number): unknown {
  const { readings } = SAY.headings;
  if (!isProbed(view)) return nothing;
  return html`<ts-disclosure class="readings" .heading=${readings} @ts-disclose=${() => { desk.need(['test_points']); }}>
    ${opened.has(readings) ? html`<ts-readings .view=${view} .desk=${desk} .tick=${tick} .meter=${meterOf(view)}></ts-readings>` : nothing}</ts-disclosure>`;
}

/** What stands below the form, each behind its heading; what is behind it is worked when it is opened. */
export function restOf(view: View, desk: Desk, opened: ReadonlySet<string>, keepers: string): TemplateResult {
  const { outcome } = view.work;
  const { headings, settings } = SAY;
  const needs = (want: Want) => () => { desk.need([want]); };
  const inside = (heading: string, what: () => TemplateResult): unknown => (opened.has(heading) ? what() : nothing);
  const bench = view.circuit === null ? nothing : html`
    <ts-disclosure .heading=${headings.parts} @ts-disclose=${needs('parts')}>${inside(headings.parts, () => html`<ts-parts .parts=${outcome?.parts ?? NONE} .way=${view.way}></ts-parts>`)}</ts-disclosure>
    <ts-disclosure .heading=${headings.wiring} @ts-disclose=${needs('wiring')}>${inside(headings.wiring, () => html`<ts-wiring .steps=${outcome?.wiring ?? NONE} .circuit=${view.circuit} .way=${view.way}></ts-wiring>`)}</ts-disclosure>`;
  const template = view.situation?.outcome.answers?.['template'];
  const winding = template === undefined ? nothing : html`
    <ts-disclosure .heading=${TEMPLATE.heading}>${inside(TEMPLATE.heading, () => html`<ts-template .template=${template} .way=${view.way}></ts-template>`)}</ts-disclosure>`;
  return html`${winding}<ts-disclosure .heading=${headings.worked}>${inside(headings.worked, () => html`<ts-worked .how=${view.words.how} .way=${view.way}></ts-worked>`)}</ts-disclosure>
    ${bench}
    <ts-disclosure .heading=${PAGE.putOnPage}>${inside(PAGE.putOnPage, () => html`<ts-offer .keepers=${keepers}></ts-offer>`)}</ts-disclosure>
    <ts-disclosure .heading=${PAGE.keep}><ts-share></ts-share></ts-disclosure>
    <ts-disclosure .heading=${settings.title}>${inside(settings.title, () => html`<ts-preferences .preferences=${view.way}></ts-preferences>`)}</ts-disclosure>`;
}

/** Where a clip can be heard through it: fetched when it is opened. */
export function listenOf(view: View, desk: Desk, opened: ReadonlySet<string>): unknown {
  if (view.words.face.listen !== true || desk.sound === undefined) return nothing;
  const { listen } = SAY.headings;
  return html`<ts-disclosure .heading=${listen} @ts-disclose=${() => void import('../listen/ts-listen.js')}>
    ${opened.has(listen) ? html`<ts-listen .view=${view} .desk=${desk}></ts-listen>` : nothing}</ts-disclosure>`;
}

/** The meter in words as the person gave it: "10M", "20k Ω/V on its 250 V range". */
export function meterOf(view: View): string {
  const text = (path: string): string => {
    const value = valueAt(view.full, path);
    return typeof value === 'string' ? value.trim() : '';
  };
  const ohms = text('meter.ohms');
  if (ohms !== '') return ohms.endsWith('Ω') ? ohms : `${ohms}Ω`;
  return [text('meter.ohms_per_volt'), text('meter.range')].filter((each) => each !== '').join(', ');
}
