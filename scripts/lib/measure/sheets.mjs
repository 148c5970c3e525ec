// Volts that rectifier sheets print, against what the published drop of one plate gives: the worst of each type.
import { must, told } from '../measuring/run.mjs';

export function measure() {
  const text = must('cargo', ['run', '--quiet', '--release', '-p', 'tagstrip-tools', '--bin', 'supply', '--', 'sheets']);
  return [...text.matchAll(/^sheets\.(\S+) (\S+) (\d+)$/gm)].map(([, tube, off, count]) => told(`sheets.${tube}`, Number(off), '%', `worst of ${count}`));
}
