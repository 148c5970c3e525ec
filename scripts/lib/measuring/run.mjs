// What the measures share: running a command for its words, and rows that know whether they hold.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

export const root = new URL('../../..', import.meta.url).pathname;
export const target = process.env.CARGO_TARGET_DIR ?? join(root, 'target');

/** Runs a command in the project's root: its exit code and all it wrote. */
export function run(command, args, { env = {}, cwd = root } = {}) {
  const made = spawnSync(command, args, { cwd, encoding: 'utf8', env: { ...process.env, ...env }, maxBuffer: 1 << 28 });
  if (made.error) throw made.error;
  return { code: made.status ?? 1, text: `${made.stdout}${made.stderr}` };
}

/** The same, where anything but success is a fault. */
export function must(command, args, options) {
  const { code, text } = run(command, args, options);
  if (code !== 0) throw new Error(`${command} ${args.join(' ')}: ${text.trim().split('\n').slice(-1)[0]}`);
  return text;
}

/** A row with the most that will do. */
export const atMost = (name, value, unit, bound, remark) => ({ name, value: round(value), unit, bound, holds: value <= bound, remark });
/** A row that only tells. */
export const told = (name, value, unit, remark) => ({ name, value: round(value), unit, holds: true, remark });

const round = (value) => (typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(4)) : value);

/** Makes dist/ where it is missing. */
export function built() {
  if (!existsSync(join(root, 'dist/site/index.html')) || !existsSync(join(root, 'dist/package/index.js'))) must('scripts/build', []);
}

/** How the core's tests are run as WebAssembly, in Node or in Chromium. */
export function wasmTests(args, where) {
  must('cargo', ['build', '--quiet', '--profile', 'tools', '-p', 'tagstrip-tools', '--features', 'bindings', '--bin', 'wasm-tests']);
  const env = {
    CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER: join(target, 'tools/wasm-tests'),
    WASM_BINDGEN_TEST_TIMEOUT: '600',
    ...(where === 'chromium' && {
      WASM_BINDGEN_USE_BROWSER: '1',
      WASM_BINDGEN_TEST_DRIVER_TIMEOUT: '60',
      WASM_BINDGEN_TEST_WEBDRIVER_JSON: join(root, 'scripts/lib/webdriver.json'),
      CHROMEDRIVER: process.env.CHROMEDRIVER ?? '/usr/bin/chromedriver',
    }),
  };
  return run('cargo', ['test', '-p', 'tagstrip-core', '--target', 'wasm32-unknown-unknown', ...args], { env });
}

/** The middle one of some figures, and the one that a share of them does not exceed. */
export function quantile(figures, share) {
  const sorted = [...figures].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}
