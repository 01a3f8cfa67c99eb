/** Who is shown for what a job needs: a pair left out is the plain one, and no other way counts for or against it. */
import { beforeAll, describe, expect, test } from 'vitest';
import type { PersonRow } from '../../src/register/board.ts';
import { meetsNeed, type Need, waysOf } from '../../src/register/needs.ts';
import { Book, kd, map } from './book.ts';

let people: ReadonlyMap<string, PersonRow>;
beforeAll(async () => {
  const book = await Book.staffed();
  const t2 = (person: string, variant: Record<string, string>, more = {}) =>
    book.on('2026-03-02').check(kd, person, 'T2', '2026-03-02', { variant, ...more });
  await t2('EI', { width: '6', joint: 'butt' });
  await t2('DM', { width: '4', joint: 'socketed' });
  await t2('HV', { width: '4', joint: 'socketed' });
  await t2('HV', { width: '6', joint: 'butt' }, { outcome: 'not-yet' });
  await t2('HV', { width: '2', joint: 'butt' }, { manner: 'simulated' });
  for (const id of ['T1', 'T4']) await book.check(kd, 'JT', id, '2026-03-02', { revision: 2 });
  await book.check(kd, 'PO', 'T1', '2026-03-02', { revision: 2 });
  const board = await book.board({ on: '2026-03-03' });
  people = new Map(board.people.map((row) => [row.id, row]));
});
const meets = (id: string, need: Need) => meetsNeed(people.get(id) as PersonRow, need, map);

describe('what a job needs', () => {
  test('shown in another way only: the plain one is not met', () => {
    expect(people.get('EI')?.tasks['T2']?.standing).toBe('shown');
    expect(meets('EI', { task: 'T2' })).toBe(false);
    expect(meets('EI', { task: 'T2', variant: { width: '6', joint: 'butt' } })).toBe(true);
    expect(meets('EI', { task: 'T2', variant: { width: '6' } })).toBe(false);
  });
  test('shown in the plain way: what another way comes to takes nothing from it', () => {
    expect(people.get('HV')?.tasks['T2']?.standing).not.toBe('shown');
    expect(meets('HV', { task: 'T2' })).toBe(true);
    expect(meets('HV', { task: 'T2', variant: {} })).toBe(true);
    expect(meets('DM', { task: 'T2', variant: { joint: 'socketed' } })).toBe(true);
    expect(meets('DM', { task: 'T2', variant: { joint: 'butt' } })).toBe(false);
  });
  test('a heading asks its parts', () => {
    expect(meets('JT', { task: 'T9' })).toBe(true);
    expect(meets('PO', { task: 'T9' })).toBe(false);
    expect(waysOf(map, { task: 'T9' })?.map(({ task }) => task.id)).toEqual(['T1', 'T4']);
  });
  test('no such task, no such pair, no such value', () => {
    expect(meets('DM', { task: 'T77' })).toBe(false);
    expect(meets('DM', { task: 'T2', variant: { colour: 'red' } })).toBe(false);
    expect(meets('JT', { task: 'T9', variant: { width: '4' } })).toBe(false);
    expect(meets('DM', { task: 'T2', variant: { width: '12' } })).toBe(false);
  });
});
