/**
 * Every calculator's sheet on a phone, by keyboard alone: it opens with its example, answers what is typed, says what is
 * wrong in words beside the entry and keeps what was typed; and it shows figures as the device is set.
 */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openBrowser } from './browser.ts';
import { builtPages } from './pages.ts';
import { type Served, serve } from './serve.ts';

let browser: Browser;
let site: Served;
beforeAll(async () => {
  site = await serve();
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await site?.close();
});

async function phone(): Promise<{ context: BrowserContext; page: Page; complaints: string[] }> {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  return { context, page, complaints };
}

async function open(page: Page, path: string): Promise<void> {
  await page.goto(site.url + path);
  await page.waitForSelector('body:not(:has(astro-island[ssr]))');
}

const answer = async (page: Page) =>
  ((await page.locator('#sum-answer .huge').textContent()) ?? '').replaceAll('\u00a0', ' ');

/** Goes on by Tab until an entry of the form that can be typed into has the focus. */
async function tabToEntry(page: Page): Promise<void> {
  for (let k = 0; k < 60; k++) {
    await page.keyboard.press('Tab');
    const there = await page.evaluate(
      () => document.activeElement?.matches('#sum-given input[type=text]') === true,
    );
    if (there) return;
  }
  throw new Error('no entry was reached by Tab');
}

const sums = builtPages.filter((page) => page.includes('/install/sums/'));

test('every calculator has its sheet', () => expect(sums).toHaveLength(19));

test.each(sums)('/%s by keyboard', async (path) => {
  const { context, page, complaints } = await phone();
  await open(page, path);
  expect(await answer(page)).toMatch(/^Example: /);

  await tabToEntry(page);
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('x');
  await page.keyboard.press('Tab');
  const wrong = page.locator('#sum-given input[aria-invalid=true]');
  expect(await wrong.count()).toBe(1);
  expect(await wrong.inputValue()).toBe('x');
  const described = (await wrong.getAttribute('aria-describedby')) ?? '';
  const texts = await Promise.all(
    described.split(' ').map((id) => page.locator(`[id="${id}"]`).allTextContents()),
  );
  expect(texts.flat().join(' ').length).toBeGreaterThan(10);
  expect(await answer(page)).toBe('One entry cannot be read yet');

  await wrong.focus();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('9');
  expect(await page.locator('#sum-given input[aria-invalid=true]').count()).toBe(0);
  const said = await answer(page);
  expect(said).not.toMatch(/^Example|cannot be read|Write your/);
  expect(said.length).toBeGreaterThan(5);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  await context.close();
  expect(wide).toBeLessThanOrEqual(0);
  expect(complaints).toEqual([]);
});

describe('as the device is set', () => {
  test('metric, °C and the edition are chosen by keyboard, kept, and taken up by the sheets', async () => {
    const { context, page, complaints } = await phone();
    await open(page, 'en/settings/');
    for (const [group, option] of [
      ['Metric measures in answers', 'Metric instead of them'],
      ['Temperatures', 'Degrees Celsius'],
      ['Edition of the code that is in force where you work', '2017'],
    ] as const) {
      const box = page.getByRole('group', { name: group }).getByRole('radio', { name: option });
      await box.focus();
      await page.keyboard.press('Space');
    }
    await page.getByText('Kept on this device.').waitFor();
    await page.getByText('A length reads 3747 mm, a temperature 10 °C.').waitFor();
    await page.reload();
    await page.waitForSelector('body:not(:has(astro-island[ssr]))');
    expect(await page.getByRole('radio', { name: 'Degrees Celsius' }).isChecked()).toBe(true);

    await open(page, 'en/install/sums/expansion/');
    await expect.poll(() => answer(page)).toBe('Example: Set the gap at 9.1 mm');
    // −20 °F is −28.9 °C. 0 °C is 32 °F: (105 − 32) / 125 of 1 in is 0.584 in, 14.8 mm.
    expect(await page.getByLabel('Coldest the metal gets, °C').inputValue()).toBe('-28.9');
    await page.getByLabel('The metal now, °C').fill('0');
    await expect.poll(() => answer(page)).toBe('Set the gap at 14.8 mm');

    await open(page, 'en/install/sums/groundpath/');
    await expect.poll(() => page.getByText('Table 392.60(A).', { exact: true }).count()).toBe(1);
    expect(await answer(page)).toMatch(/^Example: .* mm² marked/);
    await open(page, 'en/install/fill/');
    await expect.poll(() => page.getByLabel('Edition of the code').inputValue()).toBe('2017');
    await context.close();
    expect(complaints).toEqual([]);
  });
});

test.each(['section', 'beam', 'expansion', 'offset'])(
  '%s with metric beside never scrolls sideways',
  async (sum) => {
    const { context, page } = await phone();
    await page.addInitScript(() =>
      localStorage.setItem('trayhand-settings', '{"metric":"beside","degrees":"C"}'),
    );
    await open(page, `en/install/sums/${sum}/`);
    await expect.poll(() => answer(page)).toMatch(/\d (mm|cm|kg)/);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    await context.close();
    expect(wide).toBeLessThanOrEqual(0);
  },
);

test('rows come and go, and a row that stays keeps what was typed', async () => {
  const { context, page } = await phone();
  await open(page, 'en/install/sums/jumper/');
  await page.getByRole('button', { name: 'Add a device' }).click();
  await page.getByLabel('Rating, amperes').nth(2).fill('200 amps');
  expect(await answer(page)).toBe('One entry cannot be read yet');
  await page.getByRole('button', { name: 'Take device 1 out' }).click();
  expect(await page.getByLabel('Rating, amperes').nth(1).inputValue()).toBe('200 amps');
  await page.getByLabel('Rating, amperes').nth(1).fill('200');
  // NFPA 70-2023 Table 250.122: 200 A, copper 6 AWG.
  expect(await answer(page)).toBe('6 AWG copper, or larger');
  await context.close();
});

test('what is asked follows what was chosen, and what was typed before is still there', async () => {
  const { context, page } = await phone();
  await open(page, 'en/install/sums/span/');
  await page.getByLabel('Load along the span, lb per foot').fill('200');
  expect(await answer(page)).toBe('Ask the engineer');
  await page.getByText('A section without a load table: an estimate').click();
  await page.getByLabel('Outside depth, in inches').fill('2');
  await page.getByText('A tray of the catalogue, by its load table').click();
  expect(await page.getByLabel('Outside depth, in inches').count()).toBe(0);
  await page.getByText('A section without a load table: an estimate').click();
  expect(await page.getByLabel('Outside depth, in inches').inputValue()).toBe('2');
  await context.close();
});
