/**
 * Pages to which something is amiss: what they need cannot be fetched, a sheet cannot be drawn, an address names no draw,
 * a browser leaves a question open.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Sheet } from '../../src/practice/sheet.ts';
import { sheetForm } from '../../src/practice/sheetForm.ts';
import { packed } from '../../src/schema/link.ts';
import { teller } from '../../src/site/speak.ts';
import { readLength } from '../../src/trade/length.ts';
import { table } from '../site/wordTable.ts';
import { openBrowser } from './browser.ts';
import { type Served, serve } from './serve.ts';

const tell = teller(table('en'));
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

/** A phone of its own. */
async function phone(): Promise<{ page: Page; slips: string[] }> {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  const slips: string[] = [];
  page.on('pageerror', (error) => slips.push(error.message));
  return { page, slips };
}
const stands = (page: Page) => page.waitForSelector('body:not(:has(astro-island[ssr]))');
const reading = readLength(`2'-0 1/16"`);
/** Of the first reading alone nothing can be drawn. */
const sheet: Sheet = {
  id: 'sheet-907',
  number: 907,
  title: { en: 'One reading' },
  tasks: ['T05'],
  families: [
    {
      family: 'read-tape',
      draws: 1,
      narrow: { reading: { length: { from: reading, to: reading, step: readLength('1/16') } } },
    },
  ],
  rule: { need: 1, of: 1 },
};
const linkTo = async (of: Sheet) =>
  `${site.url}en/answer/${await packed('set', {
    v: 1,
    kind: 'set',
    sheet: of.id,
    bench: 3,
    person: 'p-17',
    task: 'T05',
    of: sheetForm(of),
  })}`;

describe('what cannot be fetched', () => {
  const whole = { ...sheet, families: [{ family: 'read-tape', draws: 1 }] };
  const about = { number: 907, bench: 3, person: 'p-17' };
  async function cutOff() {
    const { page, slips } = await phone();
    await page.route('**/practice.json', (route) => route.abort());
    await page.goto(await linkTo(whole));
    await page.getByText(tell('asks.notFetched')).waitFor();
    await page.unroute('**/practice.json');
    return { page, slips };
  }

  test('is said, and fetched again by its button', async () => {
    const { page, slips } = await cutOff();
    await page.getByRole('button', { name: tell('asks.fetchAgain') }).click();
    await page.getByText(tell('answerPage.ready', about)).waitFor();
    expect(slips).toEqual([]);
    await page.context().close();
  });

  test('is fetched again when the device has a network once more', async () => {
    const { page, slips } = await cutOff();
    // The browser may say that it is on line a moment before its network is.
    const ready = async () => {
      await page.context().setOffline(true);
      await page.context().setOffline(false);
      await page.waitForTimeout(300);
      return page.getByText(tell('answerPage.ready', about)).count();
    };
    await expect.poll(ready).toBe(1);
    expect(slips).toEqual([]);
    await page.context().close();
  });

  test('figures to tap and the preview of a sheet say it too', async () => {
    const { page, slips } = await phone();
    await page.route('**/TapFigure.*.js', (route) => route.abort());
    await page.goto(`${site.url}en/practice/place-supports/`);
    await page.getByText(tell('asks.notFetched')).first().waitFor();
    await page.route('**/practice.json', (route) => route.abort());
    await page.goto(`${site.url}en/set/`);
    await page.getByText(tell('asks.notFetched')).waitFor();
    expect(slips).toEqual([]);
    await page.context().close();
  });
});

test('a sheet of which nothing can be drawn is said to be so, and put away for good', async () => {
  const { page, slips } = await phone();
  await page.goto(await linkTo(sheet));
  await page.getByText(tell('answerPage.undrawable', { number: 907, bench: 3 })).waitFor();
  await page.getByRole('button', { name: tell('answerPage.away') }).click();
  await page.getByText(tell('answerPage.open'), { exact: true }).waitFor();
  await page.reload();
  await page.getByText(tell('answerPage.open'), { exact: true }).waitFor();
  expect(slips).toEqual([]);
  await page.context().close();
});

test('a sheet that comes once more, changed, is told apart from the one that is being answered', async () => {
  const { page, slips } = await phone();
  const of = (draws: number): Sheet => ({
    ...sheet,
    families: [{ family: 'read-tape', draws }],
    rule: { need: draws, of: draws },
  });
  await page.goto(await linkTo(of(1)));
  await page.getByLabel(tell('answerPage.device')).fill('dm-phone');
  await page.getByRole('button', { name: tell('answerPage.begin') }).click();
  await page.getByText(tell('answerPage.kept')).waitFor();
  const changed = page.getByText(tell('handing.changed', { number: 907, bench: 3, person: 'p-17' }));
  const open = async (next: Sheet) => {
    const { hash } = new URL(await linkTo(next));
    await page.evaluate((to) => {
      window.location.hash = to;
    }, hash);
    await page.waitForFunction(() => window.location.hash === '');
  };
  await open(of(1));
  await open(of(2));
  await changed.waitFor();
  expect(await changed.count()).toBe(1);
  expect(slips).toEqual([]);
  await page.context().close();
});

describe('a practice page', () => {
  test.each(['?draw=', `?draw=${'x'.repeat(65)}`])('%s names no draw', async (search) => {
    const { page, slips } = await phone();
    await page.goto(`${site.url}en/practice/read-tape/${search}`);
    await stands(page);
    const label = page.locator('section.answer .label').first();
    await expect.poll(() => label.textContent()).toMatch(/^Draw number \d{4}$/);
    expect(slips).toEqual([]);
    await page.context().close();
  });

  test('does not wait for what the browser asks the person', async () => {
    const { page, slips } = await phone();
    await page.addInitScript(() => {
      navigator.storage.persist = () => new Promise(() => {});
    });
    await page.goto(`${site.url}en/practice/read-tape/?draw=4172`);
    await stands(page);
    const second = page.locator('form.asks input').last();
    await second.fill('7.25');
    await page.getByRole('button', { name: tell('practicePage.tape') }).click();
    // The day stands there only once the try was kept.
    await page.locator('.comes-again', { hasText: /^This sheet comes again/ }).waitFor();
    const before = await page.locator('.comes-again').textContent();
    expect(before?.trim()).not.toBe(tell('practiceList.whatNext'));
    expect(slips).toEqual([]);
    await page.context().close();
  });
});
