// Chromium, through its own debugging protocol.
import { chromium } from 'playwright-core';

export const ARGUMENTS = [
  '--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
  '--disable-component-update', '--disable-sync', '--disable-dev-shm-usage',
];

/** Chromium as it runs in a container. */
export const launchChromium = (options = {}) =>
  chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ARGUMENTS, ...options });

export async function start() {
  const browser = await launchChromium();
  return { version: browser.version(), visit: (options) => visit(browser, options), close: () => browser.close() };
}

async function visit(browser, { width, height, forced = false }) {
  const context = await browser.newContext({ viewport: { width, height }, hasTouch: true, ...(forced && { forcedColors: 'active' }) });
  const page = await context.newPage();
  const told = [];
  context.on('console', (message) => { if (/error|warning/.test(message.type())) told.push(message.text()); });
  context.on('weberror', (error) => told.push(String(error.error())));
  return {
    told,
    go: (url) => page.goto(url),
    reload: () => page.reload(),
    run: (source, args) => page.evaluate(`(${source})(...${JSON.stringify(args)})`),
    press: async (keys) => { for (const key of keys) await (key.length === 1 ? page.keyboard.type(key) : page.keyboard.press(key)); },
    chord: (modifier, key) => page.keyboard.press(`${modifier}+${key}`),
    tap: (x, y) => page.mouse.click(x, y),
    size: (size) => page.setViewportSize(size),
    offline: (off) => context.setOffline(off),
    shot: () => page.screenshot(),
    close: () => context.close(),
  };
}
