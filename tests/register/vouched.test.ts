import { beforeAll, describe, expect, test } from 'vitest';
import { hashOf } from '../../src/register/bytes.ts';
import { type Held, holdFiles, type RegisterFiles } from '../../src/register/held.ts';
import type { Verify } from '../../src/register/keys.ts';
import { type Kept, keepFor, vouchedFor } from '../../src/register/vouched.ts';
import { Book, kd, lz, verify } from './book.ts';

const digest = async (text: string): Promise<string> => hashOf(text);
let book: Book;
let files: RegisterFiles;
let kept: Kept;
beforeAll(async () => {
  book = await Book.staffed();
  await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
  files = book.files;
  kept = await keepFor(files, await holdFiles(files, verify), digest);
});

/** Opens with what was kept and without; what is held must be one, and the work that was not spared comes back. */
async function opened(
  now: RegisterFiles,
  from: Kept = kept,
): Promise<{ held: Held; hashed: number; checked: number }> {
  const count = { hashed: 0, checked: 0 };
  const counting: Verify = (...of) => {
    count.checked += 1;
    return verify(...of);
  };
  const hash = (text: string): string => {
    count.hashed += 1;
    return hashOf(text);
  };
  const vouched = await vouchedFor(now, from, digest);
  const held = await holdFiles(now, counting, undefined, { vouched, hash });
  expect(held).toEqual(await holdFiles(now, verify));
  return { held, ...count };
}
const changed = (path: string, change: (text: string) => string): RegisterFiles => {
  const text = change(files[path] as string);
  expect(text).not.toBe(files[path]);
  return { ...files, [path]: text };
};
const bodyIn = (of: RegisterFiles): string =>
  Object.keys(of).find((path) => path.startsWith('bodies/')) as string;

describe('what an earlier opening vouches for', () => {
  test('is neither hashed nor checked again', async () => {
    expect(await opened(files)).toMatchObject({ hashed: 0, checked: 0 });
  });
  test('is the beginning of a file that was appended to: the new line and its body are looked at', async () => {
    const more = book.copy();
    await more.on('2026-02-03').check(lz, 'EI', 'T1', '2026-02-03');
    const bodies = Object.keys(more.files).filter(
      (p) => p.startsWith('bodies/') && files[p] === undefined,
    ).length;
    const { hashed, checked } = await opened(more.files);
    expect(checked).toBeGreaterThanOrEqual(1);
    expect(checked).toBeLessThan(4);
    expect(hashed).toBe(checked + bodies);
  });
  test('is no file with one sign changed, anywhere in it', async () => {
    const path = book.file(kd);
    const { length } = files[path] as string;
    for (let at = 0; at < length; at += 37) {
      const { held } = await opened(
        changed(path, (t) => `${t.slice(0, at)}${t[at] === '0' ? '1' : '0'}${t.slice(at + 1)}`),
      );
      expect(held.problems.length).toBeGreaterThan(0);
    }
  });
  test('is no body that was changed, taken away, or put under the name of another', async () => {
    const path = bodyIn(files);
    const [, other] = Object.keys(files).filter((p) => p.startsWith('bodies/')) as [string, string];
    const { held } = await opened(changed(path, (t) => t.replace('{', '{ ')));
    expect(held.problems).toContainEqual(expect.objectContaining({ file: path, code: 'altered' }));
    await opened(Object.fromEntries(Object.entries(files).filter(([p]) => p !== path)));
    await opened({ ...files, [path]: files[other] as string, [other]: files[path] as string });
    // The same signs in all, another line between them.
    const [a, b] = [files[path] as string, files[other] as string];
    await opened({ ...files, [path]: a + b.slice(0, 1), [other]: b.slice(1) });
  });
  test('is no text with half a pair where its digest is of the sign that stands for it', async () => {
    const text = '{"why":"\ufffd"}';
    const path = `bodies/${hashOf(text)}.json`;
    const with1 = { ...files, [path]: text };
    const from = await keepFor(with1, await holdFiles(with1, verify), digest);
    expect(from.bodies.paths).toContain(path);
    await opened(with1, from);
    await opened({ ...with1, [path]: '{"why":"\ud800"}' }, from);
  });
  test('is no file with a line that was not good, or that stands in another file too', async () => {
    const path = book.file(kd);
    const broken = changed(path, (t) =>
      t.replace(/"signature":"./, (s) => `${s.slice(0, -1)}${s.endsWith('0') ? '1' : '0'}`),
    );
    const twice = { ...files, 'headers/copy.jsonl': files[path] as string };
    for (const now of [broken, twice]) {
      const from = await keepFor(now, await holdFiles(now, verify), digest);
      expect(
        Object.keys(from.chains).filter((p) => p === path || p === 'headers/copy.jsonl').length,
      ).toBeLessThan(2);
      await opened(now, from);
    }
    expect((await keepFor(broken, await holdFiles(broken, verify), digest)).chains[path]).toBeUndefined();
  });
  test('is nothing of another register', async () => {
    const other = await Book.staffed();
    await other.on('2026-04-04').check(lz, 'EI', 'T1', '2026-04-04');
    await opened(other.files);
  });
});
