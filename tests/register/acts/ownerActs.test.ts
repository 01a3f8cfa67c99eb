/** What the owner signs, and who takes over from him: both sides of every rule. */
import { beforeEach, describe, expect, test } from 'vitest';
import { appoint } from '../../../src/register/acts/appoint.ts';
import { erase } from '../../../src/register/acts/erase.ts';
import { retire } from '../../../src/register/acts/retire.ts';
import { settle } from '../../../src/register/acts/settle.ts';
import { succeed } from '../../../src/register/acts/succeed.ts';
import { takeOver } from '../../../src/register/acts/takeOver.ts';
import { ticket } from '../../../src/register/acts/ticket.ts';
import { branchOf } from '../../../src/register/forks.ts';
import type { Signer } from '../../../src/register/keys.ts';
import type { Placed } from '../../../src/register/order.ts';
import { Book, checkBody, kd, lz, map, next, owner, signerOf, stranger } from '../book.ts';
import { type Act, apart, lose, refusals } from './refusals.ts';

const tablet: Signer = { ...kd, device: 'tablet' };
const desk: Signer = { ...owner, device: 'desk' };
const later = signerOf(8, 'drawer');
const never = 'ab'.repeat(32);
const why = 'because';
const notOwner = 'key: not the owner’s key';

let b: Book;
beforeEach(async () => {
  b = await Book.staffed();
});
const say = (signer: Signer, act: Act, device?: string) => refusals(b, signer, act, device);
const codes = () => b.codes();
const check = (signer: Signer, person: string, on: string) => b.check(signer, person, 'T1', on);

describe('retire', () => {
  const retired =
    (after: readonly string[], witness = kd.publicKey, reason = why): Act =>
    (j, w) =>
      retire(j, { witness, after, why: reason }, w);
  let phone: string;
  let pad: string;
  let last: string;
  beforeEach(async () => {
    phone = await b.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
    pad = await check(tablet, 'EI', '2026-02-02');
    last = await check(kd, 'HV', '2026-02-02');
  });
  const standing = async (person: string) =>
    (await b.board({ on: '2026-02-03', people: [person] })).people.find((p) => p.id === person)?.tasks['T1']
      ?.standing;

  test('one entry for each device: what it follows stands, what comes after falls', async () => {
    expect(await say(owner, retired([phone, pad]))).toEqual([]);
    expect([await standing('DM'), await standing('EI'), await standing('HV')]).toEqual([
      'shown',
      'shown',
      'not shown',
    ]);
    expect(await codes()).toEqual(['after-retirement settled']);
  });

  test('all of a device that is not named falls; with none named, everything', async () => {
    expect(await say(owner, retired([last]))).toEqual([]);
    expect([await standing('DM'), await standing('EI'), await standing('HV')]).toEqual([
      'shown',
      'not shown',
      'shown',
    ]);
    expect(await say(owner, retired([]))).toEqual([]);
    expect([await standing('DM'), await standing('EI'), await standing('HV')]).toEqual(
      Array(3).fill('not shown'),
    );
  });

  test('two entries of one device, one of another key, one that is not here', async () => {
    const theirs = await check(lz, 'DM', '2026-02-02');
    expect(await say(owner, retired([phone, last]))).toEqual([
      'after[1]: a second entry of the device kd-phone',
    ]);
    expect(await say(owner, retired([pad, pad]))).toEqual(['after[1]: a second entry of the device tablet']);
    expect(await say(owner, retired([theirs]))).toEqual([
      'after[0]: not an entry of the key that is retired',
    ]);
    expect(await say(owner, retired([phone, never, 'none']))).toEqual([
      'after[1]: no such entry is in this register',
      'after[2]: no id of an entry',
    ]);
  });

  test('a key that was never appointed, or is none', async () => {
    expect(await say(owner, retired([], next.publicKey))).toEqual(['witness: this key was never appointed']);
    expect(await say(owner, retired([], owner.publicKey))).toEqual(['witness: this key was never appointed']);
    expect(await say(owner, retired([], '00'.repeat(32)))).toEqual([
      'witness: no public key that can be trusted',
    ]);
    expect(await say(owner, retired([], ''))).toEqual(['witness: no public key is given']);
  });

  test('by the owner, with a reason', async () => {
    expect(await say(lz, retired([phone]))).toEqual([notOwner]);
    expect(await say(owner, retired([phone], kd.publicKey, ''))).toEqual(['why: says nothing']);
  });

  test('a retired key signs nothing more; a wider retirement after it brings nothing back', async () => {
    expect(await say(owner, retired([phone]))).toEqual([]);
    const paper = { person: 'DM', ticket: 'W4', issuer: 'a', number: '7', until: '2027-01-01' };
    const refused = ['key: this key is retired'];
    expect(await say(kd, (j, w) => ticket(j, paper, w))).toEqual(refused);
    expect(await say(tablet, (j, w) => ticket(j, paper, w))).toEqual(refused);
    const again: Act = (j, w) =>
      appoint(j, { witness: kd.publicKey, person: 'KD', tasks: 'all', on: '2026-02-02' }, map, w);
    expect(await say(owner, again)).toEqual(['witness: this key is retired']);
    const stood = [await standing('DM'), await standing('EI'), await standing('HV')];
    expect(await say(owner, retired([last]))).toEqual([]);
    expect([await standing('DM'), await standing('EI'), await standing('HV')]).toEqual(stood);
  });

  test('of the owner’s own key as a witness: his acts as owner stand and go on, as a witness he signs nothing more', async () => {
    await b.appoint(owner, 'OW');
    const own = await check(owner, 'DM', '2026-02-02');
    expect(await say(owner, retired([], owner.publicKey))).toEqual([]);
    const judged = await b.judged();
    expect(judged.authority.voids.has(own)).toBe(true);
    expect(judged.authority.appointments.length).toBe(3);
    expect(await say(owner, retired([phone]))).toEqual([]);
    const paper = { person: 'DM', ticket: 'W4', issuer: 'a', number: '7', until: '2027-01-01' };
    expect(await say(owner, (j, w) => ticket(j, paper, w))).toEqual([
      'key: this key is retired as a witness',
    ]);
  });
});

describe('settle', () => {
  const settled =
    (entry: string, reason = why): Act =>
    (j, w) =>
      settle(j, { entry, why: reason }, w);
  const fork = (signer: Signer, one = 'DM', two = 'EI') =>
    apart(
      b,
      (x) => x.on('2026-02-02').check(signer, one, 'T1', '2026-02-02'),
      (x) => x.on('2026-02-02').check(signer, two, 'T1', '2026-02-02'),
    );

  test('a branch of a fork, by any entry on it', async () => {
    const before = await check(kd, 'HV', '2026-01-01');
    const [left, right] = await fork(kd);
    b.on('2026-02-03');
    const nothing = ['entry: nothing to settle: on no branch of a fork, not missing, not back-dated'];
    expect(await say(owner, settled(before))).toEqual(nothing);
    expect(await say(owner, settled(b.begin))).toEqual(['entry: nobody signs about himself', ...nothing]);
    expect(await say(owner, settled(left))).toEqual([]);
    expect(await codes()).toEqual(['fork settled']);
    expect((await b.judged()).counts((await b.judged()).view.order.byId.get(right) as never)).toBe(false);
    expect(await say(owner, settled(right))).toEqual([]);
    expect(await codes()).toEqual(['fork settled']);
  });

  test('long branches, by their first entry; a fork on the branch that lost needs nothing more', async () => {
    const branch = (person: string) => async (x: Book) => {
      const first = await x.on('2026-02-02').check(kd, person, 'T1', '2026-02-02');
      await x.check(kd, person, 'T2', '2026-02-02');
      return first;
    };
    const firsts = await apart(b, branch('DM'), branch('EI'));
    await apart(
      b,
      (x) => x.on('2026-02-03').check(kd, 'HV', 'T1', '2026-02-02'),
      (x) => x.on('2026-02-03').check(kd, 'HV', 'T2', '2026-02-02'),
    );
    b.on('2026-02-04');
    const [outer, , inner] = (await b.judged()).forks;
    expect(await codes()).toEqual(['fork', 'fork', 'fork']);
    if (outer === undefined || inner === undefined) throw new Error('three numbers stand twice');
    const forkedOn = branchOf(outer.fork, inner.fork.branches[0] as Placed)?.id;
    expect(await say(owner, settled(firsts.find((id) => id !== forkedOn) as string))).toEqual([]);
    expect(await codes()).toEqual(['fork settled', 'fork settled', 'fork settled']);
    const after = await b.judged();
    expect(inner.fork.branches.some(({ id }) => after.counts(after.view.order.byId.get(id) as Placed))).toBe(
      false,
    );
  });

  test('a missing entry, lost for good', async () => {
    const gone = await check(kd, 'DM', '2026-01-01');
    await check(kd, 'EI', '2026-01-01');
    lose(b, gone);
    expect(await codes()).toEqual(['gap']);
    expect(await say(owner, settled(never))).toEqual([
      'entry: neither an entry here nor one that is missing',
    ]);
    expect(await say(owner, settled(gone))).toEqual([]);
    expect(await codes()).toEqual(['gap settled']);
  });

  test('a back-dated entry, that is taken', async () => {
    await b.on('2026-02-02').check(lz, 'EI', 'T1', '2026-02-02');
    const { id } = { id: await check(kd, 'DM', '2026-02-02') };
    const early = await b.raw(
      kd,
      { about: 'DM', seq: 1, prev: id, time: '2026-01-20T12:00:00.000Z' },
      checkBody('T4', '2026-01-20'),
    );
    expect(await codes()).toEqual(['back-dated']);
    expect(await say(owner, settled(early))).toEqual([]);
    expect(await codes()).toEqual(['back-dated settled']);
  });

  test('by the owner, with a reason, never about himself, by its whole id', async () => {
    const [own] = await fork(kd, 'OW', 'EI');
    b.on('2026-02-03');
    expect(await say(owner, settled(own))).toEqual(['entry: nobody signs about himself']);
    expect(await say(lz, settled(own))).toEqual([notOwner]);
    expect(await say(owner, settled(own.slice(1)))).toEqual(['entry: not the whole id of an entry']);
    const [left] = await fork(lz);
    b.on('2026-02-03');
    expect(await say(owner, settled(left, ''))).toEqual(['why: says nothing']);
  });

  test('a fork of the owner’s own from another of his devices, that is not forked', async () => {
    const [left] = await apart(
      b,
      (x) => x.on('2026-02-02').appoint(stranger, 'ST'),
      (x) => x.on('2026-02-02').appoint(later, 'LA'),
    );
    b.on('2026-02-03');
    expect(await say(owner, settled(left))).toEqual([
      expect.stringMatching(/^device: a fork of the owner’s, and the chain of office is forked itself/),
    ]);
    expect(await say(owner, settled(left), 'desk')).toEqual([]);
    expect(await codes()).toEqual(['fork settled']);
  });

  test('a device with a hole in its chain settles others, and its own hole', async () => {
    const [left] = await fork(kd);
    const gone = await b.on('2026-02-03').appoint(stranger, 'ST', 'all', '2026-01-01', desk);
    await b.appoint(later, 'LA', 'all', '2026-01-01', desk);
    lose(b, gone);
    expect(await say(desk, settled(left))).toEqual([]);
    expect((await codes()).sort()).toEqual(['fork settled', 'gap']);
    expect(await say(desk, settled(gone))).toEqual([]);
    expect((await codes()).every((c) => c.endsWith('settled'))).toBe(true);
  });

  test('a clock set back hides no hole: each is settled by itself', async () => {
    const shown = await b.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
    const gone = await b.appoint(stranger, 'ST', 'all', '2026-01-01', desk);
    const link = { seq: 1, prev: gone, seen: [b.cite(shown)], time: '2026-01-20T12:00:00.000Z' };
    const fields = { kind: 'appoint', about: 'LA', key: later.publicKey };
    const early = await b.raw(desk, { ...fields, ...link }, { tasks: 'all', on: '2026-01-01' });
    lose(b, gone);
    expect((await codes()).sort()).toEqual(['back-dated', 'gap']);
    expect(await say(desk, settled(early))).toEqual([]);
    expect((await codes()).sort()).toEqual(['back-dated settled', 'gap']);
    expect(await say(owner, settled(gone))).toEqual([]);
    expect((await codes()).sort()).toEqual(['back-dated settled', 'gap settled']);
  });
});

describe('succeed and take over', () => {
  const named =
    (key: string): Act =>
    (j, w) =>
      succeed(j, { next: key }, w);
  const taken: Act = (j, w) => takeOver(j, { why }, w);

  test('the owner names a key that is neither his nor retired', async () => {
    expect(await say(owner, named(owner.publicKey))).toEqual(['next: the owner’s own key']);
    await b.retire(kd, 'KD', []);
    expect(await say(owner, named(kd.publicKey))).toEqual(['next: this key is retired']);
    expect(await say(owner, named('zz'))).toEqual(['next: no public key that can be trusted']);
    expect(await say(lz, named(next.publicKey))).toEqual([notOwner]);
    expect(await say(owner, named(next.publicKey))).toEqual([]);
    expect(await codes()).toEqual([]);
  });

  test('only the key that was named last takes over', async () => {
    expect(await say(next, taken)).toEqual(['key: the owner named no key that may take over']);
    await b.succeed(next);
    await b.succeed(later);
    expect(await say(next, taken)).toEqual(['key: not the key that the owner named last']);
    expect(await say(owner, taken)).toEqual(['key: this key is the owner’s already']);
    expect(await say(later, (j, w) => takeOver(j, { why: '' }, w))).toEqual(['why: says nothing']);
    expect(await say(later, taken)).toEqual([]);
    expect((await b.judged()).authority.owner).toBe(later.publicKey);
    expect(await codes()).toEqual([]);
  });

  test('once: afterwards nobody takes over, and the old key signs nothing', async () => {
    await b.succeed(next);
    expect(await say(next, taken)).toEqual([]);
    expect(await say(next, taken)).toEqual([
      'key: the ownership was taken over once, and is not taken over again',
    ]);
    expect(await say(owner, named(later.publicKey))).toEqual([
      notOwner,
      'key: the ownership was taken over from this key',
    ]);
    expect(await say(next, named(owner.publicKey))).toEqual([
      'next: the ownership was taken over from this key',
    ]);
    const back: Act = (j, w) =>
      appoint(j, { witness: owner.publicKey, person: 'OW', tasks: 'all', on: '2026-02-02' }, map, w);
    expect(await say(next, back)).toEqual([
      'witness: the ownership was taken over from this key: it signs nothing more',
    ]);
    expect(await say(next, named(later.publicKey))).toEqual([]);
    expect(await say(later, taken)).toEqual([
      'key: the ownership was taken over once, and is not taken over again',
    ]);
    expect(await codes()).toEqual([]);
  });

  test('not with a key that is retired', async () => {
    await b.succeed(lz);
    await b.retire(lz, 'LZ', []);
    expect(await say(lz, taken)).toEqual(['key: this key is retired']);
  });

  test('two that do not know each other: nobody is owner any more', async () => {
    await b.succeed(next);
    await apart(
      b,
      (x) => x.on('2026-02-02').sign(next, taken),
      (x) => x.on('2026-02-02').sign({ ...next, device: 'desk' }, taken),
    );
    b.on('2026-02-03');
    expect(await say(next, taken)).toEqual(['key: the ownership is forked: nobody is owner']);
    const nobody = ['key: the ownership is forked: nobody is owner'];
    expect(await say(next, named(later.publicKey))).toEqual(nobody);
    expect(await say(next, (j, w) => erase(j, { person: 'LZ', why }, w))).toEqual([
      ...nobody,
      expect.stringMatching(/^person: a key of this person is not retired/),
    ]);
  });
});

describe('erase', () => {
  const erased =
    (person: string, reason = why): Act =>
    (j, w) =>
      erase(j, { person, why: reason }, w);

  test('drops what was said about the person, and nothing else', async () => {
    const shown = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
    const two = await b.second(lz, 'DM', shown);
    const paper = { ticket: 'W4', issuer: 'a', number: '7', until: '2027-01-01' };
    const paperId = await b.add(kd, { kind: 'ticket', about: 'DM', body: paper });
    const taken = await b.act(owner, 'withdraw', 'DM', [two]);
    const put = await b.act(kd, 'correct', 'DM', [shown], { evidence: null });
    const other = await check(kd, 'EI', '2026-02-02');
    const before = { ...b.files };
    expect(await say(owner, erased('DM'))).toEqual([]);
    const body = (id: string) => `bodies/${b.header(id).body}.json`;
    const gone = Object.keys(before).filter((path) => b.files[path] === undefined);
    expect(gone.sort()).toEqual([shown, two, paperId, taken, put].map(body).sort());
    expect(b.files[body(other)]).toBe(before[body(other)]);
    expect(await codes()).toEqual([]);
    const board = await b.board({ on: '2026-02-03', people: ['DM'] });
    expect(board.people.find((p) => p.id === 'DM')).toMatchObject({ erased: true, tickets: [] });
  });

  test('drops it from every file that holds it, and from those that say so', async () => {
    const shown = await b.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
    const other = await check(kd, 'EI', '2026-02-02');
    const copies = (id: string) => {
      const { body } = b.header(id);
      const text = b.files[`bodies/${body}.json`] ?? '';
      return { [`bodies/${body} (2).json`]: `${text} `, [`bodies/of-${id}`]: text };
    };
    b.files = { ...b.files, ...copies(shown), ...copies(other) };
    const kept = copies(other);
    expect(await say(owner, erased('DM'))).toEqual([]);
    expect(b.files).toMatchObject(kept);
    const { body } = b.header(shown);
    expect(Object.keys(b.files).filter((path) => path.includes(body ?? '') || path.includes(shown))).toEqual(
      [],
    );
  });

  test('not while a key of that person is not retired; what he signed and was appointed for stays', async () => {
    const old = signerOf(6, 'kd-old');
    await b.appoint(old, 'KD');
    const shown = await check(kd, 'DM', '2026-01-01');
    await check(lz, 'KD', '2026-01-01');
    const one = (key: Signer) => `person: a key of this person is not retired (${key.publicKey.slice(0, 8)})`;
    expect(await say(owner, erased('KD'))).toEqual([one(kd), one(old)]);
    await b.retire(kd, 'KD', [shown]);
    expect(await say(owner, erased('KD'))).toEqual([one(old)]);
    await b.retire(old, 'KD', []);
    expect(await say(owner, erased('KD'))).toEqual([]);
    expect(await codes()).toEqual([]);
    const board = await b.board({ on: '2026-01-02' });
    expect(board.people.find((p) => p.id === 'DM')?.tasks['T1']?.standing).toBe('shown');
  });

  test('the owner is erased only once somebody took over', async () => {
    await check(kd, 'OW', '2026-01-01');
    await b.succeed(next);
    expect(await say(owner, erased('OW'))).toEqual([
      expect.stringMatching(/^person: a key of this person is not retired/),
    ]);
    await b.sign(next, (j, w) => takeOver(j, { why }, w));
    expect(await say(next, erased('OW'))).toEqual([]);
    expect(await codes()).toEqual([]);
  });

  test('by the owner, with a reason, somebody who is here, once', async () => {
    await check(kd, 'DM', '2026-01-01');
    expect(await say(kd, erased('DM'))).toEqual([notOwner]);
    expect(await say(owner, erased('DM', ''))).toEqual(['why: says nothing']);
    expect(await say(owner, erased('DN'))).toEqual(['person: nothing here is about this person']);
    expect(await say(owner, erased(''))).toEqual(['person: no id is given']);
    expect(await say(owner, erased('DM'))).toEqual([]);
    expect(await say(owner, erased('DM'))).toEqual(['person: this person was erased']);
  });

  test('a body that an entry about somebody else names stays', async () => {
    const shown = await check(kd, 'DM', '2026-01-01');
    const { body } = b.header(shown);
    await b.raw(kd, { about: 'EI', seq: 1, prev: shown, body }, null);
    expect(await say(owner, erased('DM'))).toEqual([]);
    expect(b.files[`bodies/${body}.json`]).toBeDefined();
  });

  test('a body that was altered goes too', async () => {
    const shown = await check(kd, 'DM', '2026-01-01');
    const path = `bodies/${b.header(shown).body}.json`;
    b.edit(path, (text) => text.replace('"alone"', '"helped"'));
    expect(await say(owner, erased('DM'))).toEqual([]);
    expect(b.files[path]).toBeUndefined();
  });
});
