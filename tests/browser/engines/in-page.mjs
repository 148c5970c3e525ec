// What runs in the page. Every function here is sent as its own text, so none may use another but through `globalThis.seen`.

/** Puts the helpers into the page, past its policy, as a reader's tool is. */
export function install() {
  const roots = (from) => [from, ...[...from.querySelectorAll('*')].flatMap((each) => (each.shadowRoot ? roots(each.shadowRoot) : []))];
  const within = (from, selector) => roots(from).flatMap((root) => [...root.querySelectorAll(selector)]);
  /** Every element that fits the last of `path` within one that fits the one before, shadow roots included. */
  const all = (path) => path.split(' >> ').reduce((found, selector) => [...new Set(found.flatMap((from) => within(from.shadowRoot ?? from, selector)))], [document]);
  const text = (node) => {
    if (node.nodeType === Node.TEXT_NODE) return node.data;
    if (/^(style|script)$/.test(node.localName ?? '')) return '';
    const inner = node.localName === 'slot' ? node.assignedNodes({ flatten: true }) : [...(node.shadowRoot ?? node).childNodes];
    const said = inner.map(text).join('');
    return /^(p|li|div|h\d|td|th|tr|button|text|label|dt|dd)$/.test(node.localName ?? '') ? `${said} ` : said;
  };
  const textOf = (path) => all(path).map(text).join(' ').replace(/\s+/g, ' ').trim();
  const wait = (ms) => new Promise((done) => { setTimeout(done, ms); });
  /** Until something is true; the last word where it never is. */
  const until = async (what, test, within = 15_000) => {
    for (const end = Date.now() + within; Date.now() < end; await wait(20)) {
      const made = test();
      if (made) return made;
    }
    throw new Error(`${what} did not come: ${textOf('ts-app').slice(0, 300)}`);
  };
  const settled = async () => {
    const spoken = () => all('ts-calculator >> ts-lead, .general').some((each) => text(each).trim() !== '') || all('ts-build >> ts-share').length > 0;
    await until('the page', spoken);
    let before = '';
    for (let still = 0; still < 4; await wait(45)) {
      const now = textOf('ts-app') + all('input').map((input) => input.value).join();
      still = now === before ? still + 1 : 0;
      before = now;
    }
  };
  const focused = () => {
    let at = document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    return at;
  };
  const faults = [];
  addEventListener('error', (event) => faults.push(String(event.message)));
  addEventListener('unhandledrejection', (event) => faults.push(String(event.reason)));
  globalThis.seen = { all, text, textOf, wait, until, settled, focused, faults };
}

/** The middle of an element, brought onto the screen. */
export async function middle(path) {
  const element = await globalThis.seen.until(path, () => globalThis.seen.all(path)[0]);
  // What is off the screen may not be laid out yet: its place is right only the second time.
  for (let k = 0; k < 3; k += 1) {
    element.scrollIntoView({ block: 'center', behavior: 'instant' });
    await new Promise((drawn) => { requestAnimationFrame(() => { requestAnimationFrame(drawn); }); });
  }
  const { left, top, width, height } = element.getBoundingClientRect();
  return { x: left + width / 2, y: top + height / 2 };
}

/** The fields of the plain form that can be typed into: where, and what stands there. */
export function fields() {
  return globalThis.seen.all('ts-form >> ts-field').filter((field) => field.row?.shape === 'quantity' || field.row?.shape === 'text')
    .map((field) => ({ path: field.path, shape: field.row.shape, least: field.row.least, most: field.row.most, value: field.value }));
}

/** A field as it stands. */
export function fieldAt(path) {
  const field = globalThis.seen.all(`ts-form >> ts-field[data-path="${path}"]`)[0];
  const input = field?.shadowRoot.querySelector('#value');
  return { text: input?.value, invalid: input?.getAttribute('aria-invalid'), said: field === undefined ? '' : globalThis.seen.text(field).replace(/\s+/g, ' ') };
}
