/** Who may set a sheet for whom: both sides of every rule. */
import { beforeEach, expect, test } from 'vitest';
import { type SetGiven, setFaults } from '../../../src/register/acts/set.ts';
import type { Signer } from '../../../src/register/keys.ts';
import { at, Book, kd, lz, map, next, owner, signerOf, stranger } from '../book.ts';

const mt = signerOf(7, 'mt-phone');
let b: Book;
beforeEach(async () => {
  b = await Book.staffed();
  await b.appoint(mt, 'MT', ['T3'], '2026-02-03');
});

const said = async (
  signer: Signer,
  given: Partial<SetGiven> = {},
  when = '2026-02-03',
): Promise<readonly string[]> => {
  const now = at(when);
  const writing = { signer, now, chance: (n: number) => new Uint8Array(n) };
  const faults = setFaults(await b.judged({ now }), { person: 'DM', task: 'T3', ...given }, map, writing);
  return faults.map(({ field, message }) => `${field}: ${message}`);
};

test('a witness appointed for the task by that day', async () => {
  expect(await said(kd)).toEqual([]);
  expect(await said(mt)).toEqual([]);
  expect(await said(mt, {}, '2026-02-02T23:59:59Z')).toEqual(['key: not appointed for T3 on 2026-02-02']);
  expect(await said(mt, {}, '2026-02-03T00:00:00Z')).toEqual([]);
  expect(await said(mt, { task: 'T1' })).toEqual(['key: not appointed for T1 on 2026-02-03']);
});

test('neither the owner, who is no witness, nor a stranger', async () => {
  for (const key of [owner, stranger]) {
    expect(await said(key)).toEqual(['key: not appointed for T3 on 2026-02-03']);
  }
  await b.appoint(owner, 'OW');
  expect(await said(owner)).toEqual([]);
});

test('for himself too: another witness signs', async () =>
  expect(await said(kd, { person: 'KD' })).toEqual([]));

test('not with a retired key', async () => {
  await b.retire(kd, 'KD', []);
  expect(await said(kd)).toContain('key: this key is retired');
  expect(await said(lz)).toEqual([]);
});

test('not with the key that the ownership was taken over from', async () => {
  await b.appoint(owner, 'OW');
  await b.succeed(next);
  await b.add(next, { kind: 'take-over', body: { why: 'lost' } });
  expect(await said(owner)).toContain('key: the ownership was taken over from this key');
});

test('a chain of his own that is torn keeps nobody from it: nothing is written', async () => {
  await b.check(kd, 'DM', 'T1', '2026-01-01');
  b.files = { ...b.files, [b.file(kd)]: `${b.files[b.file(kd)]}{"half` };
  expect(await said(kd)).toEqual([]);
});

test('not for a person who was erased, nor for an id that is none', async () => {
  await b.check(kd, 'DM', 'T1', '2026-01-01');
  await b.act(owner, 'erase', 'DM', []);
  expect(await said(kd)).toEqual(['person: this person was erased']);
  expect(await said(kd, { person: 'EI' })).toEqual([]);
  for (const person of ['', 'D M', 'x'.repeat(65)]) {
    expect((await said(kd, { person })).map((text) => text.split(':')[0])).toEqual(['person']);
  }
});

test('not for a heading, nor for a task that is none', async () => {
  expect(await said(kd, { task: 'T9' })).toEqual(['task: a heading is not shown itself']);
  expect(await said(kd, { task: 'T7' })).toEqual(['task: no such task']);
});

test('everything at once', async () => {
  expect(await said(stranger, { person: 'D M' })).toHaveLength(2);
});
