// Two clean clones of the commit that is checked out, in two places, built and compared file by file.
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { filesUnder } from '../sizes.mjs';
import { atMost, must, root, target, told } from '../measuring/run.mjs';

export function measure() {
  const scratch = mkdtempSync(join(tmpdir(), 'tagstrip-same-'));
  try {
    // Names of different lengths: a path that gets into a file shows.
    const [one, other] = ['one', 'the-other'].map((name) => build(join(scratch, name)));
    const names = [...new Set([...one.keys(), ...other.keys()])];
    const different = names.filter((name) => one.get(name) !== other.get(name));
    const whole = createHash('sha256').update(JSON.stringify([...one])).digest('hex');
    return [
      atMost('same_bytes.different', different.length, `of ${names.length} files`, 0, different.slice(0, 8).join(' ')),
      told('same_bytes.hash', whole.slice(0, 16), 'of all files', must('git', ['rev-parse', '--short', 'HEAD']).trim()),
    ];
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** A clean build's files and their hashes. The tools and packages are those of this machine: they are not what is compared. */
function build(folder) {
  must('git', ['clone', '--quiet', root, folder]);
  cpSync(join(root, 'node_modules'), join(folder, 'node_modules'), { recursive: true, verbatimSymlinks: true });
  must('mkdir', ['-p', join(folder, 'target')]);
  if (existsSync(join(target, 'tools'))) must('cp', ['-a', join(target, 'tools'), join(folder, 'target')]);
  must('scripts/build', [], { cwd: folder, env: { CARGO_TARGET_DIR: join(folder, 'target') } });
  const dist = join(folder, 'dist');
  return new Map(filesUnder(dist).map((file) => [relative(dist, file), createHash('sha256').update(readFileSync(file)).digest('hex')]));
}
