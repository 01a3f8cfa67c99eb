/**
 * Writing that breaks off. Real processes are killed while they write, and a file is cut at every byte of its last entry:
 * what is left verifies or has a torn tail, and after `mend` everything before is whole.
 */
import { spawn, spawnSync } from 'node:child_process';
import {
  appendFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { Book, kd, lz, owner } from '../register/book.ts';
import { ask, found, keyFile, layOut, mapFile, snapshot } from './registerDisk.ts';

const root = mkdtempSync(join(tmpdir(), 'trayhand-crash-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const [ownerKey, kdKey] = [keyFile(root, 1, 'office'), keyFile(root, 2, 'kd-phone')];
const tasks = mapFile(root);
const start = await Book.staffed();
await start.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
const more = start.copy();
await more.on('2026-02-03').check(lz, 'DM', 'T2', '2026-02-03');
await more.check({ ...kd, device: 'two' }, 'EF', 'T1', '2026-02-03');
await more.check(lz, 'DM', 'T1', '2026-02-03');
const erased = more.copy();
await erased.act(owner, 'erase', 'DM', [], { why: 'left' });
const [plain, other, gone] = [start, more, erased].map((b, i) => layOut(join(root, `base${i}`), b.files)) as [
  string,
  string,
  string,
];
const torn = layOut(join(root, 'torn'), start.files);
appendFileSync(join(torn, start.file(kd)), '{"header":');
appendFileSync(join(torn, start.file(owner)), '{');
const now = ['--at', '2026-02-05T12:00:00Z'];
const seen = ['--person', 'DM', '--task', 'T1', '--outcome', 'shown', '--on', '2026-02-05', '--map', tasks];

let n = 0;
const copyOf = (folder: string): string => {
  n += 1;
  const dir = join(root, String(n));
  cpSync(folder, dir, { recursive: true });
  return dir;
};
/** How often each verb is killed. */
const rounds = Number(process.env['ROUNDS'] ?? 2);
const begun = (dir: string): string[] => ['begin', dir, '--owner', ownerKey, ...now];

/** What is found in a folder that writing was broken off in is nothing, or torn tails: of the file that was written. */
async function isSound(dir: string, most = 1): Promise<void> {
  const codes = await found(dir);
  expect(codes.length).toBeLessThanOrEqual(most);
  for (const code of codes) expect(code).toBe('torn-tail headers');
}

/** Mends a folder; every line that stood before does still, and nothing unfinished lies about. */
async function isMended(dir: string, before: string): Promise<void> {
  expect(await ask('mend', dir)).toMatchObject({ exit: 0 });
  expect(await found(dir)).toEqual([]);
  const after = snapshot(dir);
  for (const [path, text] of Object.entries(snapshot(before))) {
    if (path.startsWith('headers/')) expect(after[path]?.startsWith(text)).toBe(true);
  }
  expect(
    Object.keys(after).filter((path) => path.includes('.writing-') || path.includes('merging-')),
  ).toEqual([]);
}

/** Runs the command and kills it after so long, ms. */
function killed(words: readonly string[], after: number): Promise<void> {
  return new Promise((done, fail) => {
    const env = { ...process.env, NODE_DISABLE_COMPILE_CACHE: '' };
    const child = spawn(process.execPath, ['src/cli/bin.ts', 'register', ...words], { stdio: 'ignore', env });
    const timer = setTimeout(() => child.kill('SIGKILL'), after);
    child.on('error', fail);
    child.on('close', () => {
      clearTimeout(timer);
      done();
    });
  });
}

const writing: Record<string, { base: string; words: (dir: string) => string[] }> = {
  check: { base: plain, words: (dir) => ['check', dir, '--key', kdKey, ...seen, ...now] },
  'check on a new device': {
    base: plain,
    words: (dir) => ['check', dir, '--key', kdKey, '--device', 'new', ...seen, ...now],
  },
  erase: {
    base: other,
    words: (dir) => ['erase', dir, '--key', ownerKey, '--person', 'DM', '--why', 'left', ...now],
  },
  merge: { base: plain, words: (dir) => ['merge', dir, gone] },
};

describe('killed while it writes', () => {
  test.each(Object.entries(writing))('%s', async (_, { base, words }) => {
    const whole = copyOf(base);
    const began = performance.now();
    await killed(words(whole), 60_000);
    const took = performance.now() - began;
    expect(snapshot(whole)).not.toEqual(snapshot(base));
    for (let round = 0; round < rounds; round += 1) {
      const dir = copyOf(base);
      // The later half is when it writes; the parts of it are tried in turn, each at a moment by chance.
      await killed(words(dir), took * (0.5 + (0.5 * (round + Math.random())) / rounds));
      await isSound(dir);
      await isMended(dir, base);
    }
  });
});

/**
 * Runs a verb once and keeps the folder as it stands before every step that changes the disk, and halfway through every
 * writing of bytes: what a process leaves that is killed just there.
 */
function statesOf(words: readonly string[], dir: string): readonly string[] {
  const states = `${dir}-states`;
  const code = `
    const fs = require('node:fs');
    const { cpSync, existsSync } = fs;
    let n = 0;
    const keep = () => {
      if (existsSync(${JSON.stringify(dir)})) cpSync(${JSON.stringify(dir)}, ${JSON.stringify(states)} + '/' + n, { recursive: true });
      n += 1;
    };
    for (const name of ['openSync', 'writeSync', 'fsyncSync', 'renameSync', 'rmSync', 'mkdirSync', 'ftruncateSync']) {
      const real = fs[name];
      let inside = false;
      fs[name] = (...args) => {
        if (inside || (name === 'openSync' && args[1] !== 'wx')) return real(...args);
        inside = true;
        keep();
        if (name === 'writeSync' && args[1].length > 1) {
          const half = args[1].length >> 1;
          real(args[0], args[1].slice(0, half));
          keep();
          args[1] = args[1].slice(half);
          inside = false;
          return half + real(...args);
        }
        inside = false;
        return real(...args);
      };
    }
    require('node:module').syncBuiltinESMExports();
  `;
  const file = `${dir}.cjs`;
  writeFileSync(file, code);
  mkdirSync(states);
  const args = ['--require', file, 'src/cli/bin.ts', 'register', ...words];
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  expect([status, stderr]).toEqual([0, '']);
  return readdirSync(states)
    .sort((a, b) => Number(a) - Number(b))
    .map((name) => join(states, name));
}

describe('stopped before any step that changes the disk, or halfway through a writing', () => {
  test.each(Object.entries({ ...writing, mend: { base: torn, words: (dir: string) => ['mend', dir] } }))(
    '%s',
    async (name, { base, words }) => {
      const dir = copyOf(base);
      const states = statesOf(words(dir), dir);
      expect(states.length).toBeGreaterThan(8);
      const after = snapshot(dir);
      for (const state of states) {
        await isSound(state, name === 'mend' ? 2 : 1);
        const lines = linesOf(state);
        await isMended(state, name === 'mend' ? plain : base);
        if (name !== 'mend') expect(linesOf(state)).toEqual(lines);
        // What was broken off is done again, and comes to what it would have come to.
        if (name === 'merge' || name === 'mend') {
          await ask(words(state)[0] as string, ...words(state).slice(1));
          expect(snapshot(state)).toEqual(after);
        }
      }
    },
  );
  test('begin: no register yet, and begun again, or a whole one', async () => {
    for (const there of [true, false]) {
      const dir = join(root, there ? 'begun-in' : 'begun');
      if (there) layOut(dir, { 'notes.txt': 'x' });
      const states = statesOf(begun(dir), dir);
      expect(states.length).toBeGreaterThan(8);
      for (const state of states) {
        const codes = await found(state);
        if (codes.length > 0) expect(codes).toEqual(['DIR: no register is here']);
        const again = await ask('begin', ...begun(state).slice(1));
        expect(again.exit).toBe(codes.length > 0 ? 0 : 2);
        expect(await ask('mend', state)).toMatchObject({ exit: 0 });
        expect(await found(state)).toEqual([]);
        expect(Object.keys(snapshot(state)).filter((path) => path.startsWith('.'))).toEqual([]);
      }
    }
  });
});

describe('a disk that gives out while a line is added, and does not take it back either', () => {
  test.each([
    ['halfway', 'torn-tail headers'],
    ['once it is written', undefined],
  ])('%s: the body stays, for the line may stand', async (when, code) => {
    const dir = copyOf(plain);
    const file = `${dir}.cjs`;
    writeFileSync(
      file,
      `
      const fs = require('node:fs');
      const error = (code) => Object.assign(new Error(code), { code });
      const real = fs.writeSync;
      let line = false;
      fs.writeSync = (at, bytes, from = 0) => {
        line = bytes.toString().startsWith('{"header":');
        if (!line || from > 0 || ${when !== 'halfway'}) return real(at, bytes, from);
        real(at, bytes, 0, bytes.length >> 1);
        throw error('ENOSPC');
      };
      const sync = fs.fsyncSync;
      fs.fsyncSync = (at) => {
        if (line) throw error('EIO');
        sync(at);
      };
      fs.ftruncateSync = () => {
        throw error('EIO');
      };
      require('node:module').syncBuiltinESMExports();
    `,
    );
    const words = ['check', dir, '--key', kdKey, ...seen, ...now];
    const args = ['--require', file, 'src/cli/bin.ts', 'register', ...words];
    const { status, stdout } = spawnSync(process.execPath, args, { encoding: 'utf8' });
    expect([status, JSON.parse(stdout).errors[0].field]).toEqual([2, 'DIR']);
    expect(await found(dir)).toEqual(code === undefined ? [] : [code]);
    await isMended(dir, plain);
  });
});

/** Every whole line of a folder's chains, once. */
const linesOf = (dir: string): readonly string[] => {
  const files = Object.entries(snapshot(dir)).filter(([path]) => /^headers\/[^.]/.test(path));
  const lines = files.flatMap(([, text]) =>
    text
      .replace(/^file \d+ /, '')
      .split('\n')
      .slice(0, -1),
  );
  return [...new Set(lines)].sort();
};

describe('cut at the bytes of the last entry', () => {
  test.each(['the first of a chain', 'the second of a chain'])('%s', async (which) => {
    const book = start.copy();
    const last = which.includes('first') ? { ...kd, device: 'fresh' } : kd;
    await book.on('2026-02-06').check(last, 'GH', 'T2', '2026-02-06');
    const dir = layOut(copyOf(plain), book.files);
    const file = join(dir, book.file(last));
    const whole = readFileSync(file);
    const from = (start.files[book.file(last)] ?? '').length;
    // The first line of a chain is cut at every third byte, and at each of its first and last.
    const step = which.includes('first') ? 3 : 1;
    for (let size = whole.length; size >= from; size -= 1) {
      if (size % step !== 0 && size > from + 2 && size < whole.length - 2) continue;
      writeFileSync(file, whole);
      truncateSync(file, size);
      const codes = await found(dir);
      expect(codes).toEqual(size === whole.length || size === from ? [] : ['torn-tail headers']);
      if (size % 16 !== 0 && size > from + 2 && size < whole.length - 2) continue;
      const { result } = await ask('mend', dir);
      expect(result.mended).toHaveLength(codes.length);
      expect(readFileSync(file)).toEqual(whole.subarray(0, size === whole.length ? size : from));
      expect(await found(dir)).toEqual([]);
    }
  });
});
