import { beforeAll, describe, expect, test } from 'vitest';
import type { Stands } from '../../src/register/standing.ts';
import { at, Book, kd, lz, owner, signerOf } from './book.ts';

type Asked = {
  on: string;
  knownOn?: string;
  months?: Record<string, number>;
  now?: number;
  people?: string[];
};
async function stands(book: Book, task: string, asked: Asked, person = 'DM'): Promise<Stands> {
  const board = await book.board(asked);
  const found = board.people.find((p) => p.id === person)?.tasks[task];
  if (found === undefined) throw new Error(`${person} has no ${task}`);
  return found;
}
const short = ({ standing, since, until, why }: Stands) => [
  standing,
  since,
  until,
  why.map((w) => w.code).join(''),
];

let book: Book;
beforeAll(async () => {
  book = await Book.staffed();
});
/** What each case adds to a register with KD and LZ appointed, then how DM stands. */
const cases: readonly (readonly [
  name: string,
  task: string,
  make: (b: Book) => Promise<unknown>,
  want: readonly (readonly [Asked, readonly unknown[]])[],
])[] = [
  [
    'shown, and good to the end of its last day',
    'T2',
    (b) => b.on('2026-01-31').check(kd, 'DM', 'T2', '2026-01-31'),
    [
      [{ on: '2026-01-30' }, ['not shown', null, null, '']],
      [{ on: '2026-01-31' }, ['shown', '2026-01-31', '2027-01-31', '']],
      [{ on: '2027-01-31' }, ['shown', '2026-01-31', '2027-01-31', '']],
      [{ on: '2027-02-01' }, ['show again', '2027-02-01', '2027-01-31', 'T']],
      // 31 January and one month is the last of February
      [{ on: '2026-02-28', months: { T2: 1 } }, ['shown', '2026-01-31', '2026-02-28', '']],
      [{ on: '2026-03-01', months: { T2: 1 } }, ['show again', '2026-03-01', '2026-02-28', 'T']],
      [{ on: '2026-06-01', months: { T4: 1 } }, ['shown', '2026-01-31', '2027-01-31', '']],
    ],
  ],
  [
    'known on: what was entered later does not count yet',
    'T2',
    (b) => b.on('2026-02-10').check(kd, 'DM', 'T2', '2026-02-02'),
    [
      [{ on: '2026-02-05', knownOn: '2026-02-09' }, ['not shown', null, null, '']],
      [{ on: '2026-02-05', knownOn: '2026-02-10' }, ['shown', '2026-02-02', '2027-02-02', '']],
      [{ on: '2026-02-05' }, ['shown', '2026-02-02', '2027-02-02', '']],
    ],
  ],
  ...(
    [
      ['simulated', { manner: 'simulated' }],
      ['observed', { manner: 'observed' }],
      ['talked through', { manner: 'talked' }],
      ['with help', { help: 'with-help' }],
      ['out of sight', { inSight: false }],
    ] as const
  ).map(
    ([name, more]) =>
      [
        `practice only: ${name}`,
        'T2',
        async (b: Book) => {
          await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', more);
          await b.on('2026-02-04').check(lz, 'DM', 'T2', '2026-02-04', more);
        },
        [[{ on: '2026-03-01' }, ['practice only', '2026-02-04', null, '']]],
      ] as const,
  ),
  [
    'practice never moves what was shown',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      await b.on('2026-03-02').check(kd, 'DM', 'T2', '2026-03-02', { manner: 'talked' });
    },
    [[{ on: '2026-03-05' }, ['shown', '2026-02-02', '2027-02-02', '']]],
  ],
  [
    'a later showing moves since and until',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      await b.on('2026-03-02').check(lz, 'DM', 'T2', '2026-03-02');
    },
    [
      [{ on: '2026-03-01' }, ['shown', '2026-02-02', '2027-02-02', '']],
      [{ on: '2026-03-02' }, ['shown', '2026-03-02', '2027-03-02', '']],
    ],
  ],
  [
    'N: not yet on a later day, until shown again',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      await b.on('2026-02-20').check(lz, 'DM', 'T2', '2026-02-20', { outcome: 'not-yet' });
      await b.on('2026-02-25').check(lz, 'DM', 'T2', '2026-02-25', { outcome: 'not-yet' });
      await b.on('2026-03-02').check(kd, 'DM', 'T2', '2026-03-02');
    },
    [
      [{ on: '2026-02-19' }, ['shown', '2026-02-02', '2027-02-02', '']],
      [{ on: '2026-02-20' }, ['show again', '2026-02-20', '2027-02-02', 'N']],
      [{ on: '2026-03-01' }, ['show again', '2026-02-20', '2027-02-02', 'N']],
      [{ on: '2026-03-02' }, ['shown', '2026-03-02', '2027-03-02', '']],
    ],
  ],
  [
    'on the same day a not-yet that the showing knows of is behind it',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', { outcome: 'not-yet' });
      await b.check(kd, 'DM', 'T2', '2026-02-02');
    },
    [[{ on: '2026-02-02' }, ['shown', '2026-02-02', '2027-02-02', '']]],
  ],
  [
    'on the same day a not-yet after the showing stands against it',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      await b.check(lz, 'DM', 'T2', '2026-02-02', { outcome: 'not-yet' });
    },
    [[{ on: '2026-02-02' }, ['show again', '2026-02-02', '2027-02-02', 'N']]],
  ],
  [
    'an attempt that was stopped for safety counts against nobody',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      await b.on('2026-02-20').check(lz, 'DM', 'T2', '2026-02-20', { outcome: 'not-yet', stopped: true });
    },
    [[{ on: '2026-03-01' }, ['shown', '2026-02-02', '2027-02-02', '']]],
  ],
  [
    'a stopped attempt puts no new way of doing it on record',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      const more = { outcome: 'not-yet', stopped: true, variant: { width: '6', joint: 'socketed' } };
      await b.on('2026-02-20').check(lz, 'DM', 'T2', '2026-02-20', more);
    },
    [[{ on: '2026-03-01' }, ['shown', '2026-02-02', '2027-02-02', '']]],
  ],
  [
    'a not-yet and nothing shown is not shown',
    'T2',
    (b) => b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', { outcome: 'not-yet' }),
    [[{ on: '2026-03-01' }, ['not shown', null, null, '']]],
  ],
  [
    'a revision that asks for it again, from its day',
    'T1',
    (b) => b.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02'),
    [
      [{ on: '2026-02-28' }, ['shown', '2026-02-02', '2027-02-02', '']],
      [{ on: '2026-03-01' }, ['show again', '2026-03-01', '2027-02-02', '2']],
      // revision 3 does not ask, revision 2 still does
      [{ on: '2026-05-01' }, ['show again', '2026-03-01', '2027-02-02', '2']],
    ],
  ],
  [
    'a check keeps the revision of the day it was seen, whatever number it claims',
    'T1',
    (b) => b.on('2026-03-20').check(kd, 'DM', 'T1', '2026-02-02', { revision: 2 }),
    [[{ on: '2026-03-20' }, ['show again', '2026-03-01', '2027-02-02', '2']]],
  ],
  [
    'a day before the first revision counts as the first',
    'T1',
    (b) => b.on('2026-01-20').check(kd, 'DM', 'T1', '2026-01-02'),
    [
      [{ on: '2026-01-20' }, ['shown', '2026-01-02', '2027-01-02', '']],
      [{ on: '2026-03-01' }, ['show again', '2026-03-01', '2027-01-02', '2']],
    ],
  ],
  [
    'seen under the new revision it is shown; under the old one, signed later, it is not',
    'T1',
    async (b) => {
      await b.on('2026-03-02').check(kd, 'DM', 'T1', '2026-03-02', { revision: 1 });
      await b.on('2026-03-05').check(kd, 'DM', 'T1', '2026-03-05', { revision: 2 });
    },
    [
      [{ on: '2026-03-03' }, ['show again', '2026-03-01', '2027-03-02', '2']],
      [{ on: '2026-03-05' }, ['shown', '2026-03-05', '2027-03-05', '']],
    ],
  ],
  [
    'several reasons: W before N before the revision before T',
    'T1',
    async (b) => {
      const shown = await b.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
      await b.on('2026-02-20').check(lz, 'DM', 'T1', '2026-02-20', { outcome: 'not-yet' });
      await b.on('2026-06-01').act(kd, 'withdraw', 'DM', [shown]);
    },
    [
      [{ on: '2026-02-10' }, ['show again', '2026-06-01', '2027-02-02', 'W']],
      [{ on: '2026-02-10', knownOn: '2026-05-31' }, ['shown', '2026-02-02', '2027-02-02', '']],
      [{ on: '2027-03-01' }, ['show again', '2026-06-01', '2027-02-02', 'WN2T']],
      [{ on: '2027-03-01', knownOn: '2026-05-31' }, ['show again', '2026-02-20', '2027-02-02', 'N2T']],
    ],
  ],
  [
    'a withdrawn not-yet stands no more',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      const not = await b.on('2026-02-20').check(lz, 'DM', 'T2', '2026-02-20', { outcome: 'not-yet' });
      await b.on('2026-02-22').act(owner, 'withdraw', 'DM', [not]);
    },
    [
      [{ on: '2026-02-21' }, ['shown', '2026-02-02', '2027-02-02', '']],
      [{ on: '2026-02-21', knownOn: '2026-02-21' }, ['show again', '2026-02-20', '2027-02-02', 'N']],
    ],
  ],
  [
    'a showing that was withdrawn hides the one before it',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      const late = await b.on('2026-02-10').check(lz, 'DM', 'T2', '2026-02-10');
      await b.on('2026-02-12').act(lz, 'withdraw', 'DM', [late]);
    },
    [[{ on: '2026-03-01' }, ['show again', '2026-02-12', '2027-02-10', 'W']]],
  ],
  [
    'nobody else may withdraw',
    'T2',
    async (b) => {
      const shown = await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      await b.on('2026-02-12').act(lz, 'withdraw', 'DM', [shown]);
    },
    [[{ on: '2026-03-01' }, ['shown', '2026-02-02', '2027-02-02', '']]],
  ],
  [
    'where two are wanted: good from the day the second is entered, since the day seen',
    'T3',
    async (b) => {
      const shown = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
      await b.on('2026-02-09').second(lz, 'DM', shown);
    },
    [
      [{ on: '2026-02-08' }, ['not shown', null, null, '2']],
      [{ on: '2026-02-09' }, ['shown', '2026-02-02', '2027-02-02', '']],
      [{ on: '2026-02-09', knownOn: '2026-02-08' }, ['not shown', null, null, '2']],
    ],
  ],
  [
    'the witness is not his own second',
    'T3',
    async (b) => {
      const shown = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
      await b.on('2026-02-09').second(kd, 'DM', shown);
    },
    [[{ on: '2026-02-20' }, ['not shown', null, null, '2']]],
  ],
  [
    'W: the second taken back',
    'T3',
    async (b) => {
      const shown = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
      const second = await b.on('2026-02-09').second(lz, 'DM', shown);
      await b.on('2026-02-12').act(lz, 'withdraw', 'DM', [second]);
    },
    [[{ on: '2026-02-20' }, ['show again', '2026-02-12', '2027-02-02', 'W']]],
  ],
  [
    'practice beside a showing that lacks its second',
    'T3',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
      await b.on('2026-02-03').check(kd, 'DM', 'T3', '2026-02-03', { help: 'with-help' });
    },
    [[{ on: '2026-02-20' }, ['practice only', '2026-02-03', null, '']]],
  ],
  [
    'a task is as low as the lowest way of doing it on record',
    'T2',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      await b
        .on('2026-02-03')
        .check(kd, 'DM', 'T2', '2026-02-03', { variant: { width: '6' }, help: 'with-help' });
      await b
        .on('2026-02-04')
        .check(kd, 'DM', 'T2', '2026-02-04', { variant: { width: '2' }, outcome: 'not-yet' });
    },
    [
      [{ on: '2026-02-02' }, ['shown', '2026-02-02', '2027-02-02', '']],
      [{ on: '2026-02-03' }, ['practice only', '2026-02-03', null, '']],
      [{ on: '2026-02-04' }, ['not shown', null, null, '']],
    ],
  ],
  [
    'of ways alike the one that ends first speaks for the task',
    'T2',
    async (b) => {
      await b.on('2026-02-05').check(kd, 'DM', 'T2', '2026-02-05');
      await b.on('2026-02-06').check(kd, 'DM', 'T2', '2026-02-03', { variant: { width: '6' } });
    },
    [[{ on: '2026-03-01' }, ['shown', '2026-02-03', '2027-02-03', '']]],
  ],
  [
    'a heading is as low as its lowest part',
    'T9',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
      await b.on('2026-02-03').check(kd, 'DM', 'T4', '2026-02-03');
    },
    [
      [{ on: '2026-02-02' }, ['not shown', null, null, '']],
      [{ on: '2026-02-03' }, ['shown', '2026-02-03', '2026-03-03', '']],
      // from 1 March T1 is to be shown again; from 4 March both are, and the one that ended first speaks
      [{ on: '2026-03-02' }, ['show again', '2026-03-01', '2027-02-02', '2']],
      [{ on: '2026-03-04' }, ['show again', '2026-03-04', '2026-03-03', 'T']],
    ],
  ],
];

describe('standing of a person in a task', () => {
  test.each(cases)('%s', async (_, task, make, want) => {
    const own = book.copy();
    await make(own);
    for (const [asked, expected] of want) {
      const found = short(await stands(own, task, asked));
      expect(found, JSON.stringify(asked)).toEqual(expected);
    }
  });
});

describe('where two are wanted', () => {
  test('a showing that never had its second, taken back, is off the record', async () => {
    const b = book.copy();
    const shown = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
    await b.on('2026-02-12').act(kd, 'withdraw', 'DM', [shown]);
    const board = await b.board({ on: '2026-02-20' });
    expect(board.people.find((p) => p.id === 'DM')?.tasks['T3']?.variants).toEqual([]);
  });
  test('a second that was taken back vouches for nothing: the doubt of the other one stands', async () => {
    const third = signerOf(6, 'third');
    const b = book.copy();
    await b.appoint(third, 'TH');
    const shown = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
    const sure = await b.on('2026-02-03').second(lz, 'DM', shown);
    await b.on('2026-02-04').check(third, 'HV', 'T1', '2026-02-04');
    await b.on('2026-02-05').second(third, 'DM', shown);
    await b.on('2026-02-06').act(lz, 'withdraw', 'DM', [sure]);
    const [, ...rest] = (b.files[b.file(third)] ?? '').split('\n');
    b.edit(b.file(third), () => rest.join('\n')); // the second now stands behind a hole
    const says = async (on: string) => (await stands(b, 'T3', { on })).why.map((w) => w.say.say);
    expect(await says('2026-02-20')).toEqual(['registerWhy.second-doubt']);
  });
});

describe('what it rests on', () => {
  test('ids of the showing, of its second, of what speaks against it, sorted', async () => {
    const b = book.copy();
    const shown = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
    const second = await b.on('2026-02-09').second(lz, 'DM', shown);
    const not = await b.on('2026-02-20').check(lz, 'DM', 'T3', '2026-02-20', { outcome: 'not-yet' });
    const found = await stands(b, 'T3', { on: '2026-03-01' });
    expect(found.entries).toEqual([shown, second, not].sort());
    expect(found.why).toEqual([
      { code: 'N', say: { say: 'registerWhy.not-yet', values: { day: '2026-02-20' } }, entry: not },
    ]);
  });
  test('variants name every pair, and are sorted by text', async () => {
    const b = book.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', { variant: { width: '6' } });
    await b.check(kd, 'DM', 'T2', '2026-02-02');
    await b.check(kd, 'DM', 'T2', '2026-02-02', { variant: { joint: 'butt' } });
    const board = await b.board({ on: '2026-03-01' });
    const variants = board.people.find((p) => p.id === 'DM')?.tasks['T2']?.variants.map((v) => v.variant);
    expect(variants).toEqual([
      { joint: 'butt', width: '4' },
      { joint: 'socketed', width: '4' },
      { joint: 'socketed', width: '6' },
    ]);
  });
  test('two showings that do not know each other: the lower standing', async () => {
    const b = book.copy();
    const one = b.copy();
    const other = b.copy();
    await one.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const back = await other.on('2026-02-02').check(lz, 'DM', 'T2', '2026-02-02');
    await other.on('2026-02-03').act(lz, 'withdraw', 'DM', [back]);
    b.files = { ...one.files, ...other.files };
    const found = await stands(b, 'T2', { on: '2026-03-01' });
    expect(short(found)).toEqual(['show again', '2026-02-03', '2027-02-02', 'W']);
    expect(found.why[0]?.say.say).toBe('registerWhy.withdrawn');
  });
});

describe('the board', () => {
  test('lists people asked for and people with entries, and every task but the outside tickets', async () => {
    const b = book.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const board = await b.board({ on: '2026-03-01', people: ['ZZ', 'AA', 'DM'] });
    expect(board.people.map((p) => p.id)).toEqual(['AA', 'DM', 'KD', 'LZ', 'OW', 'ZZ']);
    expect(Object.keys(board.people[0]?.tasks ?? {})).toEqual(['T1', 'T2', 'T3', 'T4', 'T9']);
    expect(board.people[0]?.tasks['T2']).toEqual({
      standing: 'not shown',
      since: null,
      until: null,
      why: [],
      entries: [],
      variants: [],
    });
    expect([board.on, board.knownOn, board.zone, board.owner]).toEqual([
      '2026-03-01',
      null,
      'UTC',
      owner.publicKey,
    ]);
    expect(board.signers.map((s) => [s.device, s.person, s.last, s.at])).toEqual(
      [
        ['office', 'OW', 2, '2026-01-01T12:02:00.000Z'],
        ['kd-phone', 'KD', 0, '2026-02-02T12:01:00.000Z'],
      ].sort((x, y) =>
        (x[0] === 'office' ? owner : kd).publicKey < (y[0] === 'office' ? owner : kd).publicKey ? -1 : 1,
      ),
    );
  });
  test('days are counted in the register’s zone', async () => {
    const b = await Book.staffed('Pacific/Auckland');
    // 2026-02-02T12:01Z is already 3 February in Auckland (UTC+13 in summer: common practice of that zone)
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-03');
    expect(short(await stands(b, 'T2', { on: '2026-02-03', knownOn: '2026-02-03' }))[0]).toBe('shown');
    expect(
      (await b.board({ on: '2026-02-03', knownOn: '2026-02-02', people: ['DM'] })).people.find(
        (p) => p.id === 'DM',
      )?.tasks['T2']?.standing,
    ).toBe('not shown');
  });
  test('outside tickets: the last of a kind that is not withdrawn', async () => {
    const b = book.copy();
    const ticket = (until: string, number: string) =>
      b.add(owner, { kind: 'ticket', about: 'DM', body: { ticket: 'W4', issuer: 'site', number, until } });
    const first = await ticket('2026-06-30', '1');
    const second = await ticket('2027-06-30', '2');
    const tickets = async () =>
      (await b.board({ on: '2026-03-01' })).people.find((p) => p.id === 'DM')?.tickets;
    expect(await tickets()).toEqual([
      { ticket: 'W4', issuer: 'site', number: '2', until: '2027-06-30', entry: second },
    ]);
    await b.act(owner, 'withdraw', 'DM', [second]);
    expect((await tickets())?.map((t) => t.entry)).toEqual([first]);
  });
  test('an entry dated more than 24 h ahead is shown, and counts when its time has come', async () => {
    const b = book.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const asked = { on: '2026-02-02', people: ['DM'] };
    const standing = async (now: string) => {
      const board = await b.board({ ...asked, now: at(now) });
      return [
        board.people.find((p) => p.id === 'DM')?.tasks['T2']?.standing,
        board.notes.some((n) => n.say === 'registerNote.ahead'),
      ];
    };
    // entered at 12:01:00
    expect(await standing('2026-02-01T12:00:59.999Z')).toEqual(['not shown', true]);
    expect(await standing('2026-02-01T12:01:00Z')).toEqual(['shown', false]);
  });
  test('an entry of a kind nobody knows verifies, counts for nothing, and is shown', async () => {
    const b = book.copy();
    const id = await b.add(kd, { kind: 'accept', about: 'DM', body: null });
    expect(await b.codes()).toEqual([]);
    const { notes } = await b.board({ on: '2026-03-01' });
    expect(notes).toContainEqual({
      say: 'registerNote.unknown-kind',
      values: { kind: 'accept', entry: id.slice(0, 8) },
    });
  });
  test('evidence that no longer passes puts a showing in doubt; without evidence the word stands', async () => {
    const b = book.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', { evidence: { good: false } });
    await b.check(kd, 'EI', 'T2', '2026-02-02', { evidence: { good: true } });
    await b.check(kd, 'HV', 'T2', '2026-02-02');
    await b.check(kd, 'JT', 'T2', '2026-02-02', { evidence: 'no answers' });
    const regrade = (evidence: unknown, of: { person: string; task: string }) => {
      expect(of.task).toBe('T2');
      if (typeof evidence !== 'object') throw new Error('no answers');
      return (evidence as { good: boolean }).good;
    };
    const board = await b.board({ on: '2026-03-01', regrade });
    const row = (id: string) => short(board.people.find((p) => p.id === id)?.tasks['T2'] as Stands);
    expect(row('DM')).toEqual(['show again', null, '2027-02-02', '?']);
    expect(row('EI')[0]).toBe('shown');
    expect(row('HV')[0]).toBe('shown');
    expect(row('JT')[0]).toBe('show again');
  });
  test('corrected evidence is what is graded again', async () => {
    const b = book.copy();
    const id = await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', { evidence: { good: false } });
    await b.act(kd, 'correct', 'DM', [id], { evidence: { good: true } });
    const regrade = (evidence: unknown) => (evidence as { good: boolean }).good;
    const board = await b.board({ on: '2026-03-01', regrade });
    expect(board.people.find((p) => p.id === 'DM')?.tasks['T2']?.standing).toBe('shown');
  });
});
