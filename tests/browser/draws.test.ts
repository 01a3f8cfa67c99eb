/**
 * Seeds for ever, on every device: of every family a browser's engine makes the same draws and keys as Node's, figures and
 * all. The modules are served from their source and run in an empty page; what Node compares with is what the command prints.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { paperPalette } from '../../src/drawing/palette.ts';
import { drawOf } from '../../src/practice/draw.ts';
import { keyOf } from '../../src/practice/key.ts';
import { showDraw } from '../../src/practice/show.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf, worldDataOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';
import { openBrowser } from './browser.ts';
import type * as InPage from './drawsInPage.ts';
import { handOver } from './drawsInPage.ts';
import { modulePage, moduleText } from './modules.ts';

/** One of a sheet, and one with signs beyond the first plane. */
const seeds = ['measure-and-mark/12/5', 'Año 4 · ✂ 🪚'];

const { library } = readLibrary(contentFiles());
const { families, world } = practiceOf(library);
const words = library.words.get('en') ?? new Map<string, string>();
const language = { lang: 'en', speak: speaker(words) };

const address = 'http://localhost/';
const html = modulePage(
  'draws',
  "import * as inPage from '/tests/browser/drawsInPage.ts'; globalThis.inPage = inPage;",
);
interface Opened {
  inPage: typeof InPage;
  draws: ReturnType<typeof InPage.drawsOf>;
}

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await openBrowser();
  page = await browser.newPage();
  await page.route(`${address}**`, (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname === '/') return route.fulfill({ contentType: 'text/html', body: html });
    const body = moduleText(pathname);
    return body === undefined
      ? route.fulfill({ status: 404 })
      : route.fulfill({ contentType: 'text/javascript; charset=utf-8', body });
  });
  await page.goto(address);
  await page.waitForFunction(() => 'inPage' in globalThis);
  await page.evaluate(
    (text) => {
      const opened = globalThis as unknown as Opened;
      opened.draws = opened.inPage.drawsOf(text);
    },
    handOver({ families, world: worldDataOf(library), words }),
  );
});
afterAll(() => browser?.close());

test('there are families to draw', () => expect(families.size).toBeGreaterThan(3));

test.each([...families.values()])('$id: the same draws and keys here and there', async (family) => {
  const there = await page.evaluate(([id, list]) => (globalThis as unknown as Opened).draws(id, list), [
    family.id,
    seeds,
  ] as const);
  const here = seeds.map((seed) => {
    const draw = drawOf(family, seed, world);
    const shown = showDraw(draw, world, language, { form: 'desk', palette: paperPalette });
    return JSON.stringify({ ...shown, key: keyOf(draw, world, language) });
  });
  expect(there).toEqual(here);
});

test('a seed that differs in one sign draws another job', async () => {
  const there = await page.evaluate(() =>
    (globalThis as unknown as Opened).draws('cut-with-insertion', ['A', 'a']),
  );
  const [big, small] = there.map((text) => (JSON.parse(text) as { givens: unknown }).givens);
  expect(big).not.toEqual(small);
});
