// The rendering's own tool, in its words.
import { must } from './run.mjs';

/** What `render WHAT` said: a figure by its name. */
export function rendering(what) {
  const text = must('cargo', ['run', '--quiet', '--release', '-p', 'tagstrip-tools', '--bin', 'render', '--', what]);
  const rows = new Map([...text.matchAll(/^render\.(\w+) ([\d.]+)(.*)$/gm)].map(([, name, figure, rest]) => [name, { figure: Number(figure), rest: rest.trim() }]));
  return (name) => {
    const row = rows.get(name);
    if (row === undefined) throw new Error(`nothing was said of ${name}`);
    return row;
  };
}
