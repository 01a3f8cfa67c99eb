/**
 * A trainer brings the files of a crew in and reads what went wrong how often: on a phone by touch, without a signal
 * once the page is there, with a bad file among the good ones; then the count of two trainers by keyboard.
 */
import { Buffer } from 'node:buffer';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { type AnswersFile, sheetDraws } from '../../src/practice/sheet.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { openBrowser } from './browser.ts';
import { type Served, serve } from './serve.ts';

const practice = practiceOf(readLibrary(contentFiles()).library);
const sheet = practice.sheets.get('measure-and-mark');
if (sheet === undefined) throw new Error('the sheet of this page is gone');

let browser: Browser;
let site: Served;
beforeAll(async () => {
  [browser, site] = await Promise.all([openBrowser(), serve(process.env['SITE_DIR'] ?? 'dist')]);
});
afterAll(async () => {
  await browser?.close();
  await site?.close();
});

/** The answers of one person; `slip` is made wherever it can be. */
function answers(person: string, bench: number, slip?: string) {
  let made = 0;
  let could = 0;
  const given = sheetDraws(sheet as NonNullable<typeof sheet>, bench, practice).map(
    ({ family, seed, draw }) => {
      const wrong = draw.wrong.filter(({ mistake }) => mistake.id === 'one-end-only');
      could += wrong.length;
      const own = slip === undefined ? [] : wrong;
      made += own.length;
      return {
        family,
        seed,
        answers: { ...draw.right, ...Object.fromEntries(own.map((w) => [w.ask, w.answer])) },
      };
    },
  );
  const file: AnswersFile = {
    v: 1,
    kind: 'answers',
    sheet: 'measure-and-mark',
    bench,
    person,
    device: `${person}-phone`,
    task: 'T05',
    answers: given,
  };
  return { file, made, could };
}
const asFile = (name: string, content: unknown) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(typeof content === 'string' ? content : JSON.stringify(content)),
});

async function open(width: number): Promise<{ page: Page; complaints: string[] }> {
  const context = await browser.newContext({ viewport: { width, height: 740 }, hasTouch: width < 500 });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  const fetched = page.waitForResponse((answer) => answer.url().endsWith('practice.json'));
  await page.goto(`${site.url}en/teach/answers/`);
  await fetched;
  await page.waitForLoadState('networkidle');
  return { page, complaints };
}

test('files of a crew: mistakes counted, few people said to be few, a bad file named; without a signal', async () => {
  const { page, complaints } = await open(360);
  await page.context().setOffline(true);
  const crew = [1, 2, 3, 4, 5].map((n) => answers(`p-${n}`, n, n <= 3 ? 'one-end-only' : undefined));
  const files = crew.map(({ file }, i) => asFile(`crew-${i}.json`, file));
  await page
    .getByLabel('Files of answers or of tries')
    .setInputFiles([...files, asFile('photo.json', '{'), asFile('set.json', { v: 1, kind: 'set' })]);
  await page.getByText('Files: 5. First tries: 30. People: 5.').waitFor();
  const refused = page.getByRole('alert');
  expect(await refused.textContent()).toContain('photo.json is no such file.');
  expect(await refused.textContent()).toContain('set.json is no such file.');

  const sum = (pick: 'made' | 'could') => crew.reduce((total, one) => total + one[pick], 0);
  expect(sum('made')).toBeGreaterThan(0);
  await page
    .getByText(
      `${sum('made')} of ${sum('could')}: Both ends of this piece go in, and the insertion of the second`,
    )
    .waitFor();
  // Twenty draws of cut with insertion, of which so many hold; below thirty no share is said.
  await page.getByText(`${20 - sum('made')} of 20 hold. So few say only this much`).waitFor();

  await page.getByText('Sheet 5, Measure and mark').tap();
  await page.getByText('Answered whole by 5, in part by 0.').waitFor();
  await page.getByText('5 people are too few to judge a draw by').waitFor();

  // p-5 held six of six, of one sheet: too few for a pool.
  const pool = page.getByRole('listitem').filter({ hasText: 'p-5' });
  expect(await pool.textContent()).toContain('Too few draws');
  // Two benches more, and eighteen of eighteen show four fifths; nine tenths they cannot.
  await page
    .getByLabel('Files of answers or of tries')
    .setInputFiles([6, 7].map((bench) => asFile(`more-${bench}.json`, answers('p-5', bench).file)));
  await page.getByText('Files: 7. First tries: 42. People: 5.').waitFor();
  expect(await pool.textContent()).toContain('It is passed. 18 of 18 draws hold.');
  await page.getByLabel('Share to be shown').selectOption({ label: '90 of 100 such draws' });
  expect(await pool.textContent()).toContain('Too few draws');

  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(360);
  expect(complaints).toEqual([]);
  await page.context().close();
});

test('answers that differ are not counted, and it is said why', async () => {
  const { page, complaints } = await open(1280);
  const right = answers('p-1', 1).file;
  const [first, ...rest] = right.answers as [
    AnswersFile['answers'][number],
    ...AnswersFile['answers'][number][],
  ];
  const other = { ...right, answers: [{ ...first, answers: { cut: 30 } }, ...rest] };
  await page
    .getByLabel('Files of answers or of tries')
    .setInputFiles([asFile('one.json', right), asFile('two.json', other)]);
  await page.getByText('Files: 2. First tries: 5. People: 1.').waitFor();
  await page.getByText('Not counted').click();
  await page.getByText('the same person answered it twice, differently').waitFor();
  expect(complaints).toEqual([]);
  await page.context().close();
});

test('two trainers, by keyboard', async () => {
  const { page, complaints } = await open(1280);
  await page.getByLabel('Both said it holds').focus();
  for (const count of ['20', '5', '10', '15']) {
    await page.keyboard.type(count);
    await page.keyboard.press('Tab');
  }
  // A common teaching example: 35 of 50, kappa 0.40.
  await page.getByText('35 of 50 alike. Beyond what chance gives: 0.40').waitFor();
  await page.getByLabel('Neither said so').fill('x');
  await page.getByText('Write a whole number, or leave it empty.').waitFor();
  expect(await page.getByText('35 of 50 alike').count()).toBe(0);
  expect(complaints).toEqual([]);
  await page.context().close();
});
