// A Chromium for the measures, as it runs in a container.
import { readFileSync } from 'node:fs';
import { chromium } from 'playwright-core';

const { args } = JSON.parse(readFileSync(new URL('../webdriver.json', import.meta.url), 'utf8'))['goog:chromeOptions'];

export const browser = () => chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args });
