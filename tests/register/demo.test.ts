/** The demo register is real: every signature holds, on the demo's own day. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import demo from '../../content/demo/demo.json' with { type: 'json' };
import people from '../../content/demo/people.json' with { type: 'json' };
import { siteMap } from '../../src/cli/register/content.ts';
import { readFolder } from '../../src/cli/register/folder.ts';
import { root } from '../../src/cli/root.ts';
import { type Board, boardOf } from '../../src/register/board.ts';
import { openRegister, type Register } from '../../src/register/register.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { verify } from './book.ts';

const folder = join(root, 'content/demo/register');
let register: Register;
let board: Board;
beforeAll(async () => {
  register = await openRegister(readFolder(folder), {
    verify,
    now: Date.parse(demo.at),
    dayIn,
    owner: demo.owner,
  });
  board = boardOf(register.judged, {
    on: demo.on,
    map: await siteMap(),
    people: people.people.map((p) => p.id),
  });
});
const stands = (person: string, task: string) => {
  const found = board.people.find((p) => p.id === person)?.tasks[task];
  return [found?.standing, ...(found?.why ?? []).map((w) => w.code)].join(' ');
};

describe('the demo works', () => {
  test('verifies without a problem', () => {
    expect(register.judged.problems).toEqual([]);
    expect(register.judged.authority.owner).toBe(demo.owner);
    expect(register.judged.signers.map((s) => s.person).sort()).toEqual(['p-07', 'p-08', 'p-10']);
    expect(register.judged.signers.every((s) => s.at.slice(0, 10) <= demo.on)).toBe(true);
  });
  test('its crew has every standing and the reasons N, T and a revision', () => {
    expect([demo.works, demo.zone, demo.on, board.zone]).toEqual([
      'Alder Creek',
      'America/Denver',
      '2026-03-09',
      'America/Denver',
    ]);
    const all = demo.crew.flatMap((id) =>
      Object.keys(board.people[0]?.tasks ?? {}).map((task) => stands(id, task)),
    );
    expect([...new Set(all)].sort()).toEqual([
      'not shown',
      'practice only',
      'show again 2',
      'show again N',
      'show again T',
      'shown',
    ]);
    expect([
      stands('p-04', 'T07'),
      stands('p-03', 'T13'),
      stands('p-11', 'T04'),
      stands('p-13', 'T14'),
    ]).toEqual(['show again 2', 'show again N', 'show again T', 'show again T']);
    expect([
      stands('p-05', 'T08'),
      stands('p-04', 'T08'),
      stands('p-11', 'T08'),
      stands('p-03', 'T08'),
    ]).toEqual(['shown', 'practice only', 'practice only', 'not shown']);
    expect(stands('p-14', 'T06')).toBe('not shown'); // stopped for safety
  });
  test('no key is kept, and names stand in people.json alone', () => {
    const files = readdirSync(new URL('../../content/demo/', import.meta.url));
    expect(files.some((name) => /key/.test(name))).toBe(false);
    const text = Object.values(register.files).join('');
    expect(text).not.toMatch(/seed|secret/);
    for (const { name } of people.people)
      for (const part of name.split(' ')) expect(text).not.toContain(part);
    // An id says nothing of the name either.
    for (const { id } of people.people) expect(id).toMatch(/^p-\d\d$/);
    expect(readFileSync(new URL('../../content/demo/demo.json', import.meta.url), 'utf8')).not.toMatch(
      /seed|secret/,
    );
  });
});
