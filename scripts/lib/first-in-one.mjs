// Makes one script of the first and all that it imports at once. Split off for what comes later, those would be a dozen
// files of a few bytes, each a way there and back on a slow line; what comes later imports them from the first instead.
import { build } from 'esbuild';

/** `outputs`: the text of each script of a build by its name; `exported`: the names it gives. The new texts, by name. */
export async function firstInOne(outputs, first, early, exported, options) {
  const own = (name, given) => `${name.replaceAll(/\W/g, '_')}_${given}`;
  const gives = early.map((name) => `export { ${exported(name).map((given) => `${given} as ${own(name, given)}`).join(', ')} } from './${name}';`);
  const made = await build({
    ...options, write: false, stdin: { contents: [`import './${first}';`, ...gives].join('\n'), resolveDir: '/' },
    plugins: [{
      name: 'built',
      setup({ onResolve, onLoad }) {
        onResolve({ filter: /^\.\// }, ({ path, kind }) => (kind === 'dynamic-import' ? { path, external: true } : { path: path.slice(2), namespace: 'built' }));
        onLoad({ filter: /.*/, namespace: 'built' }, ({ path }) => {
          // Taken in without being named, it would be there twice: in the first, and by itself for what comes later.
          if (path !== first && !early.includes(path)) throw new Error(`${path} is imported by the way, not by ${first} itself`);
          return { contents: outputs.get(path), loader: 'js' };
        });
      },
    }],
  });
  const rest = [...outputs].filter(([name]) => name !== first && !early.includes(name));
  return new Map([[first, made.outputFiles[0].text], ...rest.map(([name, text]) => [name, early.reduce((so, each) => fromFirst(so, each), text)])]);

  /** `a`, or `a as b`, of a file that is in the first now. */
  function renamed(name, each) {
    const [given, called = given] = each.trim().split(/\s+as\s+/);
    return `${own(name, given)} as ${called}`;
  }

  /** The imports of a script that is in the first now. */
  function fromFirst(text, name) {
    const file = name.replaceAll('.', '\\.');
    return text
      .replaceAll(new RegExp(`import\\s*\\{([^{}]*)\\}\\s*from\\s*"\\./${file}"`, 'g'), (_, names) => `import{${names.split(',').map((each) => renamed(name, each)).join(',')}}from"./${first}"`)
      .replaceAll(new RegExp(`import\\s*"\\./${file}";?`, 'g'), '');
  }
}
