/** The file of everything held about one person. */
import { expect, test } from 'vitest';
import { heldAbout } from '../../src/site/heldAbout.ts';
import { at, Book, kd } from '../register/book.ts';

test('one name, one form: the day of the register’s zone in its name, every entry and its text in it', async () => {
  const book = await Book.begun('America/Denver');
  await book.appoint(kd, 'KD');
  const check = await book.check(kd, 'P1', 'T1', '2026-01-01');
  const now = at('2026-03-09T05:00:00Z');
  const file = heldAbout(await book.judged({ now }), 'P1', now);
  // 23:00 on 8 March in Denver (UTC−6 from that day).
  expect(file).toMatchObject({ name: 'held-about-P1-2026-03-08.json', entries: 1, bodies: 1 });
  const held = JSON.parse(file.text);
  expect([held.id, held.entries[0].id, held.bodies[0].body.task]).toEqual(['P1', check, 'T1']);
  expect(heldAbout(await book.judged({ now }), 'P9', now)).toMatchObject({ entries: 0, bodies: 0 });
});
