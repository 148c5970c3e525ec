// Measures what is named, or everything, and fails if a bound is not kept. Each measure is a module of its own.
import { readdirSync } from 'node:fs';

const HERE = new URL('measure/', import.meta.url);
const NAMES = readdirSync(HERE).filter((name) => name.endsWith('.mjs')).map((name) => name.slice(0, -4)).sort();
const wanted = process.argv.slice(2).map((word) => word.split('='));
const unknown = wanted.filter(([name]) => !NAMES.includes(name));
if (unknown.length > 0) {
  console.error(`no such measure: ${unknown.join(' ')}; there are ${NAMES.join(' ')}`);
  process.exit(2);
}

let short = 0;
for (const [name, how] of wanted.length > 0 ? wanted : NAMES.map((each) => [each])) {
  let rows;
  try {
    rows = await (await import(new URL(`${name}.mjs`, HERE).href)).measure(how);
  } catch (fault) {
    rows = [{ name, value: 'none', unit: '', bound: '', holds: false, remark: String(fault.message ?? fault).split('\n')[0] }];
  }
  for (const row of rows) {
    short += row.holds ? 0 : 1;
    const { value, unit = '', bound = 'none', holds, remark } = row;
    console.log([row.name, value, unit, bound, holds ? 'holds' : 'falls short', ...(remark ? [remark] : [])].join(', '));
  }
}
// A measure that failed half way may have left a server open, which must not hold the rest.
process.exit(short > 0 ? 1 : 0);
