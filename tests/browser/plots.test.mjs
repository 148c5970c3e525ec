// The plots in a real Chromium: they can be read, stepped and tapped, and never show what is not a figure.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { browser, serve } from './gallery/serve.mjs';

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

/** Puts one plot on the page, alone. */
async function plot(name, more = {}, width = 360) {
  await page.setViewportSize({ width, height: 740 });
  await page.evaluate(async ([key, extra]) => {
    document.body.replaceChildren();
    const place = document.createElement('div');
    place.className = 'plots';
    const element = document.createElement('ts-plot');
    const { ghost, ...rest } = extra;
    Object.assign(element, { curve: window.gallery.CURVES[key], ...rest });
    if (ghost !== undefined) element.ghosts = [window.gallery.CURVES[ghost]];
    place.append(element);
    document.body.append(place);
    await element.updateComplete;
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    await element.updateComplete;
  }, [name, more]);
}

const inside = (selector) => page.locator('ts-plot').locator(selector);
const reading = async () => (await inside('.reading').textContent()).replaceAll(/\s+/g, ' ').trim();

for (const width of [320, 360, 768, 1440]) {
  for (const name of ['two', 'six', 'holes', 'flat', 'plate']) {
    test(`${name} at ${width}: no NaN in the picture, no scaled text, nothing over the page's edge`, async () => {
      await plot(name, { current: '2 Clear' }, width);
      const found = await page.evaluate(() => {
        const root = document.querySelector('ts-plot').shadowRoot;
        const drawn = root.querySelector('svg');
        const wide = [...root.querySelectorAll('svg text')].filter((text) => {
          const { left, right } = text.getBoundingClientRect();
          return left < 0 || right > innerWidth;
        }).map((text) => text.textContent);
        return { nan: /NaN|Infinity|undefined/.test(drawn.outerHTML), scale: drawn.getScreenCTM().a, wide, page: document.documentElement.scrollWidth };
      });
      assert.deepEqual(found, { nan: false, scale: 1, wide: [], page: width });
    });

    test(`${name} at ${width}: names of lines and marks lie on none of one another`, async () => {
      await plot(name, { current: '2 Clear' }, width);
      const over = await page.evaluate(() => {
        const texts = [...document.querySelector('ts-plot').shadowRoot.querySelectorAll('.name')].map((text) => ({ text: text.textContent, box: text.getBoundingClientRect() }));
        return texts.flatMap((one, index) => texts.slice(index + 1).filter(({ box }) =>
          box.left < one.box.right && one.box.left < box.right && box.top + 5 < one.box.bottom && one.box.top + 5 < box.bottom).map(({ text }) => `${one.text} / ${text}`));
      });
      assert.deepEqual(over, []);
    });
  }
}

test('the reading is the line at the cursor, and arrow keys step it', async () => {
  await plot('two', { current: '2 Clear', span: [100, 1e4], cursor: 900 });
  // A first-order corner stands 3.01 dB under its 10 dB at its own frequency; the fall above takes another 0.02 dB.
  assert.match(await reading(), /At 900 Hz .* 2 Clear 7\.0 dB/);
  const slider = inside('[role=slider]');
  await slider.focus();
  const before = Number(await slider.getAttribute('aria-valuenow'));
  await page.keyboard.press('ArrowRight');
  const after = Number(await slider.getAttribute('aria-valuenow'));
  // A hundredth of two decades.
  assert.ok(Math.abs(after / before - 10 ** 0.02) < 1e-6, `${before} to ${after}`);
  await page.keyboard.press('End');
  assert.equal(Math.round(Number(await slider.getAttribute('aria-valuenow'))), 10000);
  await page.keyboard.press('ArrowRight');
  assert.equal(Math.round(Number(await slider.getAttribute('aria-valuenow'))), 10000);
  await page.keyboard.press('Home');
  assert.equal(Math.round(Number(await slider.getAttribute('aria-valuenow'))), 100);
  assert.match(await slider.getAttribute('aria-valuetext'), /100\u00a0Hz: 1 Round .*dB, 2 Clear .*dB/);
});

test('a tap brings the cursor, a drag takes it along, and both are told', async () => {
  await plot('two', { span: [100, 1e4], cursor: 900 });
  await page.evaluate(() => {
    window.told = [];
    document.addEventListener('ts-cursor', ({ detail }) => window.told.push(detail.x));
  });
  const box = await inside('svg').boundingBox();
  const middle = box.y + 80;
  await page.mouse.click(box.x + box.width * 0.8, middle);
  const tapped = await inside('[role=slider]').getAttribute('aria-valuenow');
  assert.ok(Number(tapped) > 2000, tapped);
  await page.mouse.move(box.x + box.width * 0.8, box.y + box.height - 20);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.3, box.y + box.height - 20, { steps: 4 });
  await page.mouse.up();
  const dragged = await inside('[role=slider]').getAttribute('aria-valuenow');
  assert.ok(Number(dragged) < 500, dragged);
  assert.equal((await page.evaluate(() => window.told)).at(-1), Number(dragged));
  await page.mouse.move(box.x + box.width * 0.9, middle);
  assert.equal(await inside('[role=slider]').getAttribute('aria-valuenow'), dragged);
});

test('the handle is a target of 44 px and does not stand on the unit', async () => {
  for (const cursor of [0, 40, 135, 300]) {
    await plot('plate', { cursor });
    const { hit, clash } = await page.evaluate(() => {
      const root = document.querySelector('ts-plot').shadowRoot;
      const { width, height } = root.querySelector('.hit').getBoundingClientRect();
      const handle = root.querySelector('.handle').getBoundingClientRect();
      const unit = [...root.querySelectorAll('svg > text')].map((text) => text.getBoundingClientRect());
      return { hit: [width, height], clash: unit.some((box) => box.left < handle.right && handle.left < box.right && box.top < handle.bottom && handle.top < box.bottom) };
    });
    assert.deepEqual(hit, [44, 44]);
    assert.equal(clash, false, `cursor at ${cursor}`);
  }
});

test('a hole in a line is a gap in the picture and a dash in the reading', async () => {
  await plot('holes', { cursor: 1000 });
  assert.match(await reading(), /1 Round – 2 None –/);
  const moves = (await inside('[data-line="1 Round"]').getAttribute('d')).match(/M/g).length;
  assert.equal(moves, 2);
});

test('a curve without a figure says so instead of drawing axes', async () => {
  await page.evaluate(() => { window.gallery.CURVES.none = { ...window.gallery.CURVES.flat, lines: [] }; });
  await plot('none');
  assert.equal(await inside('svg').count(), 0);
  assert.match(await reading(), /nothing to show/);
});

test('the table opens, carries the lines as columns, and its rows are the curve', async () => {
  await plot('two', { span: [100, 1e4] });
  assert.equal(await inside('table').count(), 0);
  await inside('summary').click();
  assert.deepEqual(await inside('thead th').allTextContents(), ['Frequency', '1 Round', '2 Clear']);
  const rows = await inside('tbody tr').allTextContents();
  assert.ok(rows.length >= 15 && rows.length <= 35, String(rows.length));
  assert.ok(rows.some((row) => /^1\u00a0kHz10\.0\u00a0dB7\.4\u00a0dB$/.test(row)), rows.join('|'));
});

test('pinned curves stay as ghosts with their own figures', async () => {
  await plot('two', { span: [100, 1e4], cursor: 1000, ghost: 'pinned' });
  assert.equal(await inside('.ghost').count(), 2);
  assert.match(await reading(), /2 Clear, pinned, 2\.3 dB/);
});

test('what a part forbids is hatched ground over its limit, and the load lines are named', async () => {
  await plot('plate');
  assert.equal(await inside('.ground').count(), 1);
  const names = await inside('.name').allTextContents();
  for (const name of ['load line at rest', 'load line for signal', '0.3 W in the plate', 'at rest']) assert.ok(names.includes(name), name);
});

test('nothing was refused by the content-security policy, and nothing threw', () => {
  assert.deepEqual(faults, []);
});
