/** A run laid out: by hand, by laws over runs by chance, and each refusal. Figures of the practice catalogue. */
import { describe, expect, it, test } from 'vitest';
import { inspect } from '../../../src/run/inspect/inspect.ts';
import { type LaidRun, type LayoutResult, layout } from '../../../src/run/layout/layout.ts';
import { resolveRun } from '../../../src/run/resolve.ts';
import { takeoff } from '../../../src/run/takeoff.ts';
import type { Run } from '../../../src/run/types.ts';
import { TRADE_USUAL } from '../../../src/run/usual.ts';
import { runJson } from '../../../src/run/writeRun.ts';
import { runShape } from '../../../src/schema/run.ts';
import { inches, type Ticks } from '../../../src/trade/length.ts';
import { catalogue } from '../practice.ts';
import { randomRun } from '../randomRun.ts';
import { tables } from '../tables.ts';

const layOut = (run: Run): LayoutResult => layout(run, catalogue, tables).result;

/** Rules that a lay-out keeps, whatever was given. */
const KEPT =
  /^(span-|splice-|two-splices|fitting-unsup|expansion-unsup|end-unsup|insertion-|ends-butted|gap-wrong|anchor-|jumper-small|jumper-needless)/;
const broken = (run: Run) =>
  inspect(resolveRun(run, catalogue, TRADE_USUAL), catalogue, tables).result.findings.filter(({ rule }) =>
    KEPT.test(rule),
  );
const sticksOf = (run: Run) =>
  takeoff(resolveRun(run, catalogue, TRADE_USUAL), catalogue, tables).result.sticks.reduce(
    (sum, { lengthsUsed }) => sum + (lengthsUsed ?? Number.NaN),
    0,
  );

/** Legs one after another from the start, lengths in inches. */
function route(
  legs: readonly { length: number | string; dir?: unknown; fitting?: string }[],
  rest: Record<string, unknown> = {},
): Run {
  return runShape.parse({
    v: 1,
    tray: 'card-4',
    start: { kind: 'free', joint: 'free' },
    limits: { maxSpan: 72 },
    ...rest,
    legs: legs.map(({ length, dir = 'E', fitting = null }, k) => ({
      id: String(k + 1),
      from: k === 0 ? 'start' : String(k),
      fitting,
      dir,
      length,
    })),
  }) as Run;
}

function laid(run: Run): LaidRun {
  const result = layOut(run);
  if (result.run === null) throw new Error(`refused: ${result.refused.rule} on ${result.refused.leg}`);
  return result;
}
const supportsOn = ({ run }: LaidRun, leg: string) =>
  (run.supports ?? []).filter((s) => s.leg === leg).map(({ at }) => inches(at));

describe('fewest supports, by hand', () => {
  // Both ends within 24 in, 72 in between: 48 + 72 n inches take n + 1 supports, an inch more one more.
  it.each([
    [20, 1],
    [48, 1],
    [49, 2],
    [120, 2],
    [121, 3],
    [192, 3],
    [193, 4],
  ])('%s in of one piece: %s', (length, count) => {
    const answer = laid(route([{ length }]));
    expect(answer.bound.supports).toBe(count);
    expect(supportsOn(answer, '1')).toHaveLength(count);
  });

  it('a splice wants a span on either side: 241 in take four supports although spans of 100 in would need three', () => {
    const answer = laid(route([{ length: 241 }], { limits: { maxSpan: 100 } }));
    expect(answer.bound).toEqual({ supports: 4, stock: 2 });
    expect(answer.run.joints).toHaveLength(1);
    expect(laid(route([{ length: 240 }], { limits: { maxSpan: 100 } })).bound).toEqual({
      supports: 3,
      stock: 1,
    });
  });

  it('the faces of an elbow are supported on both sides', () => {
    // T 7: the first leg's channel is 100 − 7 in long to the face, the second's as much.
    const answer = laid(
      route([{ length: 103 }, { length: 103, dir: 'N', fitting: 'card-4-elbow-90' }], {
        limits: { maxSpan: 48 },
      }),
    );
    expect(supportsOn(answer, '1')).toEqual([24, 72]);
    expect(supportsOn(answer, '2')).toEqual([31, 79]);
  });
});

const cable = {
  id: 'c',
  type: 'TC',
  odIn: 0.5,
  lbPerFt: 0.1,
  count: 1,
  make: 'multiconductor',
  use: 'power',
  deviceA: 60,
  to: '1',
};

describe('what is kept of a run, and what is passed over', () => {
  const given = route([{ length: 400 }], {
    supports: [{ leg: '1', at: 3, way: 'horizontal', hold: 'guide' }],
    joints: [
      { leg: '1', at: 60, kind: 'butt' },
      { leg: '1', at: 200, kind: 'expansion', gap: 0.9, jumper: '1/0 AWG' },
      { leg: '1', at: 300, kind: 'hinged', insertions: [1, 1] },
    ],
    temps: { lowF: 0, highF: 100, nowF: 50 },
  });
  const answer = laid(given);

  it('joints that part lines stay, as they should be', () => {
    expect(answer.run.joints?.map(({ kind, gap }) => [kind, gap === undefined ? null : inches(gap)])).toEqual(
      [
        ['expansion', 0.5],
        ['hinged', null],
      ],
    );
    expect(broken(answer.run)).toEqual([]);
  });

  it('no size is known, so no jumper stands; with a device named each place that needs one has it', () => {
    expect(answer.run.joints?.map(({ jumper }) => jumper)).toEqual([undefined, undefined]);
    const powered = { ...given, cables: route([{ length: 1 }], { cables: [cable] }).cables };
    // NFPA 70, 2023, Table 250.122: 60 A, copper: 10 AWG.
    expect(laid(powered).run.joints?.map(({ jumper }) => jumper)).toEqual(['10 AWG', '10 AWG']);
  });

  it('one support holds each section beside the expansion splice, the others guide', () => {
    for (const run of [answer.run]) {
      const { sections } = resolveRun(run, catalogue, TRADE_USUAL);
      expect(sections.map(({ supports }) => supports.filter(({ hold }) => hold === 'clamp').length)).toEqual([
        1, 1,
      ]);
    }
  });
});

describe('legs that go straight up or down', () => {
  const elbows = ['card-4-inside-90', 'card-4-outside-90'];
  const riser = (rest = {}) =>
    route(
      [
        { length: 60 },
        { length: 150, dir: 'U', fitting: elbows[0] as string },
        { length: 60, fitting: elbows[1] as string },
      ],
      rest,
    );

  const slid = (at: number) => ({
    joints: [{ leg: '1', at, kind: 'expansion', gap: 0.5 }],
    ends: [{ leg: '3', kind: 'instrument', joint: 'expansion' }],
    temps: { lowF: 0, highF: 100, nowF: 50 },
  });

  it('between expansion splices the support that bears is the one nearest the middle, where that can be', () => {
    // 20 + 150 + 60 in: the middle is 95 in up the riser.
    const { run } = laid(riser(slid(40)));
    expect(broken(run)).toEqual([]);
    expect((run.supports ?? []).filter(({ leg, hold }) => leg === '2' && hold === 'load')).toHaveLength(1);
  });

  it('supports are placed for it: no other stands nearer the middle, which is just beyond the riser', () => {
    const run = route(
      [
        { length: 60 },
        { length: 60, dir: 'U', fitting: elbows[0] as string },
        { length: 92, fitting: elbows[1] as string },
      ],
      slid(40),
    );
    // 20 + 60 + 92 in: the middle is 6 in past the upper elbow's working point, on the elbow; the riser ends 9 in below.
    const answer = laid(run);
    expect(broken(answer.run)).toEqual([]);
    const held = (answer.run.supports ?? []).filter(
      ({ leg, hold, at }) => hold !== 'guide' && !(leg === '1' && inches(at) < 40),
    );
    expect(held.map(({ leg, hold }) => [leg, hold])).toEqual([['2', 'load']]);
  });

  it('refused where the middle is on another leg, or another leg is borne there too', () => {
    const off = route(
      [
        { length: 60 },
        { length: 60, dir: 'U', fitting: elbows[0] as string },
        { length: 400, fitting: elbows[1] as string },
      ],
      slid(40),
    );
    expect(layOut(off)).toMatchObject({ run: null, refused: { rule: 'anchor-off-middle', leg: '2' } });
    const two = route(
      [
        { length: 60 },
        { length: 60, dir: 'U', fitting: elbows[0] as string },
        { length: 60, fitting: elbows[1] as string },
        { length: 60, dir: 'U', fitting: elbows[0] as string },
        { length: 30, fitting: elbows[1] as string },
      ],
      { ...slid(40), ends: [{ leg: '5', kind: 'instrument', joint: 'expansion' }] },
    );
    expect(layOut(two)).toMatchObject({ run: null, refused: { leg: '2' } });
  });

  it('one support bears, the highest; the others guide', () => {
    const { run } = laid(riser());
    const own = (run.supports ?? []).filter(({ leg }) => leg === '2');
    expect(own.map(({ way }) => way)).toEqual(own.map(() => 'vertical'));
    expect(own.map(({ hold }) => hold)).toEqual([...own.slice(1).map(() => 'guide'), 'load']);
    expect(broken(run)).toEqual([]);
  });
});

describe('refused', () => {
  const refusal = (run: Run) => {
    const result = layOut(run);
    if (result.run !== null) throw new Error('laid out');
    const { rule, leg, at } = result.refused;
    return [rule, leg, at === null ? null : inches(at as Ticks)];
  };
  const placed = (at: readonly number[]) => ({ places: [{ leg: '1', at }] });

  it('nothing says how far apart supports may stand', () => {
    const heavy = { ...cable, lbPerFt: 40 };
    expect(refusal(route([{ length: 100 }], { cables: [heavy], limits: {} }))).toEqual([
      'span-too-long',
      '1',
      null,
    ]);
    expect(laid(route([{ length: 100 }], { cables: [heavy] })).bound.supports).toBe(2);
  });

  it('no place within 24 in of an end, of a fitting, of an expansion splice', () => {
    expect(refusal(route([{ length: 100 }], placed([25, 80])))).toEqual(['end-unsupported', '1', 0]);
    expect(refusal(route([{ length: 100 }], placed([24, 75])))).toEqual(['end-unsupported', '1', 100]);
    expect(laid(route([{ length: 100 }], placed([24, 76]))).bound.supports).toBe(2);
    const turned = [{ length: 107 }, { length: 100, dir: 'N', fitting: 'card-4-elbow-90' }];
    expect(refusal(route(turned, placed([20, 75])))).toEqual(['fitting-unsupported', '1', 100]);
    const slid = { joints: [{ leg: '1', at: 100, kind: 'expansion', gap: 0.5 }] };
    expect(refusal(route([{ length: 200 }], { ...slid, ...placed([20, 75, 110, 180]) }))).toEqual([
      'expansion-unsupported',
      '1',
      99.75,
    ]);
  });

  it('a hinge counts as a fitting, a gap as two ends', () => {
    const places = placed([20, 75, 110, 180]);
    const hinged = { joints: [{ leg: '1', at: 103, kind: 'hinged' }] };
    expect(refusal(route([{ length: 200 }], { ...hinged, ...places }))).toEqual([
      'fitting-unsupported',
      '1',
      100,
    ]);
    const open = { joints: [{ leg: '1', at: 101, kind: 'gap', gap: 2 }] };
    expect(refusal(route([{ length: 200 }], { ...open, ...places }))).toEqual(['end-unsupported', '1', 100]);
  });

  it('places too far apart', () => {
    expect(refusal(route([{ length: 200 }], placed([10, 20, 93, 150, 190])))).toEqual([
      'span-too-long',
      '1',
      56.5,
    ]);
    expect(laid(route([{ length: 200 }], placed([10, 20, 92, 150, 190]))).bound.supports).toBe(4);
  });

  it.each([
    // Two whole lengths of 100 in, joined in the middle of the one inner span.
    ['splice-past-quarter', 200, [10, 60, 140, 190]],
    // The same, joined over a support.
    ['splice-on-support', 200, [10, 98, 100, 102, 190]],
    // Two spans, both end spans.
    ['splice-in-end-span', 150, [20, 70, 130]],
    // Three pieces, and one inner span.
    ['two-splices-in-span', 290, [10, 95, 195, 280]],
  ])('splices that no places leave room for: %s', (rule, length, at) => {
    const run = route([{ length }], { stock: 100, limits: { maxSpan: 110 }, ...placed(at) });
    expect(refusal(run)).toEqual([rule, '1', length / 2]);
  });
});

describe('laws, on runs by chance', () => {
  const seeds = Array.from({ length: 45 }, (_, seed) => seed);

  it('what is laid out keeps the rules, reads back, comes out the same again; what is proven is so', () => {
    const refusals = new Set<string>();
    let laidOut = 0;
    for (const seed of seeds) {
      const result = layOut(randomRun(seed, 6));
      if (result.run === null) {
        refusals.add(result.refused.rule);
        continue;
      }
      laidOut++;
      const { run, proven, bound } = result;
      expect([seed, broken(run)]).toEqual([seed, []]);
      expect(run.supports).toHaveLength(bound.supports);
      const used = sticksOf(run);
      expect(proven).toEqual({ supports: true, stock: used === bound.stock });
      expect(used).toBeGreaterThanOrEqual(bound.stock);
      expect(runShape.parse(JSON.parse(JSON.stringify(runJson(run))))).toEqual(
        JSON.parse(JSON.stringify(run)),
      );
      const again = laid(run);
      expect([seed, again.bound.supports, again.proven]).toEqual([seed, bound.supports, proven]);
      if (proven.stock) expect(again.bound).toEqual(bound);
    }
    expect(laidOut).toBeGreaterThan(20);
    expect(refusals.size).toBeGreaterThan(2);
  });
});

test('300 ft with six fittings; 3,000 ft', () => {
  const dirs = ['E', 'N', 'E', 'S', 'E', 'N', 'E'];
  const legs = dirs.map((dir, k) => ({
    dir,
    length: 510 + 3 * k,
    ...(k === 0 ? {} : { fitting: 'card-4-elbow-90' }),
  }));
  const answer = laid(route(legs));
  expect(broken(answer.run)).toEqual([]);
  const long = laid(route([{ length: '3000 ft' }]));
  // 36,000 in: 48 and 499.3 spans of 72.
  expect(long.bound.supports).toBe(501);
  expect(broken(long.run)).toEqual([]);
});
