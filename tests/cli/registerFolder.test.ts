/** What stands in a register's folder that does not belong there, or no longer does: nothing makes the reader fall over. */
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { isRegister, readFolder } from '../../src/cli/register/folder.ts';
import { writeFolder } from '../../src/cli/register/folderWrite.ts';
import { openRegister } from '../../src/register/register.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { GivenError } from '../../src/trade/given.ts';
import { at, Book, kd, verify } from '../register/book.ts';

const root = mkdtempSync(join(tmpdir(), 'trayhand-folder-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

let n = 0;
let dir = '';
let body = '';
beforeEach(async () => {
  const b = await Book.begun();
  await b.appoint(kd, 'KD');
  const before = Object.keys(b.files);
  const measured = [{ what: 'gap', wanted: '1/8', got: '\uFFFD', tool: null }];
  await b.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02', { measured });
  body = Object.keys(b.files).find((path) => path.startsWith('bodies/') && !before.includes(path)) ?? '';
  dir = join(root, String(n++));
  for (const [path, text] of Object.entries(b.files)) {
    mkdirSync(join(dir, path, '..'), { recursive: true });
    writeFileSync(join(dir, path), text);
  }
});
const codes = async (): Promise<string[]> => {
  const { judged } = await openRegister(readFolder(dir), { verify, dayIn, now: at('2026-03-01') });
  return judged.problems.map((p) => `${p.code} ${p.file.split('/')[0]}`);
};

describe('a folder', () => {
  test('as it was written has nothing wrong with it', async () => {
    expect(await codes()).toEqual([]);
  });
  test('without its pointer says what it was', async () => {
    rmSync(join(dir, 'register.json'));
    expect(await codes()).toEqual(['unreadable register.json']);
    mkdirSync(join(dir, 'register.json'));
    expect(await codes()).toEqual(['unreadable register.json']);
  });
  test('whose pointer has one space more is not as it was written', async () => {
    const begin = /"begin":"(\w+)"/.exec(readFolder(dir)['register.json'] ?? '')?.[1] ?? '';
    writeFileSync(join(dir, 'register.json'), `{"begin":"${begin}", "v":1}`);
    expect(await codes()).toEqual(['unreadable register.json']);
  });
  test('with a file where its bodies were lacks them', async () => {
    rmSync(join(dir, 'bodies'), { recursive: true });
    writeFileSync(join(dir, 'bodies'), '');
    expect(new Set(await codes())).toEqual(new Set(['body-missing headers']));
  });
  test('with a file where its chains were is a register without a beginning', () => {
    rmSync(join(dir, 'headers'), { recursive: true });
    writeFileSync(join(dir, 'headers'), '');
    expect(isRegister(dir)).toBe(true);
    expect(Object.keys(readFolder(dir)).some((path) => path.startsWith('headers'))).toBe(false);
  });
  test('bytes that are no UTF-8 do not pass for the sign that stands for them', async () => {
    const text = readFolder(dir)[body] ?? '';
    const bytes = Buffer.from(text, 'utf8');
    const cut = bytes.indexOf(Buffer.from('\uFFFD', 'utf8')) + 2;
    const less = Buffer.concat([bytes.subarray(0, cut), bytes.subarray(cut + 1)]);
    expect(less.toString('utf8')).toBe(text); // what a forgiving reader takes it for
    writeFileSync(join(dir, body), less);
    expect(await codes()).toEqual(['altered bodies']);
  });
  test('with other things beside is none the worse', async () => {
    writeFileSync(join(dir, 'notes.txt'), 'x');
    writeFileSync(join(dir, 'bodies', 'notes.txt'), 'x');
    writeFileSync(join(dir, 'headers', '.hidden'), 'x');
    symlinkSync('/no/such/file', join(dir, 'headers', 'link'));
    expect(await codes()).toEqual([]);
  });
});

test('a path that runs through a file is refused with its reason', () => {
  writeFileSync(join(root, 'file'), '');
  const written = { entry: '', put: { 'bodies/x': '' }, append: { path: 'headers/x', text: '' } };
  expect(() => writeFolder(join(root, 'file', 'register'), written, {})).toThrow(GivenError);
});

test('a chain that has grown since it was read is not written to: two entries of one number are a fork', () => {
  const before = readFolder(dir);
  const chain = Object.keys(before).find((path) => path.includes(kd.publicKey)) ?? '';
  const written = { entry: '', put: {}, append: { path: chain, text: 'one\n' } };
  expect(writeFolder(dir, written, before)).toBe(true);
  expect(writeFolder(dir, written, before)).toBe(false);
  expect(readFolder(dir)[chain]).toBe(`${before[chain]}one\n`);
});
