/** Parts that do not belong, and channel that is stepped on. Common practice, no source; a step: NEMA VE 2 (from memory). */
import { describe, expect, test } from 'vitest';
import { catalogue as practice } from '../practice.ts';
import { corner, found, type Given, wall, wallWith } from './runs.ts';

describe('metals-mixed', () => {
  test('a steel sleeve in aluminium channel', () => {
    expect(found(wallWith({ item: 'card-4-sleeve' }))).toEqual([]);
    expect(found(wallWith({ item: 'card-4-sleeve-steel' }))).toEqual([
      ['metals-mixed', '1', 203.5, null, null],
    ]);
    expect(practice.get('card-4-sleeve-steel')).toMatchObject({ metal: 'steel', grounding: true });
  });
});

describe('wrong-hand', () => {
  // -left has its left wall straight, seen from the wide end.
  const along = (hand: string, keeps: string | undefined, tray = 'card-6'): Given => ({
    ...corner(),
    tray,
    legs: [
      { id: 'a', from: 'start', fitting: null, dir: 'E', length: 120 },
      {
        id: 'b',
        from: 'a',
        fitting: `card-6-4-reducer-${hand}`,
        dir: 'E',
        length: 120,
        ...(keeps === undefined ? {} : { keeps }),
      },
    ],
  });
  const WALLS = ['left', 'centre', 'right'] as const;
  test.each([
    ['left', 'left', 'right'],
    ['straight', 'centre', 'centre'],
    ['right', 'right', 'left'],
  ])('%s keeps the %s wall from wide to narrow, the %s one from narrow to wide', (hand, wide, narrow) => {
    for (const keeps of WALLS) {
      const wrong = [['wrong-hand', 'b', 0, null, null]];
      expect(found(along(hand, keeps))).toEqual(keeps === wide ? [] : wrong);
      expect(found(along(hand, keeps, 'card-4'))).toEqual(keeps === narrow ? [] : wrong);
    }
  });
  test('where nothing is meant nothing is judged', () => {
    for (const hand of ['left', 'straight', 'right']) expect(found(along(hand, undefined))).toEqual([]);
  });
});

test('used-as-step: at the mark', () => {
  expect(found(wall({ marks: [] }))).toEqual([]);
  expect(found(wall({ marks: [{ leg: '1', at: `10'-0 1/2"`, kind: 'step' }] }))).toEqual([
    ['used-as-step', '1', 120.5, null, null],
  ]);
});
