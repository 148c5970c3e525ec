// The one file: what it weighs, and how many scenarios pass from a folder in each engine that opens it.
import { statSync } from 'node:fs';
import { join } from 'node:path';
import { atMost, built, root, run } from '../measuring/run.mjs';

const MOST = 450_000;

export async function measure() {
  built();
  const rows = [atMost('onefile.size', statSync(join(root, 'dist/tagstrip.html')).size, 'bytes', MOST)];
  for (const name of ['chromium', 'firefox']) {
    const { text } = run('node', ['--test', '--test-reporter=spec', 'tests/browser/one-file.test.mjs'], { env: { TAGSTRIP_ENGINE: name }, cwd: root });
    const marks = (mark) => text.split('\nℹ tests')[0].split('\n').filter((line) => line.trimStart().startsWith(`${mark} `)).length;
    rows.push({ name: `onefile.${name}`, value: marks('✔'), unit: 'scenarios', bound: marks('✔') + marks('✖'), holds: marks('✖') === 0 && marks('✔') > 0 });
  }
  return rows;
}
