// Seconds of a clip rendered in a second: native, in Node and in the three engines; and how soon the first sound is there.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ENGINES } from '../../../tests/browser/engines/index.mjs';
import { rendering } from '../measuring/render.mjs';
import { atMost, built, root, told } from '../measuring/run.mjs';
import { serveFolder } from '../static-server.mjs';

const atLeast = (name, value, bound) => ({ name, value: Number(value.toPrecision(3)), unit: 'times real time', bound, holds: value >= bound });

export async function measure() {
  built();
  const said = rendering('speed');
  const bytes = readFileSync(join(root, 'dist/package/tagstrip.wasm'));
  const { init, render, from_mulaw } = await import(pathToFileURL(join(root, 'dist/package/index.js')).href);
  await init(bytes);
  const node = timed(render, from_mulaw(readFileSync(join(root, 'www/sounds/speech.ulaw'))));
  const engines = [];
  for (const name of Object.keys(ENGINES)) engines.push({ name, ...(await within(name)) });
  return [
    told('render.speed_native', said('speed_native').figure, 'times real time', `${said('speed_native_linear').figure} with the tube straight`),
    atLeast('render.speed_node', node, 15),
    ...engines.map(({ name, quick }) => atLeast(`render.speed_${name}`, quick, 5)),
    ...engines.map(({ name, first }) => atMost(`render.first_sound_${name}`, first, 'ms', 300, 'the first straight rendering of the built-in clip, from the asking')),
  ];
}

/** Runs here and in the browser. */
function timed(render, samples, linear = false) {
  const clip = { samples, rate: 12000 };
  let best = Infinity;
  for (let k = 0; k < 6; k += 1) {
    const start = performance.now();
    render({ microphone_volts: 0.1 + k / 1000 }, clip, { linear });
    best = Math.min(best, performance.now() - start);
  }
  return samples.length / 12 / best;
}

async function within(name) {
  const packed = await serveFolder(join(root, 'dist/package'));
  const sound = readFileSync(join(root, 'www/sounds/speech.ulaw')).toString('base64');
  const engine = await ENGINES[name].start();
  try {
    const page = await engine.visit({ width: 800, height: 600 });
    await page.go(`${packed.address}a-page-of-its-own`);
    return await page.run(String(inPage), [timed.toString(), sound]);
  } finally {
    await engine.close();
    await packed.close();
  }
}

/** Runs in the page of an engine. */
async function inPage(source, sound) {
  const { init, render, from_mulaw } = await import(new URL('index.js', location.href).href);
  await init();
  const run = new Function(`return ${source}`)();
  const samples = from_mulaw(Uint8Array.from(atob(sound), (letter) => letter.charCodeAt(0)));
  const start = performance.now();
  render({ microphone_volts: 0.1 }, { samples, rate: 12000 }, { linear: true });
  const first = performance.now() - start;
  return { first, quick: run(render, samples) };
}
