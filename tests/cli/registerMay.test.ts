/** `register may` and `register person` as scripts call them. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { map } from '../register/book.ts';
import { called } from './registerDisk.ts';

const folder = mkdtempSync(join(tmpdir(), 'trayhand-may-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);
const withMap = ['--map', at('map.json')];
const may = async (person: string, task: string, from: string, to: string, ...more: string[]) => {
  const span = ['--person', person, '--task', task, '--from', from, '--to', to];
  const { exit, one } = await called('may', at('r'), ...span, ...withMap, ...more);
  expect(exit).toBe(0);
  return one.result as unknown as { answer: string; reasons: { say: string; entry: string | null }[] };
};

let entry = '';
beforeAll(async () => {
  writeFileSync(at('map.json'), JSON.stringify(map));
  for (const key of ['owner', 'kd']) await called('key', '--out', at(key));
  const { one } = await called(
    'begin',
    at('r'),
    '--owner',
    at('owner'),
    '--zone',
    'America/Denver',
    '--at',
    '2026-01-01T12:00:00Z',
  );
  expect(one.ok).toBe(true);
  const appoint = ['--key', at('owner'), '--witness', at('kd'), '--person', 'KD', '--tasks', 'all'];
  await called(
    'appoint',
    at('r'),
    ...appoint,
    '--on',
    '2026-01-01',
    '--at',
    '2026-01-01T13:00:00Z',
    ...withMap,
  );
  const seen = [
    '--key',
    at('kd'),
    '--person',
    'DM',
    '--task',
    'T2',
    '--outcome',
    'shown',
    '--on',
    '2026-02-02',
  ];
  const made = await called('check', at('r'), ...seen, '--at', '2026-02-04T12:00:00Z', ...withMap);
  entry = made.one.result['entry'] as string;
  expect(entry).toMatch(/^[0-9a-f]{64}$/);
}, 60_000);

test('yes, with the entry it rests on, in words', async () => {
  expect(await may('DM', 'T2', '2026-03-09T22:00:00-06:00', '2026-03-10T06:00:00-06:00')).toEqual({
    answer: 'yes',
    reasons: [{ say: 'shown on 2026-02-02, good to the end of 2027-02-02', entry }],
  });
});
test('to the end of the last day in the register’s zone, by the months asked with, from what was known', async () => {
  const night = ['2026-03-02T16:00:00-07:00', '2026-03-03T00:00:00-07:00'] as const;
  const months = ['--months', 'T2=1'];
  expect((await may('DM', 'T2', ...night, ...months)).answer).toBe('yes');
  expect((await may('DM', 'T2', night[0], '2026-03-03T07:00:01Z', ...months)).answer).toBe('no');
  expect((await may('DM', 'T2', ...night, '--known-on', '2026-02-03')).answer).toBe('not enough evidence');
  expect((await may('DM', 'T2', ...night, '--known-on', '2026-02-04')).answer).toBe('yes');
  expect((await may('DM', 'T2', ...night, '--variant', 'width=6')).answer).toBe('not enough evidence');
  expect((await may('DM', 'T2', ...night, '--variant', 'width=4,joint=socketed')).answer).toBe('yes');
  // not entered yet at the time that is now
  expect((await may('DM', 'T2', ...night, '--at', '2026-02-03T11:59:59Z')).answer).toBe(
    'not enough evidence',
  );
});
test('everything wrong at once, by the options as they are written', async () => {
  const wrong = [
    '--person',
    'D M',
    '--task',
    'T9',
    '--from',
    '2026-03-09T22:00:00',
    '--to',
    '2026-02-30T06:00:00Z',
  ];
  const more = ['--known-on', '2026-13-01', '--months', 'T9=2', '--at', 'soon', '--variant', 'width'];
  const { exit, one } = await called('may', at('r'), ...wrong, ...more, ...withMap);
  expect(exit).toBe(2);
  const fields = one.errors.map((e) => e.field).sort();
  expect(fields).toEqual([
    '--at',
    '--from',
    '--known-on',
    '--months',
    '--person',
    '--task',
    '--to',
    '--variant',
  ]);
});
test('a span that does not end after it starts, pairs nobody knows, a folder that holds nothing', async () => {
  const span = ['--from', '2026-03-09T22:00:00-06:00', '--to', '2026-03-10T04:00:00Z'];
  const asked = ['--person', 'DM', '--task', 'T2', '--variant', 'width=3,metal=steel'];
  const { exit, one } = await called('may', at('nothing'), ...asked, ...span, ...withMap);
  expect(exit).toBe(2);
  expect(one.errors.map((e) => e.field).sort()).toEqual([
    '--to',
    '--variant.metal',
    '--variant.width',
    'DIR',
  ]);
  expect(one.errors.find((e) => e.field === '--to')?.value).toBe('2026-03-10T04:00:00Z');
});
test('everything held about a person; an id that is none; one that nobody has', async () => {
  const { exit, one } = await called('person', at('r'), '--person', 'DM');
  expect(exit).toBe(0);
  const { entries, bodies } = one.result as unknown as {
    entries: { id: string }[];
    bodies: { body: unknown }[];
  };
  expect(entries.map((e) => e.id)).toEqual([entry]);
  expect(bodies).toMatchObject([{ body: { task: 'T2', on: '2026-02-02', outcome: 'shown' } }]);
  const nobody = await called('person', at('r'), '--person', 'ZZ');
  expect(nobody.one.result).toEqual({ id: 'ZZ', entries: [], bodies: [] });
  const wrong = await called('person', at('r'), '--person', 'D M');
  expect([wrong.exit, wrong.one.errors.map((e) => e.field)]).toEqual([2, ['--person']]);
});
