// A voice heard through the circuit: the built-in clip, a file, a microphone that is fake, and all that may be wrong with them.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, afterEach, before, test } from 'node:test';

import { chromium } from 'playwright-core';

import { open, serveSite, textOf, visitor } from './harness.mjs';

const USUAL = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'];
let server;
let folder;
let guest;
let chromiumBrowser;

before(async () => {
  server = await serveSite();
  folder = mkdtempSync(join(tmpdir(), 'tagstrip-listen-'));
});
after(async () => {
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

afterEach(async () => {
  await chromiumBrowser?.close();
});

/** A page with the panel open; without a service worker, which would fetch the clip beforehand. */
async function panel(args = []) {
  chromiumBrowser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: [...USUAL, ...args] });
  guest = await visitor(chromiumBrowser, server, { acceptDownloads: true, serviceWorkers: 'block' });
  await open(guest.page, server, 'voice');
  await guest.page.getByRole('button', { name: 'Hear it' }).click();
  await guest.page.getByRole('button', { name: 'The built-in sentence' }).waitFor();
  return guest.page.locator('ts-listen');
}

/** A WAV file of so many seconds, 16 bits. */
function wav(name, seconds, { rate = 48_000, channels = 1, value = (t) => 0.5 * Math.sin(2 * Math.PI * 440 * t) } = {}) {
  const count = Math.round(seconds * rate) * channels;
  const out = Buffer.alloc(44 + 2 * count);
  out.write('RIFF', 0);
  out.writeUInt32LE(36 + 2 * count, 4);
  out.write('WAVEfmt ', 8);
  [[16, 16, 4], [20, 1, 2], [22, channels, 2], [24, rate, 4], [28, rate * 2 * channels, 4], [32, 2 * channels, 2], [34, 16, 2]]
    .forEach(([at, figure, size]) => out.writeUIntLE(figure, at, size));
  out.write('data', 36);
  out.writeUInt32LE(2 * count, 40);
  for (let n = 0; n < count; n += 1) out.writeInt16LE(Math.round(32_767 * Math.max(-1, Math.min(1, value(Math.floor(n / channels) / rate)))), 44 + 2 * n);
  const path = join(folder, name);
  writeFileSync(path, out);
  return path;
}

const says = (page, pattern) => page.waitForFunction(([source]) => {
  const inside = (root) => { for (const each of root.querySelectorAll('*')) { if (each.localName === 'ts-listen') return each; const deeper = each.shadowRoot && inside(each.shadowRoot); if (deeper) return deeper; } return null; };
  return new RegExp(source).test(inside(document)?.shadowRoot?.textContent ?? '');
}, [pattern.source], { timeout: 30_000 });

/** Nothing was wrong, and nothing left the page. */
function clean() {
  assert.deepEqual(guest.strayed, []);
  assert.deepEqual(guest.faults.filter((fault) => !fault.startsWith('Service Worker registration blocked')), []);
}

test('the built-in sentence is fetched when it is wanted, heard in every position, matched, and saved', async () => {
  const listen = await panel();
  const { page } = guest;
  assert.ok(!server.asked.some((path) => path.endsWith('.ulaw')), 'not before');
  await listen.getByRole('button', { name: 'The built-in sentence' }).click();
  await says(page, /You hear the whole circuit/);
  await listen.getByRole('button', { name: /Stop the sound/ }).waitFor();
  const chosen = async () => listen.locator('.tracks button[aria-pressed="true"]').innerText();
  assert.match(await chosen(), /Clear/, 'the position that is switched in');
  await page.keyboard.press('1');
  await page.waitForTimeout(100);
  assert.match(await chosen(), /Round/);
  await page.keyboard.press('2');
  await page.waitForTimeout(100);
  assert.match(await chosen(), /Clear/);
  await listen.getByLabel('by transmitter: equal peaks').check();
  await listen.getByLabel('heavy').check();
  assert.match(await textOf(page, 'ts-listen'), /Position.*Peak.*Loudness.*At equal peaks/);
  const [download] = await Promise.all([page.waitForEvent('download'), listen.getByRole('button', { name: /Save .* as WAV/ }).click()]);
  const bytes = readFileSync(await download.path());
  assert.match(download.suggestedFilename(), /clear.*\.wav$/);
  assert.equal(bytes.subarray(0, 4).toString(), 'RIFF');
  assert.equal(bytes.readUInt32LE(24), 48_000);
  let peak = 0;
  for (let at = 44; at < bytes.length; at += 2) peak = Math.max(peak, Math.abs(bytes.readInt16LE(at)));
  assert.ok(peak > 3000 && peak < 16_500, `6 dB under full: ${peak}`);
  await page.keyboard.press('0');
  assert.equal(await listen.getByRole('button', { name: /Stop the sound/ }).count(), 0);
  clean();
});

for (const without of ['', ', where the browser has no recorder']) {
  test(`a fake microphone’s 440 Hz come back as 440 Hz${without}`, async () => {
    const path = wav('tone.wav', 6);
    const listen = await panel(['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream', `--use-file-for-fake-audio-capture=${path}`]);
    const { page } = guest;
    if (without !== '') await page.evaluate(() => { delete window.MediaRecorder; });
    await listen.getByRole('button', { name: 'Record your voice' }).click();
    await listen.getByRole('button', { name: 'End the recording' }).waitFor();
    await page.waitForTimeout(2500);
    await listen.getByRole('button', { name: 'End the recording' }).click();
    await says(page, /You hear the whole circuit/);
    const hertz = await listen.evaluate((element) => {
      const { samples, rate } = element.clip;
      const [first, last] = [Math.floor(0.3 * samples.length), Math.floor(0.9 * samples.length)];
      let [turns, began, ended] = [0, 0, 0];
      for (let n = first; n < last; n += 1) {
        const [a, b] = [samples[n - 1], samples[n]];
        if (a < 0 && b >= 0) { const at = n - b / (b - a); if (turns === 0) began = at; ended = at; turns += 1; }
      }
      return (turns - 1) * rate / (ended - began);
    });
    assert.ok(Math.abs(hertz - 440) <= 1, `${hertz} Hz`);
    clean();
  });
}

test('a refused or missing microphone is said in words', async () => {
  const listen = await panel(['--use-fake-device-for-media-stream', '--deny-permission-prompts']);
  await listen.getByRole('button', { name: 'Record your voice' }).click();
  await says(guest.page, /The microphone was refused/);
  await guest.page.evaluate(() => { navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotFoundError')); });
  await listen.getByRole('button', { name: 'Record your voice' }).click();
  await says(guest.page, /No microphone was found/);
  clean();
});

test('files that cannot be used, or not whole, are told in words, and the knobs stay live', async () => {
  const listen = await panel();
  const { page } = guest;
  const choose = (path) => listen.locator('input[type="file"]').setInputFiles(path);
  const text = join(folder, 'no.wav');
  writeFileSync(text, 'this is no sound');
  await choose(text);
  await says(page, /not sound that your browser reads/);
  await choose(wav('silence.wav', 1, { value: () => 0 }));
  await says(page, /no sound in the clip/);
  await choose(wav('long.wav', 31, { rate: 11_025, channels: 2, value: (t) => 1.5 * Math.sin(2 * Math.PI * 300 * t) }));
  await says(page, /first 20 s are taken.*mixed into one.*already cut off/);
  await says(page, /You hear the whole circuit/);
  const before = await listen.evaluate((element) => element.rendered.get('position 1').peak_volts);
  await page.evaluate(() => {
    const find = (root) => { for (const each of root.querySelectorAll('*')) { if (each.localName === 'ts-calculator') return each; const deeper = each.shadowRoot && find(each.shadowRoot); if (deeper) return deeper; } return null; };
    find(document).desk.type('level', '0.3');
  });
  await page.waitForTimeout(600);
  await says(page, /You hear the whole circuit/);
  const now = await listen.evaluate((element) => element.rendered.get('position 1').peak_volts);
  assert.ok(now < 0.8 * before, `${now} V after ${before} V`);
  clean();
});
