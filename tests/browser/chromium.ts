import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

/** Where Chromium usually is; CHROMIUM names another place. */
const places = [
  process.env['CHROMIUM'],
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** A headless browser. Throws when the machine has none: these tests mean nothing without one. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = places.find((p) => p !== undefined && existsSync(p));
  if (executablePath === undefined) throw new Error('no Chromium found; set CHROMIUM to its path');
  return chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
}
