/**
 * What a page may weigh on a phone with a weak signal, gzipped, fonts apart (they are fetched once). Read from the
 * built files: the HTML itself, its style sheets, and every script that its islands reach: at once, or later, when a
 * person asks for what needs it (a worker, a file to be read).
 */
import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { builtPages, computes, htmlOf } from './pages.ts';

const KB = 1000;
const budget = { html: 32 * KB, styles: 12 * KB, scripts: 160 * KB, later: 320 * KB };
/** Models of practice: one alone, as a practice page fetches it, and all together, as a page that grades any sheet does. */
const modelBudget = { one: 10 * KB, all: 150 * KB };

const weight = (text: string) => gzipSync(text).length;
const built = (file: string) => readFileSync(`dist/_astro/${file}`, 'utf8');
const named = (text: string, end: string) =>
  [...text.matchAll(new RegExp(`(?:/_astro/|["'\`]\\./)([\\w.-]+\\.${end})`, 'g'))].map(
    ([, file = '']) => file,
  );

/** What a script loads only when it is asked for: imports in mid-work with their lists, and workers. */
const LATER = /import\((["'`])[^"'`]*\1\)|new URL\([^)]*\)|m\.f=\[[^\]]*\]/g;

/** A script and all that it imports: at once, or `later` too. */
function reach(files: readonly string[], later: boolean, seen = new Set<string>()): Set<string> {
  for (const file of files) {
    if (seen.has(file)) continue;
    seen.add(file);
    const text = built(file);
    reach(named(later ? text : text.replace(LATER, ''), 'js'), later, seen);
  }
  return seen;
}

/** Names of the files of models: each is a script of its own. */
const modelNames = new Set(
  readdirSync('src/practice/models', { recursive: true, withFileTypes: true })
    .filter(
      (e) => e.isFile() && e.name.endsWith('.ts') && e.name !== 'index.ts' && !e.parentPath.endsWith('parts'),
    )
    .map((e) => e.name.slice(0, -3)),
);
const isModel = (file: string) => modelNames.has(file.slice(0, file.indexOf('.')));

const total = (files: Iterable<string>) => [...files].reduce((sum, file) => sum + weight(built(file)), 0);

describe.each(builtPages)('/%s', (page) => {
  const html = htmlOf(page);
  test('page and style sheets', () => {
    expect(weight(html)).toBeLessThanOrEqual(budget.html);
    const sheets = new Set(named(html, 'css'));
    expect(sheets.size).toBeGreaterThan(0);
    expect(total(sheets)).toBeLessThanOrEqual(budget.styles);
  });
  test('scripts', () => {
    const scripts = reach(named(html, 'js'), false);
    if (computes(page)) expect(scripts.size).toBeGreaterThan(1);
    expect(total(scripts)).toBeLessThanOrEqual(computes(page) ? budget.scripts : 0);
    const all = [...reach(named(html, 'js'), true)];
    expect(total(all.filter((file) => !isModel(file)))).toBeLessThanOrEqual(
      computes(page) ? budget.later : 0,
    );
  });
});

test('models of practice', () => {
  const files = readdirSync('dist/_astro').filter((name) => name.endsWith('.js') && isModel(name));
  expect(new Set(files.map((file) => file.slice(0, file.indexOf('.'))))).toEqual(modelNames);
  for (const file of files) expect(weight(built(file)), file).toBeLessThanOrEqual(modelBudget.one);
  expect(total(files)).toBeLessThanOrEqual(modelBudget.all);
});

test('what sheets are set and graded with', () => {
  expect(weight(readFileSync('dist/practice.json', 'utf8'))).toBeLessThanOrEqual(170 * KB);
});
