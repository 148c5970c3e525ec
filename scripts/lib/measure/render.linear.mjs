// Small tones through 30 random stages, both knobs' end stops among them, against the response of the same circuits.
import { rendering } from '../measuring/render.mjs';
import { atMost } from '../measuring/run.mjs';

export function measure() {
  const said = rendering('linear');
  return [
    atMost('render.linear_to_4_khz', said('linear_to_4_khz').figure, 'dB', 0.1, 'the straight and the full rendering, 30 stages'),
    atMost('render.linear_to_8_khz', said('linear_to_8_khz').figure, 'dB', 0.25),
  ];
}
