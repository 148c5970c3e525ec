// Whole calculators against the cases worked outside the project, and the published tables of ladders and preferred values.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { atMost, root, run, told } from '../measuring/run.mjs';

const VECTORS = join(root, 'tests/vectors');
const TABLES = [
  ['ladders_lift_tone', ['filter'], /^(filter|voice)_.*\.tsv$/],
  ['markings_preferred_gauges', ['quantity', 'marking'], /^quantity_.*\.tsv$/],
];

export function measure() {
  const text = run('cargo', ['test', '--quiet', '-p', 'tagstrip-core', '--test', 'engine', '--', '--nocapture', 'cases::']).text;
  const said = /cases\.rows (\d+) figures (\d+) fallen_short (\d+)/.exec(text);
  if (said === null) throw new Error('the cases said nothing');
  const [, rows, figures, short] = said.map(Number);
  return [told('cases.rows', rows, 'rows'), atMost('cases.figures_fallen_short', short, `of ${figures}`, 0), ...TABLES.flatMap(table)];
}

/** Rows of published tables, and how many of the checks that read them fail. */
function table([name, checks, files]) {
  const rows = readdirSync(VECTORS).filter((file) => files.test(file)).reduce((sum, file) => sum + count(file), 0);
  const { text } = run('cargo', ['test', '--quiet', '--no-fail-fast', '-p', 'tagstrip-core', '--test', 'engine', '--', ...checks.map((check) => `${check}::`)]);
  const results = [...text.matchAll(/(\d+) passed; (\d+) failed/g)];
  const failed = results.length === 1 && Number(results[0][1]) > 0 ? Number(results[0][2]) : Number.NaN;
  return [told(`cases.${name}_rows`, rows, 'rows'), atMost(`cases.${name}_checks_failed`, failed, 'checks', 0)];
}

function count(file) {
  const lines = readFileSync(join(VECTORS, file), 'utf8').split('\n');
  return lines.filter((line) => line !== '' && !line.startsWith('#')).length - 1;
}
