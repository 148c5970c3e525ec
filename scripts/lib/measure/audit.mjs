// What is known to be wrong with what we depend on: `npm audit`, where the registry answers, and `cargo deny check`, where it is
// installed (`cargo install cargo-deny --locked`, some minutes). What could not be asked is said and counts as nothing.
import { atMost, root, run, told } from '../measuring/run.mjs';

export function measure() {
  return [npm(), deny()];
}

function npm() {
  const { text } = run('npm', ['audit', '--json'], { cwd: root });
  const from = text.indexOf('{');
  let said;
  try {
    said = JSON.parse(text.slice(from, text.lastIndexOf('}') + 1));
  } catch {
    said = undefined;
  }
  const total = said?.metadata?.vulnerabilities?.total;
  if (total === undefined) return told('audit.npm', 'not asked', '', 'the registry does not answer');
  return atMost('audit.npm', total, 'findings', 0);
}

function deny() {
  if (run('sh', ['-c', 'command -v cargo-deny']).code !== 0) return told('audit.deny', 'not asked', '', 'cargo-deny is not installed');
  const { code, text } = run('cargo', ['deny', 'check'], { cwd: root });
  return atMost('audit.deny', code === 0 ? 0 : Math.max(1, text.match(/^error\[/gm)?.length ?? 1), 'errors', 0, text.trim().split('\n').at(-1));
}
