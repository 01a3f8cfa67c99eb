/** `register merge`: joins copies on the disk; loses nothing, takes nothing that is not what was signed. */
import { appendFileSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { bundleText } from '../../src/register/bundle.ts';
import { Book, kd, lz, owner } from '../register/book.ts';
import { trayhand } from './command.ts';
import { ask, found, layOut, snapshot } from './registerDisk.ts';

const root = mkdtempSync(join(tmpdir(), 'trayhand-merge-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

let n = 0;
/** The office's copy, KD's and LZ's: each with checks that the others lack. */
let [office, ofKd, ofLz] = ['', '', ''];
let books: { office: Book; kd: Book; lz: Book };
const fresh = (book: Book): string => {
  n += 1;
  return layOut(join(root, String(n)), book.files);
};
beforeEach(async () => {
  const start = await Book.staffed();
  books = { office: start, kd: start.copy(), lz: start.copy() };
  await books.office.on('2026-02-01').check(kd, 'AB', 'T1', '2026-02-01');
  await books.lz.on('2026-02-03').check(lz, 'DM', 'T2', '2026-02-03');
  await books.lz.check(lz, 'EF', 'T2', '2026-02-03');
  books.kd.files = books.lz.files; // KD took LZ's in and signed on top of it
  await books.kd.on('2026-02-04').check({ ...kd, device: 'kd-desk' }, 'DM', 'T1', '2026-02-04');
  [office, ofKd, ofLz] = [fresh(books.office), fresh(books.kd), fresh(books.lz)];
});

describe('merge', () => {
  test('takes in what DIR lacks, from several copies, and is as whole as they were', async () => {
    const { result } = await ask('merge', office, ofLz, ofKd);
    expect(result).toEqual({ added: 3, entries: 7, dropped: 0 });
    expect(await found(office)).toEqual([]);
  });
  test('comes to the same folder whoever takes in whom, and again to the same', async () => {
    await ask('merge', office, ofKd);
    await ask('merge', ofKd, fresh(books.office));
    expect(snapshot(ofKd)).toEqual(snapshot(office));
    const before = snapshot(office);
    expect((await ask('merge', office, ofKd, ofLz)).result).toEqual({ added: 0, entries: 7, dropped: 0 });
    expect(snapshot(office)).toEqual(before);
  });
  test('writes no chain that gains nothing', async () => {
    const chain = join(office, books.office.file(owner));
    const before = statSync(chain, { bigint: true });
    await ask('merge', office, ofKd);
    expect(statSync(chain, { bigint: true })).toMatchObject({ ino: before.ino, mtimeNs: before.mtimeNs });
  });
  test('leaves OTHER as it is', async () => {
    const before = snapshot(ofKd);
    await ask('merge', office, ofKd);
    expect(snapshot(ofKd)).toEqual(before);
  });
  test('takes a register in one file', async () => {
    const file = join(root, 'kd.json');
    writeFileSync(file, bundleText(books.kd.files));
    expect((await ask('merge', office, file)).result).toEqual({ added: 3, entries: 7, dropped: 0 });
    expect(await found(office)).toEqual([]);
  });
  test('a register in one file is read as it is, and never written to', async () => {
    const file = join(root, 'read.json');
    writeFileSync(file, bundleText(books.lz.files));
    expect(await ask('verify', file)).toEqual(await ask('verify', ofLz));
    const at = ['--on', '2026-03-01', '--at', '2026-03-01T12:00:00Z'];
    expect(await ask('board', file, ...at)).toEqual(await ask('board', ofLz, ...at));
    const before = readFileSync(file, 'utf8');
    for (const verb of [
      ['merge', file, ofKd],
      ['mend', file],
    ] as const) {
      const [name, ...words] = verb;
      const { exit, said } = await ask(name, ...words);
      expect([exit, said]).toEqual([2, [expect.stringContaining('a register in one file is only read')]]);
    }
    expect(readFileSync(file, 'utf8')).toBe(before);
  });
  test('drops the bodies of a person that the other copy erased, and those that it brings', async () => {
    await books.office.act(owner, 'erase', 'DM', [], { why: 'left' });
    const erased = fresh(books.office);
    const bodies = (dir: string) =>
      Object.keys(snapshot(dir)).filter((path) => /^bodies\/./.test(path)).length;
    const held = bodies(ofKd);
    expect((await ask('merge', ofKd, erased)).result).toEqual({ added: 2, entries: 8, dropped: 2 });
    expect(bodies(ofKd)).toBe(held - 2 + 2);
    expect(await found(ofKd)).toEqual([]);
    await ask('merge', erased, ofLz);
    expect(await found(erased)).toEqual([]);
    expect((await ask('merge', erased, ofKd)).exit).toBe(0);
    expect(snapshot(erased)).toEqual(snapshot(ofKd));
  });
  test('keeps what DIR holds beside: other files, lines that do not count, a torn tail', async () => {
    const chain = books.office.file(lz);
    layOut(office, { [chain]: 'not a line\n{"header":', 'notes.txt': 'x', 'bodies/notes.txt': 'x' });
    const before = snapshot(office);
    expect((await ask('merge', office, ofLz)).result).toMatchObject({ added: 2 });
    const text = readFileSync(join(office, chain), 'utf8');
    expect(text).toBe(`${books.lz.files[chain]}not a line\n{"header":`);
    const after = snapshot(office);
    for (const path of ['notes.txt', 'bodies/notes.txt']) expect(after[path]).toBe(before[path]);
    expect(await found(office)).toEqual(['unreadable headers', 'torn-tail headers']);
    const again = snapshot(office);
    await ask('merge', office, ofLz);
    expect(snapshot(office)).toEqual(again);
    await ask('mend', office);
    expect(await found(office)).toEqual(['unreadable headers']);
  });
  test('puts a lost pointer back', async () => {
    rmSync(join(office, 'register.json'));
    expect(await found(office)).toEqual(['unreadable register.json']);
    await ask('merge', office, ofLz);
    expect(await found(office)).toEqual([]);
  });
  test('ends one that was broken off: lines on their way stand in their chains, and their file is gone', async () => {
    const way = 'headers/merging-0123456789abcdef.jsonl';
    const lines = [books.kd.file(lz), books.kd.file({ ...kd, device: 'kd-desk' })];
    const bodies = Object.entries(books.kd.files).filter(([path]) => path.startsWith('bodies/'));
    const text = lines.map((path) => books.kd.files[path]).join('');
    for (const how of ['merge', 'mend']) {
      const dir = layOut(fresh(books.office), { ...Object.fromEntries(bodies), [way]: text });
      expect(await found(dir)).toEqual([]);
      await ask(how, dir, ...(how === 'merge' ? [ofLz] : []));
      expect(await found(dir)).toEqual([]);
      const after = snapshot(dir);
      expect(after[way]).toBeUndefined();
      for (const path of lines) expect(after[path]).toContain(books.kd.files[path]);
    }
  });
});

describe('not taken', () => {
  test('altered and unreadable lines, torn tails and altered bodies; standard error names them', async () => {
    const chain = books.lz.file(lz);
    const [first = '', second = ''] = (books.lz.files[chain] ?? '').split('\n');
    writeFileSync(
      join(ofLz, chain),
      `${first}\n${second.replace('"about":"EF"', '"about":"EG"')}\nno line\n{"he`,
    );
    const { exit, one, talk } = await trayhand(['register', 'merge', office, ofLz]);
    expect([exit, one.result]).toEqual([0, { added: 1, entries: 5, dropped: 0 }]);
    const told = talk.trimEnd().split('\n');
    for (const [i, line] of [2, 3, 4].entries())
      expect(told[i]).toContain(`${ofLz}: ${chain} line ${line}: not taken: `);
    expect(told).toHaveLength(3);
    expect(await found(office)).toEqual([]);
  });
  test('a register that began differently, with nothing written, whatever comes with it', async () => {
    const strange = fresh(await Book.begun('Europe/Paris'));
    const before = snapshot(office);
    for (const others of [[strange], [ofLz, strange], [strange, ofLz]]) {
      const asked = await ask('merge', office, ...others);
      expect([asked.exit, asked.said]).toEqual([2, ['OTHER: another register: it began differently']]);
      expect(snapshot(office)).toEqual(before);
    }
  });
  test('what is no register, all of it told of at once', async () => {
    const before = snapshot(office);
    const headless = layOut(join(root, 'headless'), {
      'register.json': books.lz.files['register.json'] ?? '',
    });
    const json = join(root, 'no.json');
    writeFileSync(json, '{"files":{"../x":"y"},"kind":"register","v":1}');
    const text = join(root, 'no.txt');
    writeFileSync(text, '[['.repeat(100_000));
    const { exit, said } = await ask('merge', office, join(root, 'nowhere'), root, json, text);
    expect(exit).toBe(2);
    expect(said).toHaveLength(4);
    expect(said.join('\n')).toMatch(
      /OTHER: nothing is there\nOTHER: no register is here\nOTHER: files...\/x: no register has such a file\nOTHER: not a register in one file/,
    );
    expect((await ask('merge', office, headless)).said).toEqual(['OTHER: its beginning cannot be read']);
    expect((await ask('merge', office)).said).toEqual(['OTHER: is missing']);
    expect((await ask('merge', join(root, 'nowhere'), office)).said).toEqual(['DIR: no register is here']);
    expect(snapshot(office)).toEqual(before);
  });
  test('an entry of another register among the lines of a copy', async () => {
    const strange = await Book.begun('Europe/Paris');
    appendFileSync(join(ofLz, books.lz.file(owner)), strange.files[strange.file(owner)] ?? '');
    expect((await ask('merge', office, ofLz)).result).toMatchObject({ added: 2 });
    expect(await found(office)).toEqual([]);
  });
});
