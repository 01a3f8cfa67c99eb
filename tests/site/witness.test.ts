import { describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { keyOf } from '../../src/practice/key.ts';
import { type AnswersFile, regradeSheet, type SetFile, sheetDraws } from '../../src/practice/sheet.ts';
import type { Bodies } from '../../src/register/bodies.ts';
import { fullVariant } from '../../src/register/taskMap.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { regradeWith } from '../../src/schema/regrade.ts';
import { taskMapOf } from '../../src/schema/task.ts';
import { speaker } from '../../src/schema/words.ts';
import type { Given } from '../../src/site/practice.ts';
import { answersFile, fileText, readAnswers, readSet } from '../../src/site/sheetFiles.ts';
import { teller } from '../../src/site/speak.ts';
import {
  bars,
  earlyFaults,
  givenOf,
  nothingSeen,
  openPairs,
  outcomeOf,
  outOfTexts,
  outText,
  type Saw,
  sawOf,
  seenEntered,
  signatureRows,
  signatureSays,
  stillOpen,
  type WitnessTask,
} from '../../src/site/witness.ts';
import { readLength } from '../../src/trade/length.ts';
import { table } from './wordTable.ts';

const { library } = readLibrary(contentFiles());
const practice = practiceOf(library);
const speak = speaker(library.words.get('en') ?? new Map());
const tell = teller(table('en'));
const language = { lang: 'en', speak };
const taskOf = (id: string): WitnessTask => {
  const task = taskMapOf(library).tasks.find((one) => one.id === id);
  if (task === undefined) throw new Error(id);
  return { ...task, critical: library.tasks.get(id)?.critical ?? null, measures: 3 };
};
const t05 = taskOf('T05');
const seen = Object.fromEntries((t05.critical ?? []).map((point) => [point, 'seen' as const]));
const whole: Saw = {
  ...nothingSeen,
  ...{ person: 'DM', task: 'T05', on: '2026-03-09', points: seen },
  variant: fullVariant(t05, {}),
  ...{ manner: 'performed', help: 'alone', inSight: true, outcome: 'shown' },
};

const set: SetFile = { v: 1, kind: 'set', sheet: 'measure-and-mark', bench: 12, person: 'DM', task: 'T05' };
const sheet = practice.sheets.get(set.sheet);
if (sheet === undefined) throw new Error('no such sheet');
const draws = sheetDraws(sheet, set.bench, practice);
const right: Record<number, Given> = Object.fromEntries(
  draws.map(({ place, draw }) => [place, keyOf(draw, practice.world, language).answers as Given]),
);

describe('what keeps Shown from being offered', () => {
  const [first = ''] = t05.critical ?? [];
  const failed = regradeSheet(answersFile(set, 'dm-phone', draws, {}), practice, language);
  test.each([
    ['nothing', whole, undefined, []],
    ['a point missed', { ...whole, points: { ...seen, [first]: 'missed' as const } }, undefined, ['missed']],
    ['a point asked', { ...whole, points: { ...seen, [first]: 'asked' as const } }, undefined, []],
    ['a point not taken', { ...whole, points: {} }, undefined, ['open']],
    ['stopped', { ...whole, stopped: true }, undefined, ['stopped']],
    ['answers that do not pass', whole, failed, ['answers']],
  ])('%s', (_, saw, grade, expected) => {
    expect(bars(saw, t05, grade)).toEqual(expected);
    expect(outcomeOf(saw, bars(saw, t05, grade))).toBe(expected.length === 0 ? 'shown' : null);
    expect(outcomeOf({ ...saw, outcome: 'not-yet' }, bars(saw, t05, grade))).toBe('not-yet');
  });
});

test('nothing is chosen beforehand: everything is still open', () => {
  expect(stillOpen(nothingSeen, undefined, null).map((key) => tell(key))).toEqual([
    ...['who', 'task', 'day', 'manner', 'alone or with help', 'in your sight', 'outcome'],
  ]);
  expect(stillOpen(whole, t05, 'shown')).toEqual([]);
  const [pair = ''] = Object.keys(t05.variants);
  const { [pair]: _, ...rest } = whole.variant;
  for (const variant of [{}, rest]) {
    expect(stillOpen({ ...whole, variant }, t05, 'shown')).toEqual(['witness.openPairs']);
  }
  expect(openPairs({ ...whole, variant: rest }, t05)).toEqual([pair]);
  const others = answersFile({ ...set, person: 'AW' }, 'aw-phone', draws, right);
  expect(stillOpen({ ...whole, answers: others }, t05, 'shown')).toEqual(['witness.openAnswers']);
});

describe('what the signature will say', () => {
  const says = (part: Partial<Saw>, task = t05, spoken?: string) => {
    const saw = { ...whole, ...part };
    const grade = saw.answers === null ? undefined : regradeSheet(saw.answers, practice, language);
    return signatureSays({
      saw,
      outcome: saw.outcome ?? 'shown',
      spoken,
      task,
      me: 'KD',
      grade,
      sheetNumber: 5,
      entered: part.on === undefined ? whole.on : '2026-03-09',
      speak,
      tell,
    });
  };
  const head =
    'I, KD, saw DM at T05 Measure and mark, revision 1 (4 in, sleeve (socketed)), on 9 March 2026: ';
  test('a name that is known stands with its id', () => {
    expect(says({}, t05, 'Dana Mott (DM)')).toMatch(/^I, KD, saw Dana Mott \(DM\) at T05 Measure and mark, /);
  });
  test('shown, with answers, points and measures', () => {
    const answers = answersFile(set, 'dm-phone', draws, right);
    const measured = [{ what: 'piece 1', wanted: `7'-8 5/8"`, got: `7'-8 9/16"`, tool: 'tape 14' }];
    expect(says({ answers, measured })).toBe(
      `${head}performed, alone; 6 of 6 draws of sheet 5, bench 12, hold, answered on dm-phone, in my sight; ` +
        'critical points: 4 seen, 0 asked, 0 missed; 1 of 3 measured: shown, good to the end of 9 March 2027.',
    );
  });
  test('what is not done, alone and in sight is practice only', () => {
    const end = '; critical points: 4 seen, 0 asked, 0 missed; 0 of 3 measured: held, as practice only.';
    expect(says({ help: 'with-help' })).toBe(`${head}performed, with help${end}`);
    expect(says({ manner: 'talked' })).toBe(`${head}talked through, alone${end}`);
    expect(says({ inSight: false })).toMatch(
      /^I, KD, enter for DM what I did not see: T05 .*held, as practice only\.$/,
    );
  });
  test('not yet, stopped; a task that wants a second witness', () => {
    expect(says({ outcome: 'not-yet', stopped: true })).toMatch(
      /; stopped for safety, which counts against nobody: not yet\.$/,
    );
    expect(says({}, { ...t05, second: true })).toMatch(/: shown, once a second witness has seen it too\.$/);
  });
});

describe('seen and entered', () => {
  const says = (part: Partial<Saw>) =>
    signatureSays({
      ...{ saw: { ...whole, ...part }, outcome: 'shown', task: t05, me: 'KD', grade: undefined },
      ...{ sheetNumber: 0, entered: '2026-03-09', speak, tell },
    });
  const late = { on: '2026-03-03', paper: true };
  test('a later day of entry and the paper between are said, in the sentence and beside it', () => {
    expect(says(late)).toContain(', on 3 March 2026, and enter it on 9 March 2026, from paper: performed');
    expect(says({ on: '2026-03-03' })).toContain(
      ', on 3 March 2026, and enter it on 9 March 2026: performed',
    );
    expect(says({ paper: true })).toContain(', on 9 March 2026, and enter it the same day, from paper: ');
    expect(says({})).toContain(', on 9 March 2026: performed');
    expect(seenEntered({ ...whole, ...late }, '2026-03-09', tell)).toBe(
      'seen 3 March 2026, entered 9 March 2026, from paper',
    );
    expect(seenEntered(whole, '2026-03-09', tell)).toBe('');
  });
  test('shift and place are said, and good to the end counts from the day seen', () => {
    const text = says({ ...late, shift: 'night', place: 'lift' });
    expect(text).toContain('3 March 2026, on night shift, place: lift, and enter it on');
    expect(text).toMatch(/: shown, good to the end of 3 March 2027\.$/);
  });
});

test('what is signed along: every measure with its tool, every point that was not simply seen', () => {
  const [first = '', second = ''] = t05.critical ?? [];
  const measured = [
    { what: 'piece 1', wanted: `7'-8 5/8"`, got: `7'-8 9/16"`, tool: 'tape 14' },
    { what: 'plumb', wanted: 'within 1/8', got: 'within', tool: null },
  ];
  const points = { ...seen, [first]: 'asked' as const, [second]: 'missed' as const };
  expect(signatureRows({ saw: { ...whole, points, measured }, task: t05 }, speak, tell)).toEqual([
    `Asked, not seen: ${speak({ say: `T05.critical-${first}` })}`,
    `Missed: ${speak({ say: `T05.critical-${second}` })}`,
    `piece 1: wanted 7'-8\u00a05/8", got 7'-8\u00a09/16", with tape 14`,
    'plumb: wanted within 1/8, got within',
  ]);
  expect(outOfTexts({ wanted: `7'-8 5/8"`, got: `7'-8 9/16"` }, tell)).toBe('1/16" short');
  expect(outOfTexts({ wanted: '6 lb-ft', got: '6 lb-ft' }, tell)).toBe('');
  expect(outOfTexts({ wanted: '3', got: '4' }, tell)).toBe('');
});

test('a signed check comes back as it was put together', () => {
  const measured = [{ what: 'piece 1', wanted: `7'-8 5/8"`, got: `7'-8 9/16"`, tool: 'tape 14' }];
  const saw: Saw = { ...whole, measured, shift: 'night', place: 'scaffold', paper: true };
  const given = givenOf(saw, 'shown');
  expect(given.measured).toHaveLength(4);
  const { person, ...body } = given;
  expect(sawOf(person, { revision: 1, ...body } as unknown as Bodies['check'])).toEqual(saw);
});

test('what is refused is told as far as it is known', () => {
  const faults = ['person', 'task', 'key', 'on', 'variant.width', 'outcome'].map((field) => ({
    field,
    message: '',
    todo: '',
  }));
  const fields = (part: Partial<Saw>) =>
    earlyFaults({ ...nothingSeen, ...part }, faults).map(({ field }) => field);
  expect(fields({})).toEqual([]);
  expect(fields({ on: '2026-03-09' })).toEqual(['on']);
  expect(fields({ person: 'DM', task: 'T05', on: '2026-03-09' })).toEqual(['person', 'task', 'key', 'on']);
});

test('the check carries what was chosen, and the answers as they were handed over', () => {
  const answers = answersFile(set, 'dm-phone', draws, right);
  const given = givenOf({ ...whole, answers, variant: { width: '6' } }, 'shown');
  expect(given).toMatchObject({
    person: 'DM',
    task: 'T05',
    manner: 'performed',
    help: 'alone',
    inSight: true,
    stopped: false,
  });
  expect(given.evidence).toEqual(answers);
  expect(given.points).toHaveLength(4);
});

describe('files of a sheet', () => {
  test('what was set and what was answered come back as they were written', () => {
    expect(readSet(fileText(set))).toEqual(set);
    const answers = answersFile(set, 'dm-phone', draws, { 1: right[1] ?? {} });
    expect(readAnswers(fileText(answers))).toEqual(answers);
    expect(answers.answers).toHaveLength(6);
    expect(answers.answers[1]).toMatchObject({ answers: {} });
  });
  test.each([
    ['bench 0', { ...set, bench: 0 }],
    ['bench 10000', { ...set, bench: 10_000 }],
    ['a bench in words', { ...set, bench: '12' }],
    ['a person with a space', { ...set, person: 'D M' }],
    ['another kind', { ...set, kind: 'answers' }],
    ['a field more', { ...set, passed: true }],
  ])('a set file is refused: %s', (_, file) => {
    expect(() => readSet(JSON.stringify(file))).toThrow();
  });
  test('graded again only for the person and the task they are of', () => {
    const regrade = regradeWith(() => ({ practice, language }));
    const file: AnswersFile = answersFile(set, 'dm-phone', draws, right);
    const evidence = JSON.parse(JSON.stringify(file));
    expect(regrade(evidence, { person: 'DM', task: 'T05' })).toBe(true);
    expect(() => regrade(evidence, { person: 'AW', task: 'T05' })).toThrow();
    expect(() => regrade(evidence, { person: 'DM', task: 'T06' })).toThrow();
    const blank = JSON.parse(JSON.stringify(answersFile(set, 'dm-phone', draws, {})));
    expect(regrade(blank, { person: 'DM', task: 'T05' })).toBe(false);
  });
});

test('how far a measure is out, in words', () => {
  const out = (wanted: string, got: string) => outText(readLength(wanted), readLength(got), tell);
  expect(out(`7'-8 5/8"`, `7'-8 9/16"`)).toBe('1/16" short');
  expect(out(`7'-8 5/8"`, `7'-9 5/8"`)).toBe('1" long');
  expect(out(`7'-8 5/8"`, `7'-8 5/8"`)).toBe('as wanted');
});
