/**
 * A trainer sets a sheet: by the keys of a desk, then by thumb on a phone. It goes to another device by link, by a
 * picture of its code and by file, is answered there and handed back; its set and its key are on paper, each alone.
 */
import { Buffer } from 'node:buffer';
import { readFileSync } from 'node:fs';
import type {
  Browser,
  BrowserContext,
  BrowserContextOptions,
  Download,
  Locator,
  Page,
} from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import type { Fact } from '../../src/practice/model.ts';
import { gradeSheet, regradeSheet, type Sheet, sheetDraws } from '../../src/practice/sheet.ts';
import { readAnswersFile } from '../../src/practice/sheetFiles.ts';
import { readSheetForm, sheetForm } from '../../src/practice/sheetForm.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { unpacked } from '../../src/schema/link.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';
import { MOST_DRAWS } from '../../src/site/making/draft.ts';
import { formatLength, fromInches, type Ticks } from '../../src/trade/length.ts';
import { openBrowser } from './browser.ts';
import { answerAll, type Hands, keys, thumb } from './hands.ts';
import { type Served, serve } from './serve.ts';

const files = contentFiles();
const { library } = readLibrary(files);
const practice = practiceOf(library);
const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };
const axe = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');

let browser: Browser;
let site: Served;
/** What a page complained of. */
const complaints: string[] = [];

beforeAll(async () => {
  [browser, site] = await Promise.all([openBrowser(), serve(process.env['SITE_DIR'] ?? 'dist')]);
});
afterAll(async () => {
  await browser?.close();
  await site?.close();
});

const desk: BrowserContextOptions = { viewport: { width: 1280, height: 800 }, colorScheme: 'dark' };
const phone: BrowserContextOptions = {
  viewport: { width: 360, height: 740 },
  deviceScaleFactor: 2,
  hasTouch: true,
  isMobile: true,
};

async function device(options: BrowserContextOptions): Promise<{ context: BrowserContext; page: Page }> {
  const context = await browser.newContext({ acceptDownloads: true, ...options });
  const page = await context.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`${page.url()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => complaints.push(`${page.url()}: ${error.message}`));
  page.on('request', (request) => {
    const own = request.url().startsWith(site.url) || request.url().startsWith('blob:');
    if (!own) complaints.push(request.url());
  });
  await page.addInitScript(() => {
    const count = window as unknown as { printed: number };
    count.printed = 0;
    window.print = () => {
      count.printed += 1;
    };
  });
  return { context, page };
}

async function open(page: Page, path = 'en/sheet/'): Promise<void> {
  await page.goto(`${site.url}${path}`, { waitUntil: 'load' });
  await page.locator('astro-island[ssr]').first().waitFor({ state: 'detached' });
}

const task = (page: Page, id: string) =>
  page.locator('.task-choices').getByRole('checkbox', { name: new RegExp(`^${id} `) });
const titleOf = (id: string) => library.scenarios.get(id)?.title['en'] ?? id;
const exercise = (page: Page, id: string) =>
  page.locator('.made-families > li').filter({ has: page.getByRole('button', { name: ` ${titleOf(id)}` }) });
const said = async (of: Locator): Promise<string> => (await of.textContent()) ?? '';
const answerLine = (page: Page) => said(page.locator('.making .huge'));

/** Takes exercises with so many draws. */
async function take(page: Page, hands: Hands, picks: Readonly<Record<string, number>>): Promise<void> {
  for (const [id, draws] of Object.entries(picks)) {
    const row = exercise(page, id).first();
    await hands.press(row.getByRole('checkbox', { name: titleOf(id) }).first());
    if (draws > 1) await hands.pick(row.locator(`#draws-${id}`), String(draws));
  }
}

const linkOf = (page: Page) => page.getByLabel('Link', { exact: true }).inputValue();

/** The sheet that a link carries, read as another device reads it. */
async function sheetIn(link: string): Promise<Sheet> {
  const found = await unpacked(link);
  if (found.found !== 'json') throw new Error(found.found);
  return readSheetForm((found.json as { of: unknown }).of, practice);
}

async function textOf(download: Download): Promise<string> {
  const parts: Buffer[] = [];
  for await (const part of await download.createReadStream()) parts.push(Buffer.from(part as Buffer));
  return Buffer.concat(parts).toString('utf8');
}

async function saved(page: Page, name: string | RegExp): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name }).click(),
  ]);
  return { name: download.suggestedFilename(), text: await textOf(download) };
}

async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { axe: run } = window as unknown as {
      axe: { run: (o: object) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const found = await run.run({ runOnly: tags });
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
  });
}

const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Presses what prints, and stays where the browser would print. */
async function print(page: Page, name: string | RegExp): Promise<void> {
  const before = await page.evaluate(() => (window as unknown as { printed: number }).printed);
  await page.getByRole('button', { name }).click();
  await page.waitForFunction((old) => (window as unknown as { printed: number }).printed > old, before);
  await page.emulateMedia({ media: 'print' });
}
/** Prints it, after which the page is as it was. Hands back how many sheets of paper it took. */
async function paper(page: Page): Promise<number> {
  const pdf = await page.pdf({ format: 'A4' });
  await page.locator('.printed-set').waitFor({ state: 'detached' });
  await page.emulateMedia({ media: 'screen' });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

/** Writes bench and person on a sheet that came, and answers all of it as its key says. Hands back the answers file. */
async function answer(page: Page, hands: Hands, sheet: Sheet, bench: number): Promise<string> {
  await hands.write(page, page.getByLabel('Bench number'), String(bench));
  await hands.write(page, page.getByLabel('Your id'), 'p-7');
  await hands.press(page.getByRole('button', { name: 'To the sheet' }));
  await hands.write(page, page.getByLabel('Name of this device'), 'phone-3');
  await hands.press(page.getByRole('button', { name: 'Begin' }));
  const draws = sheetDraws(sheet, bench, practice);
  for (const [k, { draw }] of draws.entries()) {
    await page.getByRole('heading', { name: `Draw ${k + 1} of ${draws.length}` }).waitFor();
    await answerAll({ page, draw, world: practice.world, language, hands }, draw.right);
    const last = k === draws.length - 1;
    await hands.press(page.getByRole('button', { name: last ? 'Look it over' : 'Next draw' }));
  }
  return (await saved(page, 'Save the answers')).text;
}

function passes(text: string, sheet: Sheet, bench: number): void {
  const file = readAnswersFile(JSON.parse(text));
  expect(file).toMatchObject({ sheet: sheet.id, bench, person: 'p-7', of: sheetForm(sheet) });
  const grade = gradeSheet(sheet, bench, file.answers, practice, language);
  expect([grade.passed, grade.held]).toEqual([true, grade.n]);
  // Practice: nothing takes it for evidence.
  expect(() => regradeSheet(file, practice, language)).toThrow(/made on a page/);
}

const tape = (fact: Fact | undefined): Ticks => {
  if (fact?.kind !== 'length') throw new Error('no length');
  return fact.ticks;
};

describe('by keyboard on a desk', () => {
  let page: Page;
  let sheet: Sheet;
  let link = '';
  beforeAll(async () => {
    ({ page } = await device(desk));
    await open(page);
  });
  afterAll(() => page.context().close());

  test('tasks, exercises, an example, less of it, a rule', async () => {
    expect(await answerLine(page)).toBe('Choose a task.');
    await keys.press(task(page, 'T05'));
    await keys.press(task(page, 'T13'));
    await expect.poll(() => answerLine(page)).toBe('Choose exercises.');
    await take(page, keys, { 'cut-with-insertion': 3, 'fill-check': 2 });
    expect(await answerLine(page)).toBe('5 draws. All hold, or again.');

    const cut = exercise(page, 'cut-with-insertion');
    await keys.press(cut.getByRole('button', { name: /^See a draw/ }));
    const first = await said(cut.locator('.example'));
    await keys.press(cut.getByRole('button', { name: 'Another draw' }));
    expect(await said(cut.locator('.example'))).not.toBe(first);

    await keys.press(cut.locator('summary'));
    const distance = cut.getByRole('group', { name: 'The tape shows' });
    await distance.waitFor();
    const stops = await distance.getByLabel('To').locator('option').allTextContents();
    expect([stops[0], stops.at(-1)]).toEqual([`2'-6"`, `17'-6"`]);
    await distance.getByLabel('From').selectOption({ label: `6'-0"` });
    await distance.getByLabel('To').selectOption({ label: `12'-0"` });
    // 6 ft of sixteenths, both ends, of 15 ft of them.
    expect(await said(distance)).toContain('1153 values are left of 2881.');
    for (const width of ['2 in', '6 in']) await keys.press(cut.getByRole('checkbox', { name: width }));
    expect(await cut.getByRole('checkbox', { name: '4 in' }).isDisabled()).toBe(true);
    await cut
      .getByRole('checkbox', { name: /^a sleeve splice 10 1\/8" long, made for 5" from each side$/ })
      .first()
      .waitFor();

    expect(await page.getByLabel('Rule', { exact: true }).locator('option').count()).toBe(1);
    await keys.pick(page.locator('#draws-fill-check'), '12');
    await keys.pick(page.getByLabel('Rule', { exact: true }), 'sequential');
    expect(await answerLine(page)).toBe('Up to 15 draws, until it is plain.');
    await page.getByText('How often that goes wrong').click();
    const rates = await said(page.locator('.rates'));
    expect(rates).toMatch(/of 100/);
    expect(rates).toMatch(/draws/);
    await keys.pick(page.getByLabel('Rule', { exact: true }), 'all');
    await keys.pick(page.locator('#draws-fill-check'), '2');
  });

  test('a number that the works have is refused; its own is kept with everything else over a reload', async () => {
    await keys.write(page, page.getByLabel('Sheet', { exact: true }), '5');
    await page.getByText('The works have a sheet of this number. Take another.').waitFor();
    expect(await page.getByRole('button', { name: /^Print/ }).count()).toBe(0);
    await keys.write(page, page.getByLabel('Sheet', { exact: true }), '317');
    await keys.write(page, page.getByLabel('Benches'), '3');
    await page.getByRole('img', { name: 'Code of sheet 317' }).waitFor();
    link = await linkOf(page);
    sheet = await sheetIn(link);
    expect(sheet).toMatchObject({
      id: 'sheet-317',
      tasks: ['T05', 'T13'],
      families: [
        {
          family: 'cut-with-insertion',
          draws: 3,
          narrow: {
            width: { choice: ['card-4'] },
            distance: { length: { from: 72 * 8128, to: 144 * 8128 } },
          },
        },
        { family: 'fill-check', draws: 2 },
      ],
      rule: { need: 5, of: 5 },
    });
    await open(page);
    await expect.poll(() => answerLine(page)).toBe('5 draws. All hold, or again.');
    await expect.poll(() => linkOf(page)).toBe(link);
    expect(await violations(page)).toEqual([]);
    expect(await sideways(page)).toBe(0);
  });

  test('the set is on paper alone, a bench a sheet, without an answer', async () => {
    await print(page, 'Print 3 sheets');
    expect(await page.locator('.making').isVisible()).toBe(false);
    expect(await page.locator('.key-band').count()).toBe(0);
    const heads = page.getByRole('heading', { name: /^Sheet 317, bench/ });
    expect(await heads.allTextContents()).toEqual([1, 2, 3].map((bench) => `Sheet 317, bench ${bench}`));
    for (const [k, article] of (await page.locator('.bench-sheet').all()).entries()) {
      const text = await said(article);
      expect(text).toMatch(/Name\s+Date/);
      const draws = sheetDraws(sheet, k + 1, practice);
      for (const { place, draw } of draws) {
        const own = await said(article.locator('.paper-draw').nth(place - 1));
        if (draw.family.id !== 'cut-with-insertion') continue;
        expect(own).toContain(formatLength(tape(draw.facts['distance'])));
        expect(own).not.toContain(formatLength(fromInches(draw.right['cut'] as number)));
      }
      expect(await article.locator('.figure svg').count()).toBe(5);
      expect(await article.locator('.paper-asks > li').count()).toBe(3 * 2 + 2 * 3);
    }
    expect(await paper(page)).toBeGreaterThanOrEqual(3);
    expect(await page.locator('.making').isVisible()).toBe(true);
  });

  test('the key is on paper apart, under its band', async () => {
    await print(page, 'Print the key');
    const articles = await page.locator('.bench-sheet').all();
    expect(articles.length).toBe(3);
    for (const [k, article] of articles.entries()) {
      expect(await said(article.locator('> :first-child'))).toMatch(/^KEY\./);
      const band = article.locator('.key-band');
      expect(await band.evaluate((one) => getComputedStyle(one).backgroundColor)).toBe('rgb(0, 0, 0)');
      for (const { place, draw } of sheetDraws(sheet, k + 1, practice)) {
        if (draw.family.id !== 'cut-with-insertion') continue;
        const own = await said(article.locator('.paper-draw').nth(place - 1));
        expect(own).toContain(formatLength(fromInches(draw.right['cut'] as number), 64));
      }
    }
    expect(await paper(page)).toBeGreaterThanOrEqual(3);
    expect(await page.locator('.making').isVisible()).toBe(true);
  });

  test('its YAML is a file of content/sheets as it stands', async () => {
    const { name, text } = await saved(page, 'Keep it as YAML');
    expect(name).toBe('sheet-317.yaml');
    const own = { path: `content/sheets/${name}`, text };
    const read = readLibrary([...files, own]);
    expect(read.faults.filter(({ file }) => file === own.path)).toEqual([]);
    expect(read.library.sheets.get('sheet-317')).toEqual(sheet);
  });

  test('another device opens it by its link, writes the bench, answers and hands back', async () => {
    const other = await device(desk);
    try {
      await other.page.goto(link);
      passes(await answer(other.page, keys, sheet, 3), sheet, 3);
    } finally {
      await other.context.close();
    }
  });

  test('another device opens its file', async () => {
    const { name, text } = await saved(page, 'Save the file');
    const other = await device(desk);
    try {
      await open(other.page, 'en/answer/');
      await other.page
        .getByLabel('Open the file you were given')
        .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
      await other.page.getByText('Sheet 317. Which bench is yours?').waitFor();
    } finally {
      await other.context.close();
    }
  });

  test('narrowed to nothing, it says so and cannot be handed out', async () => {
    const cut = exercise(page, 'cut-with-insertion');
    await cut.locator('summary').click();
    const off = async (group: string, keep: string) => {
      const words = cut.getByRole('group', { name: group });
      await words.waitFor();
      for (const box of await words.getByRole('checkbox').all())
        if (!(await said(box.locator('xpath=..'))).trim().startsWith(keep) && (await box.isChecked()))
          await box.uncheck({ force: true });
    };
    await off('Held', 'to the middle');
    await off('First end', 'it butts');
    await off('Second end', 'it ends free');
    await cut.getByText('So narrow, nothing can be drawn.').waitFor();
    expect(await said(page.locator('.answer'))).toContain('nothing can be drawn of it');
    expect(await page.getByRole('button', { name: /^Print/ }).count()).toBe(0);
    await cut.getByRole('button', { name: 'As the exercise draws it' }).click();
    await page.getByRole('button', { name: 'Print 3 sheets' }).waitFor();
  });

  test('narrowed until benches get the same numbers, it says so in both places and is handed out all the same', async () => {
    const fill = exercise(page, 'fill-check');
    const cut = exercise(page, 'cut-with-insertion');
    await cut.locator('#draws-cut-with-insertion').selectOption('1');
    const alike = cut.getByText('So narrow, benches get the same numbers.');
    expect(await alike.count()).toBe(0);
    expect(await said(page.locator('.answer'))).toContain('benches 1 to 3, each its own numbers');
    const only = async (group: string, keep: string) => {
      const words = cut.getByRole('group', { name: group });
      await words.waitFor();
      for (const box of await words.getByRole('checkbox').all())
        if (!(await said(box.locator('xpath=..'))).trim().startsWith(keep) && (await box.isChecked()))
          await box.uncheck({ force: true });
    };
    await only('Width', '4 in');
    await only('Held', 'to the edge');
    await only('First end', 'a sleeve');
    await only('Second end', 'a sleeve');
    const distance = cut.getByRole('group', { name: 'The tape shows' });
    await distance.getByLabel('From').selectOption({ label: `6'-0"` });
    await distance.getByLabel('To').selectOption({ label: `6'-0"` });
    await alike.waitFor();
    expect(await fill.getByText('So narrow').count()).toBe(0);
    const answer = await said(page.locator('.answer'));
    expect(answer).toContain('benches 1 to 3, some with the same numbers');
    expect(answer).toContain('narrowed so far that benches get the same numbers');
    expect(answer).not.toContain('each its own numbers');
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Print 3 sheets' }).waitFor();
    await cut.getByRole('button', { name: 'As the exercise draws it' }).click();
    await alike.waitFor({ state: 'detached' });
  });
});

describe('by thumb on a phone', () => {
  test('a sheet in a few taps, and its code to another phone', async () => {
    const trainer = await device(phone);
    const learner = await device(phone);
    try {
      await open(trainer.page);
      await thumb.press(task(trainer.page, 'T05'));
      await take(trainer.page, thumb, { 'cut-with-insertion': 1, 'read-tape': 1 });
      expect(await answerLine(trainer.page)).toBe('2 draws. All hold, or again.');
      expect(await sideways(trainer.page)).toBe(0);
      expect(await violations(trainer.page)).toEqual([]);
      const sheet = await sheetIn(await linkOf(trainer.page));
      const code = trainer.page.getByRole('img', { name: /^Code of sheet/ });
      await code.evaluate((one) => one.scrollIntoView({ block: 'center' }));
      const picture = await trainer.page.screenshot();

      await open(learner.page, 'en/answer/');
      await learner.page
        .getByLabel('Take a picture of its code')
        .setInputFiles({ name: 'IMG_1.png', mimeType: 'image/png', buffer: picture });
      await learner.page.getByText(`Sheet ${sheet.number}. Which bench is yours?`).waitFor();
      expect(await sideways(learner.page)).toBe(0);
      passes(await answer(learner.page, thumb, sheet, 12), sheet, 12);
    } finally {
      await Promise.all([trainer.context.close(), learner.context.close()]);
    }
  });
});

test('a sheet too long for one code says so and gives its file, which opens for answering', async () => {
  const trainer = await device(desk);
  const learner = await device(phone);
  try {
    const tasks = [...new Set([...practice.families.values()].flatMap((family) => family.tasks))].sort();
    const picks = Object.fromEntries(
      [...practice.families.keys()].map((id) => [id, { draws: 1, narrow: {} }]),
    );
    await open(trainer.page);
    await trainer.page.evaluate(
      (draft) => localStorage.setItem('trayhand-making', draft),
      JSON.stringify({ number: 4100, benches: 1, tasks, picks }),
    );
    await open(trainer.page);
    await trainer.page.getByText('This is too long for a code. Hand over the file.').waitFor();
    const { name, text } = await saved(trainer.page, 'Save the file');
    const sheet = readSheetForm((JSON.parse(text) as { of: unknown }).of, practice);
    expect(sheet.families.length).toBe(practice.families.size);
    // Room for every kind on paper, and a key of every kind.
    for (const what of ['Print 1 sheet', 'Print the key']) {
      await print(trainer.page, what);
      expect(await trainer.page.locator('.paper-draw').count()).toBe(sheet.families.length);
      expect(await paper(trainer.page)).toBeGreaterThan(10);
    }

    const { page } = learner;
    await open(page, 'en/answer/');
    await page
      .getByLabel('Open the file you were given')
      .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
    await page.getByLabel('Bench number').fill('1');
    await page.getByLabel('Your id').fill('p-7');
    await page.getByRole('button', { name: 'To the sheet' }).click();
    await page.getByLabel('Name of this device').fill('phone-3');
    await page.getByRole('button', { name: 'Begin' }).click();
    // The first of them: every family is answered as it is drawn elsewhere.
    for (const k of [0, 1, 2, 3, 4, 5]) {
      await page.getByRole('heading', { name: `Draw ${k + 1} of ${sheet.families.length}` }).waitFor();
      expect(await page.locator('form.asks fieldset').count()).toBeGreaterThan(0);
      await page.getByRole('button', { name: 'Next draw' }).click();
    }
  } finally {
    await Promise.all([trainer.context.close(), learner.context.close()]);
  }
});

test('many exercises at once', async () => {
  const { page, context } = await device(phone);
  try {
    await open(page);
    await task(page, 'T01').tap();
    await page.locator('.exercise').first().waitFor();
    for (const id of ['T02', 'T05', 'T13', 'T14']) await task(page, id).tap();
    expect(await page.locator('.exercise').count()).toBeGreaterThan(30);
    expect(MOST_DRAWS).toBe(20);
  } finally {
    await context.close();
  }
});

test('no page complained, and none spoke to another host', () => {
  expect(complaints).toEqual([]);
});
