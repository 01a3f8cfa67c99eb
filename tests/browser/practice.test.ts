/** Practice as an apprentice meets it: a draw, a wrong answer told why, a right one, tries kept, no network. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { drawOf } from '../../src/practice/draw.ts';
import { keyOf } from '../../src/practice/key.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';
import { formatLength, fromInches } from '../../src/trade/length.ts';
import { openBrowser } from './browser.ts';
import { type Served, serve } from './serve.ts';

const { library } = readLibrary(contentFiles());
const practice = practiceOf(library);
const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };

/** The key of a draw, from the same core that the page calls. */
function keyFor(id: string, seed: string) {
  const family = practice.families.get(id);
  if (family === undefined) throw new Error(`no family ${id}`);
  return keyOf(drawOf(family, seed, practice.world), practice.world, language);
}

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

/** Pastes a whole length into the Feet field of the n-th entry, as a person would. */
async function enter(page: Page, entry: number, inches: number): Promise<void> {
  const feet = page.getByLabel('Feet', { exact: true }).nth(entry);
  await feet.fill('');
  await feet.focus();
  await page.evaluate(
    (text) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData('text/plain', text);
      document.activeElement?.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }),
      );
    },
    formatLength(fromInches(inches)),
  );
}

test('a mistake is named, the second try holds, and both are there after a reload without network', async () => {
  const seed = '4172';
  const key = keyFor('cut-with-insertion', seed);
  const right = key.answers as Readonly<Record<string, number>>;
  const forgotten = key.mistakes.find(({ id }) => id === 'insertion-forgotten');
  if (forgotten === undefined) throw new Error('this draw has no forgotten insertion; choose another seed');

  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.goto(`${site.url}en/practice/cut-with-insertion/?draw=${seed}`, { waitUntil: 'networkidle' });
  await context.setOffline(true);

  await enter(page, 0, Number(forgotten.answer));
  await enter(page, 1, Number(right['left']));
  await page.getByRole('button', { name: 'Put the tape on it' }).click();
  await page.getByText('Rework 1 of 2').waitFor();
  expect(await page.locator('main').textContent()).toContain(forgotten.says);

  await enter(page, 0, Number(right['cut']));
  await page.getByRole('button', { name: 'Tape it again' }).click();
  await page.getByText('All 2 hold', { exact: true }).waitFor();
  expect(await page.locator('main').textContent()).not.toContain('Rework 1 of 2');
  await page.getByRole('button', { name: 'One way that holds' }).waitFor();

  await page.getByRole('button', { name: 'A new draw' }).click();
  expect(await page.locator('main').textContent()).not.toContain(`Draw number ${seed}`);

  await context.setOffline(false);
  await page.goto(`${site.url}en/practice/cut-with-insertion/?draw=${seed}`, { waitUntil: 'networkidle' });
  await page.getByText(`Draw number ${seed}, second try`).waitFor();
  await context.close();
});

test('a draw reads back what was written and no more: no tape, no other unit, and millimetres are not turned', async () => {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.goto(`${site.url}en/practice/cut-with-insertion/?draw=4172`, { waitUntil: 'networkidle' });
  const feet = page.getByLabel('Feet', { exact: true }).first();
  const entry = page.locator('form.asks fieldset').first();
  await feet.fill(`7' 0 5/16"`);
  await feet.press('Tab');
  await entry.getByText('Reads 7 ft 0 5/16 in.', { exact: true }).waitFor();
  expect(await entry.textContent()).not.toMatch(/mm|That is/);
  expect(await entry.locator('svg, .tape').count()).toBe(0);

  await entry.getByLabel('Inches', { exact: true }).fill('');
  await entry.getByLabel('Part inch').selectOption('0');
  await feet.fill('2142 mm');
  await feet.press('Tab');
  await entry.getByText('2142 mm is not read here').waitFor();
  expect(await feet.inputValue()).toBe('2142 mm');
  expect(await entry.getByRole('button').count()).toBe(0);
  await context.close();
});

test('the engineer is a right answer where the table has no row', async () => {
  const seeds = Array.from({ length: 300 }, (_, k) => String(k));
  const seed = seeds.find((one) => keyFor('fill-check', one).answers['within'] === 'ask');
  if (seed === undefined) throw new Error('none of 300 draws asks the engineer');
  const { area } = keyFor('fill-check', seed).answers;

  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.goto(`${site.url}en/practice/fill-check/?draw=${seed}`, { waitUntil: 'networkidle' });
  await page.getByLabel(/in²/).fill(Number(area).toFixed(2));
  await page.getByText('The tables have no row for this channel').click();
  await page.getByText('Ask the engineer', { exact: true }).click();
  await page.getByRole('button', { name: 'Put the tape on it' }).click();
  await page.getByRole('button', { name: 'Tape it again' }).waitFor();
  expect(await page.locator('main').textContent()).not.toMatch(/Rework \d of/);
  await context.close();
});

test('an order is moved by buttons alone, and a broken order says which step came too early', async () => {
  const seed = '7';
  const key = keyFor('order-of-cutting', seed);
  const order = key.answers['order'] as readonly string[];
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.goto(`${site.url}en/practice/order-of-cutting/?draw=${seed}`, { waitUntil: 'networkidle' });

  const family = practice.families.get('order-of-cutting');
  const ask = family?.asks.find((one) => one.kind === 'order');
  const textOf = (id: string) =>
    (ask?.kind === 'order' ? ask.items.find((i) => i.id === id)?.text['en'] : undefined) ?? id;
  const rows = page.locator('.order > li');
  const put = async (wanted: readonly string[]) => {
    for (const [place, id] of wanted.entries()) {
      const earlier = page.getByRole('button', { name: `Earlier: ${textOf(id)}`, exact: true });
      for (;;) {
        const texts = await rows.locator('span').allTextContents();
        if (texts[place] === textOf(id)) break;
        await earlier.click();
      }
    }
  };
  await put([...order].reverse());
  await page.getByRole('button', { name: 'Put the tape on it' }).click();
  await page.getByText('Rework 1 of 1').waitFor();
  await put(order);
  await page.getByRole('button', { name: 'Tape it again' }).click();
  await expect.poll(() => page.locator('main').textContent()).not.toMatch(/Rework \d of/);
  await context.close();
});

test('a part that was tapped and not named holds the taping, and has the focus', async () => {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.goto(`${site.url}en/practice/find-faults/?draw=1`, { waitUntil: 'networkidle' });
  const parts = page.locator('form.asks button[aria-expanded]');
  await parts.first().click();
  await page.getByRole('button', { name: 'Put the tape on it' }).click();
  await page.getByText('Not taped: a part is tapped and its fault is not named yet.').waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('SELECT');
  await page.getByText('Nothing taped yet').waitFor();
  await context.close();
});

test('what cannot be read is not taped as a blank: the focus goes to it, and its message says what to write', async () => {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  const tape = () => page.getByRole('button', { name: 'Put the tape on it' }).click();
  const untaped = () => page.getByText('Nothing taped yet').waitFor();

  await page.goto(`${site.url}en/practice/cut-with-insertion/?draw=4172`, { waitUntil: 'networkidle' });
  const feet = page.getByLabel('Feet', { exact: true }).first();
  await feet.fill('7 ft 17 3/8');
  await tape();
  await page.getByText('Not taped: one entry cannot be read yet.').waitFor();
  await untaped();
  await expect.poll(() => feet.evaluate((box) => box === document.activeElement)).toBe(true);
  const entry = await page.locator('fieldset').first().textContent();
  expect(entry).toContain(`It reads 8'-5\u00a03/8"`);
  expect(entry).not.toContain('Nothing is written yet');

  await page.goto(`${site.url}en/practice/fill-check/?draw=1`, { waitUntil: 'networkidle' });
  await page.getByLabel(/in²/).fill('2,06');
  await tape();
  await untaped();
  await page.getByText('Write it with a point').waitFor();
  await page.getByLabel(/in²/).fill('2.06 in2');
  await tape();
  await page.getByRole('button', { name: 'Tape it again' }).waitFor();

  await page.goto(`${site.url}en/practice/order-of-cutting/?draw=7`, { waitUntil: 'networkidle' });
  await tape();
  await untaped();
  await page.getByText('Not taped: the order shown counts only after you move a row.').waitFor();
  await page
    .getByRole('button', { name: /^Later:/ })
    .first()
    .click();
  await tape();
  await page.getByRole('button', { name: 'Tape it again' }).waitFor();
  await context.close();
});
