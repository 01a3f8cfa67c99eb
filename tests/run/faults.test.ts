import { describe, expect, test } from 'vitest';
import { resolveRun, stockFaults } from '../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { check } from '../../src/schema/faults.ts';
import { runShape } from '../../src/schema/run.ts';
import { GivenError } from '../../src/trade/given.ts';
import { catalogue, resolved, run } from './practice.ts';

/** Fields and messages of all faults. */
function faults(length: string | number, rest: Record<string, unknown>): readonly string[] {
  try {
    resolved(length, rest);
  } catch (error) {
    if (!(error instanceof GivenError)) throw error;
    for (const { message, todo } of error.faults) {
      // What to do, in words of its own.
      expect(todo.split(' ').length).toBeGreaterThan(1);
      expect(todo).not.toBe(message);
    }
    return error.faults.map((f) => `${f.field}: ${f.message}`);
  }
  return [];
}
const one = { leg: '1', at: `10'`, kind: 'socketed' };

describe('what cannot be is answered at its field', () => {
  test.each([
    [{ tray: 'card-5' }, 'tray: the catalogue has no such tray'],
    [{ tray: 'card-4-sleeve' }, 'tray: the catalogue has no such tray'],
    [{ joints: [{ ...one, leg: '2' }] }, 'joints[0].leg: the run has no such leg'],
    [{ ends: [{ leg: 'x', kind: 'free', joint: 'free' }] }, 'ends[0].leg: the run has no such leg'],
    [
      { ends: ['free', 'tray'].map((kind) => ({ leg: '1', kind, joint: 'free' })) },
      'ends[1].leg: this leg has an end already',
    ],
    [{ joints: [{ ...one, item: 'card-4-slieve' }] }, 'joints[0].item: the catalogue has no such item'],
    [
      { joints: [{ ...one, item: 'card-4-plate' }] },
      'joints[0].item: a socketed joint is made with a sleeve, and this is a plate',
    ],
    [
      { joints: [{ ...one, item: 'card-6-sleeve' }] },
      'joints[0].item: the item is not of the width it stands in',
    ],
    [
      { joints: [{ ...one, gap: '1/8' }] },
      'joints[0].gap: the opening of a sleeve follows from its insertions',
    ],
    [
      { joints: [{ ...one, kind: 'butt', insertions: [5, 5] }] },
      'joints[0].insertions: nothing goes into a butt joint',
    ],
    [
      { joints: [{ ...one, insertions: ['5 1/8', '5 1/16'] }] },
      `joints[0].insertions: together more than the sleeve, which is 0'-10 1/8" long`,
    ],
    [
      { supports: [{ leg: '1', at: `20'-0 1/16"`, way: 'horizontal', hold: 'clamp' }] },
      'supports[0].at: the support is not under the channel',
    ],
    [
      { supports: [{ leg: '1', at: `4'`, way: 'vertical', hold: 'load' }] },
      'supports[0].way: a vertical support holds a leg that goes up or down',
    ],
  ])('%o', (rest, message) => {
    expect(faults(`20'`, rest)).toEqual([message]);
  });

  test('insertions that fill the sleeve are taken: the ends meet inside', () => {
    expect(faults(`20'`, { joints: [{ ...one, insertions: ['5 1/16', '5 1/16'] }] })).toEqual([]);
    const leg = resolved(`20'`, { joints: [{ ...one, insertions: ['5 1/16', '5 1/16'] }] }).legs[0];
    expect(leg?.joints[0]?.opening).toBe(0);
  });

  test('a steel sleeve on aluminium is a finding for another day, not a fault of the run', () => {
    expect(faults(`20'`, { joints: [{ ...one, item: 'card-4-sleeve-steel' }] })).toEqual([]);
  });
});

describe('a piece of no length', () => {
  const plate = (at: string) => ({ leg: '1', at, kind: 'butt' });
  test.each([
    [[plate('0')], ['joints[0].at'], 'nothing before the joint'],
    [[plate(`20'`)], ['joints[0].at'], 'nothing behind the last joint'],
    [[plate(`21'`)], ['joints[0].at'], 'the joint beyond the leg'],
    [[plate(`12'`), plate(`12'`)], ['joints[1].at'], 'two joints in one place'],
    [[plate('1/16'), plate(`19'-11 15/16"`)], [], 'a sixteenth is a length'],
  ])('%o is a fault at %s (%s)', (joints, fields) => {
    expect(faults(`20'`, { joints }).map((f) => f.split(':')[0])).toEqual(fields);
  });

  test('a sleeve near the start: its half opening is all that is left, and a tick more', () => {
    const at = (t: number) => faults(`20'`, { joints: [{ ...one, at: t / 8128 }] });
    expect(at(508)).toHaveLength(1);
    expect(at(509)).toEqual([]);
  });
});

test('the shape refuses what no run has, and names the field', () => {
  const read = check(runShape, {
    v: 2,
    tray: 'card-4',
    start: { kind: 'free', joint: 'glued' },
    legs: [],
    colour: 'red',
  });
  if (!('faults' in read)) throw new Error('taken');
  expect(read.faults.map((f) => f.field).sort()).toEqual(['colour', 'legs', 'start.joint', 'v']);
});

test('a piece longer than its stock: both sides of the limit', () => {
  expect(stockFaults(resolveRun(run(`20'`), catalogue, TRADE_USUAL))).toEqual([]);
  const [fault] = stockFaults(resolveRun(run(`20'-0 1/16"`), catalogue, TRADE_USUAL));
  expect(fault?.field).toBe('legs[0].length');
  expect(stockFaults(resolveRun(run(`24'`, { stock: `24'` }), catalogue, TRADE_USUAL))).toEqual([]);
});
