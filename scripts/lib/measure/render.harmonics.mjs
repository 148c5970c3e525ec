// A loud 1 kHz tone through six whole stages, two of them near clipping, against harmonic balance in numpy.
import { atMost, run } from '../measuring/run.mjs';

export function measure() {
  const { text } = run('cargo', ['test', '--quiet', '-p', 'tagstrip-core', '--test', 'engine', '--', '--nocapture', 'render::a_loud_tone']);
  const said = /render\.harmonics (\d+) worst ([\d.]+)/.exec(text);
  if (said === null) throw new Error('the check said nothing');
  return [atMost('render.harmonics', Number(said[2]), 'dB', 0.1, `H1, H2 and H3 of ${said[1]} stages, the worst`)];
}
