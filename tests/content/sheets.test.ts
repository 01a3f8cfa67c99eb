/**
 * The sheets of the works: one for each task whose evidence asks for answers, n of n as the task says. Each draws at 30
 * benches, asks something critical at each, and is passed by its key and by nothing less.
 */
import { describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { keyOf } from '../../src/practice/key.ts';
import { gradeSheet, sheetDraws } from '../../src/practice/sheet.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';

const { library } = readLibrary(contentFiles());
const practice = practiceOf(library);
const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };
const sheets = [...practice.sheets.values()];

test('a number of its own for each', () => {
  const numbers = sheets.map(({ number }) => number);
  expect(new Set(numbers).size).toBe(numbers.length);
});

const asked = [...library.tasks.values()].flatMap(({ id, evidence }) =>
  evidence.flatMap((one) => (one.kind === 'K' ? [[id, one.n] as const] : [])),
);

test.each(asked)('%s has a sheet of %i of as many', (task, n) => {
  const rules = sheets.filter(({ tasks }) => tasks.includes(task)).map(({ rule }) => rule);
  expect(rules).toContainEqual({ need: n, of: n });
});

describe.each(sheets.map((sheet) => [sheet.id, sheet] as const))('%s', (_, sheet) => {
  const families = sheet.families.map(({ family }) => practice.families.get(family));

  test('is about its tasks, and has critical points of each exercise', () => {
    for (const family of families) expect(family?.critical.length, family?.id).toBeGreaterThan(0);
    for (const task of sheet.tasks) {
      const about = families.filter((family) => family?.tasks.some((one) => one.startsWith(task)));
      expect(about.length, task).toBeGreaterThan(0);
    }
  });

  test('draws at 30 benches, and its key passes', () => {
    const seen = new Set<string>();
    for (let bench = 1; bench <= 30; bench++) {
      const draws = sheetDraws(sheet, bench, practice);
      seen.add(JSON.stringify(draws.map(({ draw }) => [draw.facts, draw.right])));
      const answers = draws.map(({ family, seed, draw }) => ({
        family,
        seed,
        answers: keyOf(draw, practice.world, language).answers,
      }));
      const grade = gradeSheet(sheet, bench, answers, practice, language);
      expect([grade.passed, grade.held], `bench ${bench}`).toEqual([true, grade.n]);
      if (bench > 1) continue;
      expect(gradeSheet(sheet, bench, [], practice, language).passed).toBe(false);
      const [first, ...others] = answers;
      const without = [{ ...first, answers: {} }, ...others] as typeof answers;
      expect(gradeSheet(sheet, bench, without, practice, language).passed).toBe(false);
    }
    expect(seen.size).toBeGreaterThan(20);
  });
});
