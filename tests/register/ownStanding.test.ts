/** What a site may ask of a witness's own standing: which day, which variant, from when, and whose fault is said. */
import { describe, expect, test } from 'vitest';
import { type CheckGiven, check, checkFaults } from '../../src/register/acts/check.ts';
import type { Demands } from '../../src/register/acts/ownStanding.ts';
import type { TaskMap } from '../../src/register/taskMap.ts';
import { at, Book, kd, lz, map } from './book.ts';

const demands: Demands = {
  ownStanding: { T1: '2026-02-01', T2: '2026-02-01', T3: '2026-02-01', T4: '2026-02-01' },
};
const given = (task: string, on: string, more: Partial<CheckGiven> = {}): CheckGiven => ({
  ...{ person: 'DM', task, on, outcome: 'shown' },
  ...more,
});
/** What LZ is told when he signs at noon of a day. */
async function told(
  book: Book,
  asked: CheckGiven,
  how: Demands | undefined,
  now = asked.on,
  over: TaskMap = map,
) {
  const judged = await book.judged({ now: at(`${now}T23:00:00Z`) });
  const writing = { signer: lz, now: at(`${now}T23:00:00Z`), chance: (n: number) => new Uint8Array(n) };
  return checkFaults(judged, asked, over, writing, undefined, how).map(
    ({ field, message }) => `${field}: ${message}`,
  );
}
const own = (task: string, on: string, rest: string) =>
  `key: the witness’s own standing in ${task} on ${on} is ${rest}`;

describe('a witness who is not shown himself', () => {
  test('is refused where the site asks for it, and only there', async () => {
    const book = await Book.staffed();
    expect(await told(book, given('T4', '2026-02-01'), demands)).toEqual([
      own('T4', '2026-02-01', 'not shown'),
    ]);
    expect(await told(book, given('T4', '2026-02-01'), undefined)).toEqual([]);
    expect(await told(book, given('T4', '2026-02-01'), { ownStanding: { T2: '2026-02-01' } })).toEqual([]);
  });

  test('is not asked for a day before the paper’s, whenever it is entered', async () => {
    const book = await Book.staffed();
    expect(await told(book, given('T4', '2026-01-31'), demands, '2026-03-01')).toEqual([]);
    expect(await told(book, given('T4', '2026-02-01'), demands, '2026-03-01')).toHaveLength(1);
  });

  test('is asked for not-yet as well: a lapsed eye is no better at saying no', async () => {
    const book = await Book.staffed();
    expect(await told(book, given('T4', '2026-02-01', { outcome: 'not-yet' }), demands)).toHaveLength(1);
  });
});

describe('the day seen decides', () => {
  const month = async () => {
    const book = await Book.staffed();
    const shown = await book.on('2026-02-05').check(kd, 'LZ', 'T4', '2026-02-05');
    return { book, shown };
  };
  test('shown holds to the end of its last day, and not a day longer', async () => {
    const { book, shown } = await month();
    expect(await told(book, given('T4', '2026-02-05'), demands)).toEqual([]);
    // T4 is good for one month.
    expect(await told(book, given('T4', '2026-03-05'), demands)).toEqual([]);
    expect(await told(book, given('T4', '2026-03-06'), demands)).toEqual([
      own('T4', '2026-03-06', `show again: its time had passed, entry ${shown.slice(0, 16)}`),
    ]);
    // Entered late from paper, it counts for the day it was seen on.
    expect(await told(book, given('T4', '2026-03-05'), demands, '2026-06-01')).toEqual([]);
    // The day before he was shown himself.
    expect(await told(book, given('T4', '2026-02-04'), demands, '2026-03-01')).toHaveLength(1);
  });

  test('a not-yet, a withdrawal and a revision are told with the entry that says so', async () => {
    const { book, shown } = await month();
    const notYet = book.copy();
    const against = await notYet.on('2026-02-10').check(kd, 'LZ', 'T4', '2026-02-10', { outcome: 'not-yet' });
    expect(await told(notYet, given('T4', '2026-02-10'), demands)).toEqual([
      own('T4', '2026-02-10', `show again: a not-yet since, entry ${against.slice(0, 16)}`),
    ]);
    const withdrawal = await book.on('2026-02-10').act(kd, 'withdraw', 'LZ', [shown]);
    expect(await told(book, given('T4', '2026-02-12'), demands)).toEqual([
      own('T4', '2026-02-12', `show again: taken back, entry ${withdrawal.slice(0, 16)}`),
    ]);
    const revised = await Book.staffed();
    const old = await revised.on('2026-02-05').check(kd, 'LZ', 'T1', '2026-02-05');
    expect(await told(revised, given('T1', '2026-02-28'), demands)).toEqual([]);
    // Revision 2 of T1 is in force from 1 March, and asks everyone to show it again.
    expect(await told(revised, given('T1', '2026-03-01'), demands)).toEqual([
      own('T1', '2026-03-01', `show again: revision 2 asks for it again, entry ${old.slice(0, 16)}`),
    ]);
  });
});

test('it is asked of the variant that is signed for, a pair left out being plain', async () => {
  const book = await Book.staffed();
  const six = { variant: { width: '6', joint: 'socketed' } };
  await book.on('2026-02-05').check(kd, 'LZ', 'T2', '2026-02-05', six);
  expect(await told(book, given('T2', '2026-02-06', { variant: { width: '6' } }), demands)).toEqual([]);
  expect(await told(book, given('T2', '2026-02-06'), demands)).toHaveLength(1);
  expect(
    await told(book, given('T2', '2026-02-06', { variant: { width: '6', joint: 'butt' } }), demands),
  ).toHaveLength(1);
});

test('practice only is not enough, nor a showing that still wants its second witness', async () => {
  const book = await Book.staffed();
  await book.on('2026-02-05').check(kd, 'LZ', 'T4', '2026-02-05', { help: 'with-help' });
  const waiting = await book.check(kd, 'LZ', 'T3', '2026-02-05');
  expect(await told(book, given('T4', '2026-02-06'), demands)).toEqual([
    own('T4', '2026-02-06', 'practice only'),
  ]);
  expect(await told(book, given('T3', '2026-02-06'), demands)).toEqual([
    own('T3', '2026-02-06', `not shown: no second witness yet, entry ${waiting.slice(0, 16)}`),
  ]);
});

test('the act refuses as the list of faults does, and signs once the witness is shown', async () => {
  const book = await Book.staffed();
  const sign = (how: Demands | undefined) =>
    book
      .on('2026-02-06')
      .sign(lz, (judged, writing) => check(judged, given('T4', '2026-02-06'), map, writing, undefined, how));
  await expect(sign(demands)).rejects.toMatchObject({ faults: [{ field: 'key', value: lz.publicKey }] });
  await book.on('2026-02-05').check(kd, 'LZ', 'T4', '2026-02-05');
  expect(await sign(demands)).toMatch(/^[0-9a-f]{64}$/);
  // A reader asks nothing of the kind: what was signed elsewhere without the demand counts.
  expect(await book.codes()).toEqual([]);
});
