/**
 * Tries at practice on a device: they outlive a reload and a release, go out in a file and come in from one, are cleared
 * after a second look; and the list says from them what to take next.
 */
import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import type { Attempt } from '../../src/practice/attempts.ts';
import { attemptsText, readAttemptsFile } from '../../src/practice/attemptsFile.ts';
import { drawOf } from '../../src/practice/draw.ts';
import { GENERATOR } from '../../src/practice/generator.ts';
import { keyOf } from '../../src/practice/key.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';
import { openBrowser } from './browser.ts';
import { htmlOf } from './pages.ts';
import { type Served, serve } from './serve.ts';

const axe = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');
const { library } = readLibrary(contentFiles());
const now = Date.parse('2026-03-09T14:00:00.000Z');
const DAY = 86_400_000;

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

interface Device {
  readonly context: BrowserContext;
  readonly page: Page;
  readonly complaints: string[];
}

/** A device of its own, whose clock stands at `now`. */
async function device(width = 360): Promise<Device> {
  const context = await browser.newContext({
    viewport: { width, height: 740 },
    acceptDownloads: true,
    timezoneId: 'UTC',
  });
  const page = await context.newPage();
  await page.clock.setFixedTime(now);
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) =>
      console.error(`content policy: ${event.violatedDirective} ${event.blockedURI}`),
    );
  });
  return { context, page, complaints };
}

async function go(page: Page, path: string): Promise<void> {
  await page.goto(`${site.url}en/practice/${path}`);
  await page.waitForSelector('body:not(:has(astro-island[ssr]))');
}
const main = async (page: Page) =>
  ((await page.locator('main').textContent()) ?? '').replaceAll('\u00a0', ' ');
const says = (page: Page, text: string) => page.locator('main').getByText(text).first().waitFor();

const tried = (family: string, daysAgo: number, came: Attempt['came'], seed = '4172'): Attempt => ({
  family,
  seed,
  generator: GENERATOR,
  at: new Date(now - daysAgo * DAY).toISOString(),
  answers: {},
  ...(came === undefined ? {} : { came }),
});
const fileOf = (attempts: readonly Attempt[]) => ({
  name: 'tries.json',
  mimeType: 'application/json',
  buffer: Buffer.from(attemptsText({ device: 'phone-3', made: new Date(now).toISOString(), attempts })),
});
const bringIn = (page: Page, file: ReturnType<typeof fileOf>) =>
  page.getByLabel('File of tries').setInputFiles(file);
async function save(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the file' }).click(),
  ]);
  return readFile(await download.path(), 'utf8');
}

const three = [
  tried('cut-with-insertion', 3, 'passed'),
  tried('cut-with-insertion', 2, 'not', '4173'),
  tried('gone-long-ago', 1, 'near'),
];

describe('the list of practice', () => {
  test('stands whole without script, and begins with what nothing comes before', () => {
    const html = htmlOf('en/practice/');
    const lacks = (said: readonly string[]) => said.filter((one) => !html.includes(one));
    const ids = [...library.scenarios.values()];
    expect(lacks(ids.map(({ id }) => `/en/practice/${id}/`))).toEqual([]);
    expect(lacks(ids.map(({ tasks: [task = ''] }) => `id="${task.toLowerCase()}"`))).toEqual([]);
    expect(lacks(['sheets what-next', '>Next<', 'Practice never changes what the register says'])).toEqual(
      [],
    );
  });

  test.each(['en/', 'en/install/', 'en/teach/'])('is found from /%s', (page) =>
    expect(/href="[^"]*\/en\/practice\/"/.test(htmlOf(page))).toBe(true),
  );

  test('rows are tall enough for a glove, and the page does not move sideways', async () => {
    const { context, page, complaints } = await device();
    await go(page, '');
    const heights = await page
      .locator('.sheets a')
      .evaluateAll((rows) => rows.map((row) => row.getBoundingClientRect().height));
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(60);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('says what to take again today, what is next, and what rests until when', async () => {
    const { context, page, complaints } = await device();
    await go(page, 'kept/');
    await bringIn(page, fileOf([tried('fill-check', 1, 'not'), tried('cut-with-insertion', 0.1, 'passed')]));
    await says(page, '2 tries came in that were not here.');
    await go(page, '');
    const rows = page.locator('.what-next > li');
    await rows.filter({ hasText: 'Again today' }).first().waitFor();
    const today = await rows.filter({ hasText: 'Again today' }).allTextContents();
    expect(today).toHaveLength(1);
    expect(today[0]).toContain(library.scenarios.get('fill-check')?.title['en']);
    await page.getByText('Later', { exact: true }).click();
    await says(page, 'Again on 11 March 2026');
    expect(await main(page)).not.toMatch(/stability|difficulty|retriev|%|\bcard/i);
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('what waits, and what rests, is marked at its row of the list below; a task is a jump away', async () => {
    const { context, page, complaints } = await device();
    const [rests = '', ...waits] = [...library.scenarios.keys()].slice(0, 7);
    await go(page, 'kept/');
    await bringIn(page, fileOf([tried(rests, 0.1, 'passed'), ...waits.map((id) => tried(id, 1, 'not'))]));
    await says(page, '7 tries came in that were not here.');
    await go(page, '');
    await says(page, '1 more waits today: in the list below it is marked “again today”.');
    const marked = (text: string) =>
      page
        .locator('#all-practice a')
        .filter({ hasText: text })
        .evaluateAll((rows) => rows.map((row) => row.getAttribute('href')?.split('/').at(-2)));
    expect((await marked('again today')).sort()).toEqual([...waits].sort());
    expect(await marked('again on 11 March 2026')).toEqual([rests]);

    const jumps = page.getByRole('navigation', { name: 'To a task' }).getByRole('link');
    expect(await jumps.count()).toBe(await page.locator('#all-practice h2').count());
    const boxes = await jumps.evaluateAll((links) => links.map((link) => link.getBoundingClientRect()));
    expect(Math.min(...boxes.flatMap(({ width, height }) => [width, height]))).toBeGreaterThanOrEqual(48);
    await jumps.filter({ hasText: 'T06' }).click();
    expect(
      await page.locator('#t06').evaluate((head) => head.getBoundingClientRect().top < innerHeight),
    ).toBe(true);
    expect(complaints).toEqual([]);
    await context.close();
  });

  test.each(['en/practice/', 'en/practice/kept/', 'en/practice/fill-check/'])(
    'is a way of the one who installs: /%s',
    (page) => {
      const html = htmlOf(page);
      expect(/<a href="[^"]*\/en\/install\/" aria-current="true">/.test(html)).toBe(true);
      expect(html.match(/aria-current="true"/g)).toHaveLength(1);
    },
  );

  test('is found from every procedure, at its task', () => {
    for (const task of ['t03', 't04', 't05', 't06', 't07', 't11'])
      expect(htmlOf(`en/install/${task}/`)).toContain(`/en/practice/#${task}"`);
  });

  test('when everything rests, it says until when', async () => {
    const { context, page } = await device();
    await go(page, 'kept/');
    await bringIn(page, fileOf([...library.scenarios.keys()].map((id) => tried(id, 0.1, 'passed'))));
    await says(page, 'tries came in that were not here.');
    await go(page, '');
    await says(page, 'Nothing waits until 11 March 2026.');
    await page.clock.setFixedTime(now + 3 * DAY);
    await go(page, '');
    await page.locator('.what-next > li').filter({ hasText: 'Again today' }).first().waitFor();
    await context.close();
  });
});

describe('the tries of a device', () => {
  test('go out, are cleared after a second look, and come back; what cannot be drawn any more is said and goes along', async () => {
    const { context, page, complaints } = await device();
    await go(page, 'kept/');
    await says(page, 'No tries are kept here yet.');
    await bringIn(page, fileOf(three));
    await says(page, '3 tries came in that were not here.');
    await says(page, '3 tries are kept here. Draws: 3. Sheets: 2.');
    await says(page, '1 of them cannot be drawn any more: gone-long-ago.');

    const saved = await save(page);
    const file = readAttemptsFile(JSON.parse(saved));
    expect(file.attempts).toEqual(three);
    expect(file.device).toMatch(/^device-\d{4}$/);

    await page.getByRole('button', { name: 'Clear the tries' }).click();
    await says(page, 'The register, its entries, your key, your runs and your settings are not touched.');
    await page.getByRole('button', { name: 'Keep them' }).click();
    await page.reload();
    await says(page, '3 tries are kept here. Draws: 3. Sheets: 2.');
    await page.getByRole('button', { name: 'Clear the tries' }).click();
    await page.getByRole('button', { name: 'Clear all 3 tries' }).click();
    await says(page, 'The tries are cleared. The register was not touched.');
    await says(page, 'No tries are kept here yet.');
    await page.reload();
    await says(page, 'No tries are kept here yet.');

    const again = { name: 'saved.json', mimeType: 'application/json', buffer: Buffer.from(saved) };
    await bringIn(page, again);
    await says(page, '3 tries came in that were not here.');
    await bringIn(page, again);
    await says(page, 'Everything in it is here already.');
    expect(readAttemptsFile(JSON.parse(await save(page))).attempts).toEqual(three);
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('two devices that take each other’s files in hold the same', async () => {
    const [one, other] = [await device(), await device()];
    const own = [three.slice(0, 2), three.slice(1)] as const;
    for (const [k, { page }] of [one, other].entries()) {
      await go(page, 'kept/');
      await bringIn(page, fileOf(own[k] ?? []));
      await says(page, '2 tries came in that were not here.');
    }
    const files = [await save(one.page), await save(other.page)];
    for (const [k, { page }] of [one, other].entries()) {
      await bringIn(page, {
        name: 'other.json',
        mimeType: 'application/json',
        buffer: Buffer.from(files[1 - k] ?? ''),
      });
      await says(page, '1 try came in that was not here.');
    }
    const held = await Promise.all(
      [one, other].map(async ({ page }) => JSON.parse(await save(page)).attempts),
    );
    expect(held[0]).toEqual(three);
    expect(held[1]).toEqual(three);
    await one.context.close();
    await other.context.close();
  });

  test('a file that is none is refused beside its entry, and changes nothing', async () => {
    const { context, page } = await device();
    await go(page, 'kept/');
    await bringIn(page, { ...fileOf([]), buffer: Buffer.from('{"v":1,"kind":"answers"}') });
    await says(page, 'This is no file of tries. Nothing came in, and what is here stays.');
    const fault = page.getByText('kind: this is another kind of file');
    expect(await fault.isVisible()).toBe(false);
    await page.getByText('What is wrong with it', { exact: true }).click();
    expect(await fault.isVisible()).toBe(true);
    expect(await violations(page)).toEqual([]);
    await says(page, 'No tries are kept here yet.');
    await context.close();
  });

  test('a device of the first edition keeps its tries, and one that cannot be read is not drawn', async () => {
    const { context, page, complaints } = await device();
    await page.goto(`${site.url}icon.svg`);
    await page.evaluate(firstEdition, [
      { ...tried('cut-with-insertion', 1, undefined), answers: { nothing: 'that is asked' } },
      { ...tried('cut-with-insertion', 2, undefined), generator: 'trayhand seed 0' },
    ]);
    await go(page, 'kept/');
    await says(page, '2 tries are kept here. Draws: 2. Sheets: 1.');
    await says(page, '1 of them cannot be drawn any more: cut-with-insertion.');
    await go(page, '');
    await page.locator('.what-next > li').filter({ hasText: 'Again today' }).first().waitFor();
    await go(page, 'cut-with-insertion/');
    await says(page, 'Draw number 4172');
    expect(await main(page)).toContain('Nothing taped yet');
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('a window of the first edition that stands open is named, and nothing is lost', async () => {
    const { context, page } = await device();
    const old = await context.newPage();
    await old.goto(`${site.url}icon.svg`);
    await old.evaluate(firstEdition, [tried('cut-with-insertion', 1, 'passed')]);
    await old.evaluate(() => {
      // The first edition never gave way.
      (globalThis as { held?: unknown }).held = indexedDB.open('trayhand-practice', 1);
    });
    await go(page, 'kept/');
    await says(page, 'Another window holds the tries of this device open.');
    await old.close();
    await page.reload();
    await says(page, '1 try is kept here.');
    await context.close();
  });
});

describe('after a draw was taped', () => {
  const family = library.scenarios.get('fill-check');
  const { world } = practiceOf(library);
  const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };
  if (family === undefined) throw new Error('no family fill-check');
  const seed = '5';
  const right = keyOf(drawOf(family, seed, world), world, language).answers;
  /** Tapes the right choices, and an area. */
  async function tape(page: Page, area: number, button = 'Put the tape on it'): Promise<void> {
    await page.getByRole('textbox', { name: /in²/ }).fill(area.toFixed(2));
    for (const ask of family?.asks ?? []) {
      const text =
        ask.kind === 'choice' ? ask.options.find(({ id }) => id === right[ask.id])?.text['en'] : undefined;
      if (text !== undefined) await page.locator('form').getByText(text, { exact: true }).click();
    }
    await page.getByRole('button', { name: button }).click();
    await page.getByRole('button', { name: 'Tape it again' }).waitFor();
  }
  const area = Number(right['area']);

  test('one that passes rests until a day that is said, here and in the list, and all is there after a reload', async () => {
    const { context, page, complaints } = await device();
    await go(page, `fill-check/?draw=${seed}`);
    expect(await page.locator('.comes-again').count()).toBe(0);
    await page.waitForLoadState('networkidle');
    await context.setOffline(true);
    await tape(page, area);
    await says(page, 'This sheet comes again on 11 March 2026.');
    await context.setOffline(false);
    await page.reload();
    await says(page, `Draw number ${seed}, first try`);
    await says(page, 'This sheet comes again on 11 March 2026.');
    await page.locator('.comes-again').getByRole('link').click();
    await page.getByText('Later', { exact: true }).click();
    const rests = page.locator('details li').filter({ hasText: 'Again on 11 March 2026' });
    expect(await rests.allTextContents()).toEqual([
      expect.stringContaining(family.title['en'] ?? 'no title'),
    ]);
    await go(page, 'kept/');
    const { attempts } = readAttemptsFile(JSON.parse(await save(page)));
    expect(attempts.map(({ seed: one, came }) => [one, came])).toEqual([[seed, 'passed']]);
    expect(complaints.filter((text) => !text.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([]);
    await context.close();
  });

  test('a device that begins gets a draw of its own, and no other until it asks for one', async () => {
    const { context, page, complaints } = await device();
    const label = page.locator('section.answer .label');
    await go(page, 'fill-check/');
    await expect.poll(() => label.textContent()).toMatch(/^Draw number \d{4}$/);
    await page.getByRole('textbox', { name: /in²/ }).fill('1.5');
    const own = await label.textContent();
    await page.reload();
    await expect.poll(() => label.textContent()).toBe(own);
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('what is being answered comes back by itself; another draw begins empty', async () => {
    const { context, page, complaints } = await device();
    const entry = () => page.getByRole('textbox', { name: /in²/ });
    await go(page, `fill-check/?draw=${seed}`);
    await entry().fill('1.5');
    await go(page, 'fill-check/');
    await says(page, `Draw number ${seed}`);
    expect(await entry().inputValue()).toBe('1.5');
    expect(await main(page)).toContain('Nothing taped yet');
    await page.getByRole('button', { name: 'A new draw' }).click();
    expect(await entry().inputValue()).toBe('');
    await page.reload();
    await page.waitForSelector('body:not(:has(astro-island[ssr]))');
    expect(await entry().inputValue()).toBe('');
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('one that does not comes again the same day, whatever a second try at it says', async () => {
    const { context, page } = await device();
    await go(page, `fill-check/?draw=${seed}`);
    await tape(page, area * 3);
    await says(page, 'This sheet comes again today, with other numbers.');
    await page.clock.setFixedTime(now + 60_000);
    await tape(page, area, 'Tape it again');
    await says(page, `Draw number ${seed}, second try`);
    await says(page, 'This sheet comes again today, with other numbers. The first try at each draw counts.');
    await go(page, '');
    const again = page.locator('.what-next > li').filter({ hasText: 'Again today' });
    await again.waitFor();
    expect(await again.textContent()).toContain(family.title['en']);
    await context.close();
  });
});

/** The database as the first edition of the pages made it. */
function firstEdition(attempts: readonly unknown[]): Promise<void> {
  return new Promise((done, failed) => {
    const opening = indexedDB.open('trayhand-practice', 1);
    opening.onupgradeneeded = () => {
      const store = opening.result.createObjectStore('attempts', { autoIncrement: true });
      store.createIndex('draw', ['family', 'seed']);
      store.createIndex('family', 'family');
      opening.result.createObjectStore('asked');
    };
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const change = opening.result.transaction('attempts', 'readwrite');
      for (const attempt of attempts) change.objectStore('attempts').add(attempt);
      change.oncomplete = () => {
        opening.result.close();
        done();
      };
    };
  });
}

test.each([360, 1280])('anyone can use both sheets with tries on them, at %i px', async (width) => {
  const { context, page } = await device(width);
  await go(page, 'kept/');
  await bringIn(page, fileOf(three));
  await says(page, '3 tries came in that were not here.');
  await page.getByRole('button', { name: 'Clear the tries' }).click();
  expect(await violations(page)).toEqual([]);
  await go(page, '');
  await page.locator('.what-next > li').filter({ hasText: 'Again today' }).first().waitFor();
  expect(await violations(page)).toEqual([]);
  await context.close();
});

async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    interface Found {
      readonly id: string;
      readonly nodes: readonly { readonly target: readonly string[] }[];
    }
    const { axe: run } = window as unknown as {
      axe: { run: (options: object) => Promise<{ violations: Found[] }> };
    };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const { violations: found } = await run.run({ runOnly: tags });
    return found.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.target.join(' ')).join(', ')}`);
  });
}
