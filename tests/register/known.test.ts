import { beforeAll, describe, expect, test } from 'vitest';
import { type Entry, holdFiles, type RegisterFiles, verifiedKey } from '../../src/register/held.ts';
import type { Verify } from '../../src/register/keys.ts';
import { openRegister } from '../../src/register/register.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { at, Book, kd, lz, verify } from './book.ts';

const asked = { now: at('2026-06-01'), dayIn };

/** A verifier that remembers how often it was asked. */
function counting(): { readonly verify: Verify; asked: number } {
  const count = {
    asked: 0,
    verify: (async (...of) => {
      count.asked += 1;
      return verify(...of);
    }) as Verify,
  };
  return count;
}

let book: Book;
let files: RegisterFiles;
let known: ReadonlySet<string>;
beforeAll(async () => {
  book = await Book.staffed();
  await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
  files = book.files;
  known = (await openRegister(files, { verify, ...asked })).verified;
});

describe('a register opened again', () => {
  test('has no signature checked that was found good before, and is the same', async () => {
    const count = counting();
    const again = await openRegister(files, { ...asked, verify: count.verify, known });
    expect(count.asked).toBe(0);
    const first = await openRegister(files, { ...asked, verify });
    expect(again.held).toEqual(first.held);
    expect(again.judged.problems).toEqual([]);
    expect(again.verified).toEqual(known);
  });
  test('has only its new lines checked', async () => {
    const more = book.copy();
    await more.on('2026-02-03').check(lz, 'EI', 'T1', '2026-02-03');
    const count = counting();
    const again = await openRegister(more.files, { ...asked, verify: count.verify, known });
    expect(count.asked).toBe(1);
    expect(again.verified.size).toBe(known.size + 1);
  });
  test('a lost or strange set changes nothing but the work', async () => {
    for (const set of [new Set<string>(), new Set(['', 'x', ...[...known].map((k) => k.slice(1))])]) {
      const count = counting();
      const again = await openRegister(files, { ...asked, verify: count.verify, known: set });
      expect(count.asked).toBe(known.size);
      expect(again.judged.problems).toEqual([]);
    }
  });
  test('a line is trusted only with the id that its own bytes have and the signature remembered', async () => {
    const path = book.file(kd);
    const text = files[path] as string;
    const held = [...(await holdFiles(files, verify)).entries.values()];
    const { id, header, signature } = held.find((e) => e.file === path) as Entry;
    expect(known).toContain(verifiedKey({ id, signature }));
    const other = `${signature.slice(0, -1)}${signature.endsWith('0') ? '1' : '0'}`;
    const year = header.time.replace('2026', '2025');
    for (const changed of [text.replace(signature, other), text.replace(header.time, year)]) {
      expect(changed).not.toBe(text);
      const { judged } = await openRegister({ ...files, [path]: changed }, { ...asked, verify, known });
      expect(judged.problems).toContainEqual({
        file: path,
        line: 1,
        code: 'altered',
        say: { say: 'registerProblem.altered-signature' },
      });
    }
  });
});
