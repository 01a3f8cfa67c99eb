/**
 * What a page may weigh on a phone with a weak signal, gzipped, fonts apart (they are fetched once). Read from the
 * built files: the HTML itself, its style sheets, and every script that its islands reach: at once, or later, when a
 * person asks for what needs it (a worker, a file to be read).
 */
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { builtPages, computes, htmlOf } from './pages.ts';

const KB = 1000;
const budget = { html: 32 * KB, styles: 12 * KB, scripts: 160 * KB, later: 260 * KB };

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
    const all = reach(named(html, 'js'), true);
    expect(total(all)).toBeLessThanOrEqual(computes(page) ? budget.later : 0);
  });
});
