/** Where the site has adopted that a witness must be shown himself, the command asks it as the page does. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Adopted, adoptedProject } from '../adoptedProject.ts';

let site: Adopted;
let dir: string;
const at = (name: string) => join(site.folder, name);
const call = (...words: readonly string[]) => site.command('register', ...words);
const check = (key: string, person: string, task: string, on: string, ...more: readonly string[]) =>
  call(
    ...['check', dir, '--key', at(key), '--person', person, '--task', task, '--outcome', 'shown'],
    ...['--on', on, '--at', `${on}T20:00:00Z`, ...more],
  );
const publicOf = (key: string) =>
  (JSON.parse(readFileSync(at(key), 'utf8')) as { publicKey: string }).publicKey;

beforeAll(async () => {
  // The paper's day is 5 January 2026.
  site = adoptedProject([
    '{ key: own-standing, value: true }',
    '{ key: own-standing-in, of: T13, value: false }',
  ]);
  dir = at('register');
  for (const key of ['owner.json', 'kd.json', 'lz.json'])
    await call('key', '--out', at(key), '--device', 'desk');
  const when = ['--at', '2026-01-01T08:00:00Z'];
  await call('begin', dir, '--owner', at('owner.json'), '--person', 'OW', ...when);
  for (const [key, person] of [
    ['kd.json', 'KD'],
    ['lz.json', 'LZ'],
  ] as const) {
    const who = ['--witness', publicOf(key), '--person', person, '--tasks', 'all', '--on', '2026-01-01'];
    await call('appoint', dir, '--key', at('owner.json'), ...who, ...when);
  }
}, 60_000);
afterAll(() => site.remove());

test('a witness who is not shown is refused from the paper’s day on, and nothing is written', async () => {
  const refused = await check('kd.json', 'DM', 'T05', '2026-01-05');
  expect(refused.code).toBe(2);
  expect(JSON.parse(refused.out)).toMatchObject({
    ok: false,
    errors: [
      {
        field: '--key',
        message: 'the witness’s own standing in T05 on 2026-01-05 is not shown',
        todo: expect.stringContaining('this site asks a witness of T05 to be shown in it himself'),
      },
    ],
  });
  expect(JSON.parse((await call('verify', dir)).out)).toMatchObject({ result: { entries: 3 } });
});

test('a task that the site left out, and another map than the site’s, ask nothing', async () => {
  expect((await check('kd.json', 'DM', 'T13', '2026-01-06')).code).toBe(0);
  const map = at('map.json');
  const { result } = JSON.parse((await call('tasks')).out) as { result: unknown };
  writeFileSync(map, JSON.stringify(result));
  expect((await check('kd.json', 'DM', 'T05', '2026-01-06', '--map', map)).code).toBe(0);
});

test('seen before the paper’s day he is shown by another, and signs after it', async () => {
  const shown = await call(
    ...['check', dir, '--key', at('lz.json'), '--person', 'KD', '--task', 'T05', '--outcome', 'shown'],
    ...['--on', '2026-01-04', '--at', '2026-01-07T08:00:00Z'],
  );
  expect(shown.code).toBe(0);
  expect((await check('kd.json', 'AW', 'T05', '2026-01-08')).code).toBe(0);
  // A variant he was never seen in.
  expect((await check('kd.json', 'AW', 'T05', '2026-01-08', '--variant', 'width=6')).code).toBe(2);
  expect(JSON.parse((await call('verify', dir)).out)).toMatchObject({ result: { problems: [] } });
});
