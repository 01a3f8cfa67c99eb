/** What a page shows of a sheet is what the bench gets: the first draw of each part, narrowed as the sheet narrows it. */
import { expect, test } from 'vitest';
import { type Sheet, sheetDraws } from '../../src/practice/sheet.ts';
import { firstDraws } from '../../src/site/setPreview.ts';
import { readLength } from '../../src/trade/length.ts';
import { practice, sheets } from '../practice/means.ts';

const feet = (from: string, to: string) => ({
  distance: { length: { from: readLength(from), to: readLength(to), step: readLength('1/16') } },
});
const narrowedTwice: Sheet = {
  id: 'short-then-long',
  number: 900,
  title: { en: 'Short, then long' },
  tasks: ['T05'],
  families: [
    { family: 'cut-with-insertion', draws: 2, narrow: feet(`3'`, `4'`) },
    { family: 'fill-check', draws: 1 },
    { family: 'cut-with-insertion', draws: 1, narrow: feet(`16'`, `17'`) },
  ],
  rule: { need: 4, of: 4 },
};

test.each([[narrowedTwice], ...[...sheets.values()].slice(0, 3).map((sheet) => [sheet])])('$id', (sheet) => {
  for (const bench of [1, 12]) {
    const all = sheetDraws(sheet, bench, practice);
    let at = 0;
    const wanted = sheet.families.map(({ draws }) => {
      const first = all[at]?.draw;
      at += draws;
      return [first?.seed, first?.facts, first?.right];
    });
    const shown = firstDraws(sheet, bench, practice);
    expect(shown.map(({ part }) => part)).toEqual(sheet.families);
    expect(shown.map(({ draw }) => [draw.seed, draw.facts, draw.right])).toEqual(wanted);
  }
});
