/**
 * What every page keeps, asked of every page that was built: it can be read without script, asks nothing of another
 * host, breaks no rule of its content policy, can be used by anyone (axe-core, WCAG 2.0 to 2.2 A and AA), never scrolls
 * sideways, and prints black on white without its controls.
 */
import { readFileSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openBrowser } from './browser.ts';
import { builtPages, computes, htmlOf, walkedPages } from './pages.ts';
import { type Served, serve } from './serve.ts';

const axe = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');

interface Looking {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly colorScheme: 'light' | 'dark';
}
const phone: Looking = { name: '360 px, light', width: 360, height: 740, colorScheme: 'light' };
const desk: Looking = { name: '1280 px, dark', width: 1280, height: 800, colorScheme: 'dark' };

let browser: Browser;
let site: Served;
beforeAll(async () => {
  site = await serve(process.env['SITE_DIR'] ?? 'dist');
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await site?.close();
});

/** A profile, and what its pages complained of. */
async function profile({ width, height, colorScheme }: Omit<Looking, 'name'>) {
  const context: BrowserContext = await browser.newContext({ viewport: { width, height }, colorScheme });
  const page: Page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('request', (request) => {
    if (!request.url().startsWith(site.url)) complaints.push(`asked ${request.url()}`);
  });
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) =>
      console.error(`content policy: ${event.violatedDirective} ${event.blockedURI}`),
    );
  });
  return { context, page, complaints };
}

/** Opens a page and waits until its islands, if it has any, have taken over. */
async function open(page: Page, path: string): Promise<void> {
  // A practice page gives every new device a draw of its own; here all look at the same.
  const same = /practice\/(?!kept)[a-z]/.test(path) ? '?draw=1' : '';
  await page.goto(site.url + path + same);
  await page.waitForSelector('body:not(:has(astro-island[ssr]))');
}

interface Finding {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly string[] }[];
}

test('the built site has its pages', () => {
  for (const page of [
    '',
    'en/',
    'en/install/t03/',
    'en/install/t04/',
    'en/install/t05/',
    'en/install/t06/',
    'en/install/t07/',
    'en/install/t11/',
    'en/crew/',
    'en/witness/',
  ])
    expect(builtPages).toContain(page);
});

describe.each([phone, desk])('every page at $name', (looking) => {
  test.each(walkedPages)('/%s', async (path) => {
    const { context, page, complaints } = await profile(looking);
    await open(page, path);
    await page.evaluate(axe);
    const violations = await page.evaluate(async () => {
      const { axe } = window as unknown as {
        axe: { run: (options: object) => Promise<{ violations: Finding[] }> };
      };
      const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
      return (await axe.run({ runOnly: tags })).violations;
    });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    await context.close();
    expect(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.target.join(' ')).join(', ')}`),
    ).toEqual([]);
    expect(complaints).toEqual([]);
    expect(wide).toBeLessThanOrEqual(0);
  });
});

describe('without script', () => {
  test.each(builtPages.filter((page) => page.includes('/install/sums/')))(
    '/%s shows its example, its working and its method',
    (path) => {
      const text = htmlOf(path);
      for (const said of [
        'Example: ',
        'The sum',
        'How it is worked out',
        'When to ask',
        'Script is off here',
      ])
        expect(text).toContain(said);
    },
  );

  test.each(builtPages.filter((page) => page.startsWith('en/install/t')))('/%s is whole', async (path) => {
    const context = await browser.newContext({
      javaScriptEnabled: false,
      viewport: { width: 360, height: 740 },
    });
    const page = await context.newPage();
    await page.goto(site.url + path);
    const main = page.locator('main');
    const figures = await main.locator('svg[role=img]:visible').count();
    const steps = await main.locator('.steps > li:visible').count();
    const text = await main.textContent();
    await context.close();
    expect(figures).toBeGreaterThan(0);
    expect(steps).toBeGreaterThan(5);
    for (const said of ['Hold point', 'What changed', 'What holds']) expect(text).toContain(said);
  });

  test('the crew board of the demo works is whole', async () => {
    const context = await browser.newContext({
      javaScriptEnabled: false,
      viewport: { width: 1280, height: 800 },
    });
    const page = await context.newPage();
    await page.goto(`${site.url}en/crew/`);
    const text = await page.locator('main').textContent();
    await context.close();
    for (const said of [
      'Who can take this job?',
      'T07',
      'Bettina Norrgate, Hanne Vallmoor, Pell',
      'As of 9 March 2026',
    ])
      expect(text).toContain(said);
  });

  test.each(['A4', 'Letter'])('the crew board is one sheet of %s', async (format) => {
    const page = await browser.newPage();
    await page.goto(`${site.url}en/crew/`, { waitUntil: 'networkidle' });
    const paper = (await page.pdf({ format })).toString('latin1');
    await page.close();
    expect(paper.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  });

  test.each(builtPages.filter((page) => !computes(page)))('/%s loads no script', (path) => {
    expect(htmlOf(path)).not.toMatch(/<script|<link rel="modulepreload"/);
  });

  test.each(builtPages)('/%s carries the strict policy', (path) => {
    const policy = /http-equiv="content-security-policy" content="([^"]*)"/i.exec(htmlOf(path))?.[1] ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
  });
});

/** Sheets that carry training values; no other page warns, so that the warning keeps its weight. */
const carriesTraining = (page: string) =>
  /install\/(t\d|cut|fill|sums\/(mark|span|expansion)\/)|practice\/(?!kept)[a-z]|witness\/paper\/t|\/(set|sheet|answer|run)\/$/.test(
    page,
  );

describe('on paper', () => {
  test.each(walkedPages)('/%s', async (path) => {
    const { context, page } = await profile({ ...phone, colorScheme: 'dark' });
    await open(page, path);
    await page.emulateMedia({ media: 'print' });
    const look = await page.evaluate(() => {
      const style = getComputedStyle(document.body);
      const seen = (query: string) =>
        [...document.querySelectorAll<HTMLElement>(query)].filter((e) => e.checkVisibility()).length;
      return {
        ink: style.color,
        ground: style.backgroundColor,
        nav: seen('nav'),
        buttons: seen('button, .button'),
      };
    });
    const warned = await page.locator('.not-for-construction').isVisible();
    await context.close();
    expect(look).toEqual({ ink: 'rgb(0, 0, 0)', ground: 'rgb(255, 255, 255)', nav: 0, buttons: 0 });
    expect(warned).toBe(carriesTraining(path));
  });
});
