// Whether a lean coupling capacitor helps in noise, by an index of intelligibility that is not ours, voice by voice.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { atMost, built, must, root, told } from '../measuring/run.mjs';
import { venv } from '../measuring/venv.mjs';

const SPOKEN = 12_000;
/** A triode like 12AX7 into 122 kΩ: one tenth of the capacitor gives the 8 dB of common practice (no source). */
const LEAN = {
  tube: '12AX7', supply_volts: 250, plate_ohms: 100e3, cathode_ohms: 1500, microphone_volts: 0.03, tone: 'none',
  positions: [{ label: 'round', farads: 10e-9 }, { label: 'lean', farads: 1e-9 }], level_ohms: 122e3, level: 1, load_ohms: 100e6, load_farads: 0,
};

export async function measure() {
  built();
  const { init, render, work } = await import(pathToFileURL(join(root, 'dist/package/index.js')).href);
  await init(readFileSync(join(root, 'dist/package/tagstrip.wasm')));
  const folder = mkdtempSync(join(tmpdir(), 'tagstrip-stoi-'));
  const bank = (...args) => must(venv(), [join(root, 'scripts/lib/measure/stoi_bank.py'), ...args]);
  try {
    bank('speak', folder);
    let rate = 0;
    for (const file of readdirSync(folder)) {
      const samples = figures(join(folder, file));
      for (const position of [1, 2]) {
        const out = render(LEAN, { samples, rate: SPOKEN }, { position });
        rate = out.rate;
        writeFileSync(join(folder, file.replace('.f32', `.${position}.f32`)), Buffer.from(out.samples.buffer, out.samples.byteOffset, out.samples.byteLength));
      }
    }
    return rows(JSON.parse(bank('judge', folder, String(rate)).trim().split('\n').at(-1)), work('voice', LEAN).answers.lift_db[1]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function rows(voices, lift) {
  const changes = voices.map(({ rms }) => rms);
  const mean = changes.reduce((sum, change) => sum + change, 0) / changes.length;
  const quiet = Math.min(...voices.flatMap((each) => each.quiet));
  return [
    told('stoi.lift', lift, 'dB'),
    ...voices.map(({ voice, rms, peak }) => told(`stoi.${voice.replaceAll(' ', '_')}`, rms, 'at equal rms', `${peak.toFixed(4)} at equal peak`)),
    { name: 'stoi.least', value: Number(Math.min(...changes).toFixed(4)), unit: 'change at equal rms', bound: 0, holds: changes.every((change) => change >= 0) },
    atMost('stoi.mean_from_0.015', Math.abs(mean - 0.015), 'STOI', 0.01, `mean ${mean.toFixed(4)}`),
    { name: 'stoi.quiet', value: Number(quiet.toFixed(4)), unit: 'the least of both positions', bound: 0.995, holds: quiet >= 0.995 },
    atMost('stoi.peak', Math.max(...voices.map(({ peak }) => Math.abs(peak))), 'change at equal peak, either way', 0.12),
  ];
}

function figures(file) {
  const bytes = readFileSync(file);
  return new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
}
