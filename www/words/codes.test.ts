import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import test from 'node:test';
import { CAUTION_CODES } from './cautions.js';
import { BASE_CODES, ELECTRODE_CODES } from './node-words.js';
import { NULL_CODES } from './nulls.js';
import { ROLE_CODES, RULE_CODES } from './part-words.js';
import { PROBLEM_CODES } from './problems.js';
import { REASON_CODES } from './reasons.js';
import { READER_CODES } from './unread.js';

// The engine's sources, read from the project's root, where the runner starts.
const CORE = join(process.cwd(), 'crates', 'core', 'src');
const sources = readdirSync(CORE, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.rs'))
  .map((name) => ({ name: name.replaceAll('\\', '/'), text: readFileSync(join(CORE, name), 'utf8') }));

/** Every code that stands at `pattern`'s first group in the sources whose name suits. */
function codes(pattern: RegExp, where = /./): Set<string> {
  const found = new Set<string>();
  for (const { name, text } of sources) {
    if (!where.test(name)) continue;
    for (const [, code = ''] of text.matchAll(pattern)) found.add(code);
  }
  return found;
}

function held(kind: string, found: Set<string>, known: readonly string[]): void {
  assert.ok(found.size > 0, `no ${kind} found: has the way they are written changed?`);
  assert.deepEqual([...found].filter((code) => !known.includes(code)), [], `${kind} without a text`);
}

test('every caution of the engine has a text', () => {
  const found = codes(/(?:Caution::new\(\s*[\w:]+,\s*|\blimit\(\s*|\b(?:note|danger|caution)\(\s*(?:Severity::\w+,\s*)?)"(\w+)"/g, /calculators\//);
  held('cautions', found, CAUTION_CODES);
});

test('no code has two texts, of which one would hide the other', () => {
  assert.ok(CAUTION_CODES.length > 0);
  assert.deepEqual(CAUTION_CODES.filter((code, k) => CAUTION_CODES.indexOf(code) !== k), []);
});

test('every reason, meaning of null and problem of the engine has a text', () => {
  held('reasons', new Set([...codes(/no_solution\([^)"]*(?:"[^"]*",\s*)?"(\w+)"\s*\)/g), ...codes(/Fault::\w+ \{ \.\. \} => "(\w+)"/g)]), REASON_CODES);
  held('nulls', codes(/null_means\("(\w+)"\)/g), NULL_CODES);
  held('problems', codes(/pub const \w+: &str = "(\w+)"/g, /value\/problem\.rs$/), PROBLEM_CODES);
  held('reader’s codes', codes(/const \w+: &str = "(\w+)"/g, /quantity\/fault\.rs$/), READER_CODES);
});

test('every role, rule, electrode and base of the engine has a word', () => {
  held('roles', codes(/(?:\.put|\.resistor|\.capacitor|Part::new)\(\s*(?:inputs,\s*)?(?:"[^"]*"|\w+(?:\[\d\])?),\s*"(\w+)"/g, /calculators\//), ROLE_CODES);
  held('rules', codes(/rule = "(\w+)"|\), "(?:\w+)"\),$/gm, /bench\/buying\.rs$/), RULE_CODES);
  held('electrodes', codes(/Electrode::\w+(?:\(\w+\))? => "(\w+)"/g), ELECTRODE_CODES);
  held('bases', codes(/base: "(\w+)"/g, /table\//), BASE_CODES);
});
