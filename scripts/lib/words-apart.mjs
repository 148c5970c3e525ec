// Makes of each import in the list of calculators' words one of its own, fetched when it is asked for.
import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';

export const wordsApart = {
  name: 'words-apart',
  setup(build) {
    build.onLoad({ filter: /words[/\\]apart\.ts$/ }, async ({ path }) => {
      const folder = join(path, '..');
      const list = await readFile(join(folder, 'calculators.ts'), 'utf8');
      const imports = [...list.matchAll(/^import \{ (\w+) \} from '(\.\/[\w-]+)\.js';$/gm)];
      const [, named = ''] = /CALCULATORS[^=]*=\s*\[([^\]]*)\]/.exec(list) ?? [];
      const names = named.split(',').map((name) => name.trim()).filter((name) => name !== '');
      const ways = names.map((name) => {
        const [, , file] = imports.find(([, one]) => one === name) ?? [];
        if (file === undefined) throw new Error(`${name} stands in the list of words without an import of its own`);
        return `[${JSON.stringify(basename(file))}, () => import('${file}.js').then(({ ${name} }) => ${name})]`;
      });
      return { contents: `export const WAYS = new Map([${ways.join(', ')}]);`, loader: 'ts', resolveDir: folder };
    });
  },
};
