/** Supports beside faces. Source: NEMA VE 2, within 24 in (from memory). Faces by the practice catalogue (training values). */
import { describe, expect, test } from 'vitest';
import {
  corner,
  FIRST_HALF,
  found,
  type Given,
  HELD,
  outdoor,
  supports,
  TICK,
  WALL_PLACES,
  wall,
} from './runs.ts';

const moved = (from: number, to: number) =>
  wall({
    supports: supports(
      '1',
      WALL_PLACES.map((at) => (at === from ? to : at)),
    ),
  });

describe('end-unsupported', () => {
  test('free start, 24 in and one tick more', () => {
    expect(found(moved(12, 24))).toEqual([]);
    expect(found(moved(12, 24 + TICK))).toEqual([['end-unsupported', '1', 0, 24 + TICK, 24]]);
  });

  test('free end', () => {
    expect(found(moved(468, 456))).toEqual([]);
    expect(found(moved(468, 456 - TICK))).toEqual([['end-unsupported', '1', 480, 24 + TICK, 24]]);
  });

  test('a start that goes into a socket is measured from where the leg begins', () => {
    const run = { ...moved(12, 24 + TICK), start: { kind: 'ladder', joint: 'socketed', jumper: '8 AWG' } };
    expect(found(run)).toEqual([['end-unsupported', '1', 0, 24 + TICK, 24]]);
  });

  test('an end at an instrument', () => {
    const ends = [{ leg: '1', kind: 'instrument', joint: 'free', open: 18, jumper: '8 AWG' }];
    expect(found({ ...moved(468, 456), ends })).toEqual([]);
    expect(found({ ...moved(468, 456 - TICK), ends })).toEqual([
      ['end-unsupported', '1', 480, 24 + TICK, 24],
    ]);
  });

  test('an end at another tray needs none of its own', () => {
    const ends = [{ leg: '1', kind: 'tray', joint: 'free', jumper: '8 AWG' }];
    expect(found({ ...moved(468, 456 - TICK), ends })).toEqual([]);
  });

  test('no support at all: nothing measured, each end', () => {
    const bare = {
      ...wall({ supports: [], joints: [] }),
      legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: 40 }],
    };
    expect(found(bare)).toEqual([
      ['end-unsupported', '1', 0, null, 24],
      ['end-unsupported', '1', 40, null, 24],
    ]);
  });

  test('both sides of a gap are ends: the channel ends, each by its own line', () => {
    const gap = (last: number, first: number): Given =>
      wall({
        joints: [{ leg: '1', at: 240, kind: 'gap', gap: 10, jumper: '8 AWG' }],
        supports: supports('1', [12, 72, 132, 192, last, first, 312, 372, 432, 468]),
      });
    expect(found(gap(235 - 24, 245 + 24))).toEqual([]);
    expect(found(gap(235 - 24 - TICK, 245 + 24))).toEqual([['end-unsupported', '1', 235, 24 + TICK, 24]]);
    expect(found(gap(235 - 24, 245 + 24 + TICK))).toEqual([['end-unsupported', '1', 245, 24 + TICK, 24]]);
  });
});

describe('fitting-unsupported', () => {
  const beside = (a: number, b: number, fitting?: string, dir?: unknown) =>
    corner(fitting, dir, { supports: [...supports('a', [12, 60, a]), ...supports('b', [b, 60, 108])] });

  test('each face of a flat elbow, take-out 7 in', () => {
    expect(found(beside(113 - 24, 7 + 24))).toEqual([]);
    expect(found(beside(113 - 24 - TICK, 7 + 24))).toEqual([
      ['fitting-unsupported', 'a', 113, 24 + TICK, 24],
    ]);
    expect(found(beside(113 - 24, 7 + 24 + TICK))).toEqual([['fitting-unsupported', 'b', 7, 24 + TICK, 24]]);
  });

  test('every way out of a tee', () => {
    const run = {
      ...corner('card-4-tee', 'E'),
      legs: [
        { id: 'a', from: 'start', fitting: null, dir: 'E', length: 120 },
        { id: 'b', from: 'a', fitting: 'card-4-tee', dir: 'E', length: 120 },
        { id: 'c', from: 'a:left', fitting: 'card-4-tee', dir: 'N', length: 70 },
      ],
      supports: [...supports('a', [12, 60, 100]), ...supports('b', [20, 60, 108])],
    };
    expect(found(run)).toEqual([
      ['fitting-unsupported', 'c', 9, null, 24],
      ['end-unsupported', 'c', 70, null, 24],
    ]);
    expect(found({ ...run, supports: [...run.supports, ...supports('c', [20, 60])] })).toEqual([]);
  });

  test('the faces of a hinge that stands straight, 3 in to each side', () => {
    const hinge = (last: number, first: number): Given =>
      wall({
        joints: [{ leg: '1', at: 240, kind: 'hinged', jumper: '8 AWG' }],
        supports: supports('1', [12, 72, 132, 192, last, first, 312, 372, 432, 468]),
      });
    expect(found(hinge(213, 267))).toEqual([]);
    expect(found(hinge(213 - TICK, 267))).toEqual([['fitting-unsupported', '1', 237, 24 + TICK, 24]]);
    expect(found(hinge(213, 267 + TICK))).toEqual([['fitting-unsupported', '1', 243, 24 + TICK, 24]]);
  });
});

test('expansion-unsupported: the channel ends, a quarter of an inch from the middle', () => {
  const near = (last: number, first: number) =>
    outdoor({
      supports: [
        ...supports('1', [...FIRST_HALF.slice(0, 4), last], HELD),
        ...supports('1', [first, 312, 372, 432, 468], HELD),
      ],
    });
  expect(found(near(239.75 - 24, 240.25 + 24))).toEqual([]);
  expect(found(near(239.75 - 24 - TICK, 240.25 + 24))).toEqual([
    ['expansion-unsupported', '1', 239.75, 24 + TICK, 24],
  ]);
  expect(found(near(239.75 - 24, 240.25 + 24 + TICK))).toEqual([
    ['expansion-unsupported', '1', 240.25, 24 + TICK, 24],
  ]);
});
