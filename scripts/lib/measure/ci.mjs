// How long .ci/run takes: what its own clock kept, or in a clean clone now (`ci=clone`).
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { atMost, must, root, run } from '../measuring/run.mjs';

export function measure(how) {
  const folder = how === 'clone' ? mkdtempSync(join(tmpdir(), 'tagstrip-ci-')) : root;
  const kept = join(folder, 'target/ci-seconds');
  try {
    let last = '';
    if (how === 'clone') {
      must('git', ['clone', '--quiet', root, folder]);
      const { code, text } = run('.ci/run', [], { cwd: folder, env: { CARGO_TARGET_DIR: join(folder, 'target') } });
      last = `${text.trim().split('\n').at(-1)}, exit ${code}`;
    }
    if (!existsSync(kept)) throw new Error('.ci/run has not run here; ci=clone runs it');
    const minutes = Number(readFileSync(kept, 'utf8')) / 60;
    return [atMost('ci.minutes', minutes, 'minutes', 20, last || `run of ${statSync(kept).mtime.toISOString()}`)];
  } finally {
    if (how === 'clone') rmSync(folder, { recursive: true, force: true });
  }
}
