// What a reader with a tool, a small screen or a thumb meets: the states of a page, what axe finds in each, targets too
// small, and anything wider than the screen. The same in every engine.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

const axeSource = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
/** The least that a thumb meets, in both directions. */
const LEAST = 44;

/** Everything axe finds on the page as it stands; none is the only right number. */
export async function axe(page) {
  if (!(await page.run(() => globalThis.axe !== undefined))) await page.run(`() => { ${axeSource}; }`);
  return page.run(async () => {
    const { violations } = await globalThis.axe.run(document, { resultTypes: ['violations'] });
    return violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ target }) => target.flat().join(' ')).join('; ')}`);
  });
}

/** What can be pressed and is too small for it. A link within a sentence is as high as its line, as WCAG 2.5.8 lets it be. */
export const tooSmall = (page) => page.run((least) => {
  const boxes = (element) => {
    const label = /^(radio|checkbox|file)$/.test(element.type) ? element.closest('label') : null;
    const hits = [...element.querySelectorAll?.('.hit, .target, rect') ?? []];
    return [element, ...(label === null ? [] : [label]), ...hits].map((each) => each.getBoundingClientRect());
  };
  const pressed = 'a[href], button, input, select, summary, [role="button"], [data-field][tabindex], [data-danger]';
  return globalThis.seen.all(pressed).flatMap((element) => {
    if (element.disabled || !element.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true })) return [];
    if (element.localName === 'a' && element.parentElement?.localName === 'p') return [];
    const [width, height] = ['width', 'height'].map((side) => Math.max(...boxes(element).map((box) => box[side])));
    // What only a screen reader or the Tab key shows stands off the screen until then.
    if (width <= 1 || height <= 1 || element.classList.contains('skip') || (width >= least - 0.5 && height >= least - 0.5)) return [];
    const host = element.getRootNode().host?.localName ?? '';
    return [`${host} ${element.localName}${element.className?.baseVal ?? `.${element.className}`} “${(element.getAttribute('aria-label') ?? element.textContent ?? '').trim().slice(0, 30)}” ${Math.round(width)} × ${Math.round(height)}`];
  });
}, LEAST);

/** By how much the page is wider than the screen. */
export const tooWide = (page) => page.run(() => Math.max(0, document.scrollingElement.scrollWidth - document.scrollingElement.clientWidth));

async function unfold(page) {
  await page.run(async () => {
    const { all, wait } = globalThis.seen;
    await globalThis.seen.until('the rest', () => all('ts-form >> ts-field').length > 0);
    for (let k = 0; k < 3; k += 1) {
      for (const one of all('ts-disclosure >> button').concat(all('summary'))) {
        if (one.getAttribute('aria-expanded') === 'false' || (one.localName === 'summary' && !one.parentElement.open)) one.click();
      }
      await wait(100);
    }
  });
  await page.settled();
}

/** Every state that a calculator's page can be in, one after the other on the same page; each gives its name. */
export async function* states(page, address, id) {
  await page.open(`${address}${id}/`);
  yield 'as it opens';
  await unfold(page);
  yield 'everything unfolded';
  const part = await page.run(() => globalThis.seen.all('ts-drawing >> [data-field]').some((each) => each.getAttribute('tabindex') === '0'));
  if (part) {
    await page.run(() => { globalThis.seen.all('ts-drawing >> [data-field][tabindex="0"]')[0].focus(); });
    await page.press(['Enter']);
    await page.run(() => globalThis.seen.until('the open field', () => globalThis.seen.all('ts-open-field >> h2').length > 0));
    await page.settled();
    yield 'a field open';
    if (await page.run(() => globalThis.seen.all('ts-open-field >> input.text').length > 0)) {
      const before = await page.run(() => globalThis.seen.all('ts-open-field >> input.text')[0].value);
      await page.fill('ts-open-field >> input.text', '4k7k');
      yield 'a value refused, the answers stale';
      await page.fill('ts-open-field >> input.text', before);
    }
    await page.press(['Escape']);
    await page.settled();
  }
  if (await page.run(() => globalThis.seen.all('ts-pins >> button').some((each) => { if (!each.disabled) each.click(); return !each.disabled; }))) {
    await page.settled();
    yield 'pinned';
  }
}

/** The page in light or dark, as its own setting has it. */
export const inTheme = (page, theme) => page.run((name) => { document.documentElement.dataset.theme = name; }, theme);
