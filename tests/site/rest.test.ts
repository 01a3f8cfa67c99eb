import { describe, expect, test } from 'vitest';
import type { Came } from '../../src/practice/attempts.ts';
import type { FirstTry } from '../../src/practice/comingBack.ts';
import { restUntil } from '../../src/site/rest.ts';

const DAY = 86_400_000;
const start = Date.parse('2026-03-09T14:05:00.000Z');

/** Days of rest after each of these tries, each made at the end of the rest before. */
function rests(cames: readonly Came[]): readonly number[] {
  const tries: FirstTry[] = [];
  return cames.map((came) => {
    const at = tries.length === 0 ? start : restUntil(tries);
    tries.push({ at, came });
    return (restUntil(tries) - at) / DAY;
  });
}

// The growth of rests under the default weights of FSRS-6, days, as published with the open algorithm's own tests
// (open-spaced-repetition, ts-fsrs 5.4.2: 2, 11, 46, 163, then longer than any rest here).
test('draws that pass at the end of every rest', () =>
  expect(rests(['passed', 'passed', 'passed', 'passed'])).toEqual([2, 11, 46, 163]));

describe('never longer than half a year, never shorter than it takes to draw again', () => {
  test('twenty that pass', () => {
    const all = rests(Array.from({ length: 20 }, () => 'passed'));
    expect(Math.max(...all)).toBeLessThanOrEqual(182);
    expect(all.at(-1)).toBeGreaterThan(163);
  });
  test.each(['near', 'not'] as const)('a first draw that is %s comes again the same day', (came) => {
    const [first = 0] = rests([came]);
    expect(first).toBeGreaterThan(0);
    expect(first).toBeLessThan(1 / 24);
  });
  test('one that is reworked after long rests comes again at once, and then sooner than before', () => {
    const all = rests(['passed', 'passed', 'passed', 'not', 'passed']);
    expect(all[3]).toBeLessThan(1 / 24);
    expect(all[4]).toBeLessThan(46);
  });
});

test('the same tries rest as long every time, and nothing is left over from the last reckoning', () => {
  const tries: readonly FirstTry[] = [
    { at: start, came: 'not' },
    { at: start + 600_000, came: 'near' },
    { at: start + 3 * DAY, came: 'passed' },
    { at: start + 3 * DAY, came: 'passed' },
  ];
  const first = restUntil(tries);
  restUntil([{ at: start, came: 'not' }]);
  expect(restUntil(tries)).toBe(first);
  expect(restUntil(structuredClone(tries))).toBe(first);
});
