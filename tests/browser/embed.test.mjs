// A calculator on somebody else's page, of another origin: what the three buttons copy works where it is pasted.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { catalogue, init } from '../../dist/package/index.js';
import { axe, browser, open, settled, SITE, textOf } from './harness.mjs';
import { clubPage, serveClub, serveHosted } from './hosts.mjs';

let [chromium, site, club] = [];
const CODES = new Map();
before(async () => {
  await init();
  [chromium, site, club] = await Promise.all([browser(), serveHosted(SITE), serveClub()]);
});
after(async () => { await Promise.all([chromium?.close(), site?.close(), club?.close()]); });

/** A reader with a window of their own; what a console says is wrong, and what left for a third host, must stay empty. */
async function reader(options = {}) {
  const context = await chromium.newContext({ viewport: { width: 1200, height: 900 }, serviceWorkers: 'block', ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  const faults = [];
  page.on('console', (message) => { if (/error|warning/.test(message.type()) && !message.text().includes('blocked by Playwright')) faults.push(message.text()); });
  page.on('pageerror', (fault) => faults.push(String(fault)));
  context.on('request', (request) => { if (!/^(data:|blob:|http:\/\/(localhost|127\.0\.0\.1):)/.test(request.url())) faults.push(request.url()); });
  return { context, page, faults };
}

/** What the three buttons of a calculator's page copy, and the lead answer that stood there. */
async function copied(id) {
  if (CODES.has(id)) return CODES.get(id);
  const { context, page } = await reader({ permissions: ['clipboard-read', 'clipboard-write'] });
  await open(page, site, id);
  await page.locator('ts-disclosure').filter({ hasText: 'Put it on a page' }).getByRole('button').first().click();
  const codes = { lead: await textOf(page, 'ts-lead') };
  for (const [way, name] of [['link', 'Copy a link'], ['frame', 'Copy a frame'], ['element', 'Copy an element']]) {
    await page.locator('ts-offer').getByRole('button', { name }).click();
    await page.locator('ts-notice').filter({ hasText: 'copied' }).waitFor();
    codes[way] = await page.evaluate(() => navigator.clipboard.readText());
    await page.locator('ts-notice').getByRole('button').first().click();
  }
  await context.close();
  CODES.set(id, codes);
  return codes;
}

/** Puts markup on a page of the club and goes there. */
async function pasted(page, name, code) {
  club.pages.set(`/${name}`, clubPage(code));
  await page.goto(`${club.address}/${name}`);
}

const leadOf = (page, selector = 'tag-strip') => textOf(page, `${selector} ts-lead`);

test('what is copied from every calculator works where it is pasted: link, frame, element', async () => {
  const calculators = catalogue();
  assert.ok(calculators.length > 0);
  for (const { id, title } of calculators) {
    const codes = await copied(id);
    const { context, page, faults } = await reader();
    await pasted(page, `link-${id}`, codes.link);
    await page.locator('a').first().click();
    await settled(page);
    assert.equal(await textOf(page, 'ts-lead'), codes.lead, `${id} by its link`);
    assert.match(page.url(), /\/v\/\d+\.\d+\.\d+\//, 'not at an address that stays');

    await pasted(page, `element-${id}`, codes.element);
    await page.locator('tag-strip ts-lead').waitFor({ timeout: 8000 });
    await page.waitForFunction(() => globalThis.heard.length > 0);
    assert.equal(await leadOf(page), codes.lead, `${id} as an element`);
    const [detail] = await page.evaluate(() => globalThis.heard);
    assert.equal(detail.calculator, id);
    assert.ok(Object.keys(detail.answers).length > 0);
    assert.deepEqual(detail.problems, []);

    await pasted(page, `frame-${id}`, codes.frame);
    await page.locator('iframe').scrollIntoViewIfNeeded();
    await page.waitForFunction(() => globalThis.told.some(({ data }) => data.answers !== undefined));
    const told = await page.evaluate(() => globalThis.told);
    assert.ok(told.every(({ origin }) => origin === 'null'), 'the frame is not shut off');
    const inside = await page.frames()[1].locator('tag-strip ts-lead').evaluate((lead) => lead.shadowRoot.textContent.replace(/\s+/g, ' '));
    assert.ok(inside.includes(codes.lead.split(' ').at(-1)), `${id} in a frame`);
    await page.waitForFunction(() => Number(document.querySelector('iframe').height) !== 1500);
    assert.deepEqual(faults, [], `${id}, ${title}`);
    await context.close();
  }
});

test('where scripts are taken out, picture, danger, table and link are left', async () => {
  const codes = await copied('stage');
  const { context, page } = await reader({ javaScriptEnabled: false });
  await pasted(page, 'stripped', codes.element.replace(/<script[\s\S]*?<\/script>/g, '').replaceAll(/<\/?tag-strip[^>]*>/g, ''));
  const picture = page.locator('figure img');
  const { width, height } = await picture.boundingBox();
  assert.ok(width > 200 && height > 200, `the picture is ${width} × ${height}`);
  assert.match(await page.locator('figure').innerText(), /danger: \d+/i);
  assert.ok((await page.locator('figure td').count()) >= 8);
  assert.match(await page.locator('figure a').getAttribute('href'), /\/v\/.*\/stage\/#1/);
  await context.close();
});

test('several on a page fetch and unpack one engine, and each keeps its own values', async () => {
  const codes = await copied('stage');
  const { context, page } = await reader();
  site.sent.length = 0;
  await page.addInitScript(() => {
    globalThis.compiled = 0;
    const { compile } = WebAssembly;
    WebAssembly.compile = (bytes) => { globalThis.compiled += 1; return compile(bytes); };
  });
  const second = '<tag-strip id="second" calculator="stage" plate_ohms="47k" cathode_ohms="1k"></tag-strip>';
  await pasted(page, 'several', `${codes.element}${second}${codes.element}`);
  await page.locator('#second ts-lead').waitFor();
  await page.waitForFunction(() => globalThis.heard.length >= 3);
  assert.equal(await page.evaluate(() => globalThis.compiled), 1);
  assert.equal(site.sent.filter(({ path }) => path.endsWith('element.js')).length, 1);
  assert.notEqual(await leadOf(page, '#second'), codes.lead);
  // An attribute that changes is followed; one that is no input is passed over, and so is nonsense.
  await page.evaluate(() => {
    const element = document.querySelector('#second');
    element.setAttribute('plate_ohms', '100k');
    element.setAttribute('onward', 'x');
    element.setAttribute('__proto__', '~{"a":1}');
  });
  await page.waitForFunction(() => globalThis.heard.at(-1).inputs.plate_ohms === '100k');
  const { inputs, problems } = await page.evaluate(() => globalThis.heard.at(-1));
  assert.ok(!('onward' in inputs));
  assert.deepEqual(problems, []);
  await page.evaluate(() => document.querySelector('#second').setAttribute('plate_ohms', '100x'));
  await page.waitForFunction(() => globalThis.heard.at(-1).problems.length > 0);
  assert.equal(await page.evaluate(() => globalThis.heard.at(-1).problems[0].field), 'plate_ohms');
  await context.close();
});

test('the page’s looks do not come in, the element’s do not go out, and axe finds nothing in it', async () => {
  const codes = await copied('voice');
  const looks = async (page) => page.locator('tag-strip').first().evaluate((element) => {
    const lead = element.shadowRoot.querySelector('ts-lead').shadowRoot.querySelector('.figure');
    const { color, fontSize, letterSpacing, textTransform, direction } = getComputedStyle(lead);
    return { color, fontSize, letterSpacing, textTransform, direction, width: Math.round(element.getBoundingClientRect().width) };
  });
  const { context, page } = await reader();
  await pasted(page, 'loud', codes.element);
  await page.locator('tag-strip ts-lead').waitFor({ timeout: 8000 });
  const theirs = () => page.locator('#theirs').evaluate((heading) => JSON.stringify([...getComputedStyle(heading)].map((name) => getComputedStyle(heading).getPropertyValue(name))));
  const before = await theirs();
  assert.deepEqual(await looks(page), { color: 'rgb(23, 26, 25)', fontSize: '50px', letterSpacing: '-0.75px', textTransform: 'none', direction: 'ltr', width: 340 });
  await page.locator('tag-strip ts-disclosure').first().getByRole('button').click();
  await page.locator('tag-strip ts-drawing [data-field]').first().click();
  await page.locator('tag-strip ts-open-field').waitFor();
  assert.equal(await theirs(), before);
  assert.equal(await page.evaluate(() => document.adoptedStyleSheets.length + document.head.querySelectorAll('style').length), 1);
  // From outside by the names that are offered, and by no other.
  await page.addStyleTag({ content: 'tag-strip { --tagstrip-ink: rgb(1, 2, 3); --ink: rgb(9, 9, 9); }' });
  assert.equal((await looks(page)).color, 'rgb(1, 2, 3)');
  await context.close();
  const quiet = await reader();
  club.pages.set('/quiet', `<!doctype html><html lang="en"><title>Quiet</title><main><h1>Evening</h1>${codes.element}</main></html>`);
  await quiet.page.goto(`${club.address}/quiet`);
  await quiet.page.locator('tag-strip ts-lead').waitFor({ timeout: 8000 });
  await axe(quiet.page, 'an element on a page');
  await quiet.context.close();
});

test('a frame takes inputs from the page around it and from no other window', async () => {
  const codes = await copied('stage');
  const { context, page } = await reader();
  await pasted(page, 'framed', `${codes.frame}<iframe id="stranger" srcdoc="<p>x</p>"></iframe>`);
  await page.locator('iframe').first().scrollIntoViewIfNeeded();
  await page.waitForFunction(() => globalThis.told.some(({ data }) => data.answers !== undefined));
  const last = () => page.evaluate(() => globalThis.told.filter(({ data }) => data.answers !== undefined).at(-1).data.answers.inputs.plate_ohms);
  await page.evaluate(() => {
    const [ours, stranger] = document.querySelectorAll('iframe');
    stranger.contentWindow.eval('0');
    const send = stranger.contentDocument.createElement('script');
    send.textContent = "parent.frames[0].postMessage({ tagstrip: 1, inputs: { plate_ohms: '33k' } }, '*')";
    stranger.contentDocument.body.append(send);
    ours.contentWindow.postMessage({ tagstrip: 2, inputs: { plate_ohms: '22k' } }, '*');
    ours.contentWindow.postMessage('plate_ohms', '*');
    ours.contentWindow.postMessage({ tagstrip: 1, inputs: { plate_ohms: '56k', unknown: 'x', __proto__: { y: 1 } } }, '*');
  });
  await page.waitForFunction(() => globalThis.told.filter(({ data }) => data.answers !== undefined).at(-1).data.answers.inputs.plate_ohms === '56k');
  await page.waitForTimeout(400);
  assert.equal(await last(), '56k');
  const all = await page.evaluate(() => globalThis.told.flatMap(({ data }) => data.answers?.inputs.plate_ohms ?? []));
  assert.ok(!all.includes('33k') && !all.includes('22k'), all.join());
  // And the page around it believes no other window about a height.
  const height = await page.locator('iframe').first().getAttribute('height');
  await page.evaluate(() => { window.postMessage({ tagstrip: 1, height: 17 }, '*'); });
  await page.waitForTimeout(200);
  assert.equal(await page.locator('iframe').first().getAttribute('height'), height);
  await context.close();
});

test('a host without headers: everything works, the hash is left out, and the page for web keepers says what is missing', async () => {
  const bare = await serveHosted(SITE, { bare: true });
  const { context, page, faults } = await reader({ permissions: ['clipboard-read', 'clipboard-write'] });
  await page.goto(`${bare.address}for-your-page/`);
  await page.locator('#host li').first().waitFor();
  assert.match(await page.innerText('#host'), /Access-Control-Allow-Origin.*missing/);
  await page.goto(`${site.address}for-your-page/`);
  await page.getByText('sends everything that is of use').waitFor();
  await open(page, bare, 'stage');
  await page.locator('ts-disclosure').filter({ hasText: 'Put it on a page' }).getByRole('button').first().click();
  await page.locator('ts-offer').getByRole('button', { name: 'Copy an element' }).click();
  await page.locator('ts-notice').filter({ hasText: 'header Access-Control-Allow-Origin is missing' }).waitFor();
  const code = await page.evaluate(() => navigator.clipboard.readText());
  assert.ok(!code.includes('integrity='));
  await pasted(page, 'bare', code);
  await page.locator('tag-strip ts-lead').waitFor({ timeout: 8000 });
  assert.deepEqual(faults, []);
  await context.close();
  await bare.close();
});

test('a script that is not the one that was copied does not run, and what stands in the markup stays', async () => {
  const { element } = await copied('stage');
  const { context, page } = await reader();
  await context.route(/element\.js$/, async (route) => {
    const answer = await route.fetch();
    await route.fulfill({ response: answer, body: `${await answer.text()} ` });
  });
  await pasted(page, 'changed', element);
  await page.waitForTimeout(800);
  assert.equal(await page.evaluate(() => customElements.get('tag-strip') === undefined), true);
  assert.ok(await page.locator('tag-strip figure table').isVisible());
  await context.close();
});
