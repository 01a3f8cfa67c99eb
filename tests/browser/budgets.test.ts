/**
 * What a page may weigh on a phone with a weak signal, gzipped, fonts apart (they are fetched once). Read from the
 * built files: the HTML itself, its style sheets, and every script that its islands reach.
 */
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { builtPages, computes, htmlOf } from './pages.ts';

const KB = 1000;
const budget = { html: 32 * KB, styles: 12 * KB, scripts: 160 * KB };

const weight = (text: string) => gzipSync(text).length;
const built = (file: string) => readFileSync(`dist/_astro/${file}`, 'utf8');
const named = (text: string, end: string) =>
  [...text.matchAll(new RegExp(`(?:/_astro/|["'\`]\\./)([\\w.-]+\\.${end})`, 'g'))].map(
    ([, file = '']) => file,
  );

/** A script and all that it imports, at once or later. */
function reach(files: readonly string[], seen = new Set<string>()): Set<string> {
  for (const file of files) {
    if (seen.has(file)) continue;
    seen.add(file);
    reach(named(built(file), 'js'), seen);
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
    const scripts = reach(named(html, 'js'));
    if (computes(page)) expect(scripts.size).toBeGreaterThan(1);
    expect(total(scripts)).toBeLessThanOrEqual(computes(page) ? budget.scripts : 0);
  });
});
