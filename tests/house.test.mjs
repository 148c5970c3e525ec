// The rules of the house, read from the tracked files themselves.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import test from 'node:test';

const root = new URL('..', import.meta.url).pathname;
const tracked = execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' })
  .split('\0')
  .filter((name) => name !== '' && existsSync(join(root, name)));
const files = tracked.map((name) => ({ name, text: readFileSync(join(root, name), 'utf8') }));
const within = (...folders) => files.filter(({ name }) => folders.some((folder) => name.startsWith(`${folder}/`)));
const CORE = 'crates/core/src';
const core = within(CORE);
const LOCKS = /(^|\/)(Cargo\.lock|package-lock\.json)$/;

/** Lines of `files` that a rule finds at fault, as `file:line: what`. */
function faults(where, rule) {
  return where.flatMap(({ name, text }) =>
    text.split('\n').flatMap((line, k) => [rule(line, name)].flat().filter(Boolean).map((what) => `${name}:${k + 1}: ${what}`)));
}

/** The line without its comment, where the comment starts a word. */
const code = (line) => line.replace(/(^|\s)\/\/.*$/, '');

test('the top level holds what the design names, and nothing else', () => {
  const named = new Set(['Cargo.toml', 'Cargo.lock', 'README.md', 'DEVELOPERS.md', 'LICENSE-MIT', 'LICENSE-APACHE', 'crates', 'www', 'tests',
    'scripts', 'package.json', 'package-lock.json', 'tsconfig.json', 'rust-toolchain.toml', 'rustfmt.toml', 'clippy.toml', 'deny.toml']);
  const top = new Set(tracked.map((name) => name.split('/')[0]));
  assert.deepEqual([...top].filter((name) => !named.has(name) && !name.startsWith('.')), []);
});

/** What each module of the core may know of. Its own tests may know more; they stand in tests/. */
const MAY_USE = {
  quantity: [],
  value: ['quantity'],
  tube: ['value', 'quantity'],
  network: [],
  circuit: ['tube', 'value', 'quantity'],
  hearing: [],
  coil: [],
  calculators: ['network', 'hearing', 'coil', 'circuit', 'tube', 'value', 'quantity'],
};

test('arrows between the modules of the core run one way', () => {
  for (const module of Object.keys(MAY_USE)) assert.ok(core.some(({ name }) => name.startsWith(`${CORE}/${module}/`)), module);
  const wrong = core.flatMap(({ name, text }) => {
    const [module, rest] = name.slice(CORE.length + 1).split('/');
    if (rest === undefined) return [];
    const allowed = [module, ...(MAY_USE[module] ?? [])];
    const bare = text.split('\n').map(code).join('\n');
    // `use crate::{tube, value::Value};` names several, over several lines; a path within code names one.
    const lists = [...bare.matchAll(/\buse crate::\{([\s\S]*?)\};/g)].flatMap(([, list]) => outermost(list));
    const used = [...lists, ...[...bare.matchAll(/\bcrate::(\w+)/g)].map(([, one]) => one)].filter((one) => one in MAY_USE);
    return used.filter((one) => !allowed.includes(one)).map((one) => `${name}: ${module} uses ${one}`);
  });
  assert.deepEqual(wrong, []);
});

/** The first names of a list such as `tube::{Triode, find}, value::Value`. */
function outermost(list) {
  let flat = list;
  while (/\{[^{}]*\}/.test(flat)) flat = flat.replace(/\{[^{}]*\}/g, '');
  return flat.split(',').map((one) => one.trim().split('::')[0]);
}

test('the core needs no standard library, one crate alone, and no maths but that crate’s', () => {
  assert.match(readFileSync(join(root, CORE, 'lib.rs'), 'utf8'), /^#!\[no_std\]/m);
  const [, dependencies] = /\n\[dependencies\]\n([^[]*)/.exec(readFileSync(join(root, 'crates/core/Cargo.toml'), 'utf8'));
  assert.deepEqual(dependencies.split('\n').map((line) => line.split(/[ .=]/)[0]).filter((name) => /^\w/.test(name)), ['libm']);
  // A float's own `sqrt` does not compile there; scripts/test checks that it does not.
  assert.deepEqual(faults(core, (line) => /\bstd::|extern crate std/.exec(code(line))?.[0]), []);
});

test('nothing in the core is unsafe, and everything public is told', () => {
  const lib = readFileSync(join(root, CORE, 'lib.rs'), 'utf8') + readFileSync(join(root, 'Cargo.toml'), 'utf8');
  assert.match(lib, /unsafe_code\)?\]? ?=? ?"?forbid|forbid\(unsafe_code\)/);
  assert.match(lib, /missing_docs = "deny"|deny\(missing_docs\)/);
  assert.deepEqual(faults(core, (line) => /allow\(missing_docs|allow\(unsafe_code/.exec(line)?.[0]), []);
});

test('the door knows no calculator by its name', () => {
  const [, list] = /CALCULATORS[^=]*=([\s\S]*?);/.exec(readFileSync(join(root, CORE, 'calculators/mod.rs'), 'utf8'));
  const ids = [...list.matchAll(/(\w+)::/g)].map(([, id]) => id);
  assert.ok(ids.length >= 5, `calculators found: ${ids}`);
  const named = new RegExp(`["'\`](${ids.join('|')})["'\`]`);
  assert.deepEqual(faults(within('crates/web/src'), (line) => named.exec(line)?.[0]), []);
  const long = within('crates/web/src').reduce((sum, { text }) => sum + text.split('\n').length, 0);
  assert.ok(long <= 250, `${long} lines`);
});

/** What no file of a folder may import: the folder's side of www's arrows. */
const MAY_NOT_IMPORT = {
  'www/words': ['www/elements', 'www/package', 'www/engine', 'www/pages', 'www/drawings', 'www/plots'],
  'www/package': ['www/elements', 'www/engine', 'www/pages', 'www/drawings', 'www/plots'],
  'www/engine': ['www/elements', 'www/pages', 'www/drawings', 'www/plots'],
  'www/drawings': ['www/elements', 'www/engine', 'www/pages', 'www/package', 'www/plots'],
  'www/plots': ['www/elements', 'www/engine', 'www/pages', 'www/package'],
  'www/elements': ['www/pages'],
};

test('imports of the page run one way', () => {
  const wrong = Object.entries(MAY_NOT_IMPORT).flatMap(([folder, barred]) =>
    faults(within(folder).filter(({ name }) => name.endsWith('.ts')), (line, name) => {
      const [, path] = /(?:from|import) ?\(?'(\.[^']*)'/.exec(line) ?? [];
      if (path === undefined) return [];
      const reached = relative(root, join(root, dirname(name), path));
      return barred.filter((one) => reached.startsWith(`${one}/`)).map(() => `imports ${reached}`);
    }));
  assert.deepEqual(wrong, []);
});

test('no file is longer than 300 lines', () => {
  const own = files.filter(({ name }) => /^(crates|www|scripts|tests|\.ci)\//.test(name) && !name.startsWith('tests/vectors/') && !LOCKS.test(name));
  const long = own.map(({ name, text }) => ({ name, lines: text.split('\n').length - 1 })).filter(({ lines }) => lines > 300);
  assert.deepEqual(long, []);
});

test('nothing names a host, or a path of one machine', () => {
  const hosts = ['www.w3.org', 'www.apache.org', '127.0.0.1', 'localhost', 'local', 'x', 'example.org', 'example.com'];
  const text = files.filter(({ name }) => !LOCKS.test(name));
  const wrong = faults(text, (line, name) => {
    const named = [...line.matchAll(/\bhttps?:\/\/([\w.-]+)/g)].map(([, host]) => host).filter((host) => !hosts.includes(host));
    const [path] = name.startsWith('LICENSE') ? [] : /(?<![\w.}*)])\/(?:root|home|tmp|work|Users|mnt)\/\w+/.exec(line) ?? [];
    return [...named, path];
  });
  assert.deepEqual(wrong, []);
  assert.deepEqual(faults(files.filter(({ name }) => name.endsWith('package-lock.json')), (line) => /"resolved"/.exec(line)?.[0]), []);
});

test('the page sets nothing inline and runs no text as code', () => {
  const page = within('www').filter(({ name }) => /\.(ts|html)$/.test(name) && !name.includes('.test.'));
  const wrong = faults(page, (line) => /\binnerHTML\b|\bouterHTML\b|\beval\(|new Function\(|\bunsafeHTML\b|document\.write|<style[\s>]|[\s"'`]style=["']/.exec(code(line))?.[0]);
  assert.deepEqual(wrong, []);
});

test('every row of every table of expected figures names its source', () => {
  const tables = within('tests/vectors').filter(({ name }) => name.endsWith('.tsv'));
  assert.ok(tables.length > 10);
  const wrong = tables.flatMap(({ name, text }) => {
    const lines = text.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
    const columns = lines[0].split('\t');
    const at = columns.indexOf('source');
    if (at < 0) return [`${name}: no source column`];
    return lines.slice(1).filter((line) => !/\p{L}{2}/u.test(line.split('\t')[at] ?? '')).map((line) => `${name}: ${line.slice(0, 60)}`);
  });
  assert.deepEqual(wrong, []);
});

test('every computed case says how it was computed and how near it must come', () => {
  const cases = JSON.parse(readFileSync(join(root, 'tests/vectors/computed.json'), 'utf8'));
  const wrong = cases.flatMap((one, k) => {
    const loose = Object.keys(one.answers).filter((key) => one.tolerances?.[key] === undefined);
    return loose.length > 0 || !(one.how ?? one.source) ? [`case ${k} ${one.calculator}: ${loose}`] : [];
  });
  assert.deepEqual(wrong, []);
});

test('every check file of the engine is registered, and its tests run as WebAssembly too', () => {
  const program = readFileSync(join(root, 'tests/engine.rs'), 'utf8');
  const checks = tracked.filter((name) => /^tests\/\w+\.rs$/.test(name) && name !== 'tests/engine.rs');
  assert.deepEqual(checks.filter((name) => !program.includes(`mod ${basename(name, '.rs')};`)), []);
  const native = files.filter(({ name }) => /^tests\/(?!fuzz)[\w/]+\.rs$/.test(name) && !NATIVE_ONLY.has(name));
  const wrong = native.flatMap(({ name, text }) => [...text.matchAll(/^\s*#\[test\]\s*\n\s*fn (\w+)/gm)].map(([, test]) => `${name}: ${test}`));
  assert.deepEqual(wrong, []);
});

/** Random inputs, and a file that a native tool prints: the bits are equal, so that once is enough. The rows of the tables run everywhere. */
const NATIVE_ONLY = new Set(['tests/properties.rs', 'tests/reader.rs', 'tests/circuit/properties.rs', 'tests/published_tubes.rs']);
