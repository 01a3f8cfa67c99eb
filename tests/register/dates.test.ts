/** Standing on any date, as known on any date: rows worked by hand from the rules, with the day before and after. */
import { beforeAll, expect, test } from 'vitest';
import type { TaskMap } from '../../src/register/taskMap.ts';
import { at, Book, kd, lz, owner, map as plainMap, signerOf } from './book.ts';

const third = signerOf(6, 'third');
/** T1 has two revisions that ask for it again, of March and of May, and one between that does not. */
const map: TaskMap = {
  tasks: plainMap.tasks.map((t) =>
    t.id === 'T1'
      ? {
          ...t,
          revisions: [
            { n: 1, on: '2026-01-10', showAgain: false },
            { n: 2, on: '2026-03-01', showAgain: true },
            { n: 3, on: '2026-04-01', showAgain: false },
            { n: 4, on: '2026-05-01', showAgain: true },
          ],
        }
      : t,
  ),
};

let staffed: Book;
beforeAll(async () => {
  staffed = await Book.staffed();
  await staffed.appoint(third, 'TH');
});

/** `on` or `on as known on`, then standing, since, until, codes. */
type Row = readonly [
  when: string,
  standing: string,
  since?: string | null,
  until?: string | null,
  codes?: string,
];
const cases: readonly (readonly [
  name: string,
  task: string,
  make: (b: Book) => Promise<unknown>,
  rows: readonly Row[],
])[] = [
  [
    'months: the last of February when there is no such day, in a leap year too',
    'T2',
    (b) => b.on('2027-08-31').check(kd, 'DM', 'T2', '2027-08-31'),
    // 31 August 2027 and 12 months is 31 August 2028; the months asked with are 6: 29 February 2028
    [
      ['2028-02-29', 'shown', '2027-08-31', '2028-02-29', ''],
      ['2028-03-01', 'show again', '2028-03-01', '2028-02-29', 'T'],
    ],
  ],
  [
    'seen on 29 February, good a year: to 28 February',
    'T4',
    (b) => b.on('2028-02-29').check(kd, 'DM', 'T4', '2028-02-29'),
    [
      ['2029-02-28', 'shown', '2028-02-29', '2029-02-28', ''],
      ['2029-03-01', 'show again', '2029-03-01', '2029-02-28', 'T'],
    ],
  ],
  [
    'entered days after it was seen: on the day seen, once it is known',
    'T2',
    (b) => b.on('2026-02-10').check(kd, 'DM', 'T2', '2026-02-02'),
    [
      ['2026-02-01', 'not shown', null, null, ''],
      ['2026-02-02', 'shown', '2026-02-02', '2026-08-02', ''],
      ['2026-02-20 2026-02-09', 'not shown', null, null, ''],
      ['2026-02-02 2026-02-10', 'shown', '2026-02-02', '2026-08-02', ''],
    ],
  ],
  [
    'two revisions ask for it: the first one is said; shown under it the next one asks',
    'T1',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02', { revision: 1 });
      await b.on('2026-06-01').check(kd, 'DM', 'T1', '2026-04-15', { revision: 3 });
    },
    [
      ['2026-02-28 2026-05-31', 'shown', '2026-02-02', '2027-02-02', ''],
      ['2026-03-01 2026-05-31', 'show again', '2026-03-01', '2027-02-02', '2'],
      ['2026-05-01 2026-05-31', 'show again', '2026-03-01', '2027-02-02', '2'],
      ['2026-04-14', 'show again', '2026-03-01', '2027-02-02', '2'],
      ['2026-04-15', 'shown', '2026-04-15', '2027-04-15', ''],
      ['2026-04-30', 'shown', '2026-04-15', '2027-04-15', ''],
      ['2026-05-01', 'show again', '2026-05-01', '2027-04-15', '4'],
    ],
  ],
  [
    'under an older revision than was in force it keeps the older number',
    'T1',
    (b) => b.on('2026-04-15').check(kd, 'DM', 'T1', '2026-04-15', { revision: 1 }),
    [['2026-04-15', 'show again', '2026-03-01', '2027-04-15', '2']],
  ],
  [
    'two seconds, one taken back: the other holds it; both back: since the last of them',
    'T3',
    async (b) => {
      const id = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
      const one = await b.on('2026-02-05').second(lz, 'DM', id);
      const two = await b.on('2026-02-07').second(third, 'DM', id);
      await b.on('2026-02-10').act(lz, 'withdraw', 'DM', [one]);
      await b.on('2026-02-20').act(owner, 'withdraw', 'DM', [two]);
    },
    [
      ['2026-02-04 2026-02-19', 'not shown', null, null, '2'],
      // on the 5th and 6th the one that was taken back is the only one by then
      ['2026-02-06 2026-02-19', 'show again', '2026-02-10', '2027-02-02', 'W'],
      ['2026-02-07 2026-02-19', 'shown', '2026-02-02', '2027-02-02', ''],
      ['2026-02-06 2026-02-09', 'shown', '2026-02-02', '2027-02-02', ''],
      ['2026-02-20', 'show again', '2026-02-20', '2027-02-02', 'W'],
    ],
  ],
  [
    'a second given late makes the later check good only then: until then the earlier one is the showing',
    'T3',
    async (b) => {
      const early = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
      await b.second(lz, 'DM', early);
      const late = await b.on('2026-02-20').check(kd, 'DM', 'T3', '2026-02-20');
      await b.on('2026-03-10').second(lz, 'DM', late);
    },
    [
      ['2026-02-25', 'shown', '2026-02-02', '2027-02-02', ''],
      ['2026-03-09', 'shown', '2026-02-02', '2027-02-02', ''],
      ['2026-03-10', 'shown', '2026-02-20', '2027-02-20', ''],
    ],
  ],
  [
    'a not-yet between the check and its second stands against it',
    'T3',
    async (b) => {
      const id = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
      await b.on('2026-02-04').check(lz, 'DM', 'T3', '2026-02-04', { outcome: 'not-yet' });
      await b.on('2026-02-07').second(lz, 'DM', id);
    },
    [
      ['2026-02-06', 'not shown', null, null, '2'],
      ['2026-02-07', 'show again', '2026-02-04', '2027-02-02', 'N'],
    ],
  ],
  [
    'the second’s witness retired before it: it never counted',
    'T3',
    async (b) => {
      const id = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
      await b.on('2026-02-05').second(lz, 'DM', id);
      await b.on('2026-02-10').retire(lz, 'LZ', []);
    },
    [
      ['2026-02-20', 'not shown', null, null, '2'],
      ['2026-02-20 2026-02-09', 'shown', '2026-02-02', '2027-02-02', ''],
    ],
  ],
  [
    'a not-yet entered late counts from its day, once it is known',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      await b.on('2026-03-01').check(lz, 'DM', 'T2', '2026-02-10', { outcome: 'not-yet' });
    },
    [
      ['2026-02-09', 'shown', '2026-02-02', '2026-08-02', ''],
      ['2026-02-10', 'show again', '2026-02-10', '2026-08-02', 'N'],
      ['2026-02-20 2026-02-28', 'shown', '2026-02-02', '2026-08-02', ''],
    ],
  ],
  [
    'an appointment does not reach back, neither before its day nor before its entry',
    'T2',
    async (b) => {
      const late = signerOf(8, 'late');
      await b.on('2026-02-01').check(late, 'DM', 'T2', '2026-02-01');
      await b.on('2026-02-03').appoint(late, 'LA', 'all', '2026-02-10');
      await b.on('2026-02-12').check(late, 'DM', 'T2', '2026-02-09');
      await b.on('2026-02-14').check(late, 'DM', 'T2', '2026-02-10');
    },
    [
      ['2026-02-09', 'not shown', null, null, ''],
      ['2026-02-10', 'shown', '2026-02-10', '2026-08-10', ''],
    ],
  ],
  [
    'practice after its time moves nothing',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      await b.on('2026-09-01').check(kd, 'DM', 'T2', '2026-09-01', { manner: 'simulated' });
    },
    [['2026-09-02', 'show again', '2026-08-03', '2026-08-02', 'T']],
  ],
  [
    'a withdrawn practice check is off the record; one that is left is the last',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', { help: 'with-help' });
      const id = await b.on('2026-02-05').check(kd, 'DM', 'T2', '2026-02-05', { manner: 'talked' });
      await b.on('2026-02-08').act(kd, 'withdraw', 'DM', [id]);
    },
    [
      ['2026-02-06 2026-02-07', 'practice only', '2026-02-05', null, ''],
      ['2026-02-06', 'practice only', '2026-02-02', null, ''],
    ],
  ],
];

test.each(cases)('%s', async (_, task, make, rows) => {
  const b = staffed.copy();
  await make(b);
  for (const [when, ...want] of rows) {
    const [on = '', knownOn] = when.split(' ');
    const board = await b.board({
      on,
      map,
      months: { T2: 6, T4: 12 },
      now: at('2030-01-01'),
      ...(knownOn ? { knownOn } : {}),
    });
    const row = board.people.find((p) => p.id === 'DM')?.tasks[task];
    const codes = row?.why.map((w) => w.code).join('');
    expect([row?.standing, row?.since, row?.until, codes], when).toEqual(want);
  }
});

test('outside tickets are never assessed: a check of one shows nothing, though a map lists it', async () => {
  const b = staffed.copy();
  await b.on('2026-02-02').check(kd, 'DM', 'W1', '2026-02-02');
  const board = await b.board({ on: '2026-03-01' });
  const row = board.people.find((p) => p.id === 'DM');
  expect(Object.keys(row?.tasks ?? {})).not.toContain('W1');
  expect(row?.tickets).toEqual([]);
  expect(Object.values(row?.tasks ?? {}).every((t) => t.standing === 'not shown')).toBe(true);
});
test('a ticket past its end stays on record, as it was known when', async () => {
  const b = staffed.copy();
  const ticket = (issuer: string, until: string, by = owner) =>
    b.add(by, { kind: 'ticket', about: 'DM', body: { ticket: 'W4', issuer, number: '1', until } });
  await b.on('2026-02-02');
  await ticket('first', '2026-02-20');
  await b.on('2026-03-02');
  const later = await ticket('second', '2026-02-25', kd);
  const held = async (knownOn?: string) => {
    const board = await b.board({ on: '2026-06-01', ...(knownOn ? { knownOn } : {}) });
    return board.people.find((p) => p.id === 'DM')?.tickets.map((t) => [t.issuer, t.until]);
  };
  expect(await held('2026-02-01')).toEqual([]);
  expect(await held('2026-03-01')).toEqual([['first', '2026-02-20']]);
  expect(await held()).toEqual([['second', '2026-02-25']]);
  await b.on('2026-03-03').act(kd, 'withdraw', 'DM', [later]);
  expect(await held()).toEqual([['first', '2026-02-20']]);
});
