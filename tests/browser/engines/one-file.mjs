// What the one file must do from a memory stick, in any engine.
import assert from 'node:assert/strict';

import { calculatorAt } from './scenarios.mjs';

/** A calculator of its own on an empty bench. */
const linkTo = (file, id) => `${file}#1&lugs.0.id=${id}&lugs.0.calculator=${id}&at=${id}`;

export const calculator = (page, file, id) => calculatorAt(page, linkTo(file, id));

/** A build is saved, the bench changed, and the file opened again. */
export async function savesAndOpens(page, file) {
  await page.open(`${linkTo(file, 'stage')}&lugs.0.inputs.plate_ohms=91k&name=From+a+stick`);
  const unfold = () => page.run(() => globalThis.seen.all('ts-disclosure').find((each) => each.heading === 'Keep and send on').shadowRoot.querySelector('button').click());
  await page.run(() => globalThis.seen.until('the rest of the page', () => globalThis.seen.all('ts-disclosure').some((each) => each.heading === 'Keep and send on')));
  await unfold();
  const text = await page.run(async () => {
    let saved;
    const make = URL.createObjectURL;
    URL.createObjectURL = (blob) => { saved = blob; return make.call(URL, blob); };
    const buttons = await globalThis.seen.until('the buttons', () => { const all = globalThis.seen.all('ts-share >> button'); return all.length > 0 && all; });
    buttons.find((each) => each.textContent.includes('Save')).click();
    URL.createObjectURL = make;
    return saved.text();
  });
  const { name, lugs: [lug] } = JSON.parse(text);
  assert.deepEqual([name, lug.inputs.plate_ohms], ['From a stick', '91k']);
  // What it answered, and which release did, is in the file too.
  assert.match(lug.answered.release, /^\d+\.\d+\.\d+$/);
  assert.ok(lug.answered.answers.plate_volts > 0);
  const other = JSON.stringify({ ...JSON.parse(text), lugs: [{ ...lug, inputs: { ...lug.inputs, plate_ohms: '68k' }, answered: { release: '0.0.1', answers: { ...lug.answered.answers, plate_volts: 33 } } }] });
  const open = (what) => page.run((body) => {
    const input = globalThis.seen.all('ts-share >> input')[0];
    const data = new DataTransfer();
    data.items.add(new File([body], 'build.tagstrip.json', { type: 'application/json' }));
    input.files = data.files;
    input.dispatchEvent(new Event('change'));
  }, what);
  await open(other);
  await page.settled();
  await page.run(() => globalThis.seen.all('ts-build >> a').find((each) => each.textContent.includes('stage')).click());
  await page.settled();
  assert.match(await page.textOf('ts-drawing'), /68k/);
  // What another release answered stands beside what this one does.
  const changes = await page.run(() => globalThis.seen.until('the two answers', () => globalThis.seen.textOf('ts-changes').includes('now') && globalThis.seen.textOf('ts-changes')));
  assert.match(changes, /Release 0\.0\.1 answered otherwise.*was 33\sV, now \d/);
}
