/** From files that people hand in to what is said of families and sheets. */
import { describe, expect, test } from 'vitest';
import type { Attempt } from '../../src/practice/attempts.ts';
import type { AttemptsFile } from '../../src/practice/attemptsFile.ts';
import { Undrawable } from '../../src/practice/draw.ts';
import { GENERATOR } from '../../src/practice/generator.ts';
import { type AnswersFile, gradeSheet, type Sheet, sheetDraws } from '../../src/practice/sheet.ts';
import { sheetForm } from '../../src/practice/sheetForm.ts';
import { sheetTallies } from '../../src/practice/statistics/common.ts';
import { kappa } from '../../src/practice/statistics/kappa.ts';
import { decidePooled, pooledOf } from '../../src/practice/statistics/pooled.ts';
import { type Brought, readBrought } from '../../src/practice/statistics/rawTries.ts';
import { shareOf } from '../../src/practice/statistics/share.ts';
import { tallies } from '../../src/practice/statistics/tally.ts';
import { triesOf } from '../../src/practice/statistics/tries.ts';
import {
  saysOfAgreement,
  saysOfItem,
  saysOfMistakes,
  saysOfPooled,
  saysOfShare,
  saysOfSheet,
  tallySays,
} from '../../src/practice/statistics/words.ts';
import { GivenError } from '../../src/trade/given.ts';
import { readLength, fromInches as toTicks } from '../../src/trade/length.ts';
import { draw, language, practice, sheets } from './means.ts';

const CUT = 'cut-with-insertion';
const wrongBy = (seed: string, mistake: string) =>
  draw(CUT, seed).wrong.find((one) => one.mistake.id === mistake && one.ask === 'cut')?.answer;
/** Seeds on which a mistake can, or cannot, be made. */
const seeds = (mistake: string, can: boolean, count: number): readonly string[] =>
  Array.from({ length: 400 }, (_, i) => `t-${i}`)
    .filter((seed) => (wrongBy(seed, mistake) !== undefined) === can)
    .slice(0, count);

let minute = 0;
const attempt = (seed: string, change: object = {}, more: Partial<Attempt> = {}): Attempt => {
  minute += 1;
  return {
    family: CUT,
    seed,
    generator: GENERATOR,
    at: new Date(Date.UTC(2026, 2, 9, 8, minute)).toISOString(),
    answers: { ...draw(CUT, seed).right, ...change },
    ...more,
  };
};
const attempts = (device: string, list: readonly Attempt[]): Brought => ({
  name: `${device}.json`,
  file: { v: 1, kind: 'attempts', device, made: '2026-03-10T08:00:00.000Z', attempts: list } as AttemptsFile,
});
const tried = (...brought: readonly Brought[]) => triesOf(brought, practice, 'en');

const sheet = sheets.get('measure-and-mark');
if (sheet === undefined) throw new Error('no sheet');
/** Answers to the sheet by a pattern of its places: `+` right, `-` a critical ask out, `.` nothing. */
const answers = (person: string, bench: number, pattern: string, device = `${person}-phone`): Brought => ({
  name: `${person}-${bench}.json`,
  file: {
    v: 1,
    kind: 'answers',
    sheet: 'measure-and-mark',
    bench,
    person,
    device,
    task: 'T05',
    answers: sheetDraws(sheet, bench, practice).flatMap(({ family, seed, draw: { right } }, i) => {
      if (pattern[i] === '.') return [];
      const first = Object.keys(right)[0] as string;
      return [{ family, seed, answers: pattern[i] === '+' ? right : { ...right, [first]: 1 } }];
    }),
  } as AnswersFile,
});

describe('nine of fourteen', () => {
  const can = seeds('one-end-only', true, 14);
  const cannot = seeds('one-end-only', false, 3);
  const list = [
    ...can.slice(0, 9).map((seed) => attempt(seed, { cut: wrongBy(seed, 'one-end-only') as number })),
    ...can.slice(9).map((seed) => attempt(seed)),
    ...cannot.map((seed) => attempt(seed)),
  ];
  const brought = list.map((one, i) => attempts(`phone-${i}`, [one]));
  const [family] = tallies(tried(...brought).tried);
  const [cut, left] = family?.asks ?? [];

  test('a mistake is counted out of the answers to draws on which it can be made', () => {
    expect(can).toHaveLength(14);
    expect(family).toMatchObject({ family: CUT, people: 17, share: { n: 17, held: 8, few: true } });
    expect(cut).toMatchObject({ ask: 'cut', share: { n: 17, held: 8 }, near: 0, blank: 0, unknown: 0 });
    expect(cut?.mistakes).toMatchObject([{ mistake: 'one-end-only', made: 9, of: 14 }]);
    expect(left?.share.held).toBe(17);
  });

  test('in words', () => {
    expect(cut && saysOfMistakes(cut).map(language.speak)).toEqual([
      '9 of 14: Both ends of this piece go in, and the insertion of the second was left out. Say both ends aloud before the sum.',
    ]);
    // Wilson, 8 of 17, as tests/references/passRule.py works it: .2617 to .6904.
    const say = family && language.speak(saysOfShare(family.share));
    expect(say).toMatch(/^8 of 17 hold\. .* between 26\.2 and 69 would hold/);
  });

  test('the order of files changes nothing', () => {
    expect(tallies(tried(...brought.toReversed()).tried)[0]).toEqual(family);
  });
});

describe('first tries', () => {
  const [seed = ''] = seeds('insertion-forgotten', true, 1);
  const wrong = { cut: wrongBy(seed, 'insertion-forgotten') as number };

  test('a second try of a draw does not count, in whatever file it is', () => {
    const [first, second] = [attempt(seed, wrong), attempt(seed)];
    for (const files of [[[second, first]], [[second], [first]], [[first], [first, second]]]) {
      const result = tried(...files.map((list) => attempts('phone-1', list)));
      expect(result.tried.map((one) => one.passed)).toEqual([false]);
      expect(result.left).toEqual([]);
    }
    // On another device it is another person's.
    expect(tried(attempts('phone-1', [first]), attempts('phone-2', [second])).tried).toHaveLength(2);
  });

  test('nothing entered is no try; a blank ask beside an answered one is counted', () => {
    const right = draw(CUT, seed).right;
    const some = attempt(seed, {}, { answers: { cut: right['cut'] } });
    expect(tried(attempts('phone-1', [attempt(seed, {}, { answers: {} })])).tried).toEqual([]);
    const [family] = tallies(tried(attempts('phone-1', [some])).tried);
    expect(family?.asks[1]).toMatchObject({ ask: 'left', blank: 1, share: { n: 1, held: 0 } });
  });

  test('what cannot be counted is named, and the rest counts', () => {
    const bad = [
      attempt(seed, {}, { family: 'none' }),
      attempt('t-1', {}, { generator: 'older' }),
      attempt('t-2', {}, { answers: { cut: 'x' } }),
      attempt('t-3'),
    ];
    const { left, tried: counted } = tried(attempts('phone-1', bad));
    expect(left.map(({ name, why }) => [name, why])).toEqual([
      ['phone-1.json', 'no such family'],
      ['phone-1.json', 'other generator'],
      ['phone-1.json', 'unread'],
    ]);
    expect(counted).toHaveLength(1);
  });

  test('answers files: once however often brought; two that differ are both left out', () => {
    const file = answers('p-1', 1, '+++++-');
    expect(tried(file, { ...file, name: 'again.json' }).tried).toHaveLength(6);
    const { tried: counted, left } = tried(file, answers('p-1', 1, '++++++'));
    expect(counted).toHaveLength(5);
    expect(left).toMatchObject([{ seed: 'measure-and-mark/1/6', why: 'twice' }]);
  });

  test('a sheet that is not there, a draw that is not its own', () => {
    const { name, file } = answers('p-1', 1, '++++++') as { name: string; file: AnswersFile };
    expect(tried({ name, file: { ...file, sheet: 'none' } }).left.map(({ why }) => why)).toEqual(
      Array.from({ length: 6 }, () => 'no such sheet'),
    );
    expect(tried({ name, file: { ...file, bench: 2 } }).left.map(({ why }) => why)).toEqual(
      Array.from({ length: 6 }, () => 'not of this sheet'),
    );
  });

  test('a sheet made on a page comes in its file; what it narrows is drawn narrowed', () => {
    const small = { length: { from: toTicks(40), to: toTicks(50), step: toTicks(1) } };
    const made: Sheet = {
      ...sheet,
      id: 'made-here',
      families: [{ family: CUT, draws: 2, narrow: { distance: small } }],
      rule: { need: 2, of: 2 },
    };
    const draws = sheetDraws(made, 3, practice);
    const base = answers('p-1', 3, '++++++') as { name: string; file: AnswersFile };
    const file: AnswersFile = {
      ...base.file,
      sheet: made.id,
      of: sheetForm(made),
      answers: draws.map(({ family, seed, draw: { right } }) => ({ family, seed, answers: right })),
    };
    const result = tried({
      name: 'made.json',
      file: readBrought(JSON.parse(JSON.stringify(file))) as AnswersFile,
    });
    expect(result.left).toEqual([]);
    expect(result.tried.map(({ passed }) => passed)).toEqual([true, true]);
    expect(sheetTallies(result)).toMatchObject([{ sheet: { id: 'made-here' }, people: 1 }]);
    const broken = tried({ name: 'made.json', file: { ...file, of: { ...file.of, rule: {} } } });
    expect(broken.left.map(({ why }) => why)).toEqual(['no such sheet', 'no such sheet']);
  });

  test('a single try of a file that is none is not counted, and is named', () => {
    const { file } = attempts('phone-1', [attempt('t-1'), attempt('')]);
    const result = tried({ name: 'phone-1.json', file: readBrought(JSON.parse(JSON.stringify(file))) });
    expect(result.tried).toHaveLength(1);
    expect(result.left).toMatchObject([{ name: 'phone-1.json', family: CUT, seed: '', why: 'unread' }]);
  });

  test('a sheet narrowed so far that nothing can be drawn of it stops the counting of no other', () => {
    // Of this one reading no draw can be used.
    const only = readLength(`2'-0 1/16"`);
    const narrow = { reading: { length: { from: only, to: only, step: readLength('1/16') } } };
    const made: Sheet = {
      ...sheet,
      id: 'one-reading',
      families: [{ family: 'read-tape', draws: 1, narrow }],
      rule: { need: 1, of: 1 },
    };
    const base = answers('p-1', 3, '++++++') as { name: string; file: AnswersFile };
    const file: AnswersFile = {
      ...base.file,
      sheet: made.id,
      of: sheetForm(made),
      answers: [{ family: 'read-tape', seed: 'one-reading/3/1', answers: { length: 24 } }],
    };
    const result = tried({ name: 'one.json', file }, answers('p-2', 1, '++++++'));
    expect(result.left).toMatchObject([{ name: 'one.json', family: 'read-tape', why: 'not drawn' }]);
    expect(result.tried).toHaveLength(6);
    // Grading it is refused as what was given, not as a slip of the program.
    expect(() => gradeSheet(made, 3, [], practice, language)).toThrow(Undrawable);
    expect(() => gradeSheet(made, 3, [], practice, language)).toThrow(GivenError);
  });

  test('tries of a device are those of the one person whose sheets came from it; a sheet kept there too counts once', () => {
    const handed = answers('p-1', 1, '++++++', 'phone-1');
    const kept = attempts('phone-1', [attempt(seed), attempt('measure-and-mark/1/1')]);
    const result = tried(handed, kept);
    expect(result.tried).toHaveLength(7);
    expect(new Set(result.tried.map(({ who }) => who)).size).toBe(1);
    const two = tried(handed, answers('p-2', 2, '++++++', 'phone-1'), kept);
    expect(new Set(two.tried.map(({ who }) => who)).size).toBe(3);
  });

  test('files are read by their kind', () => {
    const { file } = answers('p-1', 1, '++++++');
    expect(readBrought(JSON.parse(JSON.stringify(file)))).toEqual(file);
    const kept = attempts('phone-1', [attempt(seed)]).file;
    expect(readBrought(JSON.parse(JSON.stringify(kept)))).toEqual(kept);
    for (const other of [{ kind: 'set' }, [], null, 'x'])
      expect(() => readBrought(other)).toThrow(GivenError);
  });
});

describe('whole sheets', () => {
  // Totals 6 4 2 0 over places that fall away one pair after the other.
  const files = ['++++++', '++++--', '++----', '------'].map((p, i) => answers(`p-${i}`, i + 1, p));
  const tallyOf = (...brought: readonly Brought[]) => sheetTallies(tried(...brought));
  const [whole] = tallyOf(...files);

  test('KR-20, error and point-biserials, worked by hand', () => {
    expect(whole).toMatchObject({ sheet: { id: 'measure-and-mark' }, people: 4, partly: 0 });
    expect(whole?.items.map(({ place, share: { held, n } }) => [place, held, n])).toEqual([
      [1, 3, 4],
      [2, 3, 4],
      [3, 2, 4],
      [4, 2, 4],
      [5, 1, 4],
      [6, 1, 4],
    ]);
    // Σpq = 4 · 3/16 + 2 · 1/4 = 1.25; variance of 6 4 2 0 = 5; 6/5 · (1 − 1.25/5) = 0.9; √5 · √0.1 = √0.5.
    expect(whole?.kr20).toEqual({ value: expect.closeTo(0.9, 12) });
    expect(whole?.error).toEqual({ value: expect.closeTo(Math.SQRT1_2, 12) });
    // Place 3: means 5 and 1, σ √5, √(1/4): 2/√5. Without it: 4.. totals 5 3 2 0, means 4 and 1, variance 3.25.
    expect(whole?.items[2]?.pointBiserial).toEqual({ value: expect.closeTo(2 / Math.sqrt(5), 12) });
    expect(whole?.items[2]?.pointBiserialWithout).toEqual({
      value: expect.closeTo(1.5 / Math.sqrt(3.25), 12),
    });
  });

  test('a sheet answered in part does not count; of two benches of one person the lower', () => {
    const [part] = tallyOf(...files, answers('p-9', 9, '+++++.'));
    expect(part).toMatchObject({ people: 4, partly: 1, kr20: whole?.kr20 });
    const [lower] = tallyOf(answers('p-0', 7, '------'), ...files);
    expect(lower).toEqual(whole);
    expect(tallyOf()).toEqual([]);
  });

  test('in words: how few they are is said, and where there is no figure, why', () => {
    const says = whole ? saysOfSheet(whole).map(language.speak) : [];
    expect(says[0]).toBe('Answered whole by 4, in part by 0. Only whole sheets count below.');
    expect(says[1]).toContain('4 people are too few');
    expect(says[2]).toContain('0.90');
    expect(says[3]).toContain('0.71');
    const [alone] = tallyOf(answers('p-1', 1, '+++++-'));
    expect(alone && saysOfSheet(alone).map(language.speak)[1]).toContain('1 person is too few');
    const [same] = tallyOf(answers('p-1', 1, '+++++-'), answers('p-2', 2, '+++++-'));
    expect(same && saysOfSheet(same).map(language.speak)).toContain(
      'No figure: everyone has the same number of draws that hold.',
    );
    expect(same?.items[0] && saysOfItem(same.items[0]).map(language.speak)).toEqual([
      'No figure: all are in one class.',
    ]);
  });

  test('a draw that goes against the rest is pointed at', () => {
    const [against] = tallyOf(
      ...['++++-', '+++--', '++--+', '+---+'].map((p, i) => answers(`p-${i}`, i + 1, `${p}+`)),
    );
    const [fifth] = against?.items.slice(4) ?? [];
    expect(fifth && saysOfItem(fifth).map(({ say }) => say)).toEqual(['tally.agrees', 'tally.agreesNot']);
  });
});

describe('sheets of one person, pooled', () => {
  const poolOf = (...brought: readonly Brought[]) => pooledOf(tried(...brought), practice.families);
  const bound = { confidence: 0.95, share: 0.8 };
  const three = [1, 2, 3].map((bench) => answers('p-1', bench, '++++++'));

  test('eighteen of eighteen show four fifths; two sheets are too few to say', () => {
    const [pooled] = poolOf(...three);
    expect(pooled).toMatchObject({
      person: 'p-1',
      sheets: [1, 2, 3].map((bench) => ({ number: sheet.number, bench })),
      criticalMissed: false,
    });
    // 0.05 ^ (1/18) = 0.8467: passed against 0.80, undecided against 0.85 (refused as a rule nobody could pass).
    const passed = pooled && decidePooled(pooled, bound);
    expect(passed).toMatchObject({ decision: { result: 'pass', n: 18, held: 18 } });
    expect(pooled && decidePooled(pooled, { confidence: 0.95, share: 0.85 })).toMatchObject({
      faults: [{ field: 'bound' }],
    });
    const [two] = poolOf(...three.slice(1));
    const few = two && decidePooled(two, bound);
    expect(few).toMatchObject({ faults: [{ field: 'bound', value: 12 }], n: 12, held: 12 });
    expect(few && saysOfPooled(few).map(language.speak)).toEqual([
      expect.stringContaining('Too few draws'),
      // Clopper–Pearson, 12 of 12: 0.025 ^ (1/12) = 0.7354.
      '12 of 12 draws hold. From so many one can be 95 % sure that the person holds between 73.5 and 100 of 100 such draws.',
    ]);
    expect(passed && saysOfPooled(passed).map(({ say }) => say)).toEqual(['passRule.pass', 'passRule.held']);
  });

  test('a blank draw does not hold, a critical point missed refuses; others and loose tries stay out', () => {
    const [blank] = poolOf(...three.slice(1), answers('p-1', 1, '+++++.'));
    expect(blank?.outcomes.filter(Boolean)).toHaveLength(17);
    expect(blank && decidePooled(blank, bound)).toMatchObject({
      decision: { result: 'refuse', by: 'critical' },
    });
    const people = poolOf(...three, answers('p-2', 4, '++++++'), attempts('phone-9', [attempt('t-1')]));
    expect(people.map(({ person, outcomes }) => [person, outcomes.length])).toEqual([
      ['p-1', 18],
      ['p-2', 6],
    ]);
  });

  test('a sequential sheet is no part of a pool', () => {
    const rule = { sequential: { p0: 0.6, p1: 0.85, alpha: 0.05, beta: 0.1, ceiling: 20 } };
    const other = new Map([[sheet.id, { ...sheet, rule }]]);
    expect(pooledOf({ ...tried(...three), sheets: other }, practice.families)).toEqual([]);
  });
});

describe('words', () => {
  test('below 30 answers n and interval, never a share; from 30 on both', () => {
    expect(saysOfShare(shareOf(27, 29)).say).toBe('tally.few');
    expect(language.speak(saysOfShare(shareOf(1, 6)))).toMatch(/^1 of 6 holds\. /);
    expect(saysOfShare(shareOf(27, 30)).say).toBe('tally.share');
    expect(saysOfShare(shareOf(0, 0)).say).toBe('tally.nobody');
    // Newcombe (1998), Table I: 15 of 148, Wilson .0624 to .1605 (.16049 before it is rounded).
    expect(language.speak(saysOfShare(shareOf(15, 148)))).toBe(
      '10.1 of 100 hold: 15 of 148. Of all such answers it is between 6.2 and 16 of 100 (95 % sure).',
    );
  });

  test('two trainers', () => {
    expect(
      saysOfAgreement(
        kappa([
          [20, 5],
          [10, 15],
        ]),
      ).map(language.speak),
    ).toEqual(['35 of 50 alike.', 'Beyond what chance gives: 0.40 (kappa; 1 is always, 0 is chance).']);
    expect(
      saysOfAgreement(
        kappa([
          [10, 0],
          [0, 0],
        ]),
      ).map(({ say }) => say),
    ).toEqual(['tally.alike', 'tally.oneClass']);
    expect(
      saysOfAgreement(
        kappa([
          [0, 0],
          [0, 0],
        ]),
      ).map(({ say }) => say),
    ).toEqual(['tally.alike', 'tally.tooFew']);
  });

  test('the room lists every key once', () => {
    expect(new Set(tallySays).size).toBe(tallySays.length);
    expect(tallySays).toHaveLength(22);
  });
});
