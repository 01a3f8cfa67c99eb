/** A kind that nobody knows may be any word, one that every object has among them: it asks nothing of its signer. */
import { expect, test } from 'vitest';
import { at, Book, kd } from './book.ts';

test('an entry of the kind constructor is taken as of any kind that nobody knows', async () => {
  const book = await Book.staffed();
  const odd = await book.add(kd, { kind: 'constructor', about: 'P1', body: null });
  const other = await book.add(kd, { kind: 'praise', about: 'P1', body: null });
  const { view, authority } = await book.judged({ now: at('2026-02-01') });
  expect(authority.voids.get(odd)).toEqual(authority.voids.get(other));
  expect(view.order.byId.get(odd)?.header.kind).toBe('constructor');
  expect(await book.codes()).toEqual([]);
});
