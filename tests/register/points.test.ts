/** Critical points of a check: with one missed nothing was shown, and each stands once. */
import { describe, expect, test } from 'vitest';
import { check, checkFaults } from '../../src/register/acts/check.ts';
import type { Point } from '../../src/register/bodies.ts';
import { at, Book, kd, map } from './book.ts';

const given = (points: readonly Point[], outcome: 'shown' | 'not-yet') => ({
  ...{ person: 'DM', task: 'T1', outcome, on: '2026-02-02', points },
});
const writing = { signer: kd, now: at('2026-02-02'), chance: (n: number) => new Uint8Array(n) };
const faultsOf = async (points: readonly Point[], outcome: 'shown' | 'not-yet') => {
  const judged = await (await Book.staffed()).on('2026-02-02').judged();
  return checkFaults(judged, given(points, outcome), map, writing, undefined).map(
    ({ field, message }) => `${field}: ${message}`,
  );
};

describe('critical points', () => {
  test.each([
    [
      [
        { point: 'a', how: 'seen' },
        { point: 'b', how: 'asked' },
      ],
      'shown',
      [],
    ],
    [[{ point: 'a', how: 'missed' }], 'not-yet', []],
    [
      [
        { point: 'a', how: 'seen' },
        { point: 'b', how: 'missed' },
      ],
      'shown',
      ['points[1]: a critical point was missed: nothing was shown'],
    ],
    [
      [
        { point: 'a', how: 'missed' },
        { point: 'a', how: 'seen' },
      ],
      'not-yet',
      ['points[1]: this point stands twice'],
    ],
    [
      [
        { point: 'a', how: 'missed' },
        { point: 'a', how: 'missed' },
      ],
      'shown',
      ['points[0]: a critical point was missed: nothing was shown', 'points[1]: this point stands twice'],
    ],
  ] as const)('%j with %s', async (points, outcome, want) => {
    expect(await faultsOf(points, outcome)).toEqual(want);
  });
  test('nothing is signed with one missed', async () => {
    const judged = await (await Book.staffed()).on('2026-02-02').judged();
    const missed = given([{ point: 'a', how: 'missed' }], 'shown');
    await expect(check(judged, missed, map, writing)).rejects.toThrow('a critical point was missed');
  });
});
