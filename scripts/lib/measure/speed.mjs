// `voice` with its defaults, two positions of 400 frequencies, answers and curves: in Node, native, and in numpy.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { atMost, built, must, quantile, root, told } from '../measuring/run.mjs';
import { venv } from '../measuring/venv.mjs';

const WANT = { want: ['answers', 'cautions', 'curves'] };
const [WARM, ROUNDS] = [200, 400];

export async function measure() {
  const node = await inNode();
  const best = quantile(node, 0.1);
  const native = figure(/speed\.native_milliseconds ([\d.]+)/, must('cargo', ['run', '--quiet', '--release', '-p', 'tagstrip-tools', '--bin', 'speed']));
  const numpy = figure(/speed\.numpy_milliseconds ([\d.]+)/, must(venv(), [join(root, 'scripts/lib/measure/speed_numpy.py')]));
  return [
    atMost('speed.voice_in_node', quantile(node, 0.5), 'ms', 2, `median of ${ROUNDS}, through the package with its words`),
    told('speed.voice_in_node_best_tenth', best, 'ms'),
    told('speed.voice_native_best_tenth', native, 'ms'),
    atMost('speed.wasm_over_native', best / native, 'times', 1.5, 'of the best tenths, which other work on the machine disturbs least'),
    told('speed.numpy_scipy_best_tenth', numpy, 'ms', 'operating point and 2 × 400 responses alone; ours also has cautions, lift, headroom'),
    told('speed.numpy_over_wasm', numpy / best, 'times'),
  ];
}

async function inNode() {
  built();
  const { init, work } = await import(pathToFileURL(join(root, 'dist/package/index.js')).href);
  await init(readFileSync(join(root, 'dist/package/tagstrip.wasm')));
  const times = Array.from({ length: WARM + ROUNDS }, (_, round) => {
    const inputs = { supply_volts: 250 + (round % ROUNDS) / 40 };
    const start = performance.now();
    const { curves } = work('voice', inputs, WANT);
    const taken = performance.now() - start;
    if (curves.flatMap(({ lines }) => lines).filter(({ x }) => x.length === 400).length < 2) throw new Error('not two lines of 400');
    return taken;
  });
  return times.slice(WARM);
}

function figure(pattern, text) {
  const found = pattern.exec(text);
  if (found === null) throw new Error(`no figure in: ${text.trim().split('\n').at(-1)}`);
  return Number(found[1]);
}
