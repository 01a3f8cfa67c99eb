import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

/** Where a browser may stand on a machine for which no npm package ships one. */
const elsewhere = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:/Program Files/Google/Chrome/Application/chrome.exe',
];

/** The browser to test in: BROWSER_PATH, else the one npm installed, else one found on the machine. */
async function executable(): Promise<string> {
  const asked = process.env['BROWSER_PATH'];
  if (asked !== undefined && asked !== '') return asked;
  if (process.platform === 'linux' && process.arch === 'x64') {
    const { default: shipped } = await import('@sparticuz/chromium');
    return shipped.executablePath();
  }
  const found = elsewhere.find((path) => existsSync(path));
  if (found === undefined) throw new Error('no browser found: set BROWSER_PATH to a Chromium or Chrome');
  return found;
}

/** A fresh headless browser. Never with the package's own flags: they switch web security off. */
export async function openBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: await executable(), args: ['--no-sandbox'] });
}
