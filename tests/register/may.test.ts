/** May somebody do a task over a span of time: three answers, their precedence, and the entries they go back to. */
import { beforeAll, describe, expect, test } from 'vitest';
import words from '../../content/words/en/may.json' with { type: 'json' };
import type { JsonObject } from '../../src/register/canonical.ts';
import { type May, type MayAsked, mayFaults, mayOf } from '../../src/register/may.ts';
import { maySays } from '../../src/register/says.ts';
import type { TaskMap } from '../../src/register/taskMap.ts';
import { GivenError } from '../../src/trade/given.ts';
import { at, Book, kd, lz, owner, map as plainMap } from './book.ts';

/** As the plain map, T4 with two tickets. */
const map: TaskMap = {
  tasks: plainMap.tasks.map((t) => (t.id === 'T4' ? { ...t, tickets: ['W4', 'W1'] } : t)),
};

type Question = Partial<Omit<MayAsked, 'from' | 'to'>> & {
  from: string;
  to: string;
  knownOn?: string;
  months?: Record<string, number>;
};
async function ask(b: Book, { from, to, knownOn, months, ...more }: Question): Promise<May> {
  const judged = await b.judged({ now: at('2030-01-01'), ...(knownOn ? { knownOn } : {}) });
  return mayOf(judged, {
    person: 'DM',
    task: 'T2',
    ...more,
    from: at(from),
    to: at(to),
    months,
    map,
    regrade: undefined,
  });
}
/** The answer, then its reasons by their keys without the group. */
const short = ({ answer, reasons }: May): string =>
  [answer, ...reasons.map((r) => r.say.say.replace(/^.*\./, ''))].join(' ');
const day = (on: string, more: Omit<Question, 'from' | 'to'> = {}): Question => ({
  from: `${on}T07:00:00Z`,
  to: `${on}T15:30:00Z`,
  ...more,
});

let staffed: Book;
beforeAll(async () => {
  staffed = await Book.staffed();
});
const not = { outcome: 'not-yet' };
const ticket = (b: Book, id: string, until: string, by = owner) =>
  b.add(by, { kind: 'ticket', about: 'DM', body: { ticket: id, issuer: 'site', number: '7', until } });

const cases: readonly (readonly [
  name: string,
  make: (b: Book) => Promise<unknown>,
  want: readonly (readonly [Question, string])[],
])[] = [
  [
    'nothing on record',
    async () => {},
    [
      [day('2026-03-01'), 'not enough evidence nothing'],
      [day('2026-03-01', { person: 'nobody-yet' }), 'not enough evidence nothing'],
    ],
  ],
  [
    'shown on every day of the span; dates only, the day of it and the last day whole',
    (b) => b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02'),
    [
      [day('2026-02-01'), 'not enough evidence nothing'],
      [{ from: '2026-02-02T00:00:00Z', to: '2026-02-02T00:00:00.001Z' }, 'yes shown'],
      [{ from: '2026-02-01T23:59:59.999Z', to: '2026-02-02T06:00:00Z' }, 'not enough evidence nothing shown'],
      [day('2027-02-02'), 'yes shown'],
      // a shift that ends at midnight ends with the last good day; a moment more does not
      [{ from: '2027-02-02T16:00:00Z', to: '2027-02-03T00:00:00Z' }, 'yes shown'],
      [{ from: '2027-02-02T16:00:00Z', to: '2027-02-03T00:00:00.001Z' }, 'no time shown'],
      [day('2027-02-03'), 'no time'],
      // another way of doing it
      [day('2026-03-01', { variant: { width: '6' } }), 'not enough evidence nothing'],
      [day('2026-03-01', { variant: { width: '4', joint: 'socketed' } }), 'yes shown'],
    ],
  ],
  [
    'months of the question in place of the map’s: 31 January and one month is the last of February',
    (b) => b.on('2026-01-31').check(kd, 'DM', 'T2', '2026-01-31'),
    [
      [day('2026-02-28', { months: { T2: 1 } }), 'yes shown'],
      [day('2026-03-01', { months: { T2: 1 } }), 'no time'],
      [{ from: '2026-02-28T22:00:00Z', to: '2026-03-01T06:00:00Z', months: { T2: 1 } }, 'no time shown'],
      [day('2026-03-01', { months: { T4: 1 } }), 'yes shown'],
    ],
  ],
  [
    'a revision that comes into force inside the span',
    (b) => b.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02'),
    [
      [day('2026-02-28', { task: 'T1' }), 'yes shown'],
      [{ task: 'T1', from: '2026-02-28T22:00:00Z', to: '2026-03-01T06:00:00Z' }, 'no revision shown'],
      [{ task: 'T1', from: '2026-02-20T06:00:00Z', to: '2026-03-09T06:00:00Z' }, 'no revision shown'],
      [{ task: 'T1', from: '2026-02-28T16:00:00Z', to: '2026-03-01T00:00:00Z' }, 'yes shown'],
    ],
  ],
  [
    'a span of years is asked of as one of a day',
    (b) => b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02'),
    [
      [{ from: '2026-02-02T06:00:00Z', to: '2027-02-02T18:00:00Z' }, 'yes shown'],
      [{ from: '2026-02-02T06:00:00Z', to: '2526-02-02T18:00:00Z' }, 'no time shown'],
    ],
  ],
  [
    'a not-yet inside the span, and shown again inside it',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      await b.on('2026-02-20').check(lz, 'DM', 'T2', '2026-02-20', not);
      await b.on('2026-02-25').check(kd, 'DM', 'T2', '2026-02-25');
    },
    [
      [{ from: '2026-02-10T06:00:00Z', to: '2026-02-20T00:00:00Z' }, 'yes shown'],
      [{ from: '2026-02-10T06:00:00Z', to: '2026-02-27T00:00:00Z' }, 'no not-yet shown shown'],
      [day('2026-02-24'), 'no not-yet'],
      [day('2026-02-24', { knownOn: '2026-02-19' }), 'yes shown'],
      [day('2026-02-25'), 'yes shown'],
      [day('2026-02-25', { knownOn: '2026-02-24' }), 'no not-yet'],
      [{ from: '2026-02-25T06:00:00Z', to: '2026-02-28T00:00:00Z' }, 'yes shown'],
    ],
  ],
  [
    'two showings that hold one after the other',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T4', '2026-02-02');
      await b.on('2026-02-20').check(kd, 'DM', 'T4', '2026-02-20');
      await ticket(b, 'W4', '2027-01-01');
      await ticket(b, 'W1', '2027-01-01');
    },
    [
      [
        { task: 'T4', from: '2026-02-10T06:00:00Z', to: '2026-03-20T18:00:00Z' },
        'yes shown shown ticket-good ticket-good',
      ],
      [
        { task: 'T4', from: '2026-02-10T06:00:00Z', to: '2026-03-21T18:00:00Z' },
        'no time shown shown ticket-good ticket-good',
      ],
    ],
  ],
  [
    'taken back: whatever day is asked about, from what was known',
    async (b) => {
      const id = await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
      await b.on('2026-02-09').act(kd, 'withdraw', 'DM', [id]);
    },
    [
      [day('2026-02-03'), 'no withdrawn'],
      [day('2026-02-03', { knownOn: '2026-02-08' }), 'yes shown'],
      [day('2026-02-01'), 'not enough evidence nothing'],
    ],
  ],
  [
    'practice only',
    (b) => b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', { help: 'with-help' }),
    [[day('2026-02-03'), 'not enough evidence practice-only']],
  ],
  [
    'without a showing the last on record is a not-yet that stands',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', { help: 'with-help' });
      const id = await b.on('2026-02-03').check(kd, 'DM', 'T2', '2026-02-03', not);
      await b.on('2026-02-05').check(lz, 'DM', 'T2', '2026-02-05', { manner: 'simulated' });
      await b.on('2026-02-09').act(owner, 'withdraw', 'DM', [id]);
    },
    [
      [day('2026-02-02', { knownOn: '2026-02-08' }), 'not enough evidence practice-only'],
      [day('2026-02-03', { knownOn: '2026-02-08' }), 'no not-yet practice-only'],
      [day('2026-02-05', { knownOn: '2026-02-08' }), 'not enough evidence practice-only'],
      [
        { from: '2026-02-04T22:00:00Z', to: '2026-02-05T06:00:00Z', knownOn: '2026-02-08' },
        'no not-yet practice-only practice-only',
      ],
      // taken back it does not stand
      [day('2026-02-03'), 'not enough evidence practice-only'],
    ],
  ],
  [
    'a not-yet and no practice before it',
    (b) => b.on('2026-02-03').check(kd, 'DM', 'T2', '2026-02-03', not),
    [
      [day('2026-02-02'), 'not enough evidence nothing'],
      [day('2026-02-03'), 'no not-yet nothing'],
    ],
  ],
  [
    'an attempt that was stopped counts for nothing, before and after',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', not);
      await b.on('2026-02-03').check(kd, 'DM', 'T2', '2026-02-03', { ...not, stopped: true });
      await b.check(kd, 'EI', 'T2', '2026-02-03', { ...not, stopped: true });
    },
    [
      [day('2026-02-03'), 'no not-yet nothing'],
      [day('2026-02-03', { person: 'EI' }), 'not enough evidence nothing'],
    ],
  ],
  [
    'on one day the practice that knows of the not-yet comes after it',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', not);
      await b.check(kd, 'DM', 'T2', '2026-02-02', { help: 'with-help' });
      await b.check(kd, 'EI', 'T2', '2026-02-02', { help: 'with-help' });
      await b.check(kd, 'EI', 'T2', '2026-02-02', not);
    },
    [
      [day('2026-02-02'), 'not enough evidence practice-only'],
      [day('2026-02-02', { person: 'EI' }), 'no not-yet practice-only'],
    ],
  ],
  [
    'where two are wanted: from the day that the second is entered',
    async (b) => {
      const id = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
      const second = await b.on('2026-02-09').second(lz, 'DM', id);
      await b.on('2026-02-20').act(lz, 'withdraw', 'DM', [second]);
    },
    [
      [
        day('2026-02-08', { task: 'T3', knownOn: '2026-02-19' }),
        'not enough evidence second-missing nothing',
      ],
      [
        { task: 'T3', from: '2026-02-08T22:00:00Z', to: '2026-02-09T06:00:00Z', knownOn: '2026-02-19' },
        'not enough evidence second-missing nothing shown',
      ],
      [day('2026-02-09', { task: 'T3', knownOn: '2026-02-19' }), 'yes shown'],
      [day('2026-02-09', { task: 'T3' }), 'no second-withdrawn'],
    ],
  ],
  [
    'tickets: one that lapses, one that nobody recorded, and the last of a kind',
    async (b) => {
      await b.on('2026-02-02').check(kd, 'DM', 'T4', '2026-02-02');
      await ticket(b, 'W4', '2026-02-20');
      await b.on('2026-02-25');
      await ticket(b, 'W4', '2026-02-27', lz);
      await ticket(b, 'W6', '2026-01-01'); // not one that the task names
    },
    [
      [day('2026-02-27', { task: 'T4' }), 'yes shown ticket-unrecorded ticket-good'],
      [
        { task: 'T4', from: '2026-02-27T16:00:00Z', to: '2026-02-28T00:00:00Z' },
        'yes shown ticket-unrecorded ticket-good',
      ],
      [
        { task: 'T4', from: '2026-02-27T16:00:00Z', to: '2026-02-28T00:00:00.001Z' },
        'no ticket-lapses shown ticket-unrecorded',
      ],
      [day('2026-02-21', { task: 'T4', knownOn: '2026-02-24' }), 'no ticket-lapses shown ticket-unrecorded'],
      [day('2026-02-20', { task: 'T4', knownOn: '2026-02-24' }), 'yes shown ticket-unrecorded ticket-good'],
      // a ticket that lapses is against it also where nothing was shown
      [
        day('2026-04-01', { task: 'T4', knownOn: '2026-02-01' }),
        'not enough evidence nothing ticket-unrecorded ticket-unrecorded',
      ],
      [day('2026-03-03', { task: 'T4' }), 'no time ticket-lapses ticket-unrecorded'],
    ],
  ],
];

describe('three answers', () => {
  test.each(cases)('%s', async (_, make, want) => {
    const b = staffed.copy();
    await make(b);
    for (const [question, expected] of want) {
      expect(short(await ask(b, question)), JSON.stringify(question)).toBe(expected);
    }
  });
  test('a ticket that lapses is against it where nothing was shown', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02');
    await ticket(b, 'W4', '2026-02-20');
    expect(short(await ask(b, day('2026-02-21', { task: 'T4' })))).toBe(
      'no ticket-lapses nothing ticket-unrecorded',
    );
  });
  test('erased: not enough evidence, whatever was known when', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    await b.on('2026-02-03').check(kd, 'DM', 'T2', '2026-02-03', not);
    const erase = await b.on('2026-02-09').act(owner, 'erase', 'DM', []);
    await b.on('2026-02-10').act(lz, 'erase', 'DM', []);
    for (const knownOn of ['2026-02-02', '2026-02-05', '2026-03-01']) {
      const { answer, reasons } = await ask(b, day('2026-02-04', { knownOn }));
      expect([answer, reasons]).toEqual([
        'not enough evidence',
        [{ say: { say: 'registerMay.erased' }, entry: erase }],
      ]);
    }
  });
});

describe('doubt', () => {
  test('alone: not enough evidence; beside something against it: no', async () => {
    const b = staffed.copy();
    const early = await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    await b.on('2026-02-03').check(kd, 'DM', 'T2', '2026-02-03');
    await b.on('2026-02-10').check(kd, 'DM', 'T2', '2026-02-10', not);
    const [, ...rest] = (b.files[b.file(kd)] ?? '').split('\n');
    b.edit(b.file(kd), () => rest.join('\n')); // what is left of KD stands behind a hole
    expect(short(await ask(b, day('2026-02-05')))).toBe('not enough evidence hole');
    // a doubtful not-yet still counts against
    expect(short(await ask(b, day('2026-02-10')))).toBe('no not-yet hole');
    expect(short(await ask(b, day('2027-02-10')))).toBe('no not-yet time hole');
    expect((await ask(b, day('2026-02-05'))).reasons[0]?.entry).not.toBe(early);
  });
  test('a body of the person that is not here: everything of his is in doubt', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const id = await b.on('2026-02-03').check(kd, 'DM', 'T4', '2026-02-03', not);
    b.remove(`bodies/${b.header(id).body}.json`);
    expect(await ask(b, day('2026-02-05'))).toEqual({
      answer: 'not enough evidence',
      reasons: [{ say: { say: 'registerWhy.body' }, entry: id }],
    });
    expect(short(await ask(b, day('2026-02-05', { task: 'T1' })))).toBe('not enough evidence body nothing');
  });
});

describe('reasons go back to entries', () => {
  const idsOf = async (b: Book, question: Question) => (await ask(b, question)).reasons.map((r) => r.entry);
  test('showing, not-yet, withdrawal, practice, second, ticket', async () => {
    const b = staffed.copy();
    const showing = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
    expect(await idsOf(b, day('2026-02-03', { task: 'T3' }))).toEqual([showing, null]);
    await b.second(lz, 'DM', showing);
    expect(await ask(b, day('2026-02-03', { task: 'T3' }))).toEqual({
      answer: 'yes',
      reasons: [
        {
          say: { say: 'registerMay.shown', values: { day: '2026-02-02', until: '2027-02-02' } },
          entry: showing,
        },
      ],
    });
    const against = await b.on('2026-02-04').check(lz, 'DM', 'T3', '2026-02-04', not);
    expect(await idsOf(b, day('2026-02-04', { task: 'T3' }))).toEqual([against]);
    const gone = await b.act(kd, 'withdraw', 'DM', [showing]);
    expect(await idsOf(b, day('2026-02-04', { task: 'T3' }))).toEqual([gone, against]);
    await b.on('2026-02-05').check(kd, 'DM', 'T4', '2026-02-05', { manner: 'talked' });
    const practice = await b.on('2026-02-06').check(kd, 'DM', 'T4', '2026-02-06', { help: 'with-help' });
    const held = await ticket(b, 'W1', '2026-06-30');
    expect(await ask(b, day('2026-02-07', { task: 'T4' }))).toEqual({
      answer: 'not enough evidence',
      reasons: [
        { say: { say: 'registerMay.practice-only', values: { day: '2026-02-06' } }, entry: practice },
        {
          say: { say: 'registerMay.ticket-good', values: { ticket: 'W1', until: '2026-06-30' } },
          entry: held,
        },
        { say: { say: 'registerMay.ticket-unrecorded', values: { ticket: 'W4' } }, entry: null },
      ],
    });
  });
  test('every sentence has its words, and no words are without a sentence', () => {
    const keys = Object.keys(words.registerMay).map((key) => `registerMay.${key}`);
    expect([...maySays].sort()).toEqual(keys.sort());
  });
});

describe('days of the register’s zone', () => {
  test('a night shift counts both its days; midnight is the zone’s', async () => {
    const b = await Book.staffed('America/Denver');
    await b.on('2026-02-03').check(kd, 'DM', 'T2', '2026-02-02');
    // Denver is UTC-7 in winter (US Energy Policy Act of 2005, §110: summer time from March to November)
    const until = async (to: string) => (await ask(b, { from: '2027-02-02T22:00:00-07:00', to })).answer;
    expect(await until('2027-02-03T00:00:00-07:00')).toBe('yes');
    expect(await until('2027-02-03T07:00:00Z')).toBe('yes');
    expect(await until('2027-02-03T07:00:00.001Z')).toBe('no');
    expect(await until('2027-02-03T06:00:00-07:00')).toBe('no');
  });
});

test('to the end of the calendar: a showing good for ages lasts, one that is not does not', async () => {
  const b = await Book.staffed('Pacific/Kiritimati');
  await b.on('2026-02-03').check(kd, 'DM', 'T2', '2026-02-03');
  const span = { from: '2026-02-04T00:00:00Z', to: '9999-12-31T23:59:59.999Z' };
  expect(short(await ask(b, span))).toBe('no time shown');
  expect(short(await ask(b, { ...span, months: { T2: 8333 * 12 } }))).toBe('yes shown');
});

describe('questions that cannot be asked', () => {
  const faults = (more: Partial<MayAsked>) =>
    mayFaults({ person: 'DM', task: 'T2', from: at('2026-02-02'), to: at('2026-02-03'), ...more }, map).map(
      (f) => f.field,
    );
  test.each<[string, Partial<MayAsked>, string[]]>([
    ['none', {}, []],
    ['a heading', { task: 'T9' }, ['task']],
    ['no such task', { task: 'T7' }, ['task']],
    ['an outside ticket', { task: 'W1' }, ['task']],
    [
      'no such pair and no such value',
      { variant: { width: '3', metal: 'steel' } },
      ['variant.width', 'variant.metal'],
    ],
    ['an id that is none', { person: 'D M' }, ['person']],
    ['to is from', { to: at('2026-02-02') }, ['to']],
    ['to before from', { to: at('2026-02-01') }, ['to']],
    ['all at once', { person: '', task: 'T9', to: at('2026-02-01') }, ['person', 'task', 'to']],
  ])('%s', (_, more, want) => {
    expect(faults(more)).toEqual(want);
  });
  test('mayOf throws them', async () => {
    const judged = await staffed.judged();
    const asked = { person: 'DM', task: 'T9', from: 1, to: 1, map, regrade: undefined };
    expect(() => mayOf(judged, asked)).toThrow(GivenError);
  });
});

test('evidence that does not pass is doubt', async () => {
  const b = staffed.copy();
  const evidence: JsonObject = { good: false };
  await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', { evidence });
  const judged = await b.judged({ now: at('2030-01-01') });
  const asked = { person: 'DM', task: 'T2', from: at('2026-02-03'), to: at('2026-02-04'), map };
  expect(short(mayOf(judged, { ...asked, regrade: () => false }))).toBe('not enough evidence evidence');
  expect(short(mayOf(judged, { ...asked, regrade: () => true }))).toBe('yes shown');
});
