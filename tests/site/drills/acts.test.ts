/** The acts of the register's page: who may open them, what they put forward, what they say before a passphrase. */
import { describe, expect, test } from 'vitest';
import { type Act, valuesOf } from '../../../src/site/drills/act.ts';
import { acts, ownershipLine } from '../../../src/site/drills/acts.ts';
import { forkTexts, settleOptions, waitingToSettle } from '../../../src/site/drills/branches.ts';
import { ageText } from '../../../src/site/drills/entries.ts';
import { peopleOnRecord } from '../../../src/site/drills/erasing.ts';
import type { Looking } from '../../../src/site/drills/looking.ts';
import { quietPeople } from '../../../src/site/drills/retention.ts';
import { problemRows } from '../../../src/site/registerWords.ts';
import { shortKey as short } from '../../../src/site/shortKey.ts';
import { at, Book, kd, lz, next, owner } from '../../register/book.ts';
import { looked, speak, tell } from './looked.ts';

/** The fields of an act with something chosen, and what stands in them. */
function filled(act: Act, looking: Looking, written: Record<string, string>) {
  const fields = act.fields(looking, valuesOf(act.fields(looking, written), written));
  return { fields, values: valuesOf(fields, written) };
}

describe('who may sign', () => {
  test.each([
    ['retire', 'drills.barOwner'],
    ['succeed', 'drills.barOwner'],
    ['settle', 'drills.barOwner'],
    ['erase', 'drills.barOwner'],
    ['takeOver', 'drills.barNext'],
    ['withdraw', undefined],
    ['ticket', undefined],
  ] as const)('a witness at %s', async (name, bar) => {
    const looking = await looked(await Book.staffed(), kd.publicKey);
    expect(acts[name].bar(looking)).toBe(bar);
  });
  test('a device without a key signs nothing', async () => {
    const looking = await looked(await Book.staffed(), undefined);
    for (const act of Object.values(acts)) expect(act.bar(looking)).toBe('drills.barKey');
  });
  test('the named key may take over; the owner need not; after it the old owner may nothing', async () => {
    const book = await Book.staffed();
    await book.succeed(next);
    expect(acts.takeOver.bar(await looked(book, next.publicKey))).toBeUndefined();
    expect(acts.takeOver.bar(await looked(book, owner.publicKey))).toBe('drills.barIsOwner');
    expect(ownershipLine(await looked(book, kd.publicKey))).toContain(
      `Key ${next.publicKey.slice(0, 8)} is named to take over.`,
    );
    await book.act(next, 'take-over', null, []);
    const after = await looked(book, next.publicKey);
    expect(ownershipLine(after)).toContain('Taken over on 1 January 2026. No key is named to take over');
    expect(acts.retire.bar(after)).toBeUndefined();
    expect(acts.retire.bar(await looked(book, owner.publicKey))).toBe('drills.barOwner');
  });
});

describe('a key with two devices', () => {
  test('each device stands with its last entry put forward and its age; what is cut off is counted', async () => {
    const book = await Book.staffed();
    const first = await book.check(kd, 'P1', 'T1', '2026-01-01');
    const last = await book.on('2026-02-27').check(kd, 'P1', 'T4', '2026-02-27');
    const tablet = { ...kd, device: 'kd-tablet' };
    const own = await book.check(tablet, 'P2', 'T1', '2026-02-27');
    const looking = await looked(book, owner.publicKey);
    const { fields, values } = filled(acts.retire, looking, { witness: kd.publicKey });
    const [phoneField, tabletField] = [`after:${kd.publicKey}:kd-phone`, `after:${kd.publicKey}:kd-tablet`];
    expect(values).toEqual({ witness: kd.publicKey, [phoneField]: last, [tabletField]: own, why: '' });
    expect(fields[1]?.label).toBe('Last entry that stands of kd-phone: last known is number 1, 2 days old');
    expect(fields[1]?.options?.map(({ value }) => value)).toEqual([last, first, 'none']);
    const chosen = { witness: kd.publicKey, [phoneField]: first, [tabletField]: 'none' };
    expect(acts.retire.before?.(looking, filled(acts.retire, looking, chosen).values)).toEqual([
      `Key ${kd.publicKey.slice(0, 8)} of KD is retired.`,
      'kd-phone: stands up to number 0. Known entries cut off: 1.',
      'kd-tablet: nothing stands. Known entries cut off: 1.',
    ]);
  });
  test('what was chosen for a device of one key is not chosen for the device of that name of another', async () => {
    const book = await Book.staffed();
    const [one, two] = [kd, lz].map((signer) => ({ ...signer, device: 'phone' }));
    if (one === undefined || two === undefined) throw new Error('two signers');
    await book.check(one, 'P1', 'T1', '2026-01-01');
    const last = await book.check(two, 'P1', 'T1', '2026-01-01');
    const looking = await looked(book, owner.publicKey);
    const chosen = { witness: one.publicKey, [`after:${one.publicKey}:phone`]: 'none' };
    const { values } = filled(acts.retire, looking, { ...chosen, witness: two.publicKey });
    expect(values).toEqual({ witness: two.publicKey, [`after:${two.publicKey}:phone`]: last, why: '' });
  });
  test('a retired key, and one that was never appointed, is not put forward', async () => {
    const book = await Book.staffed();
    await book.retire(kd, 'KD', []);
    const { fields } = filled(acts.retire, await looked(book, owner.publicKey), {});
    expect(fields[0]?.options?.map(({ value }) => value)).toEqual([lz.publicKey]);
  });
  test.each([
    ['2026-01-01T23:00:00Z', 'today'],
    ['2026-01-02T00:00:00Z', '1 day old'],
    ['2026-01-03T00:00:00Z', '2 days old'],
    ['2025-12-31T12:00:00Z', 'dated ahead'],
  ])('age at %s', async (now, text) => {
    const looking = await looked(await Book.staffed(), kd.publicKey, now);
    expect(ageText({ ...looking, now: at(now) }, at('2026-01-01'))).toBe(text);
  });
});

describe('what can be settled', () => {
  test('both branches in words, told apart by entry, minute and way of doing it, with who knows each; nothing once it is settled', async () => {
    const book = await Book.staffed();
    const other = book.copy();
    const a = await book.check(kd, 'P1', 'T2', '2026-01-01');
    await book.check(kd, 'P2', 'T1', '2026-01-01');
    await book.check(lz, 'P2', 'T4', '2026-01-01');
    await book.check(lz, 'P1', 'T4', '2026-01-01');
    const way = { variant: { width: '6', joint: 'socketed' }, outcome: 'not-yet', stopped: true };
    const b = await other.check(kd, 'P1', 'T2', '2026-01-01', way);
    const path = book.file(kd);
    book.edit(path, (text) => text + (other.files[path] ?? ''));
    book.files = { ...other.files, ...book.files };
    book.on('2026-01-03');
    const looking = await looked(book, owner.publicKey);
    const [fork] = forkTexts(looking);
    expect(fork?.title).toBe('Fork of KD on kd-phone at number 0');
    expect(fork?.branches.map(({ first, title }) => [first, title])).toEqual(
      expect.arrayContaining([
        [
          a,
          expect.stringMatching(
            new RegExp(
              `^Branch [AB], from entry ${short(a)}: 2 entries, 1 January 2026, 12:03 to 1 January 2026, 12:04\\. Known to LZ on lz-phone$`,
            ),
          ),
        ],
        [
          b,
          expect.stringMatching(
            new RegExp(
              `^Branch [AB], entry ${short(b)}: 1 entry, 1 January 2026, 12:03\\. Known to nobody else$`,
            ),
          ),
        ],
      ]),
    );
    // Two checks alike but for the way of doing it, in the same minute: neither reads as the other.
    const rows = fork?.branches.flatMap((branch) => branch.rows) ?? [];
    expect(rows).toEqual(
      expect.arrayContaining([
        `1 January 2026, 12:03, entry ${short(a)}, number 0: Dana Mott at T2 work T2, 4 in, sleeve (socketed): shown, seen on 1 January 2026`,
        `1 January 2026, 12:03, entry ${short(b)}, number 0: Dana Mott at T2 work T2, 6 in, sleeve (socketed): stopped for safety, seen on 1 January 2026`,
      ]),
    );
    expect(acts.settle.bar(looking)).toBeUndefined();
    expect([waitingToSettle(looking), settleOptions(looking).length]).toEqual([1, 2]);
    await book.act(owner, 'settle', null, [a]);
    const after = await looked(book, owner.publicKey);
    expect(forkTexts(after)).toEqual([]);
    expect(acts.settle.bar(after)).toBe('drills.barSettle');
    const problem = ({ judged }: Looking) =>
      problemRows(judged.problems, speak, tell).map(({ todo, settled }) => [todo, settled]);
    expect(problem(looking)).toEqual([[tell('register.todo-fork'), false]]);
    expect(problem(after)).toEqual([['', true]]);
  });
  test('a missing entry is put forward as lost for good, and no more once it is', async () => {
    const book = await Book.staffed();
    const gone = await book.check(lz, 'P1', 'T1', '2026-01-01');
    await book.check(kd, 'P2', 'T1', '2026-01-01');
    book.remove(book.file(lz));
    const options = settleOptions(await looked(book, owner.publicKey));
    expect(options).toEqual([{ value: gone, text: 'Missing: number 0 of LZ on lz-phone. Lost for good' }]);
    await book.act(owner, 'settle', null, [gone]);
    expect(settleOptions(await looked(book, owner.publicKey))).toEqual([]);
  });
});

test('a shift is written in the hours of the register’s zone, wherever the device is', async () => {
  // Mountain time is seven hours behind UTC in winter (15 U.S.C. 261), six in summer (15 U.S.C. 260a).
  const book = await Book.staffed('America/Denver');
  const looking = await looked(book, kd.publicKey);
  const shift = { job: 'J1', person: 'P1', from: '2026-02-03T07:00', to: '2026-07-03T17:30' };
  const { fields, values } = filled(acts.assigned, looking, shift);
  const hours = fields.filter(({ is }) => is === 'moment').map(({ name, hint }) => [name, hint]);
  expect(hours).toEqual(
    ['from', 'to'].map((name) => [name, 'Day and hour of America/Denver, the register’s zone.']),
  );
  const means = { regrade: () => true };
  await book.sign(kd, (judged, writing) => acts.assigned.write(judged, values, writing, means));
  const { judged } = await looked(book, kd.publicKey);
  const entry = judged.view.list.find(({ header }) => header.kind === 'assigned');
  if (entry === undefined) throw new Error('nothing is signed');
  expect(judged.authority.body(entry, 'assigned')).toMatchObject({
    body: { from: '2026-02-03T14:00:00.000Z', to: '2026-07-03T23:30:00.000Z' },
  });
  const empty = filled(acts.assigned, looking, { ...shift, from: '' }).values;
  const writing = { signer: kd, now: looking.now, chance: (n: number) => new Uint8Array(n) };
  expect(acts.assigned.faults(judged, empty, writing, means).map(({ field }) => field)).toEqual(['from']);
});

test('a witness takes back his own entries, whichever device he holds; the owner any', async () => {
  const book = await Book.staffed();
  const mine = await book.check(kd, 'P1', 'T1', '2026-01-01');
  const theirs = await book.check(lz, 'P1', 'T4', '2026-01-01');
  const entries = async (me: string) => {
    const { fields } = filled(acts.withdraw, await looked(book, me), { person: 'P1' });
    return fields.find(({ name }) => name === 'entry')?.options?.map(({ value }) => value);
  };
  expect(await entries(kd.publicKey)).toEqual([mine]);
  expect(await entries(owner.publicKey)).toEqual([theirs, mine]);
  await book.act(kd, 'withdraw', 'P1', [mine]);
  expect(await entries(kd.publicKey)).toEqual([]);
  expect(await entries(owner.publicKey)).toEqual([theirs]);
});

describe('an entry that was chosen before another person was', () => {
  test.each(['withdraw', 'correct'] as const)(
    '%s puts forward nothing of the person before',
    async (name) => {
      const book = await Book.staffed();
      const first = await book.check(kd, 'P1', 'T1', '2026-01-01');
      const other = await book.check(kd, 'P2', 'T4', '2026-01-01');
      const looking = await looked(book, kd.publicKey);
      const chosen = filled(acts[name], looking, { person: 'P1', entry: first }).values;
      expect(chosen['entry']).toBe(first);
      expect(acts[name].before?.(looking, chosen)[0]).toContain(
        'Dana Mott at T1 work T1: shown, seen on 1 January 2026. Number 0 of KD, kd-phone, 1 January 2026.',
      );
      const after = filled(acts[name], looking, { person: 'P2', entry: first });
      expect(after.values['entry']).toBe('');
      expect(acts[name].before?.(looking, after.values)).toEqual([]);
      expect(after.fields.find(({ name: of }) => of === 'entry')?.options?.map(({ value }) => value)).toEqual(
        [other],
      );
    },
  );
});

test('before an erase it is said what goes and what stays', async () => {
  const book = await Book.staffed();
  const check = await book.check(kd, 'P1', 'T1', '2026-01-01');
  await book.act(kd, 'withdraw', 'P1', [check]);
  await book.check(kd, 'P2', 'T1', '2026-01-01');
  const looking = await looked(book, owner.publicKey);
  const [drops, here, stays] = acts.erase.before?.(looking, { person: 'P1' }) ?? [];
  expect(drops).toBe('Dropped for good, texts of checks, seconds, tickets and shifts about P1: 2.');
  expect(here).toContain('a sheet that was set for P1, with what is written on it');
  expect(stays).toContain('headers with the id P1, which say who signed and when, but not what: 2;');
  // An appointment is about the witness, and its text stays.
  expect(acts.erase.before?.(looking, { person: 'KD' })[2]).toContain('but not what: 1;');
  expect(acts.erase.before?.(looking, { person: 'KD' })[2]).toContain(
    'texts of appointments and retirements: 1;',
  );
  await book.act(owner, 'erase', 'P1', []);
  expect(peopleOnRecord((await looked(book, owner.publicKey)).judged)).toEqual(['KD', 'LZ', 'OW', 'P2']);
});

describe('who has had no entry for long', () => {
  test('the day exactly so long ago is still within; one who signs is not quiet; the names file adds who was never seen', async () => {
    const book = await Book.staffed();
    await book.on('2026-01-31').check(kd, 'P1', 'T1', '2026-01-31');
    await book.on('2026-02-10').check(kd, 'P2', 'T1', '2026-02-10');
    const { judged } = await looked(book, owner.publicKey, '2026-03-01');
    const quiet = (today: string, months: number) =>
      quietPeople(judged, ['P9'], today, months).map(({ person, last }) => `${person} ${last}`);
    // 28 February is one month before 28 March, and 31 January − 1 month = 31 December.
    expect(quiet('2026-02-28', 1)).toEqual(['P9 null', 'LZ 2026-01-01', 'OW 2026-01-01']);
    expect(quiet('2026-03-10', 1)).toEqual(['P9 null', 'LZ 2026-01-01', 'OW 2026-01-01', 'P1 2026-01-31']);
    expect(quiet('2026-03-11', 1)).toContain('P2 2026-02-10');
    expect(quiet('2026-03-11', 1)).toContain('KD 2026-02-10');
    expect(quiet('2026-02-01', 1)).toEqual(['P9 null']);
  });
  test('an erased person is not listed', async () => {
    const book = await Book.staffed();
    await book.check(kd, 'P1', 'T1', '2026-01-01');
    await book.act(owner, 'erase', 'P1', []);
    const { judged } = await looked(book, owner.publicKey, '2026-12-01');
    expect(quietPeople(judged, [], '2026-12-01', 3).map(({ person }) => person)).not.toContain('P1');
  });
});
