import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Attempt, CAME, cameOf, firstTries, mergeAttempts } from '../../src/practice/attempts.ts';
import { attemptsText, readAttemptsFile } from '../../src/practice/attemptsFile.ts';
import { GENERATOR } from '../../src/practice/generator.ts';
import type { Grade, Verdict } from '../../src/practice/grade.ts';
import { GivenError } from '../../src/trade/given.ts';

const one: Attempt = {
  family: 'cut-with-insertion',
  seed: '4172',
  generator: GENERATOR,
  at: '2026-03-09T14:05:00.000Z',
  answers: { cut: 110.25, left: 129.625 },
  came: 'passed',
};
const file = { device: 'phone-3', made: '2026-03-10T07:00:00.000Z', attempts: [one] };
const asSaved = () => JSON.parse(attemptsText(file)) as Record<string, unknown>;
const faultsOf = (given: unknown) => {
  try {
    readAttemptsFile(given);
  } catch (cause) {
    if (cause instanceof GivenError) return cause.faults;
    throw cause;
  }
  throw new Error('nothing was refused');
};

describe('the file', () => {
  test('what is written is read', () =>
    expect(readAttemptsFile(asSaved())).toEqual({ v: 1, kind: 'attempts', ...file }));

  test('a device without tries has a file too', () =>
    expect(readAttemptsFile(JSON.parse(attemptsText({ ...file, attempts: [] }))).attempts).toEqual([]));

  test('a family or a generator that this edition does not know is no fault', () => {
    const foreign = { ...one, family: 'gone-long-ago', generator: 'trayhand seed 9' };
    expect(readAttemptsFile({ ...asSaved(), attempts: [foreign] }).attempts).toEqual([foreign]);
  });

  test.each([
    ['v', { v: 2 }],
    ['kind', { kind: 'answers' }],
    ['device', { device: 'my phone' }],
    ['made', { made: '10 March 2026' }],
    ['made', { made: '2026-02-30T00:00:00.000Z' }],
    ['attempts', { attempts: {} }],
    ['person', { person: 'p-7' }],
    ['attempts[0].family', { attempts: [{ ...one, family: '../x' }] }],
    ['attempts[0].seed', { attempts: [{ ...one, seed: '' }] }],
    ['attempts[0].seed', { attempts: [{ ...one, seed: 'x'.repeat(65) }] }],
    ['attempts[0].generator', { attempts: [{ ...one, generator: 1 }] }],
    ['attempts[0].at', { attempts: [{ ...one, at: '2026-03-09' }] }],
    ['attempts[0].answers', { attempts: [{ ...one, answers: [1] }] }],
    ['attempts[0].came', { attempts: [{ ...one, came: 'well' }] }],
    ['attempts[0].note', { attempts: [{ ...one, note: 'mine' }] }],
  ])('%s is refused', (field, change) => {
    const faults = faultsOf({ ...asSaved(), ...change });
    expect(faults.map((fault) => fault.field)).toEqual([field]);
    expect(faults.every(({ message, todo }) => message !== '' && todo !== '')).toBe(true);
  });

  test('a single try that is none stays out and is named, the others come in', () => {
    const bad = { ...one, seed: '' };
    const read = readAttemptsFile({ ...asSaved(), attempts: [one, 7, bad, { ...one, seed: '4173' }] });
    expect(read.attempts.map(({ seed }) => seed)).toEqual(['4172', '4173']);
    expect(read.left).toMatchObject([
      { family: '', seed: '', faults: [{ field: 'attempts[1]' }] },
      { family: one.family, seed: '', faults: [{ field: 'attempts[2].seed' }] },
    ]);
  });

  test('a try that no reader would take is not written', () => {
    const seeds = ['', '4172', 'x'.repeat(65)];
    const text = attemptsText({ ...file, attempts: seeds.map((seed) => ({ ...one, seed })) });
    expect(readAttemptsFile(JSON.parse(text))).toEqual({ v: 1, kind: 'attempts', ...file });
  });

  test('every fault is said at once', () => {
    const faults = faultsOf({ v: 1, kind: 'attempts', device: '', attempts: [{ ...one, at: 1, seed: '' }] });
    expect(faults.map(({ field }) => field)).toEqual([
      'device',
      'made',
      'attempts[0].seed',
      'attempts[0].at',
    ]);
  });

  test.each([null, 'text', []])('%j is no file', (given) => expect(faultsOf(given)[0]?.field).toBe(''));
});

/** Few families, seeds and moments, so that heaps do share tries. */
const attempt: fc.Arbitrary<Attempt> = fc
  .record({
    family: fc.constantFrom('a', 'b'),
    seed: fc.constantFrom('1', '2'),
    generator: fc.constantFrom(GENERATOR, 'trayhand seed 0'),
    at: fc.constantFrom('2026-03-09T14:05:00.000Z', '2026-03-09T14:06:00.000Z'),
    answers: fc.constantFrom<Attempt['answers']>({}, { cut: 1, left: 2 }, { left: 2, cut: 1 }),
    came: fc.constantFrom(undefined, ...CAME),
  })
  .map(({ came, ...rest }) => (came === undefined ? rest : { ...rest, came }));
const heap = fc.array(attempt, { maxLength: 12 });

describe('joining two heaps', () => {
  test('it does not matter which comes first', () =>
    fc.assert(
      fc.property(heap, heap, (a, b) => {
        expect(mergeAttempts(a, b)).toEqual(mergeAttempts(b, a));
      }),
    ));
  test('nor in what order three are joined', () =>
    fc.assert(
      fc.property(heap, heap, heap, (a, b, c) => {
        expect(mergeAttempts(mergeAttempts(a, b), c)).toEqual(mergeAttempts(a, mergeAttempts(b, c)));
      }),
    ));
  test('the own heap changes nothing', () =>
    fc.assert(
      fc.property(heap, (a) => {
        const own = mergeAttempts(a, []);
        expect(mergeAttempts(own, own)).toEqual(own);
        expect(mergeAttempts(own, JSON.parse(JSON.stringify(own)) as Attempt[])).toEqual(own);
      }),
    ));
  test('nothing is lost, and a note fills a missing one', () => {
    const { came: _, ...bare } = one;
    expect(mergeAttempts([bare], [one])).toEqual([one]);
    expect(mergeAttempts([one], [{ ...one, came: 'not' }])).toEqual([{ ...one, came: 'not' }]);
    expect(mergeAttempts([one], [{ ...one, at: '2026-03-09T14:05:00.001Z' }])).toHaveLength(2);
    expect(mergeAttempts([one], [{ ...one, answers: { cut: 110.25 } }])).toHaveLength(2);
    expect(mergeAttempts([one], [{ ...one, answers: { left: 129.625, cut: 110.25 } }])).toHaveLength(1);
  });
});

test('of the tries at a draw only the first is one', () => {
  const later = { ...one, at: '2026-03-09T14:06:00.000Z', came: 'not' } as const;
  const other = { ...later, seed: '4173' };
  expect(firstTries([later, other, one])).toEqual([one, other]);
});

test.each<[readonly Verdict[], boolean, string]>([
  [['holds', 'rework'], true, 'passed'],
  [['holds', 'near'], false, 'near'],
  [['near', 'near'], false, 'near'],
  [['near', 'rework'], false, 'not'],
  [['holds', 'blank'], false, 'not'],
  [['rework', 'holds from there'], false, 'not'],
])('%j, passed %s: %s', (verdicts, passed, came) => {
  const findings = verdicts.map((verdict, k) => ({ ask: `a${k}`, verdict, mistake: null, says: '' }));
  expect(cameOf({ score: 50, passed, criticalMissed: [], findings } satisfies Grade)).toBe(came);
});
