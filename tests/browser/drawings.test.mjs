// The schematics in a real Chromium: what is drawn is what the netlist says, and it can be read and touched.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';

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

/** Puts a face without a circuit on the page. */
async function face(calculator, texts, answers = {}) {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.evaluate(async ([id, typed, answered]) => {
    document.body.replaceChildren();
    const drawing = document.createElement('ts-drawing');
    Object.assign(drawing, { calculator: id, texts: typed === null ? window.gallery.SHEET : new Map(typed), answers: answered });
    document.body.append(drawing);
    await drawing.updateComplete;
  }, [calculator, texts, answers]);
}

const inside = (selector) => page.locator('ts-drawing').locator(selector);

for (const [name, kind, answers] of [
  ['four bands', 'resistor', { bands: ['yellow', 'violet', 'red', 'gold'] }],
  ['six bands', 'resistor', { bands: ['orange', 'white', 'violet', 'brown', 'silver', 'yellow'] }],
  ['three bands', 'resistor', { bands: ['yellow', 'violet', 'orange'] }],
  ['a capacitor', 'capacitor', { letter_code: '20n', three_digit: '203', tolerance_letter: 'K' }],
  ['a coil', 'inductor', { letter_code: '4u7', three_digit: '4R7' }],
]) {
  test(`marking, ${name}: every band has its name in words, and texts clear one another`, async () => {
    await face('marking', [['kind', kind], ['text', 'as it stands on the part']], answers);
    assert.deepEqual(await inside('.word').allTextContents(), answers.bands ?? []);
    assert.equal(await inside('[class*=fill-]').count(), (answers.bands?.length ?? 0) + 1);
    assert.deepEqual(await page.evaluate(touches, 44), []);
    assert.deepEqual(await page.evaluate(clearances, 3), []);
  });
}

test('tube: each figure of each point is a target of its own, and opens its own field', async () => {
  await face('tube', null);
  assert.deepEqual(await page.evaluate(touches, 44), []);
  assert.deepEqual(await page.evaluate(clearances, 3), []);
  assert.equal(await inside('[role=button]').count(), 9);
  await listen();
  await inside('[data-field="points[1].grid_volts"]').click();
  assert.deepEqual(await heard(), [{ field: 'points[1].grid_volts', reference: 'points[1].grid_volts' }]);
});

/** Starts to write down what the drawing tells the page. */
async function listen() {
  await page.evaluate(() => {
    window.heard = [];
    for (const name of ['ts-open', 'ts-danger']) {
      const drawing = document.querySelector('ts-drawing');
      drawing.addEventListener(name, (event) => window.heard.push(event.detail ?? name));
    }
  });
}

const heard = () => page.evaluate(() => window.heard);

test('a touch, Enter and the space bar open a part\u2019s field; the bolt leads to the danger', async () => {
  await draw('voice', 'voiceNetlist', [{}]);
  await listen();
  await inside('[data-part=R3] .hit').click();
  await inside('[data-part=C4]').focus();
  await page.keyboard.press('Enter');
  await inside('[data-part=Level]').focus();
  await page.keyboard.press(' ');
  await inside('.bolt').click();
  assert.deepEqual(await heard(), [
    { field: 'plate_ohms', reference: 'R3' }, { field: 'positions[1].farads', reference: 'C4' },
    { field: 'level', reference: 'Level' }, 'ts-danger',
  ]);
});

test('one tab stop a part, in reading order, each with its name, value and what it does', async () => {
  await draw('voice', 'voiceNetlist', [{}]);
  const names = await inside('[role=button]').evaluateAll((all) => all.map((each) => each.getAttribute('aria-label')));
  assert.ok(names.includes('R3 220k, plate resistor, opens its field'), names.join(' | '));
  assert.ok(names.includes('Level 60 % 500k, level knob, opens its field'));
  assert.equal(await inside('[tabindex="0"]').count(), names.length);
  const order = await inside('[data-part]').evaluateAll((all) => all.map((each) => each.dataset.part));
  assert.ok(order.indexOf('B+') < order.indexOf('R3') && order.indexOf('R3') < order.indexOf('V1') && order.indexOf('V1') < order.indexOf('R4'));
});

test('the open part carries four register marks, and its symbol stays where it was', async () => {
  await draw('voice', 'voiceNetlist', [{}], 360, { open: 'plate_ohms' });
  assert.equal(await inside('.register').count(), 1);
  assert.equal(await inside('[data-part=R3] .register').count(), 1);
  assert.equal(await inside('[data-part=R3]').getAttribute('aria-expanded'), 'true');
  assert.equal(await inside('.opened').count(), 1);
});

test('a refused text stands as it was typed, on hatching, and its name says so', async () => {
  await draw('voice', 'voiceNetlist', [{}], 360, { refused: ['plate_ohms'], stale: true, texts: [['plate_ohms', '22Ok']] });
  assert.equal(await inside('[data-part=R3] text.unread').textContent(), '22Ok');
  assert.equal(await inside('.hatched').count(), 1);
  assert.match(await inside('[data-part=R3]').getAttribute('aria-label'), /^R3 22Ok, plate resistor, not read/);
  assert.equal(await inside('.tag.stale').count(), 3);
});

test('copper is what has more than 60 V, and the way the switch makes; nothing else', async () => {
  await draw('voice', 'voiceNetlist', [{}]);
  assert.deepEqual((await inside('.wire.live').evaluateAll((all) => all.map((each) => each.dataset.wire))).sort(), ['plate', 'supply']);
  assert.equal(await inside('.stroke.live').count(), 1);
});

test('panels stand under one another below 640 px of room, and abreast from there', async () => {
  for (const [width, letters, box] of [[320, 2, 320], [639, 1, 640], [600, 2, 320], [640, 1, 640], [733, 1, 640]]) {
    await draw('voice', 'voiceNetlist', [{}], width);
    assert.equal(await inside('.join').count(), letters, `at ${width}`);
    assert.equal((await inside('svg').getAttribute('viewBox')).split(' ')[2], String(box), `at ${width}`);
  }
});

test('on paper everything is black, panels abreast', async () => {
  await draw('voice', 'voiceNetlist', [{}], 360);
  await page.emulateMedia({ media: 'print' });
  const inks = await inside('svg').evaluate((drawn) => {
    const black = new Set();
    for (const element of drawn.querySelectorAll('path, text, circle')) {
      const { stroke, fill, display } = getComputedStyle(element);
      if (display !== 'none') black.add(stroke).add(fill);
    }
    return [...black].filter((ink) => !['none', 'rgb(0, 0, 0)', 'rgb(255, 255, 255)', 'rgba(0, 0, 0, 0)'].includes(ink) && !ink.startsWith('url('));
  });
  await page.emulateMedia({ media: null });
  assert.deepEqual(inks, []);
});

test('a netlist and a drawing that differ are told apart', async () => {
  const told = await page.evaluate(() => {
    const { gallery } = window;
    const circuit = gallery.voiceNetlist();
    const drawing = gallery.draw('voice', circuit);
    const change = (reference, patch) => ({ ...circuit, parts: circuit.parts.map((part) => (part.reference === reference ? { ...part, ...patch } : part)) });
    const lost = { ...circuit, parts: circuit.parts.filter(({ reference }) => reference !== 'C5') };
    const cut = { ...drawing, panels: drawing.panels.map((panel) => ({ ...panel, wires: panel.wires.filter(({ node }) => node !== 'bass_wiper').concat(panel.wires.filter(({ node }) => node === 'bass_wiper').slice(1)) })) };
    const short = { ...drawing, panels: drawing.panels.map((panel, index) => (index > 0 ? panel : { ...panel, wires: [...panel.wires, { node: 'plate', points: [{ x: 164, y: 104 }, { x: 152, y: 210 }] }] })) };
    return {
      swapped: gallery.held(drawing, change('R3', { nodes: ['plate', 'supply'] })),
      moved: gallery.held(drawing, change('R8', { nodes: ['b', 'ground'] })),
      kind: gallery.held(drawing, change('C7', { kind: 'resistor' })),
      missing: gallery.held(drawing, lost),
      extra: gallery.held(drawing, { ...circuit, parts: [...circuit.parts, { ...circuit.parts[0], reference: 'R99' }] }),
      cut: gallery.held(cut, circuit), short: gallery.held(short, circuit),
    };
  });
  for (const [how, differences] of Object.entries(told)) assert.ok(differences.length > 0, how);
});

test('axe finds nothing, in any state', async () => {
  const axe = await readFile(fileURLToPath(import.meta.resolve('axe-core/axe.min.js')), 'utf8');
  const fresh = await (await chromium.newContext({ viewport: { width: 360, height: 740 }, bypassCSP: true })).newPage();
  await fresh.goto(server.address);
  await fresh.evaluate(axe);
  for (const more of [{}, { open: 'plate_ohms' }, { stale: true, refused: ['plate_ohms'] }]) {
    const found = await fresh.evaluate(async (state) => {
      document.body.replaceChildren();
      const main = document.createElement('main');
      const drawing = document.createElement('ts-drawing');
      const plot = document.createElement('ts-plot');
      const { gallery } = window;
      Object.assign(drawing, { calculator: 'voice', circuit: gallery.voiceNetlist(), texts: gallery.TEXTS, tags: gallery.TAGS, ...state });
      if (state.refused !== undefined) drawing.refused = new Set(state.refused);
      Object.assign(plot, { curve: gallery.CURVES.two, current: '2 Clear' });
      main.append(drawing, plot);
      document.body.append(main);
      await drawing.updateComplete;
      await plot.updateComplete;
      plot.shadowRoot.querySelector('details').open = true;
      await new Promise((done) => setTimeout(done, 100));
      const { violations } = await window.axe.run(document, { rules: { 'page-has-heading-one': { enabled: false } } });
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
    }, more);
    assert.deepEqual(found, []);
  }
  await fresh.close();
});

test('nothing was refused by the content-security policy, and nothing threw', () => {
  assert.deepEqual(faults, []);
});
