import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import test from 'node:test';
import { pathToFileURL } from 'node:url';
import './all.js';
import { wordsOf } from './known.js';
import { general } from './plain.js';
import { allRows, type BareCalculator } from './rows.js';

interface Package {
  init(): Promise<unknown>;
  catalogue(): readonly BareCalculator[];
}

// The built package, whose catalogue is the engine's own; the runner starts in the project's root.
const BUILT = join(process.cwd(), 'dist', 'package', 'index.js');
const skip = existsSync(BUILT) ? false : 'the package is not built yet';

async function built(): Promise<readonly BareCalculator[]> {
  const made = (await import(pathToFileURL(BUILT).href)) as Package;
  await made.init();
  return made.catalogue();
}

test('every calculator, input, choice, group and answer of the catalogue has its words, and no word is left over', { skip }, async () => {
  const catalogue = await built();
  assert.ok(catalogue.length >= 3);
  for (const { id, inputs, answers } of catalogue) {
    const words = wordsOf(id);
    assert.ok(words, `${id} has no words`);
    const rows = allRows(inputs);
    const paths = new Set(rows.map(([path]) => path));
    for (const [path, row] of rows) {
      assert.ok(words.inputs[path], `${id}: input ${path}`);
      // Types of tube are names and stand for themselves.
      if (!/(^|\.)(tube|rectifier|regulator)$/.test(path)) for (const choice of row.choices ?? []) assert.ok(words.choices[path]?.[choice], `${id}: ${path} ${choice}`);
    }
    for (const row of inputs) {
      const { group } = row as { group?: string };
      if (group !== undefined) assert.ok(words.groups[group], `${id}: group ${group}`);
    }
    const keys = new Set(answers.map(({ key }) => key));
    for (const key of keys) assert.ok(words.answers[key], `${id}: answer ${key}`);
    assert.deepEqual(Object.keys(words.inputs).filter((path) => !paths.has(path)), [], `${id}: inputs that are gone`);
    assert.deepEqual(Object.keys(words.answers).filter((key) => !keys.has(key.split('.')[0] ?? '')), [], `${id}: answers that are gone`);
  }
});

test('a face names only inputs and answers that there are', { skip }, async () => {
  for (const { id, inputs, answers } of await built()) {
    const face = wordsOf(id)?.face;
    assert.ok(face, id);
    const paths = new Set(allRows(inputs).map(([path]) => path));
    const keys = new Set(answers.map(({ key }) => key));
    const named = [
      face.lug.answer,
      ...face.tables.flatMap(({ rows }) => rows.map(({ answer }) => answer)),
      ...face.tags.map(({ answer }) => answer),
      ...Object.values(face.near),
    ];
    assert.deepEqual(named.filter((key) => !keys.has(key.replace(/\[\d+\]$/, ''))), [], id);
    const fields = [
      ...(face.switch === undefined ? [] : [face.switch]),
      ...face.tables.flatMap(({ columns }) => (columns === undefined ? [] : [columns])),
      ...face.pictures.flatMap(({ lines }) => (lines === undefined ? [] : [lines])),
      ...Object.entries(face.beside).flatMap(([path, others]) => [path, ...others]),
      ...Object.keys(face.near),
    ];
    assert.deepEqual(fields.map(general).filter((path) => !paths.has(path)), [], id);
  }
});
