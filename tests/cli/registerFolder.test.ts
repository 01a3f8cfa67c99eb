/** What stands in a register's folder that does not belong there, or no longer does: nothing makes the reader fall over. */
import {
  appendFileSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { inPeace, isRegister, readFolder } from '../../src/cli/register/folder.ts';
import { bytesIn, textOf } from '../../src/cli/register/folderDisk.ts';
import { undoing, writeFolder } from '../../src/cli/register/folderWrite.ts';
import { openRegister } from '../../src/register/register.ts';
import { readJson } from '../../src/register/strictJson.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { GivenError } from '../../src/trade/given.ts';
import { at, Book, kd, owner, verify } from '../register/book.ts';

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
  test('a text that was saved anew in another encoding is not what was signed', async () => {
    // every sign of it is one byte in Latin-1 as well: read byte for byte it would be the same text
    const before = readFolder(dir);
    const b = new Book();
    Object.assign(b, { files: before, begin: /"begin":"(\w+)"/.exec(before['register.json'] ?? '')?.[1] });
    const measured = [{ what: 'déport', wanted: '1/8', got: 'à 3 mm près', tool: 'réglet' }];
    const id = await b.on('2026-02-03').check(kd, 'DM', 'T1', '2026-02-03', { measured });
    const own = `bodies/${b.header(id).body}.json`;
    for (const [path, text] of Object.entries(b.files)) writeFileSync(join(dir, path), text);
    expect(await codes()).toEqual([]);
    const text = b.files[own] ?? '';
    expect(Buffer.from(text, 'latin1').toString('latin1')).toBe(text);
    writeFileSync(join(dir, own), Buffer.from(text, 'latin1'));
    expect(await codes()).toEqual(['altered bodies']);
    const { held } = await openRegister(readFolder(dir), { verify, dayIn, now: at('2026-03-01') });
    expect(held.bodies.has(b.header(id).body ?? '')).toBe(false);
  });
  test('a byte that is no UTF-8 spoils the line that it stands in, and no other', async () => {
    const path = Object.keys(readFolder(dir)).find((p) => p.includes(owner.publicKey)) ?? '';
    const bytes = Buffer.from(readFolder(dir)[path] ?? '', 'utf8');
    bytes[bytes.length - 9] = 0xe9;
    writeFileSync(join(dir, path), bytes);
    expect(await codes()).toContain('unreadable headers');
    const { held } = await openRegister(readFolder(dir), { verify, dayIn, now: at('2026-03-01') });
    expect(held.problems.map((p) => p.line)).toEqual([2]);
  });
  test('with other things beside is none the worse', async () => {
    writeFileSync(join(dir, 'notes.txt'), 'x');
    writeFileSync(join(dir, 'bodies', 'notes.txt'), 'x');
    writeFileSync(join(dir, 'headers', '.hidden'), 'x');
    symlinkSync('/no/such/file', join(dir, 'headers', 'link'));
    expect(await codes()).toEqual([]);
  });
});

describe('steps that are taken back', () => {
  const run = (...fail: string[]): string[] => {
    const undone: string[] = [];
    const step = (name: string, undo: (how: () => unknown) => void): void => {
      undo(() => {
        if (fail.includes(name)) throw new Error(name);
        undone.push(name);
      });
    };
    expect(() =>
      undoing((undo) => {
        for (const name of ['folder', 'body', 'line']) step(name, undo);
        throw new Error('the disk is full');
      }),
    ).toThrow('the disk is full');
    return undone;
  };
  test('go the last first, and stop where one cannot be taken back', () => {
    expect(run()).toEqual(['line', 'body', 'folder']);
    expect(run('body')).toEqual(['line']);
    expect(run('line')).toEqual([]); // the line may stand: its body stays
  });
});

describe('a folder that others write to', () => {
  const chain = (): string =>
    join(dir, Object.keys(readFolder(dir)).find((p) => p.includes('headers/')) ?? '');
  const reading = (changes: number) => {
    const path = chain();
    let reads = 0;
    const found = inPeace(
      () => readFileSync(path, 'utf8'),
      () => {
        reads += 1;
        if (reads <= changes) appendFileSync(path, `${reads}\n`);
        return readFileSync(path, 'utf8');
      },
    );
    return { found, reads };
  };
  test('is read again until nothing has changed meanwhile', () => {
    expect(reading(0).reads).toBe(1);
    const { found, reads } = reading(9);
    expect([reads, found?.endsWith('9\n')]).toEqual([10, true]);
  });
  test('all the time is not read by halves', () => {
    expect(reading(Number.POSITIVE_INFINITY).found).toBeUndefined();
  });
});

describe('bytes as a text', () => {
  const some = fc.array(
    fc.oneof(
      fc.constantFrom(0x0a, 0x22, 0x7b, 0xc3, 0xa9, 0xe9, 0xed, 0xa0, 0x80, 0xff),
      fc.integer({ min: 0, max: 255 }),
    ),
    { maxLength: 40 },
  );
  test('come back as they were, and those that are no UTF-8 are no text that any is', () => {
    fc.assert(
      fc.property(some, (given) => {
        const bytes = Buffer.from(given);
        const text = textOf(bytes);
        expect(bytesIn(text)).toEqual(bytes);
        expect(text.isWellFormed()).toBe(Buffer.from(bytes.toString('utf8'), 'utf8').equals(bytes));
        if (!text.isWellFormed()) expect(() => readJson(text)).toThrow();
        expect(text.split('\n')).toHaveLength(given.filter((byte) => byte === 0x0a).length + 1);
      }),
      { numRuns: 2000 },
    );
  });
  test('of one size with a line end anywhere, without running out of room', () => {
    for (const at of [0, 1, 2 ** 19, 2 ** 20 - 1]) {
      const bytes = Buffer.alloc(2 ** 20, 0xff).fill(0x0a, at, at + 1);
      expect(bytesIn(textOf(bytes)).equals(bytes)).toBe(true);
    }
    const lines = Buffer.alloc(2 ** 18, Buffer.from([0xff, 0x0a]));
    expect(bytesIn(textOf(lines)).equals(lines)).toBe(true);
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
