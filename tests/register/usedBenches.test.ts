import { beforeAll, describe, expect, test } from 'vitest';
import { benchOf, usedBenches, usesOf } from '../../src/register/usedBenches.ts';
import { Book, kd, next, stranger } from './book.ts';

const answers = (sheet: string, bench: number) => ({ v: 1, kind: 'answers', sheet, bench, answers: [] });

describe('benches that stand as evidence', () => {
  let book: Book;
  let first: string;
  let second: string;
  beforeAll(async () => {
    book = await Book.staffed();
    first = await book.check(kd, 'DM', 'T2', '2026-01-01', {
      variant: { width: '4', joint: 'butt' },
      evidence: answers('marks', 12),
    });
    second = await book.check(kd, 'DM', 'T1', '2026-01-01', { evidence: answers('cuts', 12) });
    await book.check(kd, 'DM', 'T1', '2026-01-01');
    await book.check(kd, 'EI', 'T1', '2026-01-01', { evidence: answers('marks', 13) });
  });

  test('are those of the person, with the check they are for', async () => {
    const judged = await book.judged();
    const shared = { on: '2026-01-01', bench: 12 };
    expect(usedBenches(judged, 'DM')).toEqual([
      { ...shared, sheet: 'marks', entry: first, task: 'T2', variant: { width: '4', joint: 'butt' } },
      { ...shared, sheet: 'cuts', entry: second, task: 'T1', variant: {} },
    ]);
    expect(usedBenches(judged, 'HV')).toEqual([]);
  });

  test('sheet and bench are both asked about', async () => {
    const judged = await book.judged();
    const uses = (person: string, sheet: string, bench: number) =>
      usesOf(judged, person, { sheet, bench }).map(({ entry }) => entry);
    expect(uses('DM', 'marks', 12)).toEqual([first]);
    expect(uses('DM', 'marks', 13)).toEqual([]);
    expect(uses('DM', 'fills', 12)).toEqual([]);
    expect(uses('EI', 'marks', 12)).toEqual([]);
    expect(usesOf(judged, 'DM', undefined)).toEqual([]);
  });

  test('one used twice is told twice', async () => {
    const twice = book.copy();
    const again = await twice.check(kd, 'DM', 'T1', '2026-01-01', { evidence: answers('marks', 12) });
    const uses = usesOf(await twice.judged(), 'DM', { sheet: 'marks', bench: 12 });
    expect(uses.map(({ entry }) => entry)).toEqual([first, again]);
  });

  test('a withdrawn check used nothing, nor does one that does not count', async () => {
    const other = book.copy();
    await other.act(kd, 'withdraw', 'DM', [first]);
    await other.check(stranger, 'DM', 'T1', '2026-01-01', { evidence: answers('marks', 21) });
    const uses = usedBenches(await other.judged(), 'DM');
    expect(uses.map(({ entry }) => entry)).toEqual([second]);
  });

  test('what was put in the place of evidence is used as well', async () => {
    const other = book.copy();
    await other.act(kd, 'correct', 'DM', [first], { evidence: answers('marks', 14) });
    await other.act(next, 'correct', 'DM', [first], { evidence: answers('marks', 15) });
    const uses = usedBenches(await other.judged(), 'DM').filter(({ entry }) => entry === first);
    expect(uses.map(({ bench }) => bench)).toEqual([12, 14]);
  });
});

test.each([[null], ['passes'], [[]], [{}], [{ sheet: 'marks' }], [{ sheet: 7, bench: 12 }]])(
  '%j is of no bench',
  (evidence) => {
    expect(benchOf(evidence)).toBeUndefined();
  },
);
