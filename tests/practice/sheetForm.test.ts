/** A sheet out of a page: as a file of content/sheets and as what a link carries, both back to the same sheet. */
import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../src/practice/sheet.ts';
import {
  MOST_OF_FAMILY,
  MOST_ON_SHEET,
  readSheetForm,
  sheetForm,
  sheetYaml,
} from '../../src/practice/sheetForm.ts';
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
  rule: { need: 14, of: 14 },
};
const rules = [
  { need: 14, of: 14 },
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

/** Families of the made sheet, eleven times over. */
const elevenFamilies = (draws: number) =>
  Array.from({ length: 11 }, () => ({ family: 'cut-with-insertion', draws }));

test('as many draws as a sheet may have, and one more: in a link and in a file alike', () => {
  const of = (last: number) => {
    const draws = MOST_ON_SHEET - MOST_OF_FAMILY + last;
    const families = elevenFamilies(MOST_OF_FAMILY).map((one, i) =>
      i === 9 ? { ...one, draws: last } : one,
    );
    return { ...sheetForm(made), families: families.slice(0, 10), rule: { need: draws, of: draws } };
  };
  expect(readSheetForm(of(MOST_OF_FAMILY), practice).rule).toEqual({
    need: MOST_ON_SHEET,
    of: MOST_ON_SHEET,
  });
  expect(check(sheetShape, of(MOST_OF_FAMILY))).toHaveProperty('data');
  const over = { ...of(MOST_OF_FAMILY), families: elevenFamilies(19), rule: { need: 209, of: 209 } };
  expect(() => readSheetForm(over, practice)).toThrow('209 draws are too many');
  expect(check(sheetShape, over)).toMatchObject({ faults: [{ field: 'families' }] });
  const many = { ...of(1), families: [{ family: 'fill-check', draws: 21 }], rule: { need: 21, of: 21 } };
  expect(check(sheetShape, many)).toMatchObject({ faults: [{ field: 'families[0].draws', value: 21 }] });
});

test('words that YAML takes for something else stay texts', () => {
  const id = (text: string) => readYaml(sheetYaml({ ...sheetForm(made), id: text })).data;
  for (const text of ['true', 'null', 'no', 'on', 'y', '7', '1e3', 'sheet-7'])
    expect(id(text)).toMatchObject({ id: text });
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
    [
      'a part of a narrowing that nobody reads',
      family({ narrow: { distance: { length: { from: `6'`, to: `7'`, step: '1/16', also: 1 } } } }),
      ['families[0].narrow.distance'],
    ],
    [
      'two narrowings in one',
      family({ narrow: { width: { choice: ['card-4'], whole: { from: 1, to: 2 } } } }),
      ['families[0].narrow.width'],
    ],
    ['a title in another language that is none', { title: { en: 'Cuts', es: 5 } }, ['title.es']],
    ['an empty title', { title: { en: ' ' } }, ['title.en']],
    ['a title in no language', { title: { en: 'Cuts', English: 'Cuts' } }, ['title.English']],
    ['more draws of a family than it may have', family({ draws: MOST_OF_FAMILY + 1 }), ['families[0].draws']],
    [
      'more draws than a sheet may have',
      { families: elevenFamilies(MOST_OF_FAMILY), rule: { need: 220, of: 220 } },
      ['families'],
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
