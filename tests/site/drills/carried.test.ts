/** When the page says that the register should be carried off, and what a file brought. */
import { describe, expect, test } from 'vitest';
import { chainOf } from '../../../src/register/header.ts';
import { holdFiles } from '../../../src/register/held.ts';
import { type Carried, carriedState } from '../../../src/site/drills/carried.ts';
import { fallenBack, joinedOf, raised } from '../../../src/site/drills/joined.ts';
import { withoutTorn } from '../../../src/site/drills/torn.ts';
import { at, Book, kd, lz, owner, verify } from '../../register/book.ts';

const chain = (device: string) => chainOf({ signer: kd.publicKey, device });
const kdDesk = new Set([chain(kd.device)]);

describe('carried off', () => {
  // Seven days: our own number, common practice, no source.
  test.each([
    ['2026-03-08T23:59:00Z', 6, false],
    ['2026-03-09T00:00:00Z', 7, true],
    ['2026-03-02T09:00:00Z', 0, false],
  ])('on %s the last file is %i days old', async (now, days, warn) => {
    const book = await Book.staffed();
    const { signers, view } = await book.judged({ now: at(now) });
    const carried: Carried = { at: '2026-03-02T23:30:00.000Z', numbers: raised({}, signers) };
    const judged = { ...(await book.judged({ now: at(now) })), view };
    expect(carriedState(judged, carried, kdDesk, at(now))).toEqual({ days, since: 0, own: 0, warn });
  });

  test('days are counted in the zone of the register', async () => {
    const book = await Book.begun('America/Denver');
    const judged = await book.judged({ now: at('2026-03-09') });
    const carried: Carried = { at: '2026-03-03T06:30:00.000Z', numbers: raised({}, judged.signers) };
    // 23:30 on 2 March in Denver: seven days are over on 9 March there, at 06:00 UTC (UTC−7; −6 from 8 March).
    expect(carriedState(judged, carried, new Set(), Date.parse('2026-03-09T05:59:00Z')).days).toBe(6);
    expect(carriedState(judged, carried, new Set(), Date.parse('2026-03-09T06:00:00Z')).days).toBe(7);
  });

  test('what others signed needs no carrying off; what this device signed does', async () => {
    const book = await Book.staffed();
    await book.check(lz, 'P1', 'T1', '2026-01-01');
    const now = at('2026-01-01');
    const never = carriedState(await book.judged({ now: now + 3_600_000 }), undefined, kdDesk, now);
    expect(never).toEqual({ days: null, since: 4, own: 0, warn: false });
    await book.check(kd, 'P1', 'T1', '2026-01-01');
    const signed = carriedState(await book.judged({ now: now + 3_600_000 }), undefined, kdDesk, now);
    expect(signed).toEqual({ days: null, since: 5, own: 1, warn: true });
    const other = new Set([chain('kd-tablet')]);
    expect(carriedState(await book.judged({ now: now + 3_600_000 }), undefined, other, now).warn).toBe(false);
  });

  test('what was signed under a name that the device had before counts as its own', async () => {
    const book = await Book.staffed();
    await book.check(kd, 'P1', 'T1', '2026-01-01');
    await book.check({ ...kd, device: 'kd-new' }, 'P1', 'T1', '2026-01-01');
    const now = at('2026-01-02');
    const judged = await book.judged({ now });
    expect(carriedState(judged, undefined, new Set([chain('kd-new')]), now).own).toBe(1);
    expect(carriedState(judged, undefined, new Set([chain('kd-new'), chain(kd.device)]), now).own).toBe(2);
  });

  test('a number that was written twice: the entry that no file held is missed by its id', async () => {
    const book = await Book.staffed();
    const backup = book.copy();
    const carriedOne = await book.check(kd, 'P1', 'T1', '2026-01-01');
    const numbers = raised({}, (await book.judged({ now: at('2026-01-02') })).signers);
    await backup.check(kd, 'P2', 'T1', '2026-01-01');
    book.edit(book.file(kd), (text) => text + (backup.files[book.file(kd)] ?? ''));
    book.files = { ...backup.files, ...book.files };
    const now = at('2026-01-02');
    const judged = await book.judged({ now });
    const carried = { at: '2026-01-02T00:00:00.000Z', numbers, ids: new Set([carriedOne]) };
    expect(carriedState(judged, carried, kdDesk, now)).toMatchObject({ own: 1, warn: true });
    // A file of an earlier version says numbers alone.
    expect(carriedState(judged, { at: carried.at, numbers }, kdDesk, now).own).toBe(0);
  });
});

describe('brought in', () => {
  test('what a file adds and lacks, chain by chain; entries of another register are counted apart', async () => {
    const here = await Book.staffed();
    const there = here.copy();
    await here.check(kd, 'P1', 'T1', '2026-01-01');
    await there.check(lz, 'P1', 'T1', '2026-01-01');
    await there.check(lz, 'P2', 'T1', '2026-01-01');
    const strange = await Book.begun('UTC', 'OW', { ...owner, device: 'elsewhere' });
    const files = { ...strange.files, ...there.files };
    const joined = joinedOf(await holdFiles(here.files, verify), await holdFiles(files, verify), here.begin);
    expect(joined).toMatchObject({
      added: [{ signer: lz.publicKey, device: 'lz-phone', count: 2, from: 0, to: 1 }],
      lacks: [{ signer: kd.publicKey, device: 'kd-phone', count: 1, from: 0, to: 0 }],
      foreign: 1,
    });
  });

  test('an older file: it adds nothing and lacks something', async () => {
    const book = await Book.staffed();
    const old = book.copy();
    await book.check(kd, 'P1', 'T1', '2026-01-01');
    const joined = joinedOf(
      await holdFiles(book.files, verify),
      await holdFiles(old.files, verify),
      book.begin,
    );
    expect([joined.added.length, joined.lacks.length]).toEqual([0, 1]);
    expect(joinedOf(undefined, await holdFiles(old.files, verify), book.begin).added).toEqual([
      { signer: owner.publicKey, device: 'office', count: 3, from: 0, to: 2 },
    ]);
  });
});

test('what was held once and is not held now is found, and the highest number stays remembered', async () => {
  const book = await Book.staffed();
  const old = book.copy();
  await book.check(kd, 'P1', 'T1', '2026-01-01');
  await book.appoint(lz, 'LZ', ['T1']);
  const full = (await book.judged({ now: at('2026-02-01') })).signers;
  const less = (await old.judged({ now: at('2026-02-01') })).signers;
  const once = raised({}, full);
  expect(fallenBack(once, full)).toEqual([]);
  expect(fallenBack(once, less)).toEqual([
    { signer: kd.publicKey, device: 'kd-phone', held: -1, once: 0 },
    { signer: owner.publicKey, device: 'office', held: 2, once: 3 },
  ]);
  expect(raised(once, less)).toEqual(once);
  expect(fallenBack(raised({}, less), full)).toEqual([]);
});

test('a torn end is taken off, every whole line stays, other files are not touched', () => {
  const files = { 'headers/a.x.jsonl': 'one\ntwo\nthr', 'headers/b.x.jsonl': 'ha', 'bodies/c.json': '{}' };
  const torn = new Set(['headers/a.x.jsonl', 'headers/b.x.jsonl']);
  expect(withoutTorn(files, torn)).toEqual({
    files: { 'headers/a.x.jsonl': 'one\ntwo\n', 'headers/b.x.jsonl': '', 'bodies/c.json': '{}' },
    ends: { 'headers/a.x.jsonl': 'thr', 'headers/b.x.jsonl': 'ha' },
  });
});
