/** Shift, place and paper go into the rows of a check and come back; nothing else is taken for them. */
import { describe, expect, test } from 'vitest';
import { check } from '../../src/register/acts/check.ts';
import type { Measured } from '../../src/register/bodies.ts';
import {
  type Circumstances,
  circumstanceRows,
  circumstancesOf,
  measuresOf,
  places,
  shifts,
} from '../../src/register/circumstances.ts';
import { Book, kd, map } from './book.ts';

const all: readonly Circumstances[] = [null, ...shifts].flatMap((shift) =>
  [null, ...places].flatMap((place) => [false, true].map((paper) => ({ shift, place, paper }))),
);
const piece: Measured = { what: 'piece 1', wanted: `7'-8 5/8"`, got: `7'-8 9/16"`, tool: 'tape 14' };

test.each(all)('$shift, $place, $paper come back from the rows, beside what was measured', (said) => {
  const rows = [piece, ...circumstanceRows(said)];
  expect(circumstancesOf(rows)).toEqual(said);
  expect(measuresOf(rows)).toEqual([piece]);
  expect(rows).toHaveLength(1 + Object.values(said).filter((one) => one !== null && one !== false).length);
});

describe('a row that differs in anything is a measure', () => {
  const [row] = circumstanceRows({ shift: 'night', place: null, paper: false }) as [Measured];
  test.each([
    ['another name', { ...row, what: 'Shift' }],
    ['another question', { ...row, wanted: 'night' }],
    ['another answer', { ...row, got: 'swing' }],
    ['a tool', { ...row, tool: 'clock' }],
  ])('%s', (_, other) => {
    expect(measuresOf([other])).toEqual([other]);
    expect(circumstancesOf([other])).toEqual({ shift: null, place: null, paper: false });
  });
});

test('the rows are of the format’s version 1: signed, read and counted like any check', async () => {
  const book = await Book.staffed();
  const measured = [piece, ...circumstanceRows({ shift: 'night', place: 'lift', paper: true })];
  const given = { person: 'DM', task: 'T1', outcome: 'shown', on: '2026-02-01', measured } as const;
  const id = await book.on('2026-02-03').sign(kd, (judged, writing) => check(judged, given, map, writing));
  const judged = await book.judged();
  expect(judged.problems).toEqual([]);
  const entry = judged.view.order.byId.get(id);
  const state = entry === undefined ? undefined : judged.authority.body(entry, 'check');
  expect(state).toMatchObject({ state: 'held', body: { measured } });
});
