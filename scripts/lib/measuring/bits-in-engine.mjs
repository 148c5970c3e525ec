// The bit hashes of the engine's tests in any of the three engines: the wasm test runner serves its page, the engine opens it.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { freePort } from '../../../tests/browser/engines/free-port.mjs';
import { ENGINES } from '../../../tests/browser/engines/index.mjs';
import { must, root, target } from './run.mjs';

const WITHIN = 300_000;
const wait = (ms) => new Promise((done) => setTimeout(done, ms));

/** How many of so many hashes are equal to the ones that the tests hold. */
export async function bitsIn(name, hashes) {
  must('cargo', ['build', '--quiet', '--profile', 'tools', '-p', 'tagstrip-tools', '--features', 'bindings', '--bin', 'wasm-tests']);
  const address = `127.0.0.1:${await freePort()}`;
  const env = {
    ...process.env, CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER: join(target, 'tools/wasm-tests'),
    WASM_BINDGEN_USE_BROWSER: '1', NO_HEADLESS: '1', WASM_BINDGEN_TEST_ADDRESS: address,
  };
  // Not quietly: cargo would hand that word on to the runner, which knows it not and ends.
  const args = ['test', '-p', 'tagstrip-core', '--target', 'wasm32-unknown-unknown', '--test', 'engine', '--', 'same_bits_everywhere'];
  // A group of its own: the runner is cargo's child, and serves until it is ended.
  const runner = spawn('cargo', args, { cwd: root, env, detached: true, stdio: ['ignore', 'ignore', 'pipe'] });
  const ended = runnerEnded(runner);
  ended.catch(() => undefined);
  const engine = await ENGINES[name].start();
  try {
    const page = await engine.visit({ width: 800, height: 600 });
    await Promise.race([serving(`http://${address}/`), ended]);
    await page.go(`http://${address}/`);
    for (const end = Date.now() + WITHIN; Date.now() < end; await wait(200)) {
      const text = await page.run(String(() => document.body.innerText), []);
      const [, result, passed] = /test result: (\w+)\. (\d+) passed/.exec(text) ?? [];
      if (result === 'ok' && Number(passed) !== hashes) throw new Error(`${passed} tests of hashes ran, not ${hashes}`);
      if (result !== undefined) return Number(passed);
    }
    return 0;
  } finally {
    await engine.close();
    if (runner.exitCode === null) process.kill(-runner.pid);
  }
}

/** Fails when the runner ends by itself, with what it said: it serves until it is ended. */
async function runnerEnded(runner) {
  let said = '';
  runner.stderr.on('data', (text) => { said = `${said}${text}`.slice(-2000); });
  await once(runner, 'exit');
  throw new Error(`the test runner has ended: ${said}`);
}

async function serving(address) {
  for (const end = Date.now() + WITHIN; Date.now() < end; await wait(300)) {
    if (await fetch(address).then(({ ok }) => ok, () => false)) return;
  }
  throw new Error(`the test runner does not serve ${address}`);
}
