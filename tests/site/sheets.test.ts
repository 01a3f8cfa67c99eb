import { expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { familiesOf, practiceNumber } from '../../src/site/families.ts';
import { procedureSheet, proceduresOf } from '../../src/site/procedures.ts';
import { assignLinks, ownSheets, pagesOf, sumLinks, teachLinks } from '../../src/site/sheets.ts';
import { teller } from '../../src/site/speak.ts';
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
  const links = [...teachLinks('en', tell), ...assignLinks('en', tell), ...sumLinks('en', tell)];
  expect(links.map(({ href, number }) => [href.split('/').at(-2), number])).toEqual(
    (['set', 'answer', 'witness', 'crew', 'register', 'cut', 'fill'] as const).map((name) => [
      name,
      ownSheets[name].number,
    ]),
  );
});
