// The bit hash of tests/bits.rs in any of the three engines: the wasm test runner serves its page, the engine opens it.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { freePort } from '../../../tests/browser/engines/free-port.mjs';
import { ENGINES } from '../../../tests/browser/engines/index.mjs';
import { must, root, target } from './run.mjs';

const WITHIN = 300_000;
const wait = (ms) => new Promise((done) => setTimeout(done, ms));

/** The hash as that engine works it; nothing where the page does not say one. */
export async function bitsIn(name) {
  must('cargo', ['build', '--quiet', '--profile', 'tools', '-p', 'tagstrip-tools', '--features', 'bindings', '--bin', 'wasm-tests']);
  const address = `127.0.0.1:${await freePort()}`;
  const env = {
    ...process.env, CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER: join(target, 'tools/wasm-tests'),
    WASM_BINDGEN_USE_BROWSER: '1', NO_HEADLESS: '1', WASM_BINDGEN_TEST_ADDRESS: address,
  };
  const args = ['test', '--quiet', '-p', 'tagstrip-core', '--target', 'wasm32-unknown-unknown', '--test', 'engine', '--', 'bits::'];
  // A group of its own: the runner is cargo's child, and serves until it is ended.
  const runner = spawn('cargo', args, { cwd: root, env, detached: true, stdio: 'ignore' });
  const engine = await ENGINES[name].start();
  try {
    const page = await engine.visit({ width: 800, height: 600 });
    await serving(`http://${address}/`);
    await page.go(`http://${address}/`);
    for (const end = Date.now() + WITHIN; Date.now() < end; await wait(200)) {
      const text = await page.run(String(() => document.body.innerText), []);
      const hash = /bits\.hash ([0-9a-f]+)/.exec(text)?.[1];
      if (hash !== undefined) return hash;
      if (/test result: FAILED|error/i.test(text)) return undefined;
    }
    return undefined;
  } finally {
    await engine.close();
    process.kill(-runner.pid);
  }
}

async function serving(address) {
  for (const end = Date.now() + WITHIN; Date.now() < end; await wait(300)) {
    if (await fetch(address).then(({ ok }) => ok, () => false)) return;
  }
  throw new Error(`the test runner does not serve ${address}`);
}
