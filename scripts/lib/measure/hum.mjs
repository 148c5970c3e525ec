// Hum and hiss of a dozen stages against nodal analysis in numpy (tests/vectors/hum_hiss.py).
import { atMost, must } from '../measuring/run.mjs';

const WORST = /hum\.(hum|hiss)_worst_db ([\d.]+)/g;

export function measure() {
  const text = must('cargo', ['test', '--quiet', '-p', 'tagstrip-core', '--test', 'engine', '--', '--nocapture', 'hum::']);
  const found = [...text.matchAll(WORST)];
  if (found.length !== 2) throw new Error('no figures');
  return found.map(([, what, db]) => atMost(`hum.${what}_worst`, Number(db), 'dB', 0.1, 'of 12 circuits in numpy'));
}
