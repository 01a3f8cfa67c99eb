/** What a lay-out leaves as it was given, and legs straight up or down that could be borne in more sections than one. */
import { describe, expect, it } from 'vitest';
import { inspect } from '../../../src/run/inspect/inspect.ts';
import { type LaidRun, layout } from '../../../src/run/layout/layout.ts';
import { freeBound } from '../../../src/run/layout/stock.ts';
import type { LaidOut } from '../../../src/run/layout/write.ts';
import { resolveRun } from '../../../src/run/resolve.ts';
import type { Joint, Run } from '../../../src/run/types.ts';
import { TRADE_USUAL } from '../../../src/run/usual.ts';
import { runShape } from '../../../src/schema/run.ts';
import { inches } from '../../../src/trade/length.ts';
import { catalogue } from '../practice.ts';
import { tables } from '../tables.ts';

const runOf = (rest: object): Run =>
  runShape.parse({
    v: 1,
    tray: 'card-4',
    start: { kind: 'free', joint: 'free' },
    limits: { maxSpan: 72 },
    temps: { lowF: 0, highF: 100, nowF: 50 },
    ...rest,
  }) as Run;

function laid(run: Run): LaidRun {
  const { result } = layout(run, catalogue, tables);
  if (result.run === null) throw new Error(`refused: ${result.refused.rule} on ${result.refused.leg}`);
  return result;
}
const found = (run: Run) =>
  inspect(resolveRun(run, catalogue, TRADE_USUAL), catalogue, tables).result.findings.map(({ rule }) => rule);

describe('joints that part lines stay as given, unless an inspection finds something at them', () => {
  const one = (joint: object): Joint | undefined => {
    const legs = [{ id: '1', from: 'start', fitting: null, dir: 'E', length: 200 }];
    const { run } = laid(runOf({ legs, joints: [{ leg: '1', at: 100, ...joint }] }));
    expect(found(run)).not.toContain('gap-wrong');
    expect(found(run).filter((rule) => rule.startsWith('insertion-'))).toEqual([]);
    return run.joints?.[0];
  };

  // 1 in of movement, half-way between the temperatures: 1/2 in, 1/16 in either way (training values).
  it.each([
    [undefined, undefined],
    [0.5, 0.5],
    [0.5625, 0.5625],
    [0.4375, 0.4375],
    [0.5626, 0.5],
    [0.9, 0.5],
  ])('expansion splice, gap %s: %s', (gap, kept) => {
    const joint = one({ kind: 'expansion', ...(gap === undefined ? {} : { gap }) });
    expect(joint?.gap === undefined ? undefined : inches(joint.gap)).toBe(kept);
  });

  // A hinge takes 1 1/2 in of channel, 1/16 in either way (training values).
  it.each([
    [
      [1.5, 1.5],
      [1.5, 1.5],
    ],
    [
      [1.5625, 1.4375],
      [1.5625, 1.4375],
    ],
    [[1.625, 1.5], undefined],
    [[1.5, 1.25], undefined],
  ])('hinge, insertions %s: %s', (insertions, kept) => {
    expect(one({ kind: 'hinged', insertions })?.insertions?.map(inches)).toEqual(kept);
  });
});

describe('one leg gives way to another', () => {
  // The lower leg can be borne below its expansion splice, the upper one only above it.
  const run = runOf({
    legs: [
      { id: 'low', from: 'start', fitting: null, dir: 'U', length: 69 },
      { id: 'high', from: 'low', fitting: 'card-4-2-reducer-left', dir: 'U', length: 55 },
      { id: 'left', from: 'high:left', fitting: 'card-2-cross', dir: 'S', length: 60, onEdge: true },
      { id: 'right', from: 'high:right', fitting: 'card-2-cross', dir: 'N', length: 60, onEdge: true },
    ],
    joints: [{ leg: 'low', at: 27, kind: 'expansion' }],
  });

  it('each is borne once, in a section of its own', () => {
    const answer = laid(run);
    const bearing = (answer.run.supports ?? []).filter(({ hold }) => hold === 'load');
    expect(bearing.map(({ leg }) => leg)).toEqual(['low', 'high']);
    expect(inches((bearing[0] as (typeof bearing)[0]).at)).toBeLessThan(27);
    expect(found(answer.run).filter((rule) => rule.startsWith('anchor-'))).toEqual([]);
  });
});

describe('one leg gives way to another, and supports are placed for it', () => {
  // The upper riser is within 15 1/2 in of the middle of what is above the expansion splice, if the lower keeps off so far.
  const run = runOf({
    tray: 'card-2',
    stock: 144.0625,
    limits: { maxSpan: 36 },
    legs: [
      { id: 'low', from: 'start', fitting: null, dir: 'U', length: 244 },
      { id: 'high', from: 'low', fitting: 'card-4-2-reducer-right', dir: 'U', length: 211 },
    ],
    joints: [{ leg: 'low', at: 12, kind: 'expansion' }],
  });

  it('without a support more', () => {
    const answer = laid(run);
    const bearing = (answer.run.supports ?? []).filter(({ hold }) => hold === 'load');
    expect(bearing.map(({ leg }) => leg)).toEqual(['low', 'high']);
    expect(answer.bound.supports).toBe(13);
    expect(found(answer.run).filter((rule) => /^(anchor|span|splice)-|unsupported/.test(rule))).toEqual([]);
  });
});

describe('the bound of stock where supports are placed for an anchor', () => {
  const inch = 8128;
  const line = (length: number, supports: number): LaidOut =>
    ({
      job: {
        leg: { tray: { id: 'card-4' } },
        problem: {
          channel: [0, length * inch],
          stock: 120 * inch,
          splice: { before: inch / 16, behind: inch / 16 },
        },
      },
      layout: { supports: Array.from({ length: supports }) },
    }) as unknown as LaidOut;

  // Five supports have two spans for splices, each of which leaves 1/8 in open: 240 1/4 in may be two lengths of 120.
  it.each([
    [240.25, 0, 2],
    [240.3, 0, 3],
    [240.125, 1 / 8, 2],
    [240.25, 1 / 8, 3],
  ])('%s in, cut with %s: %i', (length, kerf, bound) => {
    expect(freeBound([line(length, 4)], [line(length, 5)], kerf * inch)).toBe(bound);
  });
});
