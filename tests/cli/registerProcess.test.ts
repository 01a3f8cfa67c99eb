/**
 * Every verb of `register` in a process of its own, as a script calls it: a history in which each of them does its
 * work, and a call of each that is refused. What they demand in full is in the tests that call them in this process.
 */
import {
  appendFileSync,
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { group } from '../../src/cli/register.ts';
import { trayhand } from './command.ts';
import { called, mapFile, snapshot } from './registerDisk.ts';

const folder = mkdtempSync(join(tmpdir(), 'trayhand-process-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);
const names = group.verbs.map((v) => v.name);
const worked = new Set<string>();

/** What a verb prints that exits with 0. */
async function result(verb: string, ...words: readonly string[]): Promise<Readonly<Record<string, unknown>>> {
  const { exit, one, talk } = await trayhand(['register', verb, ...words]);
  expect([verb, exit, talk, one.errors]).toEqual([verb, 0, '', undefined]);
  worked.add(verb);
  return one.result;
}
/** Id of the entry that a verb signs at a minute of 2026-02-03. */
async function signed(verb: string, dir: string, key: string, minute: string, ...words: readonly string[]) {
  const now = ['--at', `2026-02-03T12:${minute}:00Z`];
  const { entry } = await result(verb, dir, '--key', at(key), ...now, ...words);
  expect(entry).toMatch(/^[0-9a-f]{64}$/);
  return String(entry);
}

test('a history of every verb', async () => {
  const dir = at('register');
  const map = ['--map', mapFile(folder)];
  const made = await Promise.all(['owner', 'kd', 'lz', 'next'].map((k) => result('key', '--out', at(k))));
  const [, kd = '', lz = '', next = ''] = made.map((one) => String(one['publicKey']));
  await result('begin', dir, '--owner', at('owner'), '--at', '2026-02-01T12:00:00Z');
  const appoint = (minute: string, key: string, person: string) =>
    signed('appoint', dir, 'owner', minute, '--witness', key, '--person', person, '--tasks', 'all', ...day);
  const day = ['--on', '2026-02-01'];
  await appoint('00', kd, 'KD');
  await appoint('01', lz, 'LZ');

  const sheet = ['--sheet', 'measure-and-mark', '--bench', '12', '--out', at('set.json')];
  await result('set', dir, '--key', at('kd'), '--person', 'DM', ...sheet, '--at', '2026-02-03T12:02:00Z');
  writeFileSync(at('given.json'), '{}');
  await result('answer', at('set.json'), '--answers', at('given.json'), '--out', at('answers.json'));
  const answers = ['--answers', at('answers.json')];
  const blank = await signed('sign', dir, 'kd', '03', ...answers, '--outcome', 'not-yet', ...day);
  const why = ['--why', 'because'];
  await signed('correct', dir, 'kd', '04', '--entry', blank, '--evidence', at('answers.json'), ...why);

  const dm = ['--person', 'DM'];
  const seen = ['--task', 'T3', '--outcome', 'shown', ...day, ...map];
  const check = await signed('check', dir, 'kd', '05', ...dm, ...seen);
  const second = await signed('second', dir, 'lz', '06', '--entry', check, ...map);
  const asked = ['--at', '2026-02-10T12:00:00Z', ...map];
  const { people } = await result('board', dir, '--on', '2026-02-04', ...asked);
  expect(people).toContainEqual(
    expect.objectContaining({
      id: 'DM',
      tasks: expect.objectContaining({ T3: expect.objectContaining({ standing: 'shown' }) }),
    }),
  );
  const shift = ['2026-02-04T07:00:00Z', '2026-02-04T15:00:00Z'] as const;
  const span = ['--from', shift[0], '--to', shift[1]];
  expect(await result('may', dir, ...dm, '--task', 'T3', ...span, ...asked)).toMatchObject({ answer: 'yes' });
  const paper = ['--ticket', 'W1', '--issuer', 'a house', '--number', '7', '--until', '2027-01-01'];
  await signed('ticket', dir, 'owner', '07', ...dm, ...paper);
  await signed('assigned', dir, 'owner', '08', '--job', 'J1', ...dm, '--shift', shift.join('/'));
  await signed('withdraw', dir, 'lz', '09', '--entry', second, ...why);
  const file = await result('person', dir, ...dm, '--at', '2026-02-10T12:00:00Z');
  expect(file['entries']).toHaveLength(7);

  const other = at('other');
  cpSync(dir, other, { recursive: true });
  const gone = await signed('check', other, 'lz', '10', '--person', 'EI', ...seen);
  await signed('check', other, 'lz', '11', '--person', 'EI', ...seen);
  expect(await result('merge', dir, other)).toEqual({ added: 2, entries: 12, dropped: 0 });
  const chain = (key: string) =>
    join(other, 'headers', readdirSync(join(other, 'headers')).find((f) => f.startsWith(key)) ?? key);
  appendFileSync(chain(kd), '{"header":');
  expect((await result('mend', other))['mended']).toHaveLength(1);
  // A line that is lost for good: the one before the last of a chain.
  const lines = readFileSync(chain(lz), 'utf8').split('\n');
  writeFileSync(chain(lz), lines.filter((_, i) => i !== lines.length - 3).join('\n'));
  expect((await trayhand(['register', 'verify', other, '--at', '2026-02-10T12:00:00Z'])).exit).toBe(1);
  await signed('settle', other, 'owner', '12', '--entry', gone, ...why);
  expect((await result('verify', other, '--at', '2026-02-10T12:00:00Z'))['problems']).toEqual([
    expect.objectContaining({ code: 'gap', settled: true }),
  ]);

  await signed('retire', dir, 'owner', '13', '--witness', kd, '--after', check, ...why);
  await signed('succeed', dir, 'owner', '14', '--next', next);
  await signed('take-over', dir, 'next', '15', ...why);
  await signed('erase', dir, 'next', '16', ...dm, ...why);
  expect(await result('verify', dir, '--at', '2026-02-10T12:00:00Z')).toMatchObject({
    owner: next,
    entries: 16,
    problems: [],
  });
  expect((await result('tasks'))['tasks']).not.toHaveLength(0);
  expect([...worked].sort()).toEqual([...names].sort());
}, 240_000);

test('a call of every verb that is refused: exit 2, every fault, as in this process', async () => {
  const before = snapshot(folder);
  const refused = async (name: string) => {
    const words = name === 'tasks' ? ['--map', at('nowhere')] : [];
    const places = (group.verbs.find((v) => v.name === name)?.words ?? []).map(() => at('nowhere'));
    const { exit, one } = await trayhand(['register', name, ...places, ...words]);
    expect([name, exit, one]).toEqual([name, 2, (await called(name, ...places, ...words)).one]);
    expect(one.errors.length).toBeGreaterThan(0);
  };
  for (let i = 0; i < names.length; i += 2) await Promise.all(names.slice(i, i + 2).map(refused));
  expect(snapshot(folder)).toEqual(before);
}, 240_000);
