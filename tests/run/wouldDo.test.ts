/** A name that the catalogue does not have, or that does not fit: the fault tells which would do. */
import { describe, expect, test } from 'vitest';
import { resolveRun } from '../../src/run/resolve.ts';
import type { Run } from '../../src/run/types.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { nameOne } from '../../src/run/wouldDo.ts';
import { GivenError } from '../../src/trade/given.ts';
import { readLength } from '../../src/trade/length.ts';
import { catalogue, leg, run, whole } from './practice.ts';

/** What to do, by the field at fault. */
function todos(given: Run): Readonly<Record<string, string>> {
  try {
    resolveRun(given, catalogue, TRADE_USUAL);
  } catch (error) {
    if (!(error instanceof GivenError)) throw error;
    return Object.fromEntries(error.faults.map(({ field, todo }) => [field, todo]));
  }
  return {};
}
const A = leg('A', 'N');

describe('joints', () => {
  test.each<[string, string, string]>([
    ['socketed', 'card-4-slieve', 'name one of card-4-sleeve card-4-sleeve-steel, or leave it out'],
    ['socketed', 'card-4-plate', 'name one of card-4-sleeve card-4-sleeve-steel'],
    ['socketed', 'card-6-sleeve', 'name one of card-4-sleeve card-4-sleeve-steel'],
    ['butt', 'plate', 'name one of card-4-plate, or leave it out'],
    ['hinged', 'hinge', 'name one of card-4-hinge, or leave it out'],
  ])('%s made with %s', (kind, item, todo) => {
    expect(todos(run(`20'`, { joints: [{ leg: '1', at: `10'`, kind, item }] }))).toEqual({
      'joints[0].item': todo,
    });
  });
});

describe('fittings', () => {
  test('none of this name: those of the width, no more than twelve, and that there are others', () => {
    const todo = todos(whole([A, leg('B', 'E', 'A', 'elbow')]))['legs[1].fitting'] ?? '';
    expect(todo).toMatch(
      /^name one of card-4-elbow-90 card-4-elbow-45 card-4-inside-90 .* or another 0'-4" wide$/,
    );
    expect(todo.match(/card-/g)).toHaveLength(12);
    expect(todo).toContain('card-4-hinge');
    expect(todo).not.toContain('card-6-elbow');
  });

  test('none named, and one of another kind or width', () => {
    for (const fitting of [null, 'card-4-sleeve', 'card-6-elbow-90']) {
      expect(todos(whole([A, leg('B', 'E', 'A', fitting)]))['legs[1].fitting']).toContain(
        'name one of card-4-elbow-90',
      );
    }
  });

  test('aside, a tee or a cross alone', () => {
    const given = whole([A, leg('B', 'W', 'A:left', 'tee')]);
    expect(todos(given)).toEqual({ 'legs[1].fitting': 'name one of card-4-tee card-4-cross' });
  });

  test('behind a reducer, those of the width that comes out of it', () => {
    const given = whole([A, leg('B', 'N', 'A', 'card-4-2-reducer-straight'), leg('C', 'W', 'B:left', 'tee')]);
    expect(todos(given)).toEqual({ 'legs[2].fitting': 'name one of card-2-tee card-2-cross' });
  });

  test('a reducer of other ends: those with an end of the width', () => {
    const { 'legs[1].fitting': todo } = todos(
      whole([leg('A', 'N'), leg('B', 'N', 'A', 'card-4-2-reducer-left')], { tray: 'card-6' }),
    );
    expect(todo).toBe('name one of card-6-4-reducer-left card-6-4-reducer-right card-6-4-reducer-straight');
  });
});

test('a catalogue that has none of the width says to enter one', () => {
  expect(nameOne(catalogue, ['tee'], readLength(9))).toBe(
    `enter one 0'-9" wide in the catalogue (tee), and name it`,
  );
});
