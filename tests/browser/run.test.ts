/**
 * Your run as a fitter builds it: by thumb at 360 px from nothing to a printed job card, and once by keyboard alone;
 * kept over a reload, undone, handed to another device in a link, refused with every fault when it is bad.
 */
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { checkRun } from '../../src/schema/checkRun.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { speaker } from '../../src/schema/words.ts';
import { openBrowser } from './browser.ts';
import { type Served, serve } from './serve.ts';

const { library } = readLibrary(contentFiles());
const speak = speaker(library.words.get('en') ?? new Map());
const demoRuns = [...library.demoRuns.values()].sort((a, b) => a.rank - b.rank);

let browser: Browser;
let site: Served;
let folder: string;
const complaints: string[] = [];

async function device(touch = true, width = 360): Promise<{ context: BrowserContext; page: Page }> {
  const context = await browser.newContext({
    acceptDownloads: true,
    hasTouch: touch,
    viewport: { width, height: width < 900 ? 740 : 800 },
  });
  const page = await context.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`${page.url()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => complaints.push(`${page.url()}: ${error.message}`));
  return { context, page };
}
async function open(page: Page, hash = ''): Promise<void> {
  await page.goto(`${site.url}en/run/${hash}`, { waitUntil: 'networkidle' });
  await page.waitForSelector('body:not(:has(astro-island[ssr]))');
}

const answer = (page: Page) => page.locator('#run-answer');
const sheetsOf = async (page: Page, format: string) =>
  (await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g)?.length;
const wide = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
/** How much of the job card lies outside its sheet, px; taken on paper. */
async function cardOver(page: Page): Promise<number> {
  await page.emulateMedia({ media: 'print' });
  const over = await page.evaluate(() => {
    const box = (query: string) => document.querySelector(query)?.getBoundingClientRect();
    const [card, signs, block] = [box('.job-card'), box('.card-signs'), box('.card-block')];
    if (card === undefined || signs === undefined || block === undefined) return 9999;
    return Math.max(signs.bottom - block.top, block.bottom - card.bottom);
  });
  await page.emulateMedia({ media: null });
  return over;
}

/** One leg by thumb: the way, the feet field with the whole length, the button. */
async function addByThumb(page: Page, way: string, length: string): Promise<void> {
  await page.locator(`#add-leg .stand:has(input[aria-label="${way}"])`).tap();
  const feet = page.locator('#add-leg .tape-entry input').first();
  await feet.fill(length);
  await feet.press('Tab');
  await page.getByRole('button', { name: /^Add leg/ }).tap();
}
const opening = (page: Page, name: string) =>
  page
    .locator('summary')
    .filter({ hasText: new RegExp(`^\\s*${name}`) })
    .first();

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'trayhand-run-'));
  [browser, site] = await Promise.all([openBrowser(), serve(process.env['SITE_DIR'] ?? 'dist')]);
});
afterAll(async () => {
  await browser?.close();
  await site?.close();
  await rm(folder, { recursive: true, force: true });
});

describe('by thumb, from nothing to a job card', () => {
  let page: Page;
  let context: BrowserContext;
  let link: string;
  beforeAll(async () => {
    ({ page, context } = await device());
  });
  afterAll(() => context?.close());

  test('three legs; the way chosen names the fitting, and one being entered is phantom', async () => {
    await open(page);
    await answer(page).getByText('No leg yet').waitFor();
    await addByThumb(page, 'East', `24' 8 1/2"`);
    await page.locator('#add-leg .stand:has(input[aria-label="North"])').tap();
    await page.getByText('Turn: flat elbow 90°, left.').waitFor();
    await page.getByText('West: it would fold back on leg 1.').waitFor();
    expect(await page.locator('#add-leg .stand.W input').count()).toBe(0);
    const feet = page.locator('#add-leg .tape-entry input').first();
    await feet.fill(`10' 9"`);
    await feet.press('Tab');
    await page.getByText('drawn in phantom line until you add it').waitFor();
    expect(await page.locator('.figure svg [stroke-dasharray^="18"]').count()).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Add leg 2' }).tap();
    await addByThumb(page, 'Down', `6' 4"`);
    await page.getByRole('button', { name: `Undo leg 3, 6'-4"` }).waitFor();
  });

  test('undone, redone, laid out', async () => {
    await page.getByRole('button', { name: /^Undo leg 3/ }).tap();
    await page.getByRole('button', { name: 'Add leg 3' }).waitFor();
    await page.getByRole('button', { name: /^Do again: leg 3/ }).tap();
    await page.getByRole('button', { name: 'Add leg 4' }).waitFor();
    expect(await page.locator('.findings li').first().textContent()).toMatch(/Zone [A-Z]\d/);
    await page.getByRole('button', { name: 'Lay it out' }).tap();
    await page.getByText('none holds with fewer').waitFor();
    await answer(page).getByText('4 pieces').waitFor();
  });

  test('what cannot be is said in words and at its field, nothing typed is lost, and undo takes it back', async () => {
    await opening(page, 'Stock and saw').tap();
    const stock = page.getByRole('group', { name: 'Length of a stick' });
    await stock.getByLabel('Feet', { exact: true }).fill('5');
    await page
      .getByText(/longer than a length of 5'-0"/)
      .first()
      .waitFor();
    expect(await stock.getByLabel('Feet', { exact: true }).inputValue()).toBe('5');
    await page.getByRole('button', { name: 'Undo change of Stock and saw' }).tap();
    await answer(page).getByText('4 pieces').waitFor();
  });

  test('an end with a length that cannot be read is not added, and nothing typed is lost', async () => {
    await opening(page, 'Ends').tap();
    const list = page.locator('.run-screen > div > details.opens').filter({ hasText: 'A last leg without' });
    await list.getByText('One more').tap();
    await list.getByLabel('Ends at').selectOption('free');
    await list.getByLabel('Joined').selectOption('free');
    const open = list.getByRole('group', { name: 'Open to the instrument' });
    await open.getByLabel('Inches', { exact: true }).fill('18');
    await list.getByRole('button', { name: 'Add it' }).tap();
    await list.getByText('Not added').waitFor();
    expect(await open.getByLabel('Inches', { exact: true }).inputValue()).toBe('18');
    expect(await list.getByLabel('On leg').locator('option').allTextContents()).toEqual(['Not said', '3']);
    expect(await list.locator('summary').first().textContent()).toMatch(/Ends\s+0/);
    await open.locator('.offer').tap();
    await list.getByRole('button', { name: 'Add it' }).tap();
    await expect.poll(() => list.locator('summary').first().textContent()).toMatch(/Ends\s+1/);
    await page.getByText('Lay it out again').waitFor();
    await page.getByRole('button', { name: 'Undo adding end 1' }).tap();
  });

  test('no sideways scroll, and nothing to touch is smaller than 48 px', async () => {
    for (const name of ['Channel, number', 'Supports set', 'As built', 'Hand it on', 'Runs on this device'])
      await opening(page, name).tap();
    expect(await wide(page)).toBeLessThanOrEqual(0);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('.run-screen :is(a, button, input, select, summary)')]
        .filter((e) => e.checkVisibility() && !e.matches('input[type=radio], input[type=checkbox]'))
        .filter((e) => e.getBoundingClientRect().height < 47.5)
        .map((e) => e.outerHTML.slice(0, 120)),
    );
    expect(small).toEqual([]);
  });

  test('what was cut stands beside what was planned', async () => {
    const piece = page
      .locator('details.inner')
      .filter({ has: page.locator('summary', { hasText: 'not cut yet' }) })
      .last();
    await piece.locator('summary').tap();
    const feet = piece.getByLabel('Feet', { exact: true });
    await feet.fill(`5' 8 9/16"`);
    await feet.press('Tab');
    await piece.getByLabel('Cut by').fill('HV');
    await piece.getByLabel('Day, as').fill('2026-03-09');
    await piece.getByRole('button', { name: 'Write it down' }).tap();
    await page.getByText(`1/16" long`).waitFor();
  });

  test('a reload keeps it', async () => {
    await page.getByLabel('Number of the run').fill('ALD-021');
    await page.reload({ waitUntil: 'networkidle' });
    await answer(page).getByText('ALD-021').waitFor();
    await answer(page).getByText('4 pieces').waitFor();
    await opening(page, 'As built').tap();
    await page.getByText(`1/16" long`).waitFor();
  });

  test('the job card is one sheet, A4 and Letter, and nothing of it is cut off', async () => {
    expect(await sheetsOf(page, 'A4')).toBe(1);
    expect(await sheetsOf(page, 'Letter')).toBe(1);
    expect(await cardOver(page)).toBeLessThanOrEqual(0);
    const card = await page.locator('.job-card').textContent();
    for (const said of ['NOT FOR CONSTRUCTION', 'ALD-021', 'CAUTION', 'Hold', 'T08a', 'Witness, date'])
      expect(card).toContain(said);
    expect(card).not.toMatch(/bond across/i);
  });

  test('the file is what the command reads; the link opens in another profile', async () => {
    await opening(page, 'Hand it on').tap();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save the run alone' }).tap(),
    ]);
    const path = join(folder, 'run.json');
    await download.saveAs(path);
    expect(checkRun(JSON.parse(await readFile(path, 'utf8')), library.catalogue, TRADE_USUAL)).toHaveProperty(
      'data',
    );
    await page.getByRole('button', { name: 'Make a link' }).tap();
    link = await page.getByLabel('Link', { exact: true }).inputValue();

    const other = await device(false, 1280);
    await open(other.page, link.slice(link.indexOf('#')));
    await answer(other.page).getByText('ALD-021').waitFor();
    await other.page.getByRole('button', { name: 'Keep it on this device' }).click();
    await other.page.reload({ waitUntil: 'networkidle' });
    await answer(other.page).getByText('4 pieces').waitFor();
    expect(other.page.url()).not.toContain('#');
    await other.context.close();
  });

  test('a bad file is refused with every fault, and the run stays', async () => {
    const path = join(folder, 'bad.json');
    const legs = [{ id: '1', from: 'start', fitting: null, dir: 'X', length: 0, colour: 'red' }];
    await writeFile(
      path,
      JSON.stringify({ v: 1, tray: 'card-4', start: { kind: 'free', joint: 'free' }, legs }),
    );
    await page.getByLabel('Take a run in').setInputFiles(path);
    for (const field of ['legs[0].dir', 'legs[0].length', 'legs[0].colour'])
      await page.getByText(`${field}:`).first().waitFor();
    await answer(page).getByText('ALD-021').waitFor();
  });

  test('a copy, and removed again by a second press', async () => {
    await opening(page, 'Runs on this device').tap();
    await page.getByRole('button', { name: 'Copy this run' }).tap();
    await expect.poll(() => page.locator('.kept-runs').first().locator('li').count()).toBe(2);
    const remove = page.locator('.kept-runs').first().locator('li').first().locator('button').last();
    await remove.tap();
    await page.getByText('Press again to remove').waitFor();
    await remove.tap();
    await expect.poll(() => page.locator('.kept-runs').first().locator('li').count()).toBe(1);
  });
});

test('by keyboard alone: legs, lay-out, print', async () => {
  const { context, page } = await device(false, 1280);
  await open(page);
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-printed', 'yes');
  });
  const tabTo = async (query: string) => {
    for (let i = 0; i < 200; i++) {
      if (await page.evaluate((q) => document.activeElement?.matches(q) === true, query)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`the tab key never comes to ${query}`);
  };
  await tabTo('.rose input');
  for (const [key, feet, inches] of [
    ['e', '24', '8'],
    ['n', '10', '9'],
    ['d', '6', '4'],
  ] as const) {
    await page.keyboard.press(key);
    await tabTo('.tape-entry input');
    await page.keyboard.type(feet);
    await page.keyboard.press('Tab');
    await page.keyboard.type(inches);
    await page.keyboard.press('Enter');
    await tabTo('.rose input');
  }
  expect(await page.locator('.legs > li').count()).toBe(3);
  await tabTo('.lay-out button');
  await page.keyboard.press('Enter');
  await page.getByText('none holds with fewer').waitFor();
  await tabTo('[data-print]');
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.body.getAttribute('data-printed'))).toBe('yes');
  expect(await sheetsOf(page, 'A4')).toBe(1);
  await context.close();
});

test.each(demoRuns.map((run) => [run.id, speak({ say: run.name })] as const))(
  'the demo run %s opens, and its job card is one sheet of A4 and of Letter',
  async (_, name) => {
    const { context, page } = await device(false, 1280);
    await open(page);
    await opening(page, 'Begin with an example').click();
    await page.getByRole('button', { name: new RegExp(`${name}$`) }).click();
    await answer(page).getByText(name).waitFor();
    await page.locator('.job-card').first().waitFor({ state: 'attached' });
    expect(await sheetsOf(page, 'A4')).toBe(1);
    expect(await sheetsOf(page, 'Letter')).toBe(1);
    expect(await cardOver(page)).toBeLessThanOrEqual(0);
    await context.close();
  },
);

test('what one sheet cannot hold goes on behind it, numbered, and nothing of either is cut off', async () => {
  const { context, page } = await device(false, 1280);
  await open(page);
  const joints = Array.from({ length: 60 }, (_, k) => ({
    leg: '1',
    at: 30 + 37 * k + (k % 7),
    kind: 'butt',
  }));
  const supports = Array.from({ length: 48 }, (_, k) => ({
    ...{ leg: '1', at: 20 + 48 * k, way: 'horizontal', hold: k % 5 === 0 ? 'clamp' : 'guide' },
  }));
  const legs = [{ id: '1', from: 'start', fitting: null, dir: 'E', length: 2400 }];
  const run = { v: 1, tray: 'card-4', start: { kind: 'free', joint: 'free' }, legs, joints, supports };
  const path = join(folder, 'long.json');
  await writeFile(path, JSON.stringify({ ...run, stock: 240 }));
  await opening(page, 'Hand it on').click();
  await page.getByLabel('Take a run in').setInputFiles(path);
  await answer(page).getByText('61 pieces').waitFor();
  await page.locator('.job-card').last().waitFor({ state: 'attached' });
  await opening(page, 'Channel, number').click();
  await page.locator('#run-crew').fill('HV, RK, LZ, KD, MO, PT, SW, BN');
  await page.locator('.job-card', { hasText: 'BN' }).last().waitFor({ state: 'attached' });
  const sheets = await page.locator('.job-card').count();
  expect(sheets).toBeGreaterThan(1);
  expect(await sheetsOf(page, 'A4')).toBe(sheets);
  expect(await sheetsOf(page, 'Letter')).toBe(sheets);
  await page.emulateMedia({ media: 'print' });
  const over = await page.evaluate(() =>
    [...document.querySelectorAll('.card-body')].map((body) => body.scrollHeight - body.clientHeight),
  );
  expect(over.filter((px) => px > 0)).toEqual([]);
  const text = (await page.locator('.job-card').allTextContents()).join(' ');
  for (const said of [`Sheet 2 of ${sheets}`, '1-61', 'S60', 'BN']) expect(text).toContain(said);
  await context.close();
});

test('temperatures and lengths as the device is set; the run keeps its own', async () => {
  const { context, page } = await device(false, 1280);
  await page.goto(`${site.url}en/settings/`, { waitUntil: 'networkidle' });
  await page.getByText('Degrees Celsius').click();
  await page.getByText('Metric beside them').click();
  await open(page);
  await opening(page, 'Begin with an example').click();
  await page.getByRole('button', { name: /Outdoors/ }).click();
  await opening(page, 'Temperatures of the metal').click();
  const now = page.getByLabel('Now, °C');
  expect(await now.inputValue()).toBe('20');
  await now.fill('10');
  await opening(page, 'Hand it on').click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the run alone' }).click(),
  ]);
  const path = join(folder, 'celsius.json');
  await download.saveAs(path);
  expect(JSON.parse(await readFile(path, 'utf8')).temps).toEqual({ lowF: -20, highF: 120, nowF: 50 });
  expect(await page.locator('.run-comes').textContent()).toMatch(/\d" \([\d\s.]+mm\)/);
  await context.close();
});

test('nothing complained', () => expect(complaints).toEqual([]));
