/**
 * Set sheets with things to set down, and with steps of a job: answered by keyboard without a verdict, kept at every stroke
 * through a reload, saved, and what the file holds is what the engine takes for right.
 */
import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { kindsOf } from '../../src/practice/family.ts';
import { regradeSheet, sheetDraws } from '../../src/practice/sheet.ts';
import { readAnswersFile } from '../../src/practice/sheetFiles.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { packed } from '../../src/schema/link.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';
import { openBrowser } from './browser.ts';
import { answerAll, keys } from './hands.ts';
import { type Served, serve } from './serve.ts';

const { library } = readLibrary(contentFiles());
const practice = practiceOf(library);
const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };

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

/** The smallest sheet with an ask of the kind. */
function sheetWith(kind: 'place' | 'job') {
  const [sheet] = [...practice.sheets.values()]
    .filter(({ families }) =>
      families.some(({ family }) => {
        const of = practice.families.get(family);
        return of !== undefined && kindsOf(of).includes(kind);
      }),
    )
    .sort((a, b) => a.families.length - b.families.length);
  if (sheet === undefined) throw new Error(`no sheet with ${kind}`);
  return sheet;
}

test.each(['place', 'job'] as const)('a sheet with %s', async (kind) => {
  const sheet = sheetWith(kind);
  const bench = 3;
  const set = { v: 1, kind: 'set', sheet: sheet.id, bench, person: 'p-7', task: sheet.tasks[0] };
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, acceptDownloads: true });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(`${site.url}en/answer/${await packed('set', set)}`, { waitUntil: 'networkidle' });
  await page.getByLabel('Name of this device').fill('phone-3');
  await page.getByRole('button', { name: 'Begin', exact: true }).click();

  const draws = sheetDraws(sheet, bench, practice);
  for (const { place, draw } of draws) {
    await page.getByRole('heading', { name: `Draw ${place} of ${draws.length}` }).waitFor();
    await answerAll({ page, draw, world: practice.world, language, hands: keys }, draw.right);
    const before = await page.locator('form.asks').evaluate((form) => form.textContent);
    await page.reload({ waitUntil: 'networkidle' });
    await page.getByRole('heading', { name: `Draw ${place} of ${draws.length}` }).waitFor();
    if (kind === 'place') await page.locator('.set-down > li').first().waitFor();
    // What was said when it was done is not said again.
    const strip = (text: string | null) => (text ?? '').replace(/Set down: .*? in all\./, '');
    expect(strip(await page.locator('form.asks').evaluate((form) => form.textContent))).toBe(strip(before));
    expect(await page.locator('main').textContent()).not.toMatch(/Rework|It holds/);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    await page.locator('form.asks button[type=submit]').click();
  }
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('.buttons .button').first().click(),
  ]);
  const file = readAnswersFile(JSON.parse(readFileSync(await download.path(), 'utf8')));
  const grade = regradeSheet(file, practice, language);
  expect(grade.draws.flatMap(({ findings }) => findings.map(({ verdict }) => verdict))).not.toContain(
    'rework',
  );
  expect(grade.passed).toBe(true);
  expect(complaints).toEqual([]);
  await context.close();
});
