/** Faults of the shape and of the meaning come together. Source: the envelope's rule, all faults at once. */
import { describe, expect, test } from 'vitest';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { checkRun } from '../../src/schema/checkRun.ts';
import { catalogue, leg } from '../run/practice.ts';

const A = leg('A', 'N');
const B = leg('B', 'E', 'A', 'card-4-elbow-90');
const given = (rest: Record<string, unknown>) => ({
  ...{ v: 1, tray: 'card-4', start: { kind: 'free', joint: 'free' }, legs: [A, B] },
  ...rest,
});
function fields(run: unknown): readonly string[] {
  const read = checkRun(run, catalogue, TRADE_USUAL);
  return 'faults' in read ? read.faults.map((f) => f.field).sort() : [];
}
const joint = { leg: 'A', at: 60, kind: 'butt' };
const lost = { leg: 'Z', at: 0, kind: 'step' };

test('a run whose shape is good is handed on, whatever it means', () => {
  expect(fields(given({ tray: 'card-5' }))).toEqual([]);
});

describe('with a fault of meaning beside it', () => {
  test.each<[string, Record<string, unknown>, string[]]>([
    ['a field that no run has', { colour: 'red', marks: [lost] }, ['colour', 'marks[0].leg']],
    [
      'a field that no leg has',
      { legs: [{ ...A, hue: 1 }, B], marks: [lost] },
      ['legs[0].hue', 'marks[0].leg'],
    ],
    ['a version that is none', { v: 2, marks: [lost] }, ['marks[0].leg', 'v']],
    [
      'a start that is none',
      { start: { kind: 'wall', joint: 'free' }, marks: [lost] },
      ['marks[0].leg', 'start.kind'],
    ],
    ['a tray that is a number', { tray: 4, marks: [lost] }, ['marks[0].leg', 'tray']],
    ['no tray', { tray: undefined, marks: [lost] }, ['marks[0].leg', 'tray']],
    ['a stock below 0', { stock: -1, marks: [lost] }, ['marks[0].leg', 'stock']],
    [
      'temperatures that are none, and an expansion that takes them',
      {
        temps: { lowF: 'cold', highF: 110, nowF: 60 },
        joints: [{ ...joint, kind: 'expansion' }],
        marks: [lost],
      },
      ['marks[0].leg', 'temps.lowF'],
    ],
    [
      'a length that is none',
      { legs: [{ ...A, length: 'long' }, B], joints: [joint], marks: [lost] },
      ['legs[0].length', 'marks[0].leg'],
    ],
    [
      'a leg that may not say so',
      { legs: [{ ...A, keeps: 'up' }, B], marks: [lost] },
      ['legs[0].keeps', 'marks[0].leg'],
    ],
    [
      'a fitting that is none',
      { legs: [A, { ...B, fitting: 7 }], marks: [lost] },
      ['legs[1].fitting', 'marks[0].leg'],
    ],
    [
      'an entry of a list: the others keep their places',
      { joints: [joint, { ...joint, at: null }, { ...joint, insertions: [1, 1] }] },
      ['joints[1].at', 'joints[2].insertions'],
    ],
    [
      'several of several lists',
      {
        joints: [
          { ...joint, kind: 'glued' },
          { ...joint, leg: 'Q' },
        ],
        supports: [
          { leg: 'A', at: -1, way: 'horizontal', hold: 'clamp' },
          { leg: 'B', at: 60, way: 'vertical', hold: 'load' },
        ],
      },
      ['joints[0].kind', 'joints[1].leg', 'supports[0].at', 'supports[1].way'],
    ],
  ])('%s', (_, rest, want) => {
    expect(fields(given(rest))).toEqual(want);
  });
});

describe('where too little can be read, its shape alone is judged', () => {
  test.each<[string, unknown, string[]]>([
    ['no object', 7, ['']],
    ['no legs', given({ legs: [], marks: [lost] }), ['legs']],
    ['legs that are a text', given({ legs: 'N', marks: [lost] }), ['legs']],
    ['a leg that is a text', given({ legs: ['N'], marks: [lost] }), ['legs[0]']],
    ['a direction that is none', given({ legs: [{ ...A, dir: 'NE' }, B], marks: [lost] }), ['legs[0].dir']],
    ['a list that is none', given({ joints: 3 }), ['joints']],
  ])('%s', (_, run, want) => {
    expect(fields(run)).toEqual(want);
  });
});
