import { expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { drawOf } from '../../src/practice/draw.ts';
import { tellDraw } from '../../src/practice/show.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { sortLimits } from '../../src/site/limits.ts';
import { speaker } from '../../src/site/speak.ts';
import { table } from './wordTable.ts';

const { library } = readLibrary(contentFiles());
const { families, world } = practiceOf(library);
const family = families.get('fill-check');
if (family === undefined) throw new Error('no family fill-check');
const { givens } = tellDraw(drawOf(family, '1', world), world, { lang: 'en', speak: speaker(table('en')) });

test('the rows of both tables of a fill draw become one table, and nothing else goes with them', () => {
  const { others, tables, limits } = sortLimits(givens);
  expect(tables).toEqual(['Table 392.22(A)(5), ventilated', 'Table 392.22(A)(6), solid']);
  // NFPA 70-2023, Tables 392.22(A)(5) and 392.22(A)(6): widths, column 1, column 2, from memory
  expect(limits.map(({ bottom, width, one, several }) => [bottom, width, one, several])).toEqual([
    ['ventilated', '3', '2.3', '1.3'],
    ['ventilated', '4', '4.5', '2.5'],
    ['ventilated', '6', '7.0', '3.8'],
    ['solid', '2', '1.3', '0.8'],
    ['solid', '3', '2.0', '1.1'],
    ['solid', '4', '3.7', '2.1'],
    ['solid', '6', '5.5', '3.2'],
  ]);
  expect(others.length + limits.length).toBe(givens.length);
  expect(others.map(({ id }) => id)).toContain('cable-1');
});

test('a row that does not read so leaves all as they came', () => {
  const odd = givens.map((given) => (given.id === 'solid-1' ? { ...given, text: 'ask' } : given));
  expect(sortLimits(odd)).toEqual({ others: odd, tables: [], limits: [] });
});
