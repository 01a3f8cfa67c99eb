/** `register erase` on the disk: nothing that was said about the person is left in the folder, under whatever name it lay. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { readFolder } from '../../src/cli/register/folder.ts';
import type { RegisterFiles } from '../../src/register/held.ts';
import { Book, kd, lz, owner } from '../register/book.ts';
import { trayhand } from './command.ts';
import { ask, found, keyFile, layOut, snapshot } from './registerDisk.ts';

const root = mkdtempSync(join(tmpdir(), 'trayhand-erase-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const ownerKey = keyFile(root, 1, 'office');

/** Stands in the texts about one person, and about another, and nowhere else. */
const [OWN, OTHER] = ['seen by the north wall', 'seen by the south wall'];
const saw = (what: string) => ({ measured: [{ what, wanted: '1/8', got: '1/8', tool: null }] });

let n = 0;
let dir = '';
let book: Book;
const hashOfBody = (id: string): string => book.header(id).body ?? '';
let own = '';
let other = '';
beforeEach(async () => {
  book = await Book.staffed();
  own = hashOfBody(await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02', saw(OWN)));
  other = hashOfBody(await book.on('2026-02-03').check(lz, 'EI', 'T1', '2026-02-03', saw(OTHER)));
  n += 1;
  dir = layOut(join(root, String(n)), book.files);
});
const text = (hash: string): string => book.files[`bodies/${hash}.json`] ?? '';
const erase = () =>
  ask('erase', dir, '--key', ownerKey, '--person', 'DM', '--why', 'left', '--at', '2026-03-01T12:00:00Z');
/** Files of a folder in which a text stands. */
const speaking = (of: string): string[] =>
  Object.entries(snapshot(dir))
    .filter(([, bytes]) => bytes.includes(of))
    .map(([path]) => path);
/** Copies of a body as they come about, each with what it holds. */
const copies = (hash: string): RegisterFiles => ({
  [`bodies/${hash} (copy of phone).json`]: text(hash),
  [`bodies/${hash.toUpperCase()}.JSON`]: `${text(hash)}\n`,
  [`bodies/older/${hash}.json`]: text(hash),
  'bodies/of-last-week.json': text(hash),
  [`bodies/.${hash}.json.part`]: text(hash).slice(0, -5),
  'bodies/.part': text(hash),
});
const leftovers = {
  'bodies/.writing-0123456789abcdef': OWN,
  'headers/.writing-0123456789abcdef': OWN,
  '.writing-0123456789abcdef': OWN,
};

describe('a text about the person who is erased goes', () => {
  test('from every file that holds it, whatever its name, and from what a writing broken off left', async () => {
    layOut(dir, { ...copies(own), ...leftovers });
    expect(speaking(OWN)).toHaveLength(10);
    expect((await erase()).exit).toBe(0);
    expect(speaking(OWN)).toEqual([]);
    expect(await found(dir)).toEqual([]);
  });
  test('and copies of what was said about others stay', async () => {
    layOut(dir, copies(other));
    expect((await erase()).exit).toBe(0);
    expect(speaking(OTHER)).toHaveLength(7);
    expect(await found(dir)).toEqual([]);
  });
  test('though no text about the person is held by its name', async () => {
    rmSync(join(dir, `bodies/${own}.json`));
    layOut(dir, leftovers);
    expect((await erase()).exit).toBe(0);
    expect(speaking(OWN)).toEqual([]);
  });
  test('when the erase comes with another copy, too', async () => {
    await book.act(owner, 'erase', 'DM', [], { why: 'left' });
    const office = layOut(join(root, `office${n}`), book.files);
    layOut(dir, leftovers);
    layOut(dir, { 'bodies/.part': book.files[`bodies/${own}.json`] ?? text(own) });
    expect((await ask('merge', dir, office)).exit).toBe(0);
    expect(speaking(OWN)).toEqual([]);
    expect(await found(dir)).toEqual([]);
  });
  test('at the next merge or mend, when a sync brings it back', async () => {
    expect((await erase()).exit).toBe(0);
    const before = snapshot(dir);
    for (const verb of [
      ['mend', dir],
      ['merge', dir, layOut(join(root, `same${n}`), readFolder(dir))],
    ]) {
      const [name = '', ...words] = verb;
      layOut(dir, { ...copies(own), ...leftovers });
      expect((await ask(name, ...words)).exit).toBe(0);
      expect(speaking(OWN)).toEqual([]);
      rmSync(join(dir, 'bodies/older'), { recursive: true });
      expect(snapshot(dir)).toEqual(before);
    }
  });
});

test('what only looks like an erase drops nothing: of a witness, or a word in a text', async () => {
  await book.act(kd, 'erase', 'EI', [], { why: 'left' });
  await book.check(lz, 'EI', 'T2', '2026-02-03', saw('"kind":"erase" "about":"DM"'));
  layOut(dir, book.files);
  const before = snapshot(dir);
  expect((await ask('mend', dir)).exit).toBe(0);
  expect((await ask('merge', dir, layOut(join(root, `same${n}`), book.files))).exit).toBe(0);
  expect(snapshot(dir)).toEqual(before);
  expect(await found(dir)).toEqual(['not-appointed headers']);
});

describe('a text that no entry names', () => {
  let early = '';
  let line: RegisterFiles;
  beforeEach(async () => {
    // What another device wrote: a sync brings the body first, and its chain's file later.
    const there = book.copy();
    const id = await there.on('2026-02-04').check(kd, 'DM', 'T2', '2026-02-04', saw('seen by the gate'));
    early = `bodies/${there.header(id).body}.json`;
    line = { [there.file(kd)]: there.files[there.file(kd)] ?? '' };
    layOut(dir, { [early]: there.files[early] ?? '' });
  });
  const warns = (talk: string) => {
    expect(talk).toContain(`${early}: no entry here names it`);
    expect(talk.trim().split('\n')).toHaveLength(1);
  };
  test('is told of by erase and by mend, and left: its entry may be on its way', async () => {
    const words = ['--key', ownerKey, '--person', 'EI', '--why', 'left', '--at', '2026-03-01T12:00:00Z'];
    const erased = await trayhand(['register', 'erase', dir, ...words]);
    expect(erased.exit).toBe(0);
    warns(erased.talk);
    const mended = await trayhand(['register', 'mend', dir]);
    expect(mended.one.result).toEqual({ mended: [] });
    warns(mended.talk);
    const before = snapshot(dir)[early];
    expect(before).toContain('seen by the gate');
    layOut(dir, line);
    expect(await found(dir)).toEqual([]);
    expect((await trayhand(['register', 'mend', dir])).talk).toBe('');
    expect(snapshot(dir)[early]).toBe(before);
  });
  test('goes once its entry has come, when the person was erased before', async () => {
    expect((await erase()).exit).toBe(0);
    expect(speaking('seen by the gate')).toEqual([early]);
    layOut(dir, line);
    expect((await ask('mend', dir)).exit).toBe(0);
    expect(speaking('seen by the gate')).toEqual([]);
    expect(readFileSync(join(dir, book.file(kd)), 'utf8')).toBe(line[book.file(kd)]);
    expect(await found(dir)).toEqual([]);
  });
});
