import { describe, expect, test } from 'vitest';
import type { Attempt, Came } from '../../src/practice/attempts.ts';
import { type RestUntil, type Turn, type TurnTask, turnsOf } from '../../src/practice/comingBack.ts';
import { GENERATOR } from '../../src/practice/generator.ts';

const DAY = 86_400_000;
const now = Date.parse('2026-03-09T14:00:00.000Z');
const families: readonly Turn[] = [
  { id: 'read', tasks: ['T01'] },
  { id: 'mark', tasks: ['T05', 'T01'] },
  { id: 'cut', tasks: ['T06'] },
  { id: 'bend', tasks: ['T08a'] },
  { id: 'open', tasks: ['T09'] },
  { id: 'hot', tasks: ['W3'] },
];
const task = (id: string, prerequisites: readonly string[], parts: readonly string[] = []): TurnTask => ({
  id,
  prerequisites,
  parts,
});
/** T07 has no family: what comes before it stands for it. */
const tasks = [
  task('T01', []),
  task('T05', ['T01']),
  task('T06', ['T05']),
  task('T07', ['T06']),
  task('T08', ['T07'], ['T08a']),
  task('T08a', ['T07']),
  task('T09', ['T08']),
];
const tried = (family: string, daysAgo: number, came?: Came, seed = '1'): Attempt => ({
  family,
  seed,
  generator: GENERATOR,
  at: new Date(now - daysAgo * DAY).toISOString(),
  answers: { a: 1 },
  ...(came === undefined ? {} : { came }),
});
/** Rests a day for each draw that passed, and none after one that did not. */
const restUntil: RestUntil = (tries) => {
  const last = tries.at(-1);
  if (last === undefined) throw new Error('no tries');
  return last.at + (last.came === 'passed' ? tries.length * DAY : 0);
};
const turns = (attempts: readonly Attempt[]) =>
  turnsOf({
    families,
    tasks,
    attempts,
    now,
    dayOf: (moment) => new Date(moment).toISOString().slice(0, 10),
    restUntil,
  });

describe('families never tried', () => {
  test('on a new device: what nothing comes before, in the order of the list', () =>
    expect(turns([])).toEqual({
      today: [],
      next: ['read', 'hot'],
      later: [],
      after: ['mark', 'cut', 'bend', 'open'],
    }));

  test('a task that was practised lets the next one in', () => {
    expect(turns([tried('read', 0, 'passed')])).toEqual({
      today: [],
      next: ['mark', 'hot'],
      later: [{ family: 'read', day: '2026-03-10' }],
      after: ['cut', 'bend', 'open'],
    });
  });

  test.each(['near', 'not'] as const)('a first try that was %s does not', (came) => {
    const { today, next } = turns([tried('read', 0, came)]);
    expect([today, next]).toEqual([['read'], ['hot']]);
  });

  test('a task without a family is as good as what comes before it; a part stands for its heading', () => {
    const some = [tried('read', 0, 'passed'), tried('mark', 0, 'passed')];
    expect(turns([...some, tried('cut', 0, 'passed')]).next).toEqual(['bend', 'hot']);
    expect(turns([...some, tried('cut', 0, 'passed'), tried('bend', 0, 'passed')]).next).toEqual([
      'open',
      'hot',
    ]);
  });

  test('a family of two tasks practises both', () =>
    expect(turns([tried('mark', 0, 'passed')]).next).toEqual(['read', 'cut', 'hot']));
});

describe('families tried before', () => {
  test('who waits longest comes first; who rests says until when', () => {
    const { today, later } = turns([
      tried('read', 1, 'passed'),
      tried('mark', 5, 'passed'),
      tried('cut', 0.1, 'passed'),
    ]);
    expect(today).toEqual(['mark', 'read']);
    expect(later).toEqual([{ family: 'cut', day: '2026-03-10' }]);
  });

  test('a second try at the same draw says nothing, another draw does', () => {
    const first = tried('read', 0.2, 'not');
    expect(turns([first, tried('read', 0.1, 'passed')]).today).toEqual(['read']);
    expect(turns([first, tried('read', 0.1, 'passed', '2')]).later).toEqual([
      { family: 'read', day: '2026-03-11' },
    ]);
  });

  test('a try without a note has its turn at once', () =>
    expect(turns([tried('read', 0.1, 'passed'), tried('read', 0.2, undefined, '2')]).today).toEqual([
      'read',
    ]));

  test('a family that is no more has no turn', () =>
    expect(turns([tried('gone', 3, 'not')])).toEqual(turns([])));
});
