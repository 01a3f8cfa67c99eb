import { describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { taskMapOf } from '../../src/schema/task.ts';

const { library } = readLibrary(contentFiles());
const map = new Map(taskMapOf(library).tasks.map((t) => [t.id, t]));

describe('the map as the register takes it', () => {
  test('every task, none of the tickets, by id', () => {
    const ids = [...map.keys()];
    expect(ids).toHaveLength(21);
    expect(ids).toEqual([...ids].sort());
    expect(ids.some((id) => id.startsWith('W'))).toBe(false);
  });

  test('exactly the fields of a --map file', () => {
    for (const task of map.values()) {
      expect(Object.keys(task)).toEqual([
        'id',
        'months',
        'second',
        'tickets',
        'variants',
        'revisions',
        'parts',
        'trainHours',
      ]);
    }
  });

  // Months: common practice, no source (suggested; a site adopts its own).
  test.each([
    [12, ['T04', 'T05', 'T08e', 'T08f', 'T09', 'T10', 'T11', 'T15']],
    [24, ['T01', 'T02', 'T03', 'T06', 'T07', 'T08', 'T08a', 'T08b', 'T08c', 'T08d', 'T12', 'T13', 'T14']],
  ])('%i months', (months, ids) => {
    expect([...map.values()].filter((t) => t.months === months).map((t) => t.id)).toEqual(ids);
  });

  test('every task assumes the start-of-work check', () => {
    expect([...map.values()].every((t) => t.tickets.includes('W1'))).toBe(true);
  });

  test('joining has its second revision, which asks to show again', () => {
    expect(map.get('T07')?.revisions).toEqual([
      { n: 1, on: '2025-11-03', showAgain: false },
      { n: 2, on: '2026-01-12', showAgain: true },
    ]);
    const others = [...map.values()].filter((t) => t.id !== 'T07');
    expect(others.every((t) => t.revisions.length === 1 && t.revisions[0]?.on === '2025-11-03')).toBe(true);
  });

  test('the plain value stands first', () => {
    expect(map.get('T07')?.variants).toEqual({
      width: ['4', '2', '6'],
      metal: ['aluminium', 'galvanised', 'stainless'],
      position: ['horizontal', 'vertical', 'on-edge'],
      joint: ['socketed', 'butt'],
      place: ['bench', 'ladder', 'lift', 'scaffold'],
    });
  });

  test('a heading takes the hours of its parts', () => {
    const heading = map.get('T08');
    const hours = heading?.parts.reduce((sum, id) => sum + (map.get(id)?.trainHours ?? Number.NaN), 0);
    expect(heading?.trainHours).toBe(hours);
  });
});

describe('the order of tasks on a run', () => {
  /** Whether one task comes, over others, before another. */
  function precedes(first: string, second: string): boolean {
    const after = library.tasks.get(second)?.after ?? [];
    return after.some((id) => id === first || precedes(first, id));
  }
  // The order of the job: common practice, no source; cables after the run is whole also NEC 2023 392.18(B).
  test.each([
    ['T01', 'T02'],
    ['T01', 'T05'],
    ['T01', 'T13'],
    ['T02', 'T03'],
    ['T03', 'T04'],
    ['T05', 'T06'],
    ['T06', 'T07'],
    ['T06', 'T08'],
    ['T03', 'T07'],
    ['T03', 'T08a'],
    ['T07', 'T09'],
    ['T08', 'T10'],
    ['T10', 'T11'],
    ['T11', 'T12'],
    ['T13', 'T12'],
    ['T12', 'T14'],
    ['T14', 'T15'],
    ['T01', 'T15'],
  ])('%s before %s, and never the other way', (first, second) => {
    expect(precedes(first, second)).toBe(true);
    expect(precedes(second, first)).toBe(false);
  });

  test.each([
    ['T07', 'T08'],
    ['T09', 'T10'],
    ['T02', 'T05'],
  ])('%s and %s in either order', (one, other) => {
    expect(precedes(one, other) || precedes(other, one)).toBe(false);
  });
});
