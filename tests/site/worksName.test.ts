/** The name of the works stands in one place of the words, so that a works that writes its own there finds it on every sheet. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { root } from '../../src/cli/root.ts';
import { ownSheets } from '../../src/site/sheets.ts';
import { teller } from '../../src/site/speak.ts';
import { table } from './wordTable.ts';

const words = table('en');
const name = teller(words)('sheet.ofWorks');

test('no page, procedure or word names the works but that one', () => {
  const outside = contentFiles().filter(({ path }) => !path.startsWith('content/demo/'));
  const naming = outside
    .filter(({ text }) => text.includes(name))
    .map(({ path, text }) => [path, text.split(name).length - 1]);
  expect(naming).toEqual([['content/words/en/site.json', 1]]);
  const site = join(root, 'src/site');
  const files = readdirSync(site, { recursive: true, encoding: 'utf8' }).filter((path) =>
    /\.(ts|tsx|astro)$/.test(path),
  );
  expect(files.length).toBeGreaterThan(100);
  expect(files.filter((path) => readFileSync(join(site, path), 'utf8').includes(name))).toEqual([]);
});

test('a works that writes its own finds it in the title blocks', () => {
  const tell = teller({ ...words, sheet: { ...words['sheet'], ofWorks: 'Harrow Point' } });
  const works = Object.values(ownSheets).map(({ block }) => block(tell).works);
  expect(new Set(works)).toEqual(new Set(['Harrow Point', tell('deviceSheet.works')]));
});
