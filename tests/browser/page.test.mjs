// The page in a real Chromium, used as a person would: parts touched, texts typed key by key, the switch turned.
import assert from 'node:assert/strict';
import { after, afterEach, before, beforeEach, test } from 'node:test';

import { catalogue, init } from '../../dist/package/index.js';
import { browser, open, PHONE, serveSite, settled, textOf, touchPart, type, visitor, WIDE } from './harness.mjs';

let chromium;
let server;
let guest;

await init();

before(async () => { [chromium, server] = await Promise.all([browser(), serveSite()]); });
after(async () => { await chromium?.close(); await server?.close(); });
beforeEach(async () => { guest = await visitor(chromium, server); });
afterEach(async () => {
  const { faults, strayed } = guest;
  await guest.close();
  assert.deepEqual(faults, []);
  assert.deepEqual(strayed, [], 'requests to other hosts');
});

const tags = (page) => textOf(page, 'ts-drawing');
const answers = (page) => textOf(page, 'ts-answers');

test('a part is touched, a value typed, and the volts at the plate follow', async () => {
  const { page } = guest;
  await open(page, server, 'voice');
  const before = await tags(page);
  const panel = await touchPart(page, 'plate_ohms');
  await type(page, '100k');
  assert.match(await textOf(page, 'ts-open-field'), /Read as 100\s?kΩ/);
  const now = await tags(page);
  assert.notEqual(now, before);
  assert.match(now, /100k/);
  await panel.getByRole('button', { name: 'Done' }).click();
  await panel.waitFor({ state: 'detached' });
  assert.match(await tags(page), /100k/);
});

test('the text stays as it was typed, and both ways of writing give the same answer', async () => {
  const { page } = guest;
  await open(page, server, 'stage');
  await touchPart(page, 'plate_ohms');
  const input = await type(page, '.22 meg');
  const one = await answers(page);
  assert.equal(await input.inputValue(), '.22 meg');
  assert.match(await tags(page), /R3 \.22/);
  await type(page, '220k');
  assert.equal(await answers(page), one);
});

test('a letter O for a nought is refused, said, and mended by one press; the last good answers stay, greyed', async () => {
  const { page } = guest;
  await open(page, server, 'stage');
  const panel = await touchPart(page, 'plate_ohms');
  await type(page, '1O0k');
  assert.match(await textOf(page, 'ts-open-field'), /Not read\./);
  assert.equal(await panel.locator('input.text').getAttribute('aria-invalid'), 'true');
  assert.match(await textOf(page, 'ts-lead'), /Last good answers/);
  assert.equal(await panel.locator('input.text').inputValue(), '1O0k');
  await panel.getByRole('button', { name: 'Use 100k' }).click();
  await settled(page);
  assert.doesNotMatch(await textOf(page, 'ts-lead'), /Last good answers/);
  assert.match(await textOf(page, 'ts-open-field'), /Read as 100\s?kΩ/);
});

test('a figure that lost its prefix is read as it stands, doubted, and mended by one press', async () => {
  const { page } = guest;
  await open(page, server, 'coil');
  const field = page.locator('ts-form ts-field[data-path="measured_hertz"]');
  await field.locator('input').fill('3.7');
  await settled(page);
  assert.match(await textOf(page, 'ts-form ts-field[data-path="measured_hertz"]'), /3\.7\sHz/);
  await field.getByRole('button', { name: 'Use 3.7 MHz' }).click();
  await settled(page);
  assert.equal(await field.locator('input').inputValue(), '3.7 MHz');
  assert.equal(await field.locator('.doubt').count(), 0);
  await open(page, server, 'supply');
  await touchPart(page, 'secondary_volts');
  await type(page, '275-0-275');
  assert.match(await textOf(page, 'ts-open-field'), /275\sV where the volts from the tap to one end are asked, 550\sV where/);
  await page.locator('ts-open-field').getByRole('button', { name: 'Use 275 V' }).click();
  await settled(page);
  assert.match(await textOf(page, 'ts-open-field'), /Read as 275\sV/);
});

test('a text with two readings is refused with both named', async () => {
  const { page } = guest;
  await open(page, server, 'stage');
  const panel = await touchPart(page, 'plate_ohms');
  await type(page, '1,234');
  assert.match(await textOf(page, 'ts-open-field'), /Not read\.[^]*1234[^]*1\.234/);
});

test('every wrong field is said at once, and each keeps its text', async () => {
  const { page } = guest;
  await open(page, server, 'stage');
  for (const [path, text] of [['cathode_ohms', 'x2'], ['grid_ohms', '-5']]) {
    const input = page.locator(`ts-form ts-field[data-path="${path}"] input`);
    await input.fill(text);
  }
  await settled(page);
  for (const [path, text] of [['cathode_ohms', 'x2'], ['grid_ohms', '-5']]) {
    const field = page.locator(`ts-form ts-field[data-path="${path}"]`);
    assert.equal(await field.locator('input').inputValue(), text);
    assert.equal(await field.locator('input').getAttribute('aria-invalid'), 'true', path);
  }
});

test('▲ leads to the next preferred value, which stands on it', async () => {
  const { page } = guest;
  await open(page, server, 'stage');
  const panel = await touchPart(page, 'plate_ohms');
  await type(page, '220k');
  const higher = panel.getByRole('button', { name: /next higher/ });
  assert.match(await higher.innerText(), /240k/, 'IEC 60063, E24: 22 then 24');
  await higher.click();
  await settled(page);
  assert.equal(await panel.locator('input.text').inputValue(), '240k');
});

test('keys on the screen type at the caret', async () => {
  const { page } = guest;
  await open(page, server, 'stage');
  const panel = await touchPart(page, 'plate_ohms');
  await type(page, '47');
  await panel.getByRole('button', { name: 'kilo', exact: true }).click();
  await settled(page);
  assert.equal(await panel.locator('input.text').inputValue(), '47k');
});

test('the switch is turned, and the answers say the other position', async () => {
  const { page } = guest;
  await open(page, server, 'voice');
  const before = await textOf(page, 'ts-lead');
  const other = page.locator('ts-switch label:not(.current)').first();
  const name = (await other.locator('.name').innerText()).trim();
  await other.click();
  await settled(page);
  assert.equal((await page.locator('ts-switch label.current .name').innerText()).trim(), name);
  assert.notEqual(await textOf(page, 'ts-lead'), before);
});

test('a state is pinned: its curve stays as a ghost, and its answers as differences', async () => {
  const { page } = guest;
  await open(page, server, 'voice');
  const lines = () => page.locator('ts-plot').first().locator('svg path').count();
  const before = await lines();
  await page.getByRole('button', { name: 'Pin this' }).click();
  await touchPart(page, 'plate_ohms');
  await type(page, '47k');
  await page.keyboard.press('Escape');
  await settled(page);
  assert.ok((await lines()) > before, 'no ghost line came');
  assert.match(await textOf(page, 'ts-pins'), /R3 was/);
  await page.getByRole('button', { name: /Go back to it/ }).click();
  await settled(page);
  assert.match(await textOf(page, 'ts-pins'), /The same as now\./);
});

test('by keyboard alone: to a part, into its field, a value, and back to the part', async () => {
  const { page } = guest;
  await page.setViewportSize(WIDE);
  await open(page, server, 'stage');
  const focused = () => page.evaluate(() => {
    let at = document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    return at?.getAttribute('data-field') ?? at?.localName;
  });
  for (let k = 0; k < 60 && (await focused()) !== 'plate_ohms'; k += 1) await page.keyboard.press('Tab');
  assert.equal(await focused(), 'plate_ohms');
  await page.keyboard.press('Enter');
  await page.locator('ts-open-field').waitFor();
  await page.waitForTimeout(200);
  assert.equal(await focused(), 'input');
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('150k');
  await settled(page);
  await page.keyboard.press('Escape');
  await page.locator('ts-open-field').waitFor({ state: 'detached' });
  assert.equal(await focused(), 'plate_ohms');
  assert.match(await tags(page), /150k/);
});

test('beside a supply without a bleeder no page says that waiting helps; beside one with a bleeder each tells its wait', async () => {
  const { page } = guest;
  const step = async (lug) => {
    await page.locator('ts-strip').getByRole('link', { name: lug }).click();
    await settled(page);
    const all = await page.locator('ts-caution .danger').first().textContent();
    return all.replaceAll(/\s+/g, ' ');
  };
  await open(page, server, 'supply');
  await page.locator('ts-strip').getByRole('link', { name: 'build' }).click();
  await page.getByRole('button', { name: 'Add a calculator' }).click();
  await page.locator('ts-build .shelf button').filter({ hasText: 'Microphone stage' }).first().click();
  await settled(page);
  for (const lug of [/^supply/, /^voice/]) {
    const said = await step(lug);
    assert.match(said, /Expect charge/);
    assert.doesNotMatch(said, /Wait \d/, String(lug));
  }
  await step(/^supply/);
  await page.locator('ts-form ts-field[data-path="bleeder_ohms"] input').fill('100k');
  await settled(page);
  const waits = [];
  for (const lug of [/^supply/, /^voice/]) waits.push(/Wait \d+ (?:s|min)(?! or more)/.exec(await step(lug))?.[0]);
  assert.ok(waits[0] !== undefined && waits[0] === waits[1], waits.join(' and '));
});

test('“I read 310 where you said 115”: the point is touched, the reading typed, and the page says whether it is wrong and what to do next', async () => {
  const { page } = guest;
  await open(page, server, 'stage');
  await page.locator('ts-drawing [data-tag=plate]').click();
  const field = page.locator('ts-readings input[data-point=plate]');
  await field.waitFor();
  const verdict = async (text) => {
    await field.fill(text);
    await settled(page);
    return (await page.locator('ts-readings tr.taken', { has: page.locator('input[data-point=plate]') }).locator('[role=status]').textContent()).replaceAll(/\s+/g, ' ').trim();
  };
  assert.match(await verdict('115'), /^115 V is right/);
  assert.match(await verdict('131'), /still within/);
  const wrong = await verdict('310');
  assert.match(wrong, /^310 V is wrong: 1\d\d V over the most/);
  for (const word of ['R3', 'C3', 'V1', 'unplug', 'discharge']) assert.ok(wrong.includes(word), `${word} in “${wrong}”`);
  assert.match(await verdict('9O'), /^“9O”/);
  assert.match(await verdict('2'), /^2 V is wrong: 9[\d.]+ V under the least/);
  await page.reload();
  await settled(page);
  await page.getByRole('button', { name: 'Readings: is yours right?' }).first().click();
  assert.equal(await field.inputValue(), '2', 'what was read is kept');
});

test('a lug is added, named, taken off and put back', async () => {
  const { page } = guest;
  await open(page, server, 'voice');
  await page.locator('ts-strip').getByRole('link', { name: 'build' }).click();
  await page.getByRole('button', { name: 'Add a calculator' }).click();
  await page.locator('ts-build .shelf button').filter({ hasText: 'Filter' }).first().click();
  await settled(page);
  assert.match(page.url(), /\/filter\//);
  await page.locator('ts-strip').getByRole('link', { name: 'build' }).click();
  await page.getByRole('button', { name: /^Name\s*, filter$/ }).click();
  await page.getByLabel('Name on the strip').fill('hum');
  await page.keyboard.press('Enter');
  await page.locator('ts-strip').getByRole('link', { name: /^hum/ }).waitFor();
  await page.getByRole('button', { name: /^Remove\s*, hum$/ }).click();
  await page.getByText('hum is off the strip.').waitFor();
  assert.equal(await page.locator('ts-strip').getByRole('link', { name: /^hum/ }).count(), 0);
  await page.getByRole('button', { name: 'Put it back' }).click();
  await page.locator('ts-strip').getByRole('link', { name: /^hum/ }).waitFor();
});

test('on the narrowest phone and in a broad face, no figure in a drawing is cut short as it opens', async () => {
  const { page } = guest;
  await page.setViewportSize(PHONE);
  for (const { id } of catalogue()) {
    await open(page, server, id);
    const written = await page.locator('ts-drawing text').allTextContents();
    assert.deepEqual(written.filter((text) => text.includes('…')), [], id);
  }
});

test('the sheet fits on A4', async () => {
  const { page } = guest;
  await open(page, server, 'voice');
  // What only paper shows is worked when nothing else is to do.
  await page.waitForTimeout(2500);
  const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true, printBackground: true });
  const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  assert.ok(pages >= 1 && pages <= 2, `${pages} pages`);
});

test('no sheet reaches over its paper, which would print it and its templates smaller than they are', async () => {
  const paper = await guest.page.context().newPage();
  // As wide as A4 for the style's questions, and as A4 between its margins for what is laid out.
  await paper.setViewportSize({ width: 794, height: 1000 });
  const over = [];
  for (const { id } of catalogue()) {
    await open(paper, server, id);
    await settled(paper);
    await paper.emulateMedia({ media: 'print' });
    const [wide, room] = await paper.evaluate(async () => {
      document.body.style.width = '182mm';
      dispatchEvent(new Event('beforeprint'));
      await new Promise((done) => { setTimeout(done, 300); });
      const sheet = document.querySelector('ts-app').shadowRoot.querySelector('ts-sheet');
      return [sheet.scrollWidth, sheet.clientWidth];
    });
    await paper.emulateMedia({ media: 'screen' });
    if (room < 600 || wide > room) over.push(`${id}: ${wide} of ${room}`);
  }
  await paper.close();
  assert.deepEqual(over, []);
});
