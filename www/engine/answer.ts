import * as door from '../package/door.js';
import type { Figures } from '../package/kinds.js';
import type { Asked, Told } from './protocol.js';

/** Answers one call where the compiled engine is. A trap is told as `lost`: that instance is not to be used again. */
export function answer({ number, name, args }: Asked): Told {
  try {
    return { number, gives: call(name, args) };
  } catch (fault) {
    if (fault instanceof door.Refusal) return { number, problems: fault.problems };
    return { number, lost: String(fault) };
  }
}

function call(name: Asked['name'], args: readonly unknown[]): unknown {
  const [first, second, third] = args;
  switch (name) {
    case 'catalogue':
      return door.catalogue();
    case 'work':
      return door.work(String(first), second as Figures, third as readonly string[]);
    case 'read':
      return door.read(String(first), String(second));
    case 'render':
      return door.render(first as Figures, second as Float32Array, Number(third), args[3] as Figures);
    case 'mulaw':
      return door.fromMulaw(first as Uint8Array);
    case 'steps': {
      const { value } = door.read(String(first), String(second));
      const series = String(third);
      return { value, lower: door.step(value, series, false), higher: door.step(value, series, true) };
    }
  }
}
