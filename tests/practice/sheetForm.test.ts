/** A sheet out of a page: as a file of content/sheets and as what a link carries, both back to the same sheet. */
import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../src/practice/sheet.ts';
import { readSheetForm, sheetForm, sheetYaml } from '../../src/practice/sheetForm.ts';
import { check } from '../../src/schema/faults.ts';
import { sheetShape } from '../../src/schema/sheet.ts';
import { readYaml } from '../../src/schema/yaml.ts';
import { GivenError } from '../../src/trade/given.ts';
import { readLength } from '../../src/trade/length.ts';
import { practice, sheets } from './means.ts';

const made: Sheet = {
  id: 'sheet-7',
  number: 7,
  title: { en: 'Cuts: "short" ones, 6 to 12 ft' },
  tasks: ['T05', 'T13'],
  families: [
    {
      family: 'cut-with-insertion',
      draws: 12,
      narrow: {
        distance: { length: { from: readLength(`6'`), to: readLength(`12'`), step: readLength('1/16') } },
        width: { choice: ['card-4'] },
      },
    },
    { family: 'fill-check', draws: 2 },
  ],
  rule: { need: 12, of: 14 },
};
const rules = [
  { need: 12, of: 14 },
  { bound: { confidence: 0.95, share: 0.6 } },
  { sequential: { p0: 0.5, p1: 0.9, alpha: 0.05, beta: 0.1, ceiling: 14 } },
] as const;

test.each([...sheets.values(), ...rules.map((rule) => ({ ...made, rule }))])('there and back', (sheet) => {
  const form = sheetForm(sheet);
  expect(readSheetForm(JSON.parse(JSON.stringify(form)), practice)).toEqual(sheet);
  const yaml = readYaml(sheetYaml(form));
  expect(yaml.faults).toEqual([]);
  expect(check(sheetShape, yaml.data)).toEqual({ data: sheet });
});

describe('a form that cannot be used', () => {
  const fields = (change: object) => {
    try {
      readSheetForm({ ...sheetForm(made), ...change }, practice);
      return [];
    } catch (error) {
      if (!(error instanceof GivenError)) throw error;
      return error.faults.map((f) => f.field);
    }
  };
  const family = (change: object) => ({
    families: [{ family: 'cut-with-insertion', draws: 14, ...change }],
  });
  test.each([
    ['an id that is none', { id: 'Sheet 7' }, ['id']],
    ['a field too many', { marks: 3 }, ['marks']],
    ['no tasks', { tasks: [] }, ['tasks']],
    ['a task that is none', { tasks: ['welding'] }, ['tasks[0]']],
    ['no title', { title: {} }, ['title.en']],
    ['a family that is not here', family({ family: 'welding' }), ['families[0].family']],
    ['no draws', family({ draws: 0 }), ['families[0].draws']],
    ['a narrowing that is none', family({ narrow: { width: 3 } }), ['families[0].narrow.width']],
    [
      'a narrowing outside the family',
      family({ narrow: { distance: { length: { from: 1, to: 2, step: 1 } } } }),
      ['families[0].narrow.distance'],
    ],
    ['a rule that is none', { rule: { half: true } }, ['rule']],
    ['a rule of other draws', { rule: { need: 3, of: 3 } }, ['rule.of']],
    ['more than there are', { rule: { need: 15, of: 14 } }, ['rule.need']],
    ['a rule nobody could pass', { rule: { bound: { confidence: 0.99, share: 0.95 } } }, ['rule.bound']],
  ])('%s', (_, change, wanted) => {
    expect(fields(change)).toEqual(wanted);
  });
  test('what is no object at all', () => {
    expect(() => readSheetForm('sheet', practice)).toThrow(GivenError);
  });
});
