import { describe, expect, test } from 'vitest';
import {
  type AnswersFile,
  gradeSheet,
  regradeSheet,
  sheetDraws,
  sheetPlaces,
} from '../../src/practice/sheet.ts';
import { readAnswersFile, readSetFile } from '../../src/practice/sheetFiles.ts';
import { check } from '../../src/schema/faults.ts';
import { sheetShape } from '../../src/schema/sheet.ts';
import { GivenError } from '../../src/trade/given.ts';
import { language, practice, sheets } from './means.ts';

const sheet = sheets.get('measure-and-mark');
if (sheet === undefined) throw new Error('no sheet');
const draws = sheetDraws(sheet, 12, practice);
type Given = AnswersFile['answers'][number];
const answers: readonly Given[] = draws.map(({ family, seed, draw }) => ({
  family,
  seed,
  answers: draw.right,
}));
const file: AnswersFile = {
  v: 1,
  kind: 'answers',
  sheet: 'measure-and-mark',
  bench: 12,
  person: 'p-7',
  device: 'phone-3',
  task: 'T05',
  answers,
};
const [first, second, ...rest] = answers as [Given, Given, ...Given[]];
const gradeIt = (given: AnswersFile['answers']) => gradeSheet(sheet, 12, given, practice, language);
const faultsOf = (work: () => unknown) => {
  try {
    work();
  } catch (cause) {
    if (cause instanceof GivenError) return cause.faults;
    throw cause;
  }
  throw new Error('nothing was refused');
};

describe('the draws of a sheet', () => {
  test('sheet, bench and place fix the seeds', () => {
    expect(sheetPlaces(sheet, 12).map((p) => [p.place, p.family, p.seed])).toEqual([
      [1, 'cut-with-insertion', 'measure-and-mark/12/1'],
      [2, 'cut-with-insertion', 'measure-and-mark/12/2'],
      [3, 'cut-with-insertion', 'measure-and-mark/12/3'],
      [4, 'cut-with-insertion', 'measure-and-mark/12/4'],
      [5, 'read-feet-inch', 'measure-and-mark/12/5'],
      [6, 'read-feet-inch', 'measure-and-mark/12/6'],
    ]);
  });

  test('another bench has other draws', () => {
    const other = sheetDraws(sheet, 13, practice).map((d) => JSON.stringify(d.draw.right));
    expect(draws.map((d) => JSON.stringify(d.draw.right)).filter((d) => other.includes(d))).toEqual([]);
  });
});

describe('grading a sheet', () => {
  test('six of six', () => {
    const grade = gradeIt(answers);
    expect(grade).toMatchObject({
      sheet: 'measure-and-mark',
      bench: 12,
      held: 6,
      criticalMissed: [],
      passed: true,
    });
    expect(grade.draws.map((d) => d.score)).toEqual([100, 100, 100, 100, 100, 100]);
    // The order in which the file lists them does not matter.
    expect(gradeIt([...answers].reverse())).toEqual(grade);
  });

  test('five of six do not pass; a place without an entry is blank', () => {
    const grade = gradeIt(answers.slice(1));
    expect(grade).toMatchObject({ held: 5, criticalMissed: [1], passed: false });
    expect(grade.draws[0]?.findings.map((f) => f.verdict)).toEqual(['blank', 'blank']);
  });

  test('a critical point missed fails a sheet that is passed with fewer than all', () => {
    // 12 of 14 show 60 of 100 at 95 %: P(12 or more | 0.6) is 0.0398 (binomial table).
    const families = [{ family: 'cut-with-insertion', draws: 14 }];
    const lenient = { ...sheet, families, rule: { bound: { confidence: 0.95, share: 0.6 } } };
    const right = sheetDraws(lenient, 12, practice).map(({ family, seed, draw }) => ({
      family,
      seed,
      answers: draw.right,
    }));
    const change = (answer: object) =>
      gradeSheet(
        lenient,
        12,
        right.map((a, i) => (i < 2 ? { ...a, answers: { ...a.answers, ...answer } } : a)),
        practice,
        language,
      );
    expect(change({ left: 1 })).toMatchObject({ held: 12, criticalMissed: [], passed: true });
    expect(change({ cut: 1 })).toMatchObject({ held: 12, criticalMissed: [1, 2], passed: false });
  });

  test('draws of another bench, a draw twice, an answer that cannot be read', () => {
    const faults = faultsOf(() =>
      gradeIt([
        { ...first, seed: 'measure-and-mark/13/1' },
        second,
        second,
        ...rest.map((a, i) => (i === 0 ? { ...a, answers: { cut: 'x' } } : a)),
      ]),
    );
    expect(faults.map((f) => f.field)).toEqual([
      'answers[0].seed',
      'answers[2].seed',
      'answers[3].answers.cut',
    ]);
    expect(faultsOf(() => gradeIt([{ ...first, family: 'fill-check' }]))[0]?.field).toBe('answers[0].seed');
  });
});

describe('grading an answers file again', () => {
  test('follows from sheet, bench and answers alone', () => {
    expect(regradeSheet(file, practice, language)).toEqual(gradeIt(answers));
    expect(regradeSheet(JSON.parse(JSON.stringify(file)), practice, language).passed).toBe(true);
    const wrong = { ...file, answers: [{ ...first, answers: { cut: 1 } }] };
    expect(regradeSheet(wrong, practice, language).passed).toBe(false);
  });

  test('an unknown sheet, a task it says nothing about', () => {
    expect(faultsOf(() => regradeSheet({ ...file, sheet: 'none' }, practice, language))[0]?.field).toBe(
      'sheet',
    );
    expect(faultsOf(() => regradeSheet({ ...file, task: 'T06' }, practice, language))[0]?.field).toBe('task');
  });
});

describe('the files a sheet travels in', () => {
  test('are read', () => {
    expect(readAnswersFile(file)).toEqual(file);
    const set = { v: 1, kind: 'set', sheet: 'measure-and-mark', bench: 12, person: 'p-7', task: 'T05' };
    expect(readSetFile(set)).toEqual(set);
  });

  test.each([
    [{ v: 2 }, 'v'],
    [{ kind: 'set' }, 'kind'],
    [{ bench: 0 }, 'bench'],
    [{ bench: 10_000 }, 'bench'],
    [{ bench: '12' }, 'bench'],
    [{ person: 'two words' }, 'person'],
    [{ person: 'x'.repeat(65) }, 'person'],
    [{ device: 'x'.repeat(33) }, 'device'],
    [{ task: 'W1' }, 'task'],
    [{ answers: {} }, 'answers'],
    [{ answers: [{ family: 'f', seed: 's' }] }, 'answers[0].answers'],
    [{ grade: 100 }, 'grade'],
  ])('a fault in %j', (change, field) => {
    const faults = faultsOf(() => readAnswersFile({ ...file, ...change }));
    expect(faults.map((f) => f.field)).toEqual([field]);
  });

  test('every fault at once', () => {
    const set = { v: 1, kind: 'set', sheet: 'A B', bench: 1.5, person: '', task: 'T05', more: 1 };
    const fields = faultsOf(() => readSetFile(set)).map((f) => f.field);
    expect(fields.sort()).toEqual(['bench', 'more', 'person', 'sheet']);
  });
});

test('a sheet file whose rule does not fit its draws', () => {
  const given = {
    id: 's',
    number: 1,
    title: { en: 'S' },
    tasks: ['T05'],
    families: [{ family: 'f', draws: 3 }],
  };
  const fields = (rule: object) => {
    const read = check(sheetShape, { ...given, rule });
    return 'faults' in read ? read.faults.map((f) => f.field) : [];
  };
  expect(fields({ need: 3, of: 3 })).toEqual([]);
  expect(fields({ need: 2, of: 3 })).toEqual(['rule.need']);
  expect(fields({ need: 4, of: 4 })).toEqual(['rule.of']);
  expect(fields({ need: 4, of: 3 })).toEqual(['rule.need']);
});
