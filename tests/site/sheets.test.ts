import { expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { groups } from '../../src/site/calculators/groups.ts';
import { sumIds } from '../../src/site/calculators/sum.ts';
import { familiesOf, practiceNumber } from '../../src/site/families.ts';
import { procedureSheet, proceduresOf } from '../../src/site/procedures.ts';
import { sheetName } from '../../src/site/sheetName.ts';
import {
  assignLinks,
  ownSheets,
  pagesOf,
  practiceBeside,
  practiceGroups,
  practiceLink,
  settingsLink,
  sumGroups,
  teachLinks,
} from '../../src/site/sheets.ts';
import { speaker, teller } from '../../src/site/speak.ts';
import { table } from './wordTable.ts';

const { library } = readLibrary(contentFiles());
const tell = teller(table('en'));

test('no two sheets go by one number', () => {
  const numbers = [
    ...Object.values(ownSheets).map(({ number }) => number),
    ...familiesOf(library).map(({ id }) => practiceNumber(library, id)),
    ...proceduresOf(library, 'en').map((procedure) => procedureSheet(library, procedure, tell).number),
    ...pagesOf(library, 'en').map(({ sheet }) => sheet),
  ];
  expect(numbers.length).toBeGreaterThan(15);
  expect(numbers.filter((number, k) => numbers.indexOf(number) !== k)).toEqual([]);
});

test('a list names the number that the sheet itself bears', () => {
  const sums = sumGroups('en', tell).flatMap(({ sheets }) => sheets);
  const practice = (['practice', 'kept'] as const).map((which) => practiceLink('en', tell, which));
  const links = [
    ...teachLinks('en', tell),
    ...assignLinks('en', tell),
    ...sums,
    settingsLink('en', tell),
    ...practice,
  ];
  const own: Readonly<Record<string, { readonly number: string }>> = ownSheets;
  expect(links.map(({ number }) => number)).toEqual(
    links
      .map(({ href }) => href.split('/').at(-2) ?? '')
      .map((end) => own[end === 'sheet' ? 'make' : end]?.number),
  );
  expect(links.map(({ href }) => href.split('/').at(-2))).toEqual([
    ...['sheet', 'set', 'answer', 'witness', 'second', 'own', 'answers', 'paper', 'crew', 'register'],
    ...groups.flatMap(([, ids]) => ids),
    ...['settings', 'practice', 'kept'],
  ]);
});

test('every calculator stands in one group, once', () => {
  const listed = groups.flatMap(([, ids]) => ids as readonly string[]);
  expect([...listed].sort()).toEqual(['cut', 'sticks', 'fill', ...sumIds].sort());
});

test('every family stands in the list of practice once, under its first task, with what is given in words', () => {
  const groups = practiceGroups(library, 'en', tell, speaker(table('en')));
  const rows = groups.flatMap(({ task, sheets }) => sheets.map((sheet) => ({ task, ...sheet })));
  expect(rows.map(({ href }) => href.split('/').at(-2)).sort()).toEqual([...library.scenarios.keys()].sort());
  expect(rows.every(({ task, number }) => number.startsWith(`TH-P${task.replace(/^T/, '')}`))).toBe(true);
  expect(rows.find(({ href }) => href.endsWith('/order-of-cutting/'))?.line).toBe('You give an order.');
});

test('every procedure leads to practice of its task: what it names first, no sheet twice, last the place in the list', () => {
  const speak = speaker(table('en'));
  const own = new Map(
    practiceGroups(library, 'en', tell, speak).map(({ task, sheets }) => [
      task,
      sheets.map(({ href }) => href),
    ]),
  );
  for (const procedure of proceduresOf(library, 'en')) {
    const hrefs = practiceBeside(library, 'en', tell, speak, procedure).map(({ href }) => href);
    expect(hrefs.at(-1)).toMatch(new RegExp(`/en/practice/#${procedure.id.toLowerCase()}$`));
    const rows = hrefs.slice(0, -1);
    expect(rows).toHaveLength(3);
    expect(new Set(rows).size).toBe(3);
    const named = procedure.practice.map((family) => `/en/practice/${family}/`);
    expect(rows.slice(0, named.length).map((href, i) => href.endsWith(named[i] ?? ''))).toEqual(
      named.map(() => true),
    );
    expect(rows.slice(named.length).filter((href) => !own.get(procedure.id)?.includes(href))).toEqual([]);
  }
});

test('a sheet whose title is its number says it once', () => {
  expect(sheetName(77, 'Sheet 77', tell)).toBe('Sheet 77');
  expect(sheetName(5, 'Measure and mark', tell)).toBe('Sheet 5, Measure and mark');
});
