import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { begun, edited, redone, undone } from '../../../src/run/edit/history.ts';
import { addLeg, openEnds, takeOff } from '../../../src/run/edit/legs.ts';
import { placesOf } from '../../../src/run/edit/place.ts';
import { firstLeg, firstWays, fittingsOut, hingeOut, waysOut } from '../../../src/run/edit/ways.ts';
import { resolveRun } from '../../../src/run/resolve.ts';
import type { Run } from '../../../src/run/types.ts';
import { TRADE_USUAL } from '../../../src/run/usual.ts';
import { GivenError } from '../../../src/trade/given.ts';
import { fromInches } from '../../../src/trade/length.ts';
import { catalogue, leg, whole } from '../practice.ts';

const LONG = fromInches(120);
const end = (run: Run, id: string) => {
  const place = placesOf(run, catalogue).find((p) => p.leg === id);
  if (place === undefined) throw new Error(`no end ${id}`);
  return place;
};
const named = (run: Run, id: string) =>
  Object.fromEntries(waysOut(end(run, id)).map(({ axis, choice, why }) => [axis, choice?.fitting ?? why]));
const empty = whole([leg('1', 'E')]);

describe('ways out of a leg', () => {
  test('level, open side up: flat elbows aside, inside up, outside down', () =>
    expect(named(empty, '1')).toEqual({
      N: 'card-4-elbow-90',
      E: 'on',
      S: 'card-4-elbow-90',
      W: 'back',
      U: 'card-4-inside-90',
      D: 'card-4-outside-90',
    }));
  test('left and right are told apart', () => {
    const turns = waysOut(end(empty, '1')).map(({ axis, choice }) => [axis, choice?.turn]);
    expect(turns).toContainEqual(['N', 'left']);
    expect(turns).toContainEqual(['S', 'right']);
  });
  test('a plumb first leg may turn to every side; once it has turned the open side is told', () => {
    const plumb = whole([leg('1', 'U')]);
    const ways = named(plumb, '1');
    for (const axis of ['N', 'E', 'S', 'W']) expect(ways[axis]).toMatch(/^card-4-/);
    const turned = whole([leg('1', 'U'), leg('2', 'N', '1', 'card-4-outside-90')]);
    expect(named(turned, '1')['E']).toBe('full');
  });
  test('on edge, the flat elbow goes up and down', () => {
    const edge = whole([leg('1', 'E', 'start', null, { onEdge: true })]);
    expect(named(edge, '1')).toMatchObject({ U: 'card-4-elbow-90', D: 'card-4-elbow-90' });
  });
  test('behind a 45 the axes take a 45 back', () => {
    const skew = whole([leg('1', 'E'), leg('2', { azimuthDeg: 45, slopeDeg: 0 }, '1', 'card-4-elbow-45')]);
    expect(named(skew, '2')).toMatchObject({ N: 'card-4-elbow-45', E: 'card-4-elbow-45', S: 'noElbow' });
  });
  test('a tee that stands leaves the ways that are free, by itself alone', () => {
    const tee = whole([leg('1', 'E'), leg('2', 'E', '1', 'card-4-tee')]);
    expect(named(tee, '1')['N']).toBe('branch');
    const [only, ...others] = fittingsOut(end(tee, '1'));
    expect(others).toEqual([]);
    expect(only?.ways.map(({ from }) => from)).toEqual(['1:left', '1:right']);
    const full = whole([
      leg('1', 'E'),
      leg('2', 'E', '1', 'card-4-tee'),
      leg('3', 'N', '1:left', 'card-4-tee'),
    ]);
    expect(end(full, '1').full).toBe(true);
    expect(openEnds(full, catalogue)).toEqual(['2', '3']);
  });
  test('a hinge turns in one plane only', () => {
    expect(hingeOut(end(empty, '1'), 'card-4-hinge', { azimuthDeg: 60, slopeDeg: 0 })?.turn).toBe('left');
    expect(hingeOut(end(empty, '1'), 'card-4-hinge', { azimuthDeg: 60, slopeDeg: 20 })).toBeNull();
  });
});

const faults = (run: Run): readonly string[] => {
  try {
    resolveRun(run, catalogue, TRADE_USUAL);
    return [];
  } catch (cause) {
    if (!(cause instanceof GivenError)) throw cause;
    return cause.faults.map(({ field, message }) => `${field}: ${message}`);
  }
};

test('whatever is offered resolves, however it is gone on (by chance)', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(), { minLength: 2, maxLength: 12 }), fc.boolean(), (draws, onEdge) => {
      const [first = 0, ...rest] = draws;
      const begin = firstWays(onEdge)[first % 6]?.choice ?? firstLeg('E', onEdge);
      let run = addLeg({ ...empty, legs: [] }, begin, LONG);
      for (const draw of rest) {
        const ends = openEnds(run, catalogue);
        const place = end(run, ends[draw % ends.length] as string);
        const offered = [
          ...waysOut(place).flatMap(({ choice }) => choice ?? []),
          ...fittingsOut(place).flatMap(({ ways }) => ways),
        ];
        const choice = offered[draw % offered.length];
        if (choice === undefined) break;
        run = addLeg(run, choice, LONG);
        expect(faults(run)).toEqual([]);
      }
    }),
    { numRuns: 150 },
  );
});

describe('taking a leg off', () => {
  const run = whole(
    [leg('1', 'E'), leg('2', 'N', '1', 'card-4-elbow-90'), leg('3', 'D', '2', 'card-4-outside-90')],
    {
      supports: [
        { leg: '1', at: 12, way: 'horizontal', hold: 'clamp' },
        { leg: '3', at: 12, way: 'vertical', hold: 'load' },
      ],
      ends: [{ leg: '3', kind: 'instrument', joint: 'free' }],
      cables: [
        {
          id: 'a',
          type: 'TC',
          odIn: 0.5,
          lbPerFt: 0.2,
          count: 1,
          make: 'multiconductor',
          use: 'signal',
          to: '3',
        },
      ],
    },
  );
  test('takes the legs beyond it, what stands on them, and brings cables back', () => {
    const less = takeOff(run, '2');
    expect(less.legs.map(({ id }) => id)).toEqual(['1']);
    expect(less.supports?.map(({ leg: on }) => on)).toEqual(['1']);
    expect(less.ends).toEqual([]);
    expect(less.cables?.[0]?.to).toBe('1');
    expect(faults(less)).toEqual([]);
  });
  test('a leg added where the run ended takes the end away', () => {
    const [way] = waysOut(end(run, '3')).flatMap(({ choice }) => choice ?? []);
    if (way === undefined) throw new Error('a way is open');
    expect(addLeg(run, way, LONG).ends).toEqual([]);
  });
});

test('undone and redone any number of times, the same values come back', () => {
  fc.assert(
    fc.property(fc.array(fc.integer(), { maxLength: 20 }), fc.nat(25), (values, back) => {
      let history = values.reduce((h, v) => edited(h, v, `to ${v}`), begun<number, string>(0));
      const all = [0, ...values];
      for (let i = 0; i < back; i++) history = undone(history);
      expect(history.now).toBe(all[Math.max(0, all.length - 1 - back)]);
      for (let i = 0; i < back; i++) history = redone(history);
      expect(history.now).toBe(all.at(-1));
    }),
  );
  const branch = edited(undone(edited(begun<number, string>(1), 2, 'a')), 3, 'b');
  expect(redone(branch)).toBe(branch);
});
