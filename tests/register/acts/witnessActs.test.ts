/** What a witness signs beside a check: both sides of every rule. */
import { beforeEach, describe, expect, test } from 'vitest';
import { assigned } from '../../../src/register/acts/assigned.ts';
import { correct } from '../../../src/register/acts/correct.ts';
import { second } from '../../../src/register/acts/second.ts';
import { ticket } from '../../../src/register/acts/ticket.ts';
import { withdraw } from '../../../src/register/acts/withdraw.ts';
import type { Regrade } from '../../../src/register/checks.ts';
import type { Signer } from '../../../src/register/keys.ts';
import type { TaskMap } from '../../../src/register/taskMap.ts';
import { GivenError } from '../../../src/trade/given.ts';
import { Book, kd, lz, map, owner, signerOf, stranger } from '../book.ts';
import { type Act, apart, lose, refusals } from './refusals.ts';

const kdTablet: Signer = { ...kd, device: 'tablet' };
const kdOld = signerOf(6, 'kd-old');
const mt = signerOf(7, 'mt-phone');
const never = 'ab'.repeat(32);

let b: Book;
/** A check of DM's T3 by KD, seen on 2026-02-02. */
let check: string;
beforeEach(async () => {
  b = await Book.staffed();
  await b.appoint(mt, 'MT', ['T1', 'T3'], '2026-02-03');
  await b.appoint(kdOld, 'KD');
  check = await b.on('2026-02-03').check(kd, 'DM', 'T3', '2026-02-02');
});
const say = (signer: Signer, act: Act, device?: string) => refusals(b, signer, act, device);
const codes = () => b.codes();

describe('second', () => {
  const seconded =
    (entry = check, tasks: TaskMap = map): Act =>
    (j, w) =>
      second(j, { entry }, tasks, w);

  test('another witness appointed on the day seen: the task that wants two is shown', async () => {
    expect(await say(lz, seconded())).toEqual([]);
    const board = await b.board({ on: '2026-02-04' });
    expect(board.people.find((p) => p.id === 'DM')?.tasks['T3']?.standing).toBe('shown');
    expect(await codes()).toEqual([]);
  });

  test('not by the witness himself, whichever of his keys and devices', async () => {
    const same = ['key: the second witness is the witness of the check'];
    expect(await say(kd, seconded())).toEqual(same);
    expect(await say(kdTablet, seconded())).toEqual(same);
    expect(await say(kdOld, seconded())).toEqual(same);
  });

  test('not by the person, whichever of his keys', async () => {
    const about = await b.check(lz, 'KD', 'T3', '2026-02-02');
    for (const key of [kd, kdOld]) {
      expect(await say(key, seconded(about))).toEqual(['entry: nobody signs about himself']);
    }
  });

  test('only by who is appointed for the task on the day seen', async () => {
    expect(await say(mt, seconded())).toEqual(['key: not appointed for T3 on 2026-02-02']);
    const later = await b.on('2026-02-04').check(kd, 'DM', 'T3', '2026-02-03');
    expect(await say(mt, seconded(later))).toEqual([]);
    const other = await b.check(kd, 'DM', 'T4', '2026-02-03');
    expect(await say(mt, seconded(other))).toEqual(['key: not appointed for T4 on 2026-02-03']);
    expect(await say(stranger, seconded())).toEqual(['key: not appointed for T3 on 2026-02-02']);
    expect(await say(owner, seconded())).toEqual(['key: not appointed for T3 on 2026-02-02']);
  });

  test('a check by its whole id, held, and nothing else', async () => {
    const no = 'entry: not the whole id of an entry';
    expect(await say(lz, seconded(''))).toEqual(['entry: no entry is named']);
    expect(await say(lz, seconded(check.slice(0, 12)))).toEqual([no]);
    expect(await say(lz, seconded(check.toUpperCase()))).toEqual(['entry: no id of an entry']);
    expect(await say(lz, seconded(never))).toEqual(['entry: no such entry is in this register']);
    expect(await say(lz, seconded(b.begin))).toEqual(['entry: an entry of kind begin']);
    const last = await b.check(kd, 'DM', 'T1', '2026-02-02');
    await b.check(kd, 'DM', 'T1', '2026-02-02');
    lose(b, last);
    expect(await say(lz, seconded(last))).toEqual([
      'entry: this entry is missing: it is cited, and not held here',
    ]);
  });

  test('not of a check that was withdrawn, cut off, or counts for nothing', async () => {
    const alone = await b.check(stranger, 'DM', 'T3', '2026-02-02');
    expect(await say(lz, seconded(alone))).toEqual([
      'entry: nobody with standing signed this entry: it counts for nothing',
    ]);
    const own = await b.check(kd, 'KD', 'T3', '2026-02-02');
    expect(await say(lz, seconded(own))).toEqual(['entry: this check counts for nothing']);
    await b.act(owner, 'withdraw', 'DM', [check]);
    expect(await say(lz, seconded())).toEqual(['entry: this check was withdrawn, for good']);
    const next = await b.check(kd, 'DM', 'T3', '2026-02-02');
    await b.retire(kd, 'KD', [check]);
    expect(await say(lz, seconded(next))).toEqual([
      'entry: a retirement or a take-over cut this entry off: it counts for nothing',
    ]);
  });

  test('not by a retired key, not before what it follows, not of a heading', async () => {
    const heading = { tasks: map.tasks.map((t) => (t.id === 'T3' ? { ...t, parts: ['T1'] } : t)) };
    expect(await say(lz, seconded(check, heading))).toEqual([
      'entry: T3 is a heading, which is not shown itself',
    ]);
    expect(await say(lz, seconded(check, { tasks: [] }))).toEqual([]);
    const early = 'at: earlier than an entry that it follows (2026-02-03T12:03:00.000Z)';
    b.on('2026-02-03T08:00:00Z');
    expect(await say(lz, seconded())).toEqual([early]);
    b.on('2026-02-02T08:00:00Z');
    expect(await say(lz, seconded())).toEqual([early, 'entry: the time of this entry has not come']);
    b.on('2026-02-05');
    await b.retire(lz, 'LZ', []);
    expect(await say(lz, seconded())).toEqual(['key: this key is retired']);
  });

  test('by a witness who is shown in it himself, where the site demands that', async () => {
    const seen = await b.on('2026-02-05').check(kd, 'DM', 'T3', '2026-02-05');
    const demanding =
      (from: string): Act =>
      (j, w) =>
        second(j, { entry: seen }, map, w, undefined, { ownStanding: { T3: from } });
    const not = 'key: the witness’s own standing in T3 on 2026-02-05 is not shown';
    expect(await say(lz, demanding('2026-02-05'))).toEqual([not]);
    expect(await say(lz, demanding('2026-02-06'))).toEqual([]);
    const own = await b.check(kd, 'LZ', 'T3', '2026-02-05');
    expect(await say(lz, demanding('2026-02-05'))).toEqual([
      expect.stringContaining('no second witness yet'),
    ]);
    await b.second(mt, 'LZ', own);
    expect(await say(lz, demanding('2026-02-05'))).toEqual([]);
  });

  test('everything that is wrong is said at once', async () => {
    await b.retire(kd, 'KD', [check]);
    expect(await say(kd, seconded())).toEqual([
      'key: this key is retired',
      'key: the second witness is the witness of the check',
    ]);
  });

  test('not of a check whose body is not here, or whose person is erased', async () => {
    b.remove(`bodies/${b.header(check).body}.json`);
    expect(await say(lz, seconded())).toEqual(['entry: what this check says is not here']);
    await b.act(owner, 'erase', 'DM', []);
    expect(await say(lz, seconded())).toEqual(['entry: the person it is about was erased']);
  });
});

describe('withdraw', () => {
  const withdrawn =
    (entry = check, why = 'the wrong person'): Act =>
    (j, w) =>
      withdraw(j, { entry, why }, w);

  test.each([
    ['who signed it', kd],
    ['who signed it, on another device', kdTablet],
    ['who signed it, with another key of his', kdOld],
    ['the owner', owner],
  ])('by %s', async (_, signer) => {
    expect(await say(signer, withdrawn())).toEqual([]);
    expect(await codes()).toEqual([]);
    const board = await b.board({ on: '2026-02-05' });
    expect(board.people.find((p) => p.id === 'DM')?.tasks['T3']?.entries).toEqual([]);
  });

  test('by nobody else', async () => {
    const no = ['key: neither the owner’s key nor one of the witness who signed that entry'];
    expect(await say(lz, withdrawn())).toEqual(no);
    expect(await say(stranger, withdrawn())).toEqual(no);
  });

  test('never by the person: the owner’s own check is withdrawn by its witness', async () => {
    const own = await b.check(kd, 'OW', 'T1', '2026-02-02');
    expect(await say(owner, withdrawn(own))).toEqual(['entry: nobody signs about himself']);
    expect(await say(kd, withdrawn(own))).toEqual([]);
  });

  test('of a check, second, ticket or assigned, nothing else; once, for good', async () => {
    const two = await b.second(lz, 'DM', check);
    const paper = await b.add(kd, {
      kind: 'ticket',
      about: 'DM',
      body: { ticket: 'W4', issuer: 'a house', number: '7', until: '2027-01-01' },
    });
    const sent = await b.add(kd, {
      kind: 'assigned',
      about: 'DM',
      body: {
        job: 'J1',
        from: '2026-02-03T07:00:00.000Z',
        to: '2026-02-03T15:00:00.000Z',
        override: null,
      },
    });
    for (const id of [two, paper, sent, check]) expect(await say(owner, withdrawn(id))).toEqual([]);
    expect(await say(owner, withdrawn())).toEqual(['entry: it was withdrawn already, for good']);
    const taken = await b.act(owner, 'withdraw', 'DM', [two]);
    expect(await say(owner, withdrawn(taken))).toEqual(['entry: an entry of kind withdraw']);
    expect(await say(owner, withdrawn(b.begin))).toEqual(['entry: an entry of kind begin']);
  });

  test('with a reason', async () => {
    expect(await say(kd, withdrawn(check, ''))).toEqual(['why: says nothing']);
    expect(await say(kd, withdrawn(check, '  '))).toEqual(['why: says nothing']);
    expect(await say(kd, withdrawn(check, 'a\uD800'))).toEqual(['why: holds half a sign (a lone surrogate)']);
    expect(await say(kd, withdrawn(check, 'a'.repeat(2001)))).toEqual([
      'why: wants a text of 1 to 2000 signs',
    ]);
    expect(await say(kd, withdrawn(check, 'a'.repeat(2000)))).toEqual([]);
  });

  test('not from the branch of a fork that does not lead there', async () => {
    const [left] = await apart(
      b,
      (one) => one.on('2026-02-05').check(kd, 'DM', 'T1', '2026-02-05'),
      async (two) => {
        await two.on('2026-02-05').check(kd, 'EI', 'T1', '2026-02-05');
        await two.check(kd, 'EI', 'T4', '2026-02-05');
      },
    );
    b.on('2026-02-06');
    expect(await say(kd, withdrawn(left))).toEqual([
      'entry: it is on a branch that this device’s own chain does not follow',
    ]);
    expect(await say(kdTablet, withdrawn(left))).toEqual([]);
    expect(await codes()).toEqual(['fork']);
  });
});

describe('correct', () => {
  const regrade: Regrade = (evidence) => {
    if (evidence === 'unknown')
      throw new GivenError([{ field: 'sheet', message: 'unknown', todo: 'name one' }]);
    return evidence === 'passes';
  };
  const corrected =
    (evidence: string | null = 'passes', entry = check, grading: Regrade | undefined = regrade): Act =>
    (j, w) =>
      correct(j, { entry, evidence, why: 'the wrong file' }, w, grading);

  test('by who signed the check, or the owner; by nobody else, never by the person', async () => {
    for (const signer of [kd, kdOld, owner]) expect(await say(signer, corrected())).toEqual([]);
    const no = ['key: neither the owner’s key nor one of the witness who signed that entry'];
    expect(await say(lz, corrected())).toEqual(no);
    const own = await b.check(kd, 'OW', 'T1', '2026-02-02');
    expect(await say(owner, corrected('passes', own))).toEqual(['entry: nobody signs about himself']);
    expect(await codes()).toEqual([]);
  });

  test('with answers that pass, where the check says shown', async () => {
    expect(await say(kd, corrected('fails'))).toEqual(['evidence: graded again, the answers do not pass']);
    const not = await b.check(kd, 'DM', 'T3', '2026-02-02', { outcome: 'not-yet' });
    expect(await say(kd, corrected('fails', not))).toEqual([]);
    expect(await say(kd, corrected('unknown'))).toEqual(['evidence.sheet: unknown']);
    expect(await say(kd, corrected(null))).toEqual(['evidence: no answers']);
    const blind: Act = (j, w) => correct(j, { entry: check, evidence: 'passes', why: 'x' }, w);
    expect(await say(kd, blind)).toEqual(['evidence: nothing here can grade it again']);
  });

  test('of a check alone', async () => {
    const two = await b.second(lz, 'DM', check);
    expect(await say(owner, corrected('passes', two))).toEqual(['entry: an entry of kind second']);
  });

  test('a check in doubt for its evidence is none once that is replaced', async () => {
    const bad = await b.check(kd, 'DM', 'T1', '2026-02-02', { evidence: 'fails' });
    const standing = async () =>
      (await b.board({ on: '2026-02-05', regrade })).people.find((p) => p.id === 'DM')?.tasks['T1']?.standing;
    expect(await standing()).toBe('show again');
    expect(await say(kd, corrected('passes', bad))).toEqual([]);
    expect(await standing()).toBe('shown');
  });
});

describe('ticket', () => {
  const paper = { person: 'DM', ticket: 'W4', issuer: 'a training house', number: '7', until: '2027-01-01' };
  const recorded =
    (more: Partial<typeof paper> = {}): Act =>
    (j, w) =>
      ticket(j, { ...paper, ...more }, w);

  test('by the owner or any witness, and by nobody else', async () => {
    for (const signer of [owner, kd, mt]) expect(await say(signer, recorded())).toEqual([]);
    expect(await say(stranger, recorded())).toEqual(['key: neither the owner’s nor a witness’s key']);
    const [row] = (await b.board({ on: '2026-02-05' })).people.find((p) => p.id === 'DM')?.tickets ?? [];
    expect(row).toMatchObject({ ticket: 'W4', issuer: 'a training house', number: '7', until: '2027-01-01' });
  });

  test('nobody records his own, whichever of his keys', async () => {
    const own = ['person: nobody signs about himself'];
    expect(await say(kdOld, recorded({ person: 'KD' }))).toEqual(own);
    expect(await say(owner, recorded({ person: 'OW' }))).toEqual(own);
    expect(await say(owner, recorded({ person: 'KD' }))).toEqual([]);
  });

  test.each([
    ['ticket', 'W9', 'wants W1 to W8'],
    ['ticket', 'T1', 'wants W1 to W8'],
    ['ticket', 'W0', 'wants W1 to W8'],
    ['issuer', '', 'says nothing'],
    ['number', ' ', 'says nothing'],
    ['until', '2026-02-30', 'no day of the calendar'],
    ['person', 'D M', 'an id wants 1 to 64 letters, digits, or -_.'],
    ['person', '', 'no id is given'],
  ])('%s %o: %s', async (field, value, message) => {
    expect(await say(kd, recorded({ [field]: value }))).toEqual([`${field}: ${message}`]);
  });

  test.each(['W1', 'W8'])('%s', async (id) => {
    expect(await say(kd, recorded({ ticket: id, until: '2020-01-01' }))).toEqual([]);
  });

  test('not about somebody who is erased', async () => {
    await b.act(owner, 'erase', 'DM', []);
    expect(await say(kd, recorded())).toEqual(['person: this person was erased']);
  });
});

describe('assigned', () => {
  const shift = {
    job: 'J1',
    person: 'DM',
    from: '2026-02-03T07:00:00-07:00',
    to: '2026-02-03T15:00:00-07:00',
  };
  const sent =
    (more: Partial<typeof shift & { override: string }> = {}): Act =>
    (j, w) =>
      assigned(j, { ...shift, ...more }, w);

  test('by the owner or any witness, himself too', async () => {
    expect(await say(owner, sent())).toEqual([]);
    expect(await say(kd, sent({ person: 'KD', override: 'nobody else' }))).toEqual([]);
    expect(await say(stranger, sent())).toEqual(['key: neither the owner’s nor a witness’s key']);
    expect(await codes()).toEqual([]);
    const texts = Object.values(b.files).filter((text) => text.includes('"job"'));
    expect(texts.map((t) => JSON.parse(t))).toEqual([
      expect.objectContaining({ from: '2026-02-03T14:00:00.000Z', override: null }),
      expect.objectContaining({ to: '2026-02-03T22:00:00.000Z', override: 'nobody else' }),
    ]);
  });

  test.each([
    [{ from: '2026-02-03T07:00:00' }, ['from: no instant with seconds and an offset']],
    [{ from: '2026-02-03T07:00-07:00' }, ['from: no instant with seconds and an offset']],
    [{ to: '' }, ['to: no instant with seconds and an offset']],
    [{ to: '2026-02-03T14:00:00Z' }, ['to: not after the beginning of the shift']],
    [{ to: '2026-02-03T14:00:00.001Z' }, []],
    [{ job: '' }, ['job: says nothing']],
    [{ override: '' }, ['override: says nothing']],
    [{ person: '' }, ['person: no id is given']],
  ])('%o: %j', async (more, faults) => {
    expect(await say(kd, sent(more))).toEqual(faults);
  });

  test('not of somebody who is erased', async () => {
    await b.act(owner, 'erase', 'DM', []);
    expect(await say(kd, sent())).toEqual(['person: this person was erased']);
  });
});
