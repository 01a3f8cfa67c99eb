/** Real processes that write into one folder at once: all is there afterwards, and no chain has two histories. */
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { hashOf } from '../../src/register/bytes.ts';
import { Book, kd, lz, next } from '../register/book.ts';
import { type Answer, trayhand } from './command.ts';
import { ask, found, keyFile, layOut, mapFile, snapshot } from './registerDisk.ts';

const root = mkdtempSync(join(tmpdir(), 'trayhand-race-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const ownerKey = keyFile(root, 1, 'office');
const kdKey = keyFile(root, 2, 'kd-phone');
const lzKey = keyFile(root, 3, 'lz-phone');
const tasks = mapFile(root);
const start = await Book.staffed();
const more = start.copy();
await more.on('2026-02-03').check({ ...kd, device: 'desk' }, 'EF', 'T1', '2026-02-03');
await more.check({ ...lz, device: 'desk' }, 'EF', 'T2', '2026-02-03');
const other = layOut(join(root, 'other'), more.files);

let n = 0;
const folder = (): string => {
  n += 1;
  return layOut(join(root, String(n)), start.files);
};
const check = (dir: string, key: string, ...device: string[]): Promise<Answer> => {
  const seen = ['--person', 'DM', '--task', 'T1', '--outcome', 'shown', '--on', '2026-02-05', '--map', tasks];
  return trayhand(['register', 'check', dir, '--key', key, ...device, ...seen]);
};
/** All were answered; their entries are there, and nothing is wrong. */
async function isWhole(dir: string, answers: readonly Answer[], entries: number): Promise<void> {
  expect(answers.map(({ exit, out }) => (exit === 0 ? '' : out)).filter((out) => out !== '')).toEqual([]);
  expect(await found(dir)).toEqual([]);
  expect((await ask('verify', dir, '--at', '2030-01-01T00:00:00Z')).result.entries).toBe(entries);
  expect(readdirSync(dir).sort()).toEqual(['bodies', 'headers', 'register.json']);
  const lines = Object.values(snapshot(dir)).flatMap((text) => text.split('\n'));
  const ids = lines.flatMap((line) => {
    const header = /^(?:file \d+ )?\{"header":(\{.*\}),"signature":"[0-9a-f]+"\}$/.exec(line)?.[1];
    return header === undefined ? [] : [hashOf(header)];
  });
  for (const { one } of answers) if ('entry' in one.result) expect(ids).toContain(one.result['entry']);
}

describe('at once', () => {
  test('four checks, of two witnesses, on one device and on two', async () => {
    const dir = folder();
    const answers = await Promise.all([
      check(dir, kdKey),
      check(dir, kdKey),
      check(dir, lzKey),
      check(dir, lzKey, '--device', 'desk'),
    ]);
    expect(new Set(answers.map(({ one }) => one.result['entry'])).size).toBe(4);
    await isWhole(dir, answers, 3 + 4);
  });
  test('an appointment, checks, a merge and another', async () => {
    const dir = folder();
    const words = ['--key', ownerKey, '--witness', next.publicKey, '--person', 'NX', '--tasks', 'all'];
    const writing = Promise.all([
      trayhand(['register', 'appoint', dir, ...words, '--on', '2026-02-05', '--map', tasks]),
      check(dir, kdKey),
      trayhand(['register', 'merge', dir, other]),
      check(dir, lzKey),
      trayhand(['register', 'merge', dir, other]),
    ]);
    let at = true;
    const answers = writing.finally(() => {
      at = false;
    });
    // Whoever reads meanwhile sees a register that is whole, now with less and now with more in it.
    for (let reads = 0; at; reads += 1) {
      expect([reads, await found(dir)]).toEqual([reads, []]);
      await new Promise((done) => setTimeout(done, 5));
    }
    await isWhole(dir, await answers, 3 + 1 + 2 + 2);
  });
  test('a check on a folder whose last writer was killed, by two at once', async () => {
    const dir = folder();
    const gone = {
      at: '2026-01-01T00:00:00.000Z',
      host: hostname(),
      life: null,
      once: '',
      process: 2 ** 22 + 1,
    };
    writeFileSync(join(dir, '.lock'), JSON.stringify(gone));
    await isWhole(dir, await Promise.all([check(dir, kdKey), check(dir, lzKey), check(dir, kdKey)]), 3 + 3);
  });
  test('two beginnings: one wins, the other is refused', async () => {
    const dir = join(root, 'begun');
    const begin = (key: string): Promise<Answer> => trayhand(['register', 'begin', dir, '--owner', key]);
    const answers = await Promise.all([begin(ownerKey), begin(kdKey), begin(lzKey)]);
    expect(answers.map(({ exit }) => exit).sort()).toEqual([0, 2, 2]);
    for (const { exit, one } of answers) {
      if (exit === 2)
        expect(one.errors).toMatchObject([
          { field: 'DIR', message: expect.stringContaining('a register is here') },
        ]);
    }
    expect(await found(dir)).toEqual([]);
    expect((await ask('verify', dir, '--at', '2030-01-01T00:00:00Z')).result.entries).toBe(1);
  });
});
