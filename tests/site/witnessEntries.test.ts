/** Which checks wait for whom, and what a witness finds among his own. */
import { describe, expect, test } from 'vitest';
import { checkFaults } from '../../src/register/acts/check.ts';
import type { Judged } from '../../src/register/judged.ts';
import type { Signer } from '../../src/register/keys.ts';
import { mayCheck } from '../../src/site/witness.ts';
import { canTakeBack, ownEntriesOf, waitingOf } from '../../src/site/witnessEntries.ts';
import { at, Book, kd, lz, map, owner, stranger } from '../register/book.ts';

const now = at('2026-03-01');
const writing = (signer: Signer) => ({ signer, now, chance: (n: number) => new Uint8Array(n) });
const mine = (judged: Judged, signer: Signer) =>
  waitingOf(judged, map, signer.publicKey, undefined).mine.map(({ entry }) => entry.id);
const others = (judged: Judged, signer: Signer) => waitingOf(judged, map, signer.publicKey, undefined).others;

test('a check of a task that wants two waits for another witness, never for the first nor the person', async () => {
  const book = await Book.staffed();
  const one = await book.on('2026-02-01').check(kd, 'DM', 'T3', '2026-02-01');
  const aboutLz = await book.check(kd, 'LZ', 'T3', '2026-02-01');
  // These want nothing: another task, not yet, practice.
  await book.check(kd, 'DM', 'T1', '2026-02-01');
  await book.check(kd, 'DM', 'T3', '2026-02-01', { outcome: 'not-yet' });
  await book.check(kd, 'DM', 'T3', '2026-02-01', { help: 'with-help' });
  let judged = await book.judged({ now });
  expect([mine(judged, lz), others(judged, lz)]).toEqual([[one], 1]);
  expect([mine(judged, kd), others(judged, kd)]).toEqual([[], 2]);
  // A key that is appointed for nothing.
  expect([mine(judged, stranger), others(judged, stranger)]).toEqual([[], 2]);

  const second = await book.second(lz, 'DM', one);
  judged = await book.judged({ now });
  expect([mine(judged, lz), others(judged, lz)]).toEqual([[], 1]);
  // A second that was taken back leaves it waiting again; a check that was taken back waits no more.
  await book.act(lz, 'withdraw', 'DM', [second]);
  await book.act(kd, 'withdraw', 'LZ', [aboutLz]);
  judged = await book.judged({ now });
  expect([mine(judged, lz), others(judged, lz)]).toEqual([[one], 0]);
});

test('one’s own entries are those of every key of one’s person, the last first, taken back or not', async () => {
  const book = await Book.staffed();
  const old = await book.on('2026-02-01').check(kd, 'DM', 'T3', '2026-02-01');
  const second = await book.second(lz, 'DM', old);
  await book.appoint(stranger, 'KD');
  const late = await book.on('2026-02-02').check(stranger, 'AW', 'T1', '2026-02-02');
  await book.act(kd, 'withdraw', 'DM', [old]);
  const judged = await book.judged({ now });
  const own = (signer: Signer) =>
    ownEntriesOf(judged, signer.publicKey).map((one) => [
      ...[one.entry.id, one.kind, one.check?.task, one.withdrawn],
      canTakeBack(judged, one, writing(signer)),
    ]);
  const both = [
    [late, 'check', 'T1', false, true],
    [old, 'check', 'T3', true, false],
  ];
  expect(own(kd)).toEqual(both);
  expect(own(stranger)).toEqual(both);
  expect(own(lz)).toEqual([[second, 'second', 'T3', false, true]]);
  expect(own(owner)).toEqual([]);
});

test('tasks that a key may sign for are those the act takes', async () => {
  const book = await Book.begun();
  await book.appoint(kd, 'KD', ['T1'], '2026-02-10');
  const judged = await book.judged({ now });
  for (const task of ['T1', 'T2'])
    for (const on of ['2026-02-09', '2026-02-10']) {
      const given = { person: 'DM', task, on, outcome: 'shown' } as const;
      const refused = checkFaults(judged, given, map, writing(kd), undefined).some(
        ({ field }) => field === 'key',
      );
      expect(mayCheck(judged, kd.publicKey, task, on)).toBe(!refused);
    }
});

describe('a long register', () => {
  /** The same register, which counts how often anybody goes through all its entries. */
  function counted(judged: Judged) {
    let through = 0;
    const counting = <T extends { readonly list: unknown }>(of: T): T =>
      new Proxy(of, {
        get(held, name) {
          if (name === 'list') through += 1;
          return Reflect.get(held, name);
        },
      });
    const view = counting({ ...judged.view, order: counting({ ...judged.view.order }) });
    return { judged: { ...judged, view }, through: () => through };
  }
  async function filled(checks: number) {
    const book = await Book.staffed();
    book.on('2026-02-01');
    for (let i = 0; i < checks; i += 1) await book.check(kd, `P${i % 7}`, 'T3', '2026-02-01');
    return counted(await book.judged({ now }));
  }
  test('is gone through as often for six times the entries: nothing is asked of the whole of it for every row', async () => {
    const [short, long] = [await filled(10), await filled(60)];
    const own = (book: typeof short) => ownEntriesOf(book.judged, kd.publicKey).length;
    const waits = (book: typeof short) => waitingOf(book.judged, map, lz.publicKey, undefined).mine.length;
    expect([own(short), own(long), waits(short), waits(long)]).toEqual([10, 60, 10, 60]);
    expect(long.through()).toBe(short.through());
    expect(short.through()).toBeGreaterThan(0);
  });
});
