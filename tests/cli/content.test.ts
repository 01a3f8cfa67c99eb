import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { group } from '../../src/cli/content.ts';
import { root } from '../../src/cli/root.ts';
import { trayhand } from './command.ts';
import { inProcess } from './inProcess.ts';

const folder = mkdtempSync(join(tmpdir(), 'trayhand-content-'));

beforeAll(() => {
  cpSync(join(root, 'content'), join(folder, 'content'), { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('content without a fault: exit 0', async () => {
  const { exit, one } = await trayhand(['content', 'check']);
  expect(one.result['faults']).toEqual([]);
  expect(one.result['files']).toBeGreaterThan(50);
  expect([exit, one.ok, one.steps, one.sources]).toEqual([0, true, [], []]);
});

test('a sheet narrowed until nothing can be drawn of it', async () => {
  const file = 'content/sheets/too-narrow.yaml';
  writeFileSync(
    join(folder, file),
    `id: too-narrow
number: 902
title: { en: Too narrow }
tasks: [T05]
families:
  - { family: cut-with-insertion, draws: 1, narrow: { first: { choice: [butt] }, second: { choice: [free] } } }
rule: { need: 1, of: 1 }
`,
  );
  const { exit, one } = await inProcess(group, ['check', '--in', folder]);
  rmSync(join(folder, file));
  const faults = one.result['faults'] as Record<string, unknown>[];
  expect(exit).toBe(1);
  expect(faults.filter((fault) => fault['file'] === file)).toEqual([
    {
      file,
      field: 'families[0].narrow',
      value: { first: { choice: ['butt'] }, second: { choice: ['free'] } },
      message: expect.stringContaining('cut-with-insertion has nothing to draw at bench 1'),
      todo: 'let it choose from more',
    },
  ]);
});

test('content with faults: exit 1, still ok, all of them with file, field, value, message, todo', async () => {
  writeFileSync(join(folder, 'content/tasks/T16.yaml'), 'id: T15\n');
  writeFileSync(join(folder, 'content/words/en/more.json'), '{"more": {"done": "Completed"}}');
  const { exit, one } = await trayhand(['content', 'check', '--in', folder]);
  expect([exit, one.ok]).toEqual([1, true]);
  const faults = one.result['faults'] as Record<string, unknown>[];
  expect([...new Set(faults.map((f) => f['file']))]).toEqual([
    'content/tasks/T16.yaml',
    'content/words/en/more.json',
  ]);
  for (const fault of faults)
    expect(Object.keys(fault)).toEqual(['file', 'field', 'value', 'message', 'todo']);
  expect(faults.at(-1)).toEqual({
    file: 'content/words/en/more.json',
    field: 'more.done',
    value: 'Completed',
    message: '"Completed" never stands on a page',
    todo: 'say shown, not shown, or what remains',
  });
});

test('a folder without content: exit 2', async () => {
  const { exit, one } = await trayhand(['content', 'check', '--in', join(folder, 'content')]);
  expect([exit, one.ok, one.errors[0]?.field]).toEqual([2, false, '--in']);
});

test('a folder is named from where the command was called, as npm tells it', async () => {
  const env = { npm_lifecycle_event: 'trayhand', INIT_CWD: folder };
  const { exit, one } = await trayhand(['content', 'check', '--in', 'nowhere'], '', env);
  expect([exit, one.errors[0]?.value]).toEqual([2, join(folder, 'nowhere')]);
  expect((await trayhand(['content', 'check', '--in', '.'], '', env)).one.ok).toBe(true);
});

test('the manual in src/cli/README.md has a row for every verb, with its options, and no other', () => {
  const manual = readFileSync(new URL('../../src/cli/README.md', import.meta.url), 'utf8');
  const part = manual.slice(manual.indexOf('\n## content\n') + 1).split('\n## ')[0] ?? '';
  const rows = part.split('\n').filter((line) => line.startsWith('| `'));
  expect(rows.map((row) => /^\| `(\w+)/.exec(row)?.[1])).toEqual(group.verbs.map(({ name }) => name));
  group.verbs.forEach((verb, k) => {
    for (const option of Object.keys(verb.options ?? {})) expect(rows[k]).toContain(`--${option}`);
  });
});
