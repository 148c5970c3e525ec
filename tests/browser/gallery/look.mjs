// Measures a drawing as it stands on the screen. Each function runs in the page and needs nothing around it.

/** Touch areas that are too small or lie over one another, a sentence each. `least` in pixels. */
export function touches(least) {
  const root = document.querySelector('ts-drawing').shadowRoot;
  const found = [];
  const areas = [...root.querySelectorAll('[data-touch]')].map((element) => {
    const path = element.matches('path') ? element : element.querySelector('.hit');
    const matrix = path.getScreenCTM();
    const boxes = [...path.getAttribute('d').matchAll(/M(\S+) (\S+)(?:h(\S+)v(\S+)h|H(\S+)V(\S+)H)/g)].map(([, x, y, w, h, right, bottom]) => {
      const width = w === undefined ? Number(right) - Number(x) : Number(w);
      const height = h === undefined ? Number(bottom) - Number(y) : Number(h);
      const from = new DOMPoint(Number(x), Number(y)).matrixTransform(matrix);
      const to = new DOMPoint(Number(x) + width, Number(y) + height).matrixTransform(matrix);
      return { left: from.x, top: from.y, right: to.x, bottom: to.y };
    });
    return { name: element.dataset.touch, boxes };
  });
  for (const { name, boxes } of areas) {
    const left = Math.min(...boxes.map((box) => box.left));
    const right = Math.max(...boxes.map((box) => box.right));
    const top = Math.min(...boxes.map((box) => box.top));
    const bottom = Math.max(...boxes.map((box) => box.bottom));
    if (right - left < least || bottom - top < least) {
      found.push(`${name} is ${(right - left).toFixed(1)} by ${(bottom - top).toFixed(1)} px.`);
    }
    if (left < -0.5 || right > innerWidth + 0.5) found.push(`${name} reaches over the edge.`);
    boxes.slice(1).forEach((box, index) => {
      const before = boxes[index];
      const apart = box.left > before.right + 0.1 || before.left > box.right + 0.1 || box.top > before.bottom + 0.1 || before.top > box.bottom + 0.1;
      if (apart) found.push(`${name} is in pieces.`);
    });
  }
  areas.forEach((one, index) => areas.slice(index + 1).forEach((other) => {
    const over = one.boxes.some((a) => other.boxes.some((b) =>
      a.left + 0.2 < b.right && b.left + 0.2 < a.right && a.top + 0.2 < b.bottom && b.top + 0.2 < a.bottom));
    if (over) found.push(`${one.name} lies over ${other.name}.`);
  }));
  return found;
}

/** Texts nearer than `least` units to a wire, a tag, another part's symbol or one another, a sentence each. */
export function clearances(least) {
  const root = document.querySelector('ts-drawing').shadowRoot;
  const scale = root.querySelector('svg').getScreenCTM().a;
  const found = new Set();
  const box = (element, shrink = 0) => {
    const { left, top, right, bottom } = element.getBoundingClientRect();
    return { left: left / scale, top: top / scale + shrink, right: right / scale, bottom: bottom / scale - shrink };
  };
  // A text's box has room for letters taller than these; the ink of figures and capitals stands 3 units inside at 14.
  const named = (element) => element.closest('[data-part]')?.dataset.part ?? '';
  const texts = [...root.querySelectorAll('[data-label], .join')].map((element) => ({
    what: `${named(element)} “${element.textContent || 'value'}”`, part: named(element),
    group: element.closest('[data-part]') ?? element, box: box(element, element.matches('text') ? 3.4 : 0),
  }));
  const tags = [...root.querySelectorAll('.tag')].flatMap((tag) => [...tag.querySelectorAll('path')].map((element) =>
    ({ what: `the tag at ${tag.dataset.tag}`, box: box(element) })));
  const wires = [...root.querySelectorAll('[data-wire]')].flatMap((element) => {
    const matrix = element.getScreenCTM();
    const points = [...element.getAttribute('d').matchAll(/([ML])(\S+?) ([^ML]+)/g)].map(([, letter, x, y]) =>
      ({ letter, at: new DOMPoint(Number(x), Number(y)).matrixTransform(matrix) }));
    return points.slice(1).flatMap(({ letter, at: point }, index) => {
      if (letter === 'M') return [];
      const from = points[index].at;
      const half = Number.parseFloat(getComputedStyle(element).strokeWidth) / 2;
      return {
        what: `the wire of ${element.dataset.wire}`,
        box: {
          left: Math.min(from.x, point.x) / scale - half, right: Math.max(from.x, point.x) / scale + half,
          top: Math.min(from.y, point.y) / scale - half, bottom: Math.max(from.y, point.y) / scale + half,
        },
      };
    });
  });
  const symbols = [...root.querySelectorAll('[data-symbol]')].flatMap((element) => [...element.querySelectorAll('path, circle')].map((stroke) =>
    ({ what: `the symbol of ${element.dataset.symbol}`, part: element.dataset.symbol, switch: element.dataset.symbol === 'S1', box: box(stroke) })));
  const grounds = [...root.querySelectorAll('.ground')].map((element) => ({ what: 'a ground', box: box(element) }));
  const gap = (a, b) => {
    const across = Math.max(a.left - b.right, b.left - a.right);
    const down = Math.max(a.top - b.bottom, b.top - a.bottom);
    return across < 0 && down < 0 ? Math.max(across, down) : Math.hypot(Math.max(across, 0), Math.max(down, 0));
  };
  const report = (text, other, apart) => { found.add(`${text.what} is ${apart.toFixed(1)} from ${other.what}.`); };
  texts.forEach((text, index) => {
    for (const other of [...tags, ...wires, ...grounds]) {
      const apart = gap(text.box, other.box);
      if (apart < least - 0.05) report(text, other, apart);
    }
    for (const other of symbols) {
      // The arm of a switch and the envelope of a tube are not boxes: their own part's letters stand in the corners.
      if (other.part === text.part && /^[SV]/.test(other.part)) continue;
      if (other.switch) continue;
      const apart = gap(text.box, other.box);
      if (apart < (other.part === text.part ? 1.5 : least) - 0.05) report(text, other, apart);
    }
    for (const other of texts.slice(index + 1)) {
      const apart = gap(text.box, other.box);
      const together = text.group === other.group;
      if (apart < (together ? 0 : least) - 0.05) report(text, other, apart);
    }
  });
  const page = root.querySelector('svg').getBoundingClientRect();
  for (const text of texts) {
    if (text.box.left < page.left / scale + 1 || text.box.right > page.right / scale - 1) found.add(`${text.what} reaches over the edge.`);
  }
  return [...found];
}
