/**
 * The crew board, the sheets of people and tasks, and the entries behind them: the demo's, which need no script, and a
 * device's own, which brought the demo's register in. By keyboard and by touch, on the screen and on paper.
 */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import demo from '../../content/demo/demo.json' with { type: 'json' };
import people from '../../content/demo/people.json' with { type: 'json' };
import { readFolder } from '../../src/cli/register/folder.ts';
import { root } from '../../src/cli/root.ts';
import { bundleText } from '../../src/register/bundle.ts';
import { openBrowser } from './browser.ts';
import { Devices } from './devices.ts';
import { builtPages, htmlOf } from './pages.ts';
import { type Served, serve } from './serve.ts';

const axe = await readFile('node_modules/axe-core/axe.min.js', 'utf8');

let browser: Browser;
let site: Served;
let folder: string;
let devices: Devices;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'trayhand-crew-'));
  [browser, site] = await Promise.all([openBrowser(), serve(process.env['SITE_DIR'] ?? 'dist')]);
  devices = new Devices(browser, site, folder);
});
afterAll(async () => {
  await browser?.close();
  await site?.close();
  await rm(folder, { recursive: true, force: true });
});

const sheets = builtPages.filter((page) => /^en\/crew\/(person|task)\//.test(page));
const crewPages = ['en/crew/', ...sheets];

const pagesOfPaper = async (page: Page, format: 'A4' | 'Letter'): Promise<number> =>
  (await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;

const violations = async (page: Page): Promise<readonly string[]> => {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: {
        run: (options: object) => Promise<{ violations: { id: string; nodes: { target: string[] }[] }[] }>;
      };
    };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const found = (await axe.run({ runOnly: tags })).violations;
    return found.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.target.join(' ')).join(', ')}`);
  });
};

describe('the demo works', () => {
  test('everybody and every task has a sheet, none of them with a script', () => {
    for (const { id } of people.people) expect(sheets).toContain(`en/crew/person/${id}/`);
    expect(sheets).toContain('en/crew/person/p-17/');
    expect(sheets.filter((page) => page.includes('/task/'))).toHaveLength(21);
    for (const page of crewPages) expect(htmlOf(page)).not.toMatch(/<script|modulepreload/);
  });

  test('every link of board and sheets leads to what it names', () => {
    const dead: string[] = [];
    let entries = 0;
    for (const page of crewPages) {
      for (const [, href = ''] of htmlOf(page).matchAll(/href="([^"]*)"/g)) {
        const { pathname, hash } = new URL(href, `http://host/${page}`);
        if (!pathname.endsWith('/')) continue;
        const to = pathname.slice(1);
        if (!builtPages.includes(to)) dead.push(`${page}: ${href}`);
        else if (hash !== '' && !htmlOf(to).includes(`id="${decodeURIComponent(hash.slice(1))}"`)) {
          dead.push(`${page}: ${href}`);
        }
        if (hash.startsWith('#e-')) entries += 1;
      }
    }
    expect(dead).toEqual([]);
    expect(entries).toBeGreaterThan(500);
  });

  test('a sheet answers the job first, then the four groups in their order, tickets, entries, signers', () => {
    const text = htmlOf('en/crew/person/p-04/')
      .replace(/<!--.*?-->/g, '')
      .replace(/<[^>]*>/g, '|');
    const order = [
      'May Esme Inglebrook do it?',
      '|No|',
      'Revision 2 of 12 January 2026 asks for it again',
      'Also asked for by job ALD-014',
      '|Shown |',
      '|Show again |',
      '|Practice only |',
      '|Not shown |',
      'Tickets from outside',
      'Entries about Esme Inglebrook',
      'Last heard of',
    ].map((said) => text.indexOf(said));
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  test('what has to be said of an entry is said', () => {
    const said: readonly (readonly [string, string])[] = [
      ['p-06', 'That device has the same name as one of the witness’s own.'],
      ['p-09', 'puts other answers in the place of those of'],
      ['p-15', 'Withdrawn on 24 June 2025: '],
      ['p-13', 'A second witness signed on 4 March 2026: '],
      ['p-12', 'A second witness has yet to say that he saw it'],
      ['p-06', 'past its last day'],
      ['p-17', 'p-17 was erased from this register on 11 August 2025.'],
      ['p-17', 'Its body is dropped: the person is erased.'],
      ['p-07', 'Kirra Dunmarsh has signed 123 entries that count.'],
      ['p-03', 'entered 22 Dec 2025'],
    ];
    for (const [person, text] of said) expect(htmlOf(`en/crew/person/${person}/`), text).toContain(text);
  });

  test.each(['A4', 'Letter'] as const)('sheets are one sheet of %s', async (format) => {
    const page = await browser.newPage();
    for (const path of ['person/p-05', 'person/p-04', 'person/p-06', 'task/T05', 'task/T07', 'task/T15']) {
      await page.goto(`${site.url}en/crew/${path}/`, { waitUntil: 'networkidle' });
      expect([path, await pagesOfPaper(page, format)]).toEqual([path, 1]);
    }
    await page.close();
  });

  test('by keyboard at 1280: from a cell to its reasons, to the entry behind them, to what was signed', async () => {
    const context = await browser.newContext({
      viewport: { width: 1280, height: 800 },
      javaScriptEnabled: true,
    });
    const page = await context.newPage();
    await page.goto(`${site.url}en/crew/`);
    const cell = page.getByRole('link', { name: /^Esme Inglebrook, Join with straight splice: Show again/ });
    await cell.focus();
    await page.keyboard.press('Enter');
    const reasons = page.locator('[id="p-04-T07"]');
    await expect.poll(() => reasons.isVisible()).toBe(true);
    expect(await reasons.textContent()).toContain('revision 2 of 12 January 2026 asks for it again');
    await reasons.locator('.entry-links a').first().focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/en\/crew\/person\/p-04\/#e-[0-9a-f]{8}$/);
    const row = page.locator('.entry-row:target');
    await expect.poll(() => row.isVisible()).toBe(true);
    await row.locator('summary').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => row.getByText('The signature holds.').isVisible()).toBe(true);
    expect(await row.textContent()).toMatch(/T07, 4 in, .*: shown, performed, alone/);
    await context.close();
  });

  test('by touch at 360: a person, his sheet, a reason opened; every target is 48 px', async () => {
    const context = await browser.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true });
    const page = await context.newPage();
    await page.goto(`${site.url}en/crew/`);
    await page.locator('#by-person summary', { hasText: 'Joss Tannerby' }).tap();
    await page.getByRole('link', { name: 'Sheet of Joss Tannerby' }).tap();
    await page.waitForURL(/\/en\/crew\/person\/p-06\/$/);
    await page.locator('.may-also summary').last().tap();
    await expect.poll(() => page.locator('.may-also details[open] .may-why').isVisible()).toBe(true);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('main a, main summary, main select, main button')]
        .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 47.5)
        .map((one) => `${one.textContent} ${one.getBoundingClientRect().height}`),
    );
    expect(small).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    await context.close();
  });
});

describe('this device’s register', () => {
  /** A device that brought in the demo's register and names, on the demo's day. */
  async function own(width: number) {
    const { context, page } = await devices.profile(Date.parse(demo.at));
    await page.setViewportSize({ width, height: 800 });
    await devices.go(page, 'register');
    const bundle = await devices.file(
      'register.json',
      bundleText(readFolder(join(root, 'content/demo/register'))),
    );
    await page.getByLabel('Bring a register in').setInputFiles(bundle);
    await page.getByText('200 entries').first().waitFor();
    await page
      .getByLabel('File of names')
      .setInputFiles(await devices.file('people.json', JSON.stringify(people)));
    await page.getByText('16 names are here').waitFor();
    return { context, page };
  }
  const openSheet = async (page: Page, hash: string) => {
    await page.goto(`${site.url}en/crew/own/#${hash}`);
    await page.locator('.person-sheet').waitFor();
  };

  test('“May … do it?” is asked first, and answered at every change', async () => {
    const { context, page } = await own(1280);
    await openSheet(page, 'person=p-04');
    expect(await page.locator('h1').textContent()).toBe('Esme Inglebrook');
    const huge = page.locator('.answer .huge');
    // On paper a question that nobody put is none; one that somebody put leads.
    await page.emulateMedia({ media: 'print' });
    expect([await huge.count(), await huge.isVisible()]).toEqual([1, false]);
    await page.emulateMedia({ media: 'screen' });
    expect(await huge.isVisible()).toBe(true);
    await page.getByLabel('Task', { exact: true }).selectOption('T03');
    await expect.poll(() => huge.textContent()).toBe('Yes');
    await page.emulateMedia({ media: 'print' });
    expect(await huge.isVisible()).toBe(true);
    await page.emulateMedia({ media: 'screen' });
    await page.getByLabel('Place', { exact: true }).selectOption('lift');
    await expect.poll(() => huge.textContent()).toBe('Not enough evidence');
    await page.getByLabel('Task', { exact: true }).selectOption('T07');
    await expect.poll(() => huge.textContent()).toBe('No');
    expect(await page.locator('.may-why li').first().textContent()).toContain(
      'Revision 2 of 12 January 2026',
    );
    // The end before the beginning is said, and nothing is answered.
    await page.getByLabel('To', { exact: true }).fill('2026-03-08T07:00');
    await expect
      .poll(() => page.locator('#may-bad').textContent())
      .toBe('The end is not after the beginning.');
    expect(await huge.count()).toBe(0);
    // Over midnight: the night belongs to two days, and T03 of this person is good on both.
    await page.getByLabel('Task', { exact: true }).selectOption('T03');
    await page.getByLabel('From', { exact: true }).fill('2026-03-09T19:00');
    await page.getByLabel('To', { exact: true }).fill('2026-03-10T07:00');
    await expect.poll(() => huge.textContent()).toBe('Yes');
    expect(await page.locator('.answer .label').textContent()).toContain(
      '9 March 2026 19:00 to 10 March 2026 07:00',
    );
    await context.close();
  });

  test('what another window wrote stands here as soon as the page is shown again', async () => {
    const { context, page: other } = await devices.profile(Date.parse(demo.at));
    const page = await context.newPage();
    await devices.go(page, 'crew/own');
    await page.getByText('No register is on this device').waitFor();
    await devices.go(other, 'register');
    const files = readFolder(join(root, 'content/demo/register'));
    const bundle = await devices.file('register.json', bundleText(files));
    await other.getByLabel('Bring a register in').setInputFiles(bundle);
    await other.getByText('200 entries').first().waitFor();
    const shownAgain = () => page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await shownAgain();
    await page.getByRole('columnheader').getByRole('link', { name: 'p-05' }).waitFor();
    // What was asked for stays as it was written; only what was read is read anew.
    await page.getByLabel('Day', { exact: true }).fill('2026-01-15');
    const names = await devices.file('people.json', JSON.stringify(people));
    await other.getByLabel('File of names').setInputFiles(names);
    await other.getByText('16 names are here').waitFor();
    await shownAgain();
    await page.getByRole('columnheader').getByRole('link', { name: 'Hanne Vallmoor' }).waitFor();
    expect(await page.getByLabel('Day', { exact: true }).inputValue()).toBe('2026-01-15');
    await context.close();
  });

  test('on any date, as known on any date; the label says so', async () => {
    const { context, page } = await own(1280);
    await openSheet(page, 'person=p-15');
    const stands = page.locator('.stand[id="T05"]');
    expect(await stands.textContent()).toContain('Withdrawn on 24 June 2025');
    await page.getByText('On another day, or as known on another day').click();
    await page.getByLabel('Day', { exact: true }).fill('2025-06-20');
    await expect.poll(() => page.locator('.as-of').textContent()).toBe('As of 20 June 2025');
    // A withdrawal counts for every day, once it is entered ...
    expect(await stands.textContent()).toContain('Withdrawn on 24 June 2025');
    await page.getByLabel('As known on', { exact: true }).fill('2025-06-20');
    await expect
      .poll(() => page.locator('.as-of').textContent())
      .toBe('As of 20 June 2025, as known on 20 June 2025');
    // ... and was not known before.
    expect(await stands.textContent()).not.toContain('Withdrawn');
    await page.getByLabel('As known on', { exact: true }).fill('2024-01-01');
    await expect
      .poll(() => page.locator('#board-known-hint').textContent())
      .toBe('On that day this register had not begun.');
    await page.getByLabel('As known on', { exact: true }).fill('soon');
    await expect
      .poll(() => page.locator('#board-known-hint').textContent())
      .toContain('Write a day as 2026-03-09');
    await context.close();
  });

  test('from the board to a person, an entry and a task and back; everything about a person is taken out', async () => {
    const { context, page } = await own(1280);
    await page.goto(`${site.url}en/crew/own/`);
    await page.getByRole('columnheader').getByRole('link', { name: 'Hanne Vallmoor' }).click();
    await page.locator('.person-sheet').waitFor();
    await page.locator('.stand[id="T05"] .entry-links a').click();
    await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toBe('entry-row');
    await page.locator('.stand[id="T05"] .stand-name').click();
    await expect.poll(() => page.locator('h1').textContent()).toBe('Task sheet T05');
    expect(await page.locator('.task-facts').textContent()).toContain('12 months, to the end of the day');
    await page.goBack();
    await expect.poll(() => page.locator('h1').textContent()).toBe('Hanne Vallmoor');
    const path = await devices.saved(page, 'Take out everything held about this person');
    expect(path).toMatch(/held-about-p-05-2026-03-09\.json$/);
    const taken = JSON.parse(await readFile(path, 'utf8'));
    expect(Object.keys(taken)).toEqual(['id', 'entries', 'bodies']);
    expect(taken.id).toBe('p-05');
    expect(taken.entries.length).toBe(await page.locator('.entry-row').count());
    // The same in words: what was signed in every entry is on paper, and shut again after it.
    await page.evaluate(() => {
      window.print = () => {
        const open = [...document.querySelectorAll('.entry-row details')].map((one) => one.matches('[open]'));
        document.body.dataset['printed'] = String(open.length > 0 && open.every(Boolean));
      };
    });
    await page.getByRole('button', { name: 'Print everything about this person' }).click();
    expect(await page.evaluate(() => document.body.dataset['printed'])).toBe('true');
    await page.emulateMedia({ media: 'print' });
    const signed = page.locator('.entry-row details > div');
    expect(await signed.evaluateAll((all) => all.every((one) => one.checkVisibility()))).toBe(true);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    expect(await page.locator('.person-entries').isVisible()).toBe(false);
    await page.emulateMedia({ media: 'screen' });
    expect(await page.locator('.entry-row details[open]').count()).toBe(0);
    await page.getByRole('link', { name: 'Crew board' }).first().click();
    await expect.poll(() => page.locator('.board-grid').isVisible()).toBe(true);
    // Who was erased is no column; the list says where to look.
    expect(await page.locator('.board-grid').textContent()).not.toContain('p-17');
    await page.getByRole('button', { name: 'Print this board' }).waitFor();
    await page.locator('.erased').getByRole('link', { name: 'p-17' }).click();
    await page.getByText('p-17 was erased from this register on 11 August 2025').waitFor();
    expect(await page.locator('h1').textContent()).toBe('p-17');
    expect(await page.locator('.person-asked, .stand').count()).toBe(0);
    await context.close();
  });

  test.each([360, 1280])('at %i px anyone can use the sheets; each is one sheet of paper', async (width) => {
    const { context, page } = await own(width);
    for (const hash of ['person=p-06', 'task=T15']) {
      await openSheet(page, hash);
      expect(await violations(page)).toEqual([]);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0);
      expect([await pagesOfPaper(page, 'A4'), await pagesOfPaper(page, 'Letter')]).toEqual([1, 1]);
    }
    await openSheet(page, 'person=p-06');
    const erased = page.locator('.nothing', { hasText: 'Nobody of the id nobody' });
    await page.goto(`${site.url}en/crew/own/#person=nobody`);
    await erased.waitFor();
    await context.close();
    expect(devices.complaints).toEqual([]);
  });
});
