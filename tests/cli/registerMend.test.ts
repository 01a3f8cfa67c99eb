/** `register mend`: cuts torn tails and nothing else, and takes away what broken-off writing left. */
import {
  appendFileSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { Book, kd, lz, owner } from '../register/book.ts';
import { ask, found, keyFile, layOut, mapFile, snapshot } from './registerDisk.ts';

const root = mkdtempSync(join(tmpdir(), 'trayhand-mend-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const kdKey = keyFile(root, 2, 'kd-phone');
const tasks = mapFile(root);

let n = 0;
let dir = '';
let book: Book;
beforeEach(async () => {
  book = await Book.staffed();
  await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
  await book.on('2026-02-03').check(lz, 'DM', 'T2', '2026-02-03');
  n += 1;
  dir = layOut(join(root, String(n)), book.files);
});
const check = (...more: string[]) =>
  ask(
    'check',
    dir,
    '--key',
    kdKey,
    '--person',
    'DM',
    '--task',
    'T1',
    '--outcome',
    'shown',
    '--map',
    tasks,
    ...more,
  );
const dated = ['--on', '2026-02-05', '--at', '2026-02-05T12:00:00Z'];

describe('mend', () => {
  test('leaves a whole register as it is, locks and all', async () => {
    const before = snapshot(dir);
    const asked = await ask('mend', dir);
    expect(asked).toMatchObject({ exit: 0, result: { mended: [] } });
    expect(snapshot(dir)).toEqual(before);
  });
  test('cuts what stands after the last whole line and keeps it beside, where no reader looks', async () => {
    const before = snapshot(dir);
    const rest = Buffer.from([0x7b, 0x22, 0xff, 0x00, 0xc3]); // no UTF-8: kept byte for byte
    appendFileSync(join(dir, book.file(kd)), rest);
    appendFileSync(join(dir, book.file(lz)), '{"header":');
    expect(await found(dir)).toEqual(['torn-tail headers', 'torn-tail headers']);
    const { result } = await ask('mend', dir);
    const files = [book.file(kd), book.file(lz)].sort();
    expect(result.mended.map((m: { file: string }) => m.file)).toEqual(files);
    expect(result.mended.map((m: { line: number }) => m.line)).toEqual([2, 2]);
    const kept = Object.fromEntries(
      result.mended.map((m: { file: string; kept: string }) => [m.file, m.kept]),
    );
    expect(readFileSync(join(dir, kept[book.file(kd)]))).toEqual(rest);
    expect(readFileSync(join(dir, kept[book.file(lz)]), 'utf8')).toBe('{"header":');
    for (const path of Object.values(kept)) expect(path).not.toMatch(/^(?:headers|bodies)\//);
    expect(snapshot(dir)).toMatchObject(before);
    expect(await found(dir)).toEqual([]);
    const again = snapshot(dir);
    expect((await ask('mend', dir)).result).toEqual({ mended: [] });
    expect(snapshot(dir)).toEqual(again);
  });
  test('a second tear of the same file is kept beside the first', async () => {
    for (const rest of ['{"one', '{"two']) {
      appendFileSync(join(dir, book.file(kd)), rest);
      const { result } = await ask('mend', dir);
      expect(readFileSync(join(dir, result.mended[0].kept), 'utf8')).toBe(rest);
    }
    expect(Object.keys(snapshot(dir)).filter((path) => path.startsWith('torn/'))).toHaveLength(2);
  });
  test('a file that was torn in its first line is empty then', async () => {
    writeFileSync(join(dir, 'headers', 'x.jsonl'), 'no line');
    expect((await ask('mend', dir)).result.mended).toMatchObject([{ file: 'headers/x.jsonl', line: 1 }]);
    expect(readFileSync(join(dir, 'headers', 'x.jsonl'), 'utf8')).toBe('');
    expect(await found(dir)).toEqual([]);
  });
  test('until then the chain is not written to; afterwards it goes on', async () => {
    appendFileSync(join(dir, book.file(kd)), '{"header":');
    const before = snapshot(dir);
    const refused = await check(...dated);
    expect(refused.exit).toBe(2);
    expect(refused.said[0]).toMatch(/^--device: .* ends in a torn line/);
    expect(snapshot(dir)).toEqual(before);
    await ask('mend', dir);
    expect((await check(...dated)).exit).toBe(0);
    expect(await found(dir)).toEqual([]);
  });
  test('takes away unfinished files and locks of processes that are gone, and nothing of others', async () => {
    const before = snapshot(dir);
    const foreign = { '.hidden': 'x', 'bodies/.writing-x': 'x', 'notes.txt': 'x', 'headers/.lock': 'x' };
    layOut(dir, foreign);
    layOut(dir, { 'bodies/.writing-0123456789abcdef': 'x', 'headers/.writing-0123456789abcdef': 'x' });
    const gone = {
      at: '2026-01-01T00:00:00.000Z',
      host: hostname(),
      life: null,
      once: '',
      process: 2 ** 22 + 1,
    };
    layOut(dir, { '.lock': JSON.stringify(gone), '.lock-0123456789abcdef': JSON.stringify(gone) });
    expect((await ask('mend', dir)).result).toEqual({ mended: [] });
    expect(Object.keys(snapshot(dir)).sort()).toEqual(
      [...Object.keys(before), ...Object.keys(foreign)].sort(),
    );
  });
  test('drops the bodies that an erase did not come to', async () => {
    const bodies = Object.keys(book.files).length;
    await book.act(owner, 'erase', 'DM', [], { why: 'left' });
    layOut(dir, book.files);
    expect((await ask('mend', dir)).result).toEqual({ mended: [] });
    expect(Object.keys(snapshot(dir)).filter((p) => /^bodies\/./.test(p))).toHaveLength(bodies - 4 - 2 + 1);
    expect(await found(dir)).toEqual([]);
  });
  test('what is no register is refused', async () => {
    expect((await ask('mend', join(root, 'nowhere'))).said).toEqual(['DIR: no register is here']);
    expect((await ask('mend', dir, '--at', 'now')).exit).toBe(2);
  });
});

describe('a lock', () => {
  const lock = (of: object): void => writeFileSync(join(dir, '.lock'), JSON.stringify(of));
  const of = { at: '2026-01-01T00:00:00.000Z', host: hostname(), life: null, once: '', process: 2 ** 22 + 1 };
  test('of a process that is gone is taken over', async () => {
    lock(of);
    expect((await check(...dated)).exit).toBe(0);
    expect(existsSync(join(dir, '.lock'))).toBe(false);
  });
  test('of a process whose number another has now is taken over, where the system tells them apart', async () => {
    lock({ ...of, process: process.ppid, life: '1' });
    if (process.platform === 'linux') expect((await check(...dated)).exit).toBe(0);
    rmSync(join(dir, '.lock'), { force: true });
    lock({ ...of, process: process.pid });
    expect((await check('--on', '2026-02-06', '--at', '2026-02-06T12:00:00Z')).exit).toBe(0);
  });
  test('of another machine is taken over once nobody has touched it for ten minutes', async () => {
    lock({ ...of, host: `not-${hostname()}` });
    utimesSync(join(dir, '.lock'), Date.now() / 1000 - 601, Date.now() / 1000 - 601);
    expect((await check(...dated)).exit).toBe(0);
  });
  test('that was made and never written is taken over', async () => {
    writeFileSync(join(dir, '.lock'), '');
    utimesSync(join(dir, '.lock'), Date.now() / 1000 - 6, Date.now() / 1000 - 6);
    expect((await check(...dated)).exit).toBe(0);
  });
  test('is never left behind, and a new file has the permissions the chain had', async () => {
    expect((await check(...dated)).exit).toBe(0);
    expect(
      Object.keys(snapshot(dir)).filter((path) => path.includes('.writing') || path.startsWith('.')),
    ).toEqual([]);
    expect(statSync(join(dir, book.file(kd))).mode & 0o777).toBe(
      statSync(join(dir, 'register.json')).mode & 0o777,
    );
  });
});
