/** When somebody was last looked at: what counts, what was taken back, up to which day. */
import { expect, test } from 'vitest';
import { lastLook } from '../../src/register/looks.ts';
import { at, Book, kd, lz, stranger } from './book.ts';

const stopped = { outcome: 'not-yet', stopped: true };

test('a stopped look is the last one, and only of its own person and task, from its own day', async () => {
  const book = await Book.staffed();
  const early = await book.on('2026-02-01').check(kd, 'P1', 'T1', '2026-02-01', { outcome: 'not-yet' });
  const late = await book.on('2026-02-10').check(lz, 'P1', 'T1', '2026-02-10', stopped);
  const judged = await book.judged({ now: at('2026-03-01') });
  const of = (person: string, task: string, on: string) => lastLook(judged, person, task, on)?.entry.id;
  expect(of('P1', 'T1', '2026-02-10')).toBe(late);
  expect(of('P1', 'T1', '2026-02-09')).toBe(early);
  expect(of('P1', 'T1', '2026-01-31')).toBeUndefined();
  expect(of('P1', 'T4', '2026-03-01')).toBeUndefined();
  expect(of('P2', 'T1', '2026-03-01')).toBeUndefined();
});

test('of one day the one entered last; what was taken back, and what a stranger signed, is no look', async () => {
  const book = await Book.staffed();
  const first = await book.check(kd, 'P1', 'T1', '2026-01-01', stopped);
  const second = await book.check(lz, 'P1', 'T1', '2026-01-01', { outcome: 'not-yet' });
  await book.check(stranger, 'P1', 'T1', '2026-01-01', stopped);
  const last = async () => lastLook(await book.judged(), 'P1', 'T1', '2026-01-02')?.entry.id;
  expect(await last()).toBe(second);
  await book.act(lz, 'withdraw', 'P1', [second]);
  expect(await last()).toBe(first);
});
