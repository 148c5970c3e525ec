// The schematics in a real Chromium: what is drawn is what the netlist says, and it can be read and touched.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { browser, serve } from './gallery/serve.mjs';
import { CASES, LADDERS } from './gallery/cases.mjs';
import { clearances, touches } from './gallery/look.mjs';

let server;
let chromium;
let page;
const faults = [];

before(async () => {
  [server, chromium] = await Promise.all([serve(), browser()]);
  page = await (await chromium.newContext({ viewport: { width: 360, height: 740 } })).newPage();
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => { if (message.type() === 'error' && !/404/.test(message.text())) faults.push(message.text()); });
  await page.goto(server.address);
  await page.waitForFunction(() => window.gallery !== undefined);
});

after(async () => {
  await chromium?.close();
  server?.close();
});

/** Puts one drawing on the page at a width, and waits until it stands. */
async function draw(calculator, how, given, width = 360, more = {}) {
  await page.setViewportSize({ width, height: 740 });
  await page.evaluate(async ([id, maker, choice, extra]) => {
    const { gallery } = window;
    document.body.replaceChildren();
    const drawing = document.createElement('ts-drawing');
    Object.assign(drawing, {
      calculator: id, circuit: gallery[maker](...choice), texts: gallery.TEXTS, tags: gallery.TAGS,
      linked: new Map([['supply_volts', 'from supply']]), ...extra,
      ...(extra.refused === undefined ? {} : { refused: new Set(extra.refused) }),
      ...(extra.texts === undefined ? {} : { texts: new Map([...gallery.TEXTS, ...extra.texts]) }),
    });
    document.body.append(drawing);
    await drawing.updateComplete;
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    await drawing.updateComplete;
  }, [calculator, how, given, more]);
}

/** Long texts that people may well type, at every part. */
const LONG = [
  ['plate_ohms', '220k ±5 %'], ['cathode_ohms', '2200 ohms'], ['grid_ohms', '1.0 megohm'], ['positions[0].farads', '20 000 pF'],
  ['positions[1].farads', '470 mmf ±10 %'], ['tube', '6SL7GTY special'], ['supply_volts', '263.4567 V'],
  ['tone_parts.r_in', '100 kilohms'], ['tone_parts.c_bass_top', '2 200 pF'], ['tone_parts.r_mix', '100.000k'],
  ['tone_parts.c_treble_top', '220 pF mica'], ['microphone_volts', '30.00 mV rms'], ['cathode_farads', '25 MFD 25 V'],
  ['load_ohms', '1.0 megohm'], ['load_farads', '100 mmf cable'], ['level', '60.25 %'], ['microphone_ohms', '50 kilohms'],
];

for (const { name, calculator, how, given } of [...CASES, ...LADDERS]) {
  test(`${name}: drawing and netlist agree`, async () => {
    const differences = await page.evaluate(([id, maker, choice]) => {
      const { gallery } = window;
      const circuit = gallery[maker](...choice);
      return gallery.held(gallery.draw(id, circuit), circuit);
    }, [calculator, how, given]);
    assert.deepEqual(differences, []);
  });

  test(`${name}: every part can be touched, none over another`, async () => {
    await draw(calculator, how, given);
    assert.deepEqual(await page.evaluate(touches, 44), []);
  });

  for (const [width, texts] of [[360, []], [733, []], [360, LONG]]) {
    test(`${name}, ${width} wide${texts.length > 0 ? ', long texts' : ''}: texts clear wires and one another`, async () => {
      await draw(calculator, how, given, width, { texts });
      assert.deepEqual(await page.evaluate(clearances, 3), []);
    });
  }
}

test('nothing was refused by the content-security policy, and nothing threw', () => {
  assert.deepEqual(faults, []);
});
