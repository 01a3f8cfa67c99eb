/** The demo register is real: every signature holds, on the demo's own day. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import demo from '../../content/demo/demo.json' with { type: 'json' };
import people from '../../content/demo/people.json' with { type: 'json' };
import { siteMap, siteRegrade } from '../../src/cli/register/content.ts';
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
    regrade: await siteRegrade(register.files),
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
    expect(register.judged.signers.map((s) => s.person).sort()).toEqual([
      'p-07',
      'p-08',
      'p-10',
      'p-16',
      'p-16',
    ]);
    expect(register.judged.signers.every((s) => s.at.slice(0, 10) <= demo.on)).toBe(true);
  });
  test('its crew has every standing and every reason', () => {
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
      'not shown 2',
      'practice only',
      'show again 2',
      'show again ?',
      'show again N',
      'show again T',
      'show again W',
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
    expect([
      stands('p-15', 'T05'), // taken back
      stands('p-04', 'T05'), // its answers do not pass
      stands('p-09', 'T05'), // the same, corrected since
      stands('p-12', 'T15'), // no second witness yet
      stands('p-13', 'T15'), // seconded
    ]).toEqual(['show again W', 'show again ?', 'shown', 'not shown 2', 'shown']);
  });
  test('a retired witness’s entries stand, an erased person’s bodies are gone, the last ticket of a kind counts', () => {
    const { authority, view } = register.judged;
    expect(authority.retirements).toHaveLength(1);
    expect([stands('p-06', 'T01'), stands('p-02', 'T12')]).toEqual(['shown', 'shown']);
    expect([...view.erased]).toEqual(['p-17']);
    const about = view.list.filter(({ header }) => header.about === 'p-17');
    expect(about.map(({ header }) => header.kind)).toEqual(['check', 'ticket', 'check', 'erase']);
    const held = about.filter(({ header }) => view.held.bodies.has(header.body ?? ''));
    expect(held.map(({ header }) => header.kind)).toEqual(['erase']);
    const tickets = (id: string) =>
      board.people.find((p) => p.id === id)?.tickets.map((t) => `${t.ticket} ${t.number} ${t.until}`);
    expect(tickets('p-11')).toEqual(['W1 AC-0471 2027-01-18']);
    expect(tickets('p-12')).toEqual(['W6 AC-0486 2027-01-11']);
  });
  test('no key is kept, and names stand in people.json alone', () => {
    const files = readdirSync(new URL('../../content/demo/', import.meta.url));
    expect(files.some((name) => /key/.test(name))).toBe(false);
    const text = Object.values(register.files).join('');
    // Answers name the seeds of their draws; the seed of a key is bare digits.
    expect(/secret|passphrase|wrapped|"seed":"(?!measure-and-mark\/\d+\/\d")/.test(text)).toBe(false);
    for (const { name } of people.people)
      for (const part of name?.split(' ') ?? []) expect(text.includes(part)).toBe(false);
    // An id says nothing of the name either.
    for (const { id } of people.people) expect(id).toMatch(/^p-\d\d$/);
    expect(readFileSync(new URL('../../content/demo/demo.json', import.meta.url), 'utf8')).not.toMatch(
      /seed|secret/,
    );
  });
});
