// Bursts like talk through 1,000 random stages, driven up to 300 V: none may fail or say what is no figure.
import { rendering } from '../measuring/render.mjs';
import { atMost, told } from '../measuring/run.mjs';

export function measure() {
  const said = rendering('robust');
  const { figure, rest } = said('robust_bracketed');
  return [
    atMost('render.robust_failed', said('robust_refused').figure, said('robust_refused').rest, 0),
    atMost('render.robust_not_a_figure', said('robust_wrong').figure, 'renderings', 0),
    told('render.robust_worst_sample', said('robust_most_tries').figure, 'askings of the law'),
    told('render.robust_bracketed', figure, 'steps', rest),
  ];
}
