/**
 * Values as they cross between JavaScript and the engine: one run of figures and one text for a whole answer, because a
 * crossing for each field cost more than many calculators do. `crates/web/src/door.rs` is the other side.
 */
export type Packed = readonly [figures: Float64Array, text: string];

const [NULL, NUMBER, NO, YES, TEXT, LIST, SERIES, RECORD, NEITHER] = [0, 1, 2, 3, 4, 5, 6, 7, 8];

/** Deeper than any field table: what goes deeper is not read, whatever it is. */
const DEEPEST = 12;

/** A value as the engine reads it; functions, symbols and what is too deep cross as something it refuses. */
export function pack(value: unknown): Packed {
  const figures: number[] = [];
  const texts: string[] = [];
  const write = (text: string): void => {
    let length = 0;
    for (const _ of text) length += 1;
    figures.push(length);
    texts.push(text);
  };
  const enter = (one: unknown, depth: number): void => {
    if (one === null || one === undefined) figures.push(NULL);
    else if (typeof one === 'number') figures.push(NUMBER, one);
    else if (typeof one === 'boolean') figures.push(one ? YES : NO);
    else if (typeof one === 'string') {
      figures.push(TEXT);
      write(one);
    } else if (typeof one !== 'object' || depth === DEEPEST) figures.push(NEITHER);
    else if (Array.isArray(one)) {
      figures.push(LIST, one.length);
      for (const each of one) enter(each, depth + 1);
    } else {
      const entries = Object.entries(one);
      figures.push(RECORD, entries.length);
      for (const [key, each] of entries) {
        write(key);
        enter(each, depth + 1);
      }
    }
  };
  enter(value, 0);
  return [Float64Array.from(figures), texts.join('')];
}

/** A value from the engine as fresh objects of its own; long runs of figures are copies. */
export function unpack([figures, text]: Packed): unknown {
  let at = 0;
  let read = 0;
  const figure = (): number => figures[at++] ?? NULL;
  const word = (): string => {
    const from = read;
    read += figure();
    return text.slice(from, read);
  };
  const value = (): unknown => {
    switch (figure()) {
      case NUMBER: return figure();
      case NO: return false;
      case YES: return true;
      case TEXT: return word();
      case LIST: return Array.from({ length: figure() }, value);
      case SERIES: {
        const from = at + 1;
        at = from + figure();
        return figures.slice(from, at);
      }
      case RECORD: {
        const record: Record<string, unknown> = {};
        for (let left = figure(); left > 0; left -= 1) {
          const key = word();
          record[key] = value();
        }
        return record;
      }
      default: return null;
    }
  };
  return value();
}
