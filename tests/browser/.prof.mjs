import { launchChromium } from './engines/chromium.mjs';
import { serveFolder } from '../../scripts/lib/static-server.mjs';
import { writeFileSync } from 'node:fs';
const LINE = { offline: false, latency: 150, downloadThroughput: 1_600_000 / 8, uploadThroughput: 750_000 / 8 };
const server = await serveFolder('/tmp/un/dist/site', { compressed: true });
const chromium = await launchChromium();
for (let k=0;k<2;k++){
const context = await chromium.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true, deviceScaleFactor: 3, serviceWorkers:'block' });
const page = await context.newPage();
const wire = await context.newCDPSession(page);
await wire.send('Network.enable');
await wire.send('Network.emulateNetworkConditions', LINE);
await wire.send('Emulation.setCPUThrottlingRate', { rate: 4 });
await wire.send('Profiler.enable'); await wire.send('Profiler.setSamplingInterval',{interval:500});
await wire.send('Profiler.start');
const events=[]; 
await page.addInitScript(()=>{ const f={}; globalThis.first=f; const look=()=>{const t=document.querySelector('ts-app')?.shadowRoot?.querySelector('ts-calculator')?.shadowRoot?.querySelector('ts-answers')?.shadowRoot?.querySelector('table'); if(t) f.answer=performance.now(); else requestAnimationFrame(look)}; requestAnimationFrame(look);});
await page.goto(`${server.address}voice/`, { waitUntil: 'commit' });
await page.waitForFunction(() => globalThis.first.answer !== undefined, undefined, { timeout: 60_000, polling: 50 });
const { profile } = await wire.send('Profiler.stop');
console.log(await page.evaluate(()=>first.answer));
if (k===1) writeFileSync('/tmp/start.cpuprofile', JSON.stringify(profile));
await context.close();}
await chromium.close(); await server.close(); process.exit(0);
