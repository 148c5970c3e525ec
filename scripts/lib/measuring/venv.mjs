// A Python of the project's own, with the versions that requirements.txt names.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { must, root } from './run.mjs';

/** The interpreter; made at the first call, and again where the requirements changed. */
export function venv() {
  const [folder, wanted] = [join(root, '.venv'), join(root, 'scripts/lib/requirements.txt')];
  const [python, stamp] = [join(folder, 'bin/python'), join(folder, 'requirements.txt')];
  const versions = readFileSync(wanted, 'utf8');
  if (!existsSync(stamp) || readFileSync(stamp, 'utf8') !== versions) {
    must('python3', ['-m', 'venv', folder]);
    must(python, ['-m', 'pip', 'install', '--quiet', '--requirement', wanted]);
    writeFileSync(stamp, versions);
  }
  return python;
}
