// The winding template printed by Chromium on A4 and Letter, and its lines measured in the PDF.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { browser } from '../measuring/browser.mjs';
import { atMost, built, root } from '../measuring/run.mjs';
import { venv } from '../measuring/venv.mjs';
import { serveFolder } from '../static-server.mjs';

export async function measure() {
  built();
  const server = await serveFolder(join(root, 'dist/site'));
  const chromium = await browser();
  const folder = mkdtempSync(join(tmpdir(), 'tagstrip-template-'));
  try {
    const page = await (await chromium.newContext({ serviceWorkers: 'block' })).newPage();
    await page.goto(`${server.address}coil/`);
    await page.locator('ts-answers').first().waitFor();
    await page.waitForFunction(() => customElements.get('ts-sheet') !== undefined && customElements.get('ts-template') !== undefined);
    const rows = [];
    for (const format of ['A4', 'Letter']) {
      const path = join(folder, `${format}.pdf`);
      await page.pdf({ path, format, preferCSSPageSize: false });
      const told = spawnSync(venv(), [join(root, 'scripts/lib/measure/template_pdf.py'), path], { encoding: 'utf8' });
      if (told.status !== 0) throw new Error(told.stderr.trim().split('\n').at(-1));
      const { tall, wide, pitch, pages } = JSON.parse(told.stdout);
      rows.push(atMost(`template.bar_200_${format}`, Math.abs(tall - 200), 'mm off in 200', 0.2, `${tall.toFixed(4)} mm, on ${pages} pages`));
      rows.push(atMost(`template.bar_100_${format}`, Math.abs(wide - 100), 'mm off in 100', 0.1));
      rows.push(atMost(`template.turns_${format}`, Math.abs(pitch - 39 * 1.11), 'mm off over 39 turns of 1.11 mm', 0.05));
    }
    return rows;
  } finally {
    await chromium.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
