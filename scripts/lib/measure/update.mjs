// Updates interrupted in a real browser: 200, or as many as are asked for (`update=40`).
import { join } from 'node:path';
import { interrupt } from '../../../tests/browser/engines/interruptions.mjs';
import { atMost, built, root, told } from '../measuring/run.mjs';

export async function measure(how) {
  built();
  const rounds = Number(how ?? 200);
  const { counts, faults, anew } = await interrupt(join(root, 'dist/site'), rounds, 20_26);
  const kinds = Object.entries(counts).map(([kind, count]) => `${kind} ${count}`).join(', ');
  return [
    atMost('update.faults', faults.length, `of ${rounds} interruptions`, 0, [kinds, ...faults].join('; ')),
    told('update.loaded_anew', anew, 'pages', 'their request was given to a worker that the browser then stopped'),
  ];
}
