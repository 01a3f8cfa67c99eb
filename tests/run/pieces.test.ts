import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { resolveRun } from '../../src/run/resolve.ts';
import type { ResolvedLeg } from '../../src/run/resolved.ts';
import type { Run } from '../../src/run/types.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { fromInches, readLength, ticks } from '../../src/trade/length.ts';
import { catalogue, resolved } from './practice.ts';

const joint = (kind: 'socketed' | 'butt', at: string | number, rest: object = {}) => ({
  leg: '1',
  kind,
  at,
  ...rest,
});
const socketedBoth = {
  start: { kind: 'tray', joint: 'socketed' },
  ends: [{ leg: '1', kind: 'tray', joint: 'socketed' }],
};

describe('cut lengths of a straight leg, worked by hand from D − T1 − T2 + i1 + i2 − s1 − s2', () => {
  test.each<[string, Record<string, unknown>, string[], string]>([
    // leg, what it meets, cuts, hand
    [`9'-4"`, socketedBoth, ['115'], '112 + 1 1/2 + 1 1/2: goes in at both ends'],
    [`9'-4"`, { start: { kind: 'tray', joint: 'socketed' } }, ['113 1/2'], '112 + 1 1/2: one end free'],
    [`9'-4"`, { start: { kind: 'ladder', joint: 'butt' } }, ['112'], 'nothing goes in at a butt'],
    [
      `47'-3"`,
      { joints: [joint('butt', `20'`), joint('butt', `40'`)] },
      [`20'`, `20'`, '87'],
      '567 − 480: two whole lengths, plates, no gap',
    ],
    [
      `47'-3"`,
      { joints: [joint('butt', `20'-0 1/16"`, { gap: '1/8' })] },
      [`20'`, `27'-2 7/8"`],
      'each end gives up half of the 1/8 gap; 567 − 240 1/8',
    ],
    [
      `40'-0 1/8"`,
      { joints: [joint('socketed', `20'-0 1/16"`)] },
      [`20'`, `20'`],
      'sleeve 10 1/8 with 5 and 5 leaves 1/8: T = 5 1/16, i = 5',
    ],
    [
      `30'`,
      { joints: [joint('socketed', `15'`, { insertions: ['4', '4 1/2'] })] },
      [`14'-11 3/16"`, `14'-11 3/16"`],
      'sleeve 10 1/8 with 4 and 4 1/2 leaves 1 5/8, half to each side',
    ],
    [
      `24'-8 1/2"`,
      { start: { kind: 'ladder', joint: 'socketed' }, joints: [joint('socketed', `15'`)] },
      [`15'-1 7/16"`, `9'-8 7/16"`],
      '180 − 1/16 + 1 1/2 and 116 1/2 − 1/16',
    ],
  ])('%s %o gives %s (%s)', (length, rest, cuts) => {
    expect(resolved(length, rest).legs[0]?.pieces.map((p) => p.cut)).toEqual(cuts.map((c) => readLength(c)));
  });
});

test('what a tape shows between sleeve edges, and 5 in at each end that goes in, is the cut', () => {
  const leg = resolved(`30'`, { joints: [joint('socketed', `8'`), joint('socketed', `19'`)] }).legs[0];
  const middle = leg?.pieces[1];
  // By hand: 11 ft between centres less 5 1/16 at each: 10'-1 7/8"; with 5 and 5 goes in: 10'-11 7/8".
  expect(middle?.clear).toBe(readLength(`10'-1 7/8"`));
  expect(middle?.cut).toBe(readLength(`10'-11 7/8"`));
  expect(leg?.joints[0]?.edges).toEqual([readLength(`7'-6 15/16"`), readLength(`8'-5 1/16"`)]);
});

/** Runs whose joints stand at least 30 in apart, so that every piece has a length. */
const runs = fc
  .record({
    steps: fc.array(
      fc.record({
        ahead: fc.integer({ min: 30 * 8128, max: 260 * 8128 }),
        kind: fc.constantFrom('socketed' as const, 'butt' as const),
        gap: fc.integer({ min: 0, max: 2 * 8128 }),
        insertions: fc.option(
          fc.tuple(fc.integer({ min: 0, max: 41148 }), fc.integer({ min: 0, max: 41148 })),
        ),
      }),
      { maxLength: 6 },
    ),
    last: fc.integer({ min: 30 * 8128, max: 260 * 8128 }),
    start: fc.constantFrom('socketed' as const, 'butt' as const, 'free' as const),
    end: fc.constantFrom('socketed' as const, 'butt' as const, 'free' as const),
  })
  .map(({ steps, last, start, end }): Run => {
    let at = 0;
    const joints = steps.map(({ ahead, kind, gap, insertions }) => {
      at += ahead;
      const own =
        kind === 'butt'
          ? { gap: ticks(gap) }
          : insertions === null
            ? {}
            : { insertions: [ticks(insertions[0]), ticks(insertions[1])] as const };
      return { leg: 'a', at: ticks(at), kind, ...own };
    });
    return {
      v: 1,
      tray: 'card-6',
      start: { kind: 'tray', joint: start },
      legs: [{ id: 'a', from: 'start', fitting: null, dir: 'N', length: ticks(at + last) }],
      ends: [{ leg: 'a', kind: 'instrument', joint: end }],
      joints,
    };
  });

test('pieces and openings, less what goes in at the faces, add up to the leg, to the tick', () => {
  fc.assert(
    fc.property(runs, (given) => {
      const leg = resolveRun(given, catalogue, TRADE_USUAL).legs[0];
      if (leg === undefined) throw new Error('no leg');
      const cuts = leg.pieces.reduce((sum, p) => sum + p.cut, 0);
      const openings = leg.joints.reduce((sum, j) => sum + j.opening, 0);
      expect(cuts + openings - leg.start.insertion - leg.end.insertion).toBe(leg.length);
      expect(leg.pieces).toHaveLength(leg.joints.length + 1);
    }),
  );
});

test('each piece is as long as the space between its ends, and what goes in is its cut less its clear length', () => {
  fc.assert(
    fc.property(runs, (given) => {
      for (const leg of resolveRun(given, catalogue, TRADE_USUAL).legs) {
        for (const p of leg.pieces) {
          expect(p.cut).toBe(p.to - p.from);
          expect(p.cut - p.clear).toBe(p.ends[0].insertion + p.ends[1].insertion);
        }
        for (const j of leg.joints) {
          expect(j.channelEnds[1] - j.channelEnds[0]).toBe(j.opening);
          const length = j.insertions[0] + j.opening + j.insertions[1];
          if (j.kind === 'socketed') expect(length).toBe(j.length);
          else expect(j.shares[0] + j.shares[1]).toBe(j.opening);
        }
      }
    }),
  );
});

test('turning the leg another way changes no number', () => {
  fc.assert(
    fc.property(runs, fc.constantFrom('N', 'E', 'S', 'W', 'U', 'D'), (given, dir) => {
      const [leg] = given.legs;
      fc.pre(leg !== undefined);
      const turned = { ...given, legs: [{ ...leg, dir: dir as 'N' }] };
      const numbers = (run: Run) => {
        const { pieces, joints, supports } = resolveRun(run, catalogue, TRADE_USUAL).legs[0] as ResolvedLeg;
        return { pieces, joints, supports };
      };
      expect(numbers(turned)).toEqual(numbers(given));
    }),
  );
});

test('a run from the other end has the same pieces in the other order, halves of an odd tick apart', () => {
  fc.assert(
    fc.property(runs, (given) => {
      const [leg] = given.legs;
      fc.pre(leg !== undefined);
      const mirrored: Run = {
        ...given,
        start: { kind: 'tray', joint: given.ends?.[0]?.joint ?? 'free' },
        ends: [{ leg: 'a', kind: 'instrument', joint: given.start.joint }],
        joints: (given.joints ?? []).map((j) => ({
          ...j,
          at: ticks(leg.length - j.at),
          ...(j.insertions === undefined ? {} : { insertions: [j.insertions[1], j.insertions[0]] as const }),
        })),
      };
      const cuts = (r: Run) =>
        resolveRun(r, catalogue, TRADE_USUAL).legs[0]?.pieces.map((p) => p.cut as number) ?? [];
      const there = cuts(given);
      const back = cuts(mirrored).reverse();
      expect(back).toHaveLength(there.length);
      back.forEach((cut, i) => {
        expect(Math.abs(cut - (there[i] ?? Number.NaN))).toBeLessThanOrEqual(1);
      });
    }),
  );
});

test('feet and metric say the same run', () => {
  const feet = resolved(`12'-6"`, { joints: [joint('socketed', `6'-3"`)] });
  const metric = resolved('3810 mm', { joints: [joint('socketed', '1905 mm')] });
  expect(metric.legs).toEqual(feet.legs);
});

test('a gap of one sixteenth is half of it to each end', () => {
  const leg = resolved(`20'`, { joints: [joint('butt', `10'`, { gap: '1/16' })] }).legs[0];
  expect(leg?.joints[0]?.shares).toEqual([fromInches(1 / 32), fromInches(1 / 32)]);
});
