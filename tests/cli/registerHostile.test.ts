/** Surroundings that are not as they should be: each verb answers or refuses, and a refusal leaves no trace. */
import { execFileSync, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { withLock } from '../../src/cli/register/folderLock.ts';
import { Book, kd, lz } from '../register/book.ts';
import { trayhand } from './command.ts';
import { ask, found, keyFile, layOut, mapFile, snapshot } from './registerDisk.ts';

const root = mkdtempSync(join(tmpdir(), 'trayhand-hostile-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const ownerKey = keyFile(root, 1, 'office');
const kdKey = keyFile(root, 2, 'kd-phone');
const tasks = mapFile(root);

let start: Book;
let other = '';
beforeAll(async () => {
  start = await Book.staffed();
  await start.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
  const more = start.copy();
  await more.on('2026-02-03').check(lz, 'DM', 'T2', '2026-02-03');
  await more.check({ ...kd, device: 'two' }, 'EF', 'T1', '2026-02-03');
  other = layOut(join(root, 'other'), more.files);
});
let n = 0;
let dir = '';
beforeEach(() => {
  n += 1;
  dir = layOut(join(root, String(n)), start.files);
});

const dated = ['--on', '2026-02-05', '--at', '2026-02-05T12:00:00Z'];
const checkWords = (folder: string, ...more: string[]) => [
  ...[
    'check',
    folder,
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
  ],
  ...dated,
  ...more,
];
const call = ([verb = '', ...words]: readonly string[]) => ask(verb, ...words);

/** Every verb of those words is refused, and the folder is as it was. */
async function refusals(folder: string, words: readonly (readonly string[])[], says: RegExp): Promise<void> {
  const before = snapshot(folder);
  for (const one of words) {
    const { exit, said } = await call(one);
    expect([one[0], exit, said.length]).toEqual([one[0], 2, 1]);
    expect(said[0]).toMatch(says);
    expect(snapshot(folder)).toEqual(before);
  }
}

/** Calls the command in a process whose files may not grow beyond some blocks of 512 or 1024 bytes. */
function limited(blocks: number, words: readonly string[]): { exit: number | null; out: string } {
  const line = `ulimit -f ${blocks}; exec "$0" src/cli/bin.ts register "$@"`;
  const env = { ...process.env, NODE_DISABLE_COMPILE_CACHE: '1' };
  const { status, stdout } = spawnSync('sh', ['-c', line, process.execPath, ...words], {
    encoding: 'utf8',
    env,
  });
  return { exit: status, out: stdout };
}

describe('no room', () => {
  test('a file that may not grow: refused, and nothing of it stays', async () => {
    const before = snapshot(dir);
    const begun = join(root, 'begun');
    for (const [blocks, words] of [
      [2, checkWords(dir)], // lock and body are small enough, the chain grows beyond on the way
      [0, ['merge', dir, other]],
      [0, ['begin', begun, '--owner', ownerKey, '--at', '2026-01-01T00:00:00Z']],
    ] as const) {
      const { exit, out } = limited(blocks, words);
      expect(exit).toBe(2);
      const { errors } = JSON.parse(out);
      expect(errors).toMatchObject([
        { field: 'DIR', message: 'a file would grow larger than is allowed here' },
      ]);
      expect(snapshot(dir)).toEqual(before);
      expect(existsSync(begun)).toBe(false);
    }
    expect(limited(0, ['key', '--out', join(root, 'half.json')]).exit).toBe(2);
    expect(existsSync(join(root, 'half.json'))).toBe(false);
  });

  const disk = join(root, 'disk');
  const mounted = (() => {
    mkdirSync(disk);
    return spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=256k', 'tmpfs', disk]).status === 0;
  })();
  afterAll(() => {
    if (mounted) spawnSync('umount', [disk]);
  });
  test.runIf(mounted)(
    'a full disk: refused wherever it fills up, nothing of it stays; with room it goes on',
    async () => {
      const own = layOut(join(disk, 'register'), start.files);
      const ballast = join(disk, 'ballast');
      let [refused, done] = [0, 0];
      // One page less of ballast a round: the disk fills up a step later each time.
      for (let free = 0; free < 8; free += 1) {
        rmSync(ballast, { force: true });
        execFileSync('sh', ['-c', `dd if=/dev/zero of="$0" bs=4096 2>/dev/null || true`, ballast]);
        truncateSync(ballast, Math.max(0, statSync(ballast).size - 4096 * free));
        for (const words of [['merge', own, other], checkWords(own, '--device', `d${free}`)]) {
          const before = snapshot(own);
          const { exit, said } = await call(words);
          if (exit === 0) done += 1;
          else {
            refused += 1;
            expect(said).toEqual(['DIR: the disk is full']);
            expect(snapshot(own)).toEqual(before);
          }
          expect(await found(own)).toEqual([]);
        }
      }
      expect(refused).toBeGreaterThan(2);
      expect(done).toBeGreaterThan(0);
    },
  );
  test.runIf(mounted)('a disk that can only be read: reading answers, writing is refused', async () => {
    rmSync(join(disk, 'ballast'), { force: true });
    rmSync(join(disk, 'register'), { recursive: true });
    const own = layOut(join(disk, 'read-only'), start.files);
    execFileSync('mount', ['-o', 'remount,ro', disk]);
    try {
      expect(await found(own)).toEqual([]);
      expect((await ask('mend', own)).exit).toBe(0);
      expect((await ask('merge', own, own)).exit).toBe(0);
      const begin = ['begin', join(disk, 'new'), '--owner', ownerKey, '--at', '2026-01-01T00:00:00Z'];
      await refusals(own, [checkWords(own), ['merge', own, other], begin], /^DIR: it can only be read$/);
    } finally {
      execFileSync('mount', ['-o', 'remount,rw', disk]);
    }
  });
});

describe('what is not what it should be', () => {
  test('a path that is a file, or runs through one', async () => {
    const file = join(root, 'file');
    writeFileSync(file, 'x');
    for (const [path, says] of [
      [file, /^DIR: a register in one file is only read$/],
      [join(file, 'register'), /^DIR: no register is here$/],
    ] as const) {
      await refusals(root, [checkWords(path), ['merge', path, other], ['mend', path]], says);
      const begin = ['begin', path, '--owner', ownerKey, '--at', '2026-01-01T00:00:00Z'];
      await refusals(root, [begin], /^DIR: it cannot be written/);
    }
  });
  test('a folder where the chain’s file, the pointer or the lock belongs', async () => {
    mkdirSync(join(dir, '.lock'));
    const before = snapshot(dir);
    expect(() => withLock(dir, () => undefined, 50)).toThrow('held by something that is no lock of ours');
    expect(snapshot(dir)).toEqual(before);
    rmSync(join(dir, '.lock'), { recursive: true });
    rmSync(join(dir, 'register.json'));
    mkdirSync(join(dir, 'register.json'));
    expect(await found(dir)).toEqual(['unreadable register.json']);
    mkdirSync(join(dir, start.file({ ...kd, device: 'new' })));
    await refusals(dir, [checkWords(dir, '--device', 'new')], /is no file of its own/);
    mkdirSync(join(dir, start.file({ ...kd, device: 'two' })));
    await refusals(dir, [['merge', dir, other]], /is no file of its own/);
  });
  test('a file where a folder belongs, in a chain’s way', async () => {
    rmSync(join(dir, 'bodies'), { recursive: true });
    writeFileSync(join(dir, 'bodies'), 'x');
    expect(await found(dir)).toContain('unreadable bodies');
    await refusals(dir, [['merge', dir, other]], /is no folder of its own/);
  });
  test('links are not followed: out of the folder, in circles, to nowhere', async () => {
    const away = layOut(join(root, 'away'), start.files);
    symlinkSync(join(away, start.file(kd)), join(dir, 'headers', 'z.jsonl'));
    symlinkSync('..', join(dir, 'bodies', 'round'));
    symlinkSync('/no/such/file', join(dir, 'headers', 'y.jsonl'));
    symlinkSync('loop', join(dir, 'bodies', 'loop'));
    expect(await found(dir)).toEqual([
      'unreadable bodies',
      'unreadable bodies',
      'unreadable headers',
      'unreadable headers',
    ]);
    expect((await ask('merge', dir, join(dir, 'bodies', 'loop'))).said).toEqual(['OTHER: nothing is there']);
    expect((await ask('verify', join(dir, 'bodies', 'loop'))).said).toEqual(['DIR: no register is here']);
    expect((await call(checkWords(dir))).exit).toBe(0);
    const linked = { ...kd, device: 'new' };
    symlinkSync(join(away, 'elsewhere.jsonl'), join(dir, start.file(linked)));
    await refusals(dir, [checkWords(dir, '--device', 'new')], /is no file of its own/);
    rmSync(join(dir, 'bodies'), { recursive: true });
    symlinkSync(join(away, 'bodies'), join(dir, 'bodies'));
    const before = snapshot(away);
    await refusals(dir, [['merge', dir, other]], /is no folder of its own/);
    rmSync(join(dir, 'headers'), { recursive: true });
    symlinkSync(join(away, 'headers'), join(dir, 'headers'));
    await refusals(dir, [checkWords(dir)], /its beginning cannot be read/);
    expect(snapshot(away)).toEqual(before);
  });
  test('a register may be named by a link', async () => {
    const link = join(root, 'link');
    symlinkSync(dir, link);
    expect((await call(checkWords(link))).exit).toBe(0);
    expect((await ask('merge', link, other)).exit).toBe(0);
    expect(await found(dir)).toEqual([]);
  });
  test('a pipe is never waited for', async () => {
    const pipes = [
      'headers/p.jsonl',
      'bodies/p.json',
      'register.json',
      '.beginning',
      start.file({ ...kd, device: 'new' }),
    ];
    rmSync(join(dir, 'register.json'));
    execFileSync(
      'mkfifo',
      pipes.map((path) => join(dir, path)),
    );
    const codes = await found(dir);
    expect(codes.filter((c) => c.startsWith('unreadable'))).toHaveLength(codes.length);
    await refusals(dir, [checkWords(dir, '--device', 'new')], /is no file of its own/);
    expect((await ask('merge', dir, join(dir, 'headers/p.jsonl'))).said).toEqual([
      'OTHER: it is neither file nor folder',
    ]);
    const begin = ['begin', dir, '--owner', ownerKey, '--at', '2026-01-01T00:00:00Z'];
    await refusals(dir, [begin], /a register is here/);
    execFileSync('mkfifo', [join(dir, '.lock')]);
    expect(() => withLock(dir, () => undefined, 50)).toThrow('another process is writing here');
  });
  test('folders in folders without end', async () => {
    mkdirSync(join(dir, 'headers', ...Array<string>(200).fill('a')), { recursive: true });
    const deep = join(dir, 'bodies', ...Array<string>(15).fill('b'));
    mkdirSync(deep, { recursive: true });
    writeFileSync(join(deep, 'read.json'), 'x');
    expect(await found(dir)).toEqual(['unreadable headers']);
    expect((await call(checkWords(dir))).exit).toBe(0);
  });
  test('names that differ in case only, one chain twice over, and what is not ours is left', async () => {
    const kept = { 'HEADERS/x.jsonl': 'x', 'Register.json': 'x', '.git/config': 'x', 'headers/.x': 'x' };
    const chain = start.file(kd);
    layOut(dir, { ...kept, [chain.toUpperCase().replace('HEADERS', 'headers')]: start.files[chain] ?? '' });
    const before = snapshot(dir);
    expect(await found(dir)).toEqual([]);
    expect((await call(checkWords(dir))).exit).toBe(0);
    expect((await ask('merge', dir, other)).exit).toBe(0);
    expect((await ask('mend', dir)).exit).toBe(0);
    expect(await found(dir)).toEqual([]);
    const after = snapshot(dir);
    for (const path of Object.keys(kept)) expect(after[path]).toBe(before[path]);
  });
});

describe('ten megabytes of garbage', () => {
  const garbage = {
    'line feeds alone': '\n'.repeat(10_000_000),
    'lines that begin well': '{"header":{\n'.repeat(800_000),
    'one line of brackets': `${'['.repeat(10_000_000)}\n`,
    'one line without its end': '{"header":{"v":1,'.repeat(600_000),
    'bytes by chance': Buffer.from(
      Uint32Array.from({ length: 2_500_000 }, (_, i) => Math.imul(i, 2654435761)),
    ).toString('latin1'),
  };
  test.each(Object.entries(garbage))('%s: told of, and the register goes on', async (name, text) => {
    layOut(dir, { 'headers/garbage.jsonl': text, 'bodies/garbage.json': text });
    const { result } = await ask('verify', dir, '--at', '2030-01-01T00:00:00Z');
    const { problems, entries } = result as { problems: { file: string; code: string }[]; entries: number };
    expect(entries).toBe(4);
    expect(problems.length).toBeGreaterThan(0);
    expect(problems.length).toBeLessThan(1100);
    const code = name.includes('without') ? /torn-tail/ : /unreadable|torn-tail/;
    for (const p of problems)
      expect([p.file, p.code]).toEqual(['headers/garbage.jsonl', expect.stringMatching(code)]);
    expect((await call(checkWords(dir))).exit).toBe(0);
  });
  test('as what is to be merged, it is told of in a hundred lines', async () => {
    layOut(dir, { 'headers/garbage.jsonl': 'x\n'.repeat(5_000_000) });
    const { exit, talk } = await trayhand(['register', 'merge', other, dir]);
    expect(exit).toBe(0);
    expect(talk.split('\n').filter((line) => line.includes('not taken'))).toHaveLength(101);
    expect((await ask('mend', dir)).result).toEqual({ mended: [] });
  });
  test('a file too large for any text is not read', async () => {
    layOut(dir, { 'headers/huge.jsonl': '', 'bodies/huge.json': '' });
    for (const path of ['headers/huge.jsonl', 'bodies/huge.json'])
      truncateSync(join(dir, path), 300 * 2 ** 20);
    expect(await found(dir)).toEqual(['unreadable bodies', 'unreadable headers']);
    const copy = join(root, 'huge.json');
    writeFileSync(copy, '');
    truncateSync(copy, 300 * 2 ** 20);
    expect((await ask('merge', dir, copy)).said).toEqual(['OTHER: it is larger than 256 MB']);
  });
  test('thousands of files that are not ours are read over', async () => {
    for (let i = 0; i < 2000; i += 1) writeFileSync(join(dir, 'bodies', `${i}.json`), '');
    expect(await found(dir)).toEqual([]);
  });
});

test('another process at work: waited for, then told of with its number and time', () => {
  const holder = { at: '2026-01-01T00:00:00.000Z', host: 'elsewhere', life: null, once: '', process: 7 };
  writeFileSync(join(dir, '.lock'), JSON.stringify(holder));
  const before = snapshot(dir);
  expect(() => withLock(dir, () => undefined, 50)).toThrow(
    'process 7 on elsewhere since 2026-01-01T00:00:00.000Z',
  );
  expect(snapshot(dir)).toEqual(before);
});

test('a lock that was taken away is noticed before anything is written, and the new one is left', () => {
  const lock = join(dir, '.lock');
  const own = () =>
    withLock(dir, ({ still }) => {
      writeFileSync(lock, 'another’s');
      still();
    });
  expect(own).toThrow('was taken away');
  expect(existsSync(lock)).toBe(true);
});
