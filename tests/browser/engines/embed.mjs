// A calculator on a page of another origin, in any engine: by its link, in a frame that is shut off, as an element.
import assert from 'node:assert/strict';

import { clubPage } from '../hosts.mjs';

const hash = (id) => `#1&lugs.0.id=${id}&lugs.0.calculator=${id}&at=${id}`;

/** The answers that the page around heard, once they are there. */
async function heard(page, where) {
  const until = `async () => { for (let k = 0; k < 750; k += 1) { const found = ${where}; if (found) return found; await new Promise((done) => setTimeout(done, 20)); } throw new Error('nothing was heard'); }`;
  return page.run(until, []);
}

async function paste(page, club, name, code) {
  club.pages.set(`/${name}`, clubPage(code));
  await page.go(`${club.address}/${name}`);
}

/** The frame says its height and its answers, and is of no origin. */
export async function frame(page, { site, club, id }) {
  await paste(page, club, `frame-${id}`, `<iframe src="${site.address}frame/${hash(id)}" data-tagstrip sandbox="allow-scripts" width="100%" height="1500"></iframe><script src="${site.address}frame/holder.js"></script>`);
  const { origin, data } = await heard(page, 'told.find(({ data }) => data.answers)');
  assert.equal(origin, 'null');
  assert.equal(data.answers.calculator, id);
  assert.ok(Object.keys(data.answers.answers).length > 0);
  const height = await heard(page, "document.querySelector('iframe').height !== '1500' && document.querySelector('iframe').height");
  assert.ok(Number(height) > 200, height);
}

/** Two elements; both answer. */
export async function element(page, { site, club, id, integrity }) {
  const one = `<tag-strip calculator="${id}"><p>Without scripts</p></tag-strip>`;
  await paste(page, club, `element-${id}`, `${one}${one}<script src="${site.address}element.js" integrity="${integrity}" crossorigin="anonymous" async></script>`);
  const [first, second] = await heard(page, 'heard.length > 1 && heard');
  assert.equal(first.calculator, id);
  assert.deepEqual(second.answers, first.answers);
  const looks = await page.run('() => { const lead = document.querySelector("tag-strip").shadowRoot.querySelector("ts-lead"); const { letterSpacing, direction, fontSize } = getComputedStyle(lead.shadowRoot.querySelector(".sentence, .label")); return { direction, fontSize, wide: lead.getBoundingClientRect().width }; }', []);
  assert.equal(looks.direction, 'ltr');
  assert.ok(Number.parseFloat(looks.fontSize) >= 15, looks.fontSize);
  assert.ok(looks.wide <= 340);
}

/** The link leads to the calculator's own page at its own release. */
export async function link(page, { site, club, id, release }) {
  await paste(page, club, `link-${id}`, `<a href="${site.address}v/${release}/${id}/${hash(id)}">${id}</a>`);
  await page.go(await page.run('() => document.querySelector("a").href', []));
  const lead = "document.querySelector('ts-app')?.shadowRoot?.querySelector('ts-calculator')?.shadowRoot?.querySelector('ts-lead')?.shadowRoot?.textContent.trim()";
  assert.ok((await heard(page, lead)).length > 10);
}

export const WAYS = { link, frame, element };
