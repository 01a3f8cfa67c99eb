/** Laws of take-off and inspection, on runs by chance with every kind of joint and fitting. Source: arithmetic. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Finding, inspect } from '../../src/run/inspect/inspect.ts';
import { supportLoads, weightPerFt, weightReach } from '../../src/run/loads.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import { takeoff } from '../../src/run/takeoff.ts';
import type { Run, RunCable } from '../../src/run/types.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { TICKS_PER_FOOT, TICKS_PER_INCH, ticks } from '../../src/trade/length.ts';
import { catalogue } from './practice.ts';
import { mirrored, randomRuns, turned } from './randomRun.ts';
import { tables } from './tables.ts';

const of = (run: Run) => resolveRun(run, catalogue, TRADE_USUAL);
/** With stock as long as its longest piece, so that there is a plan whatever the pieces are. */
function uncut(run: Run): Run {
  const longest = Math.max(...of(run).legs.flatMap(({ pieces }) => pieces.map(({ cut }) => cut)));
  return { ...run, stock: ticks(Math.ceil(longest / TICKS_PER_INCH) * TICKS_PER_INCH) };
}
const takenOff = (run: Run) => takeoff(of(uncut(run)), catalogue, tables, { stop: () => true }).result;
const findings = (run: Run): readonly Finding[] => inspect(of(run), catalogue, tables).result.findings;

/** A finding without its sentences. */
const bare = ({ rule, leg, at, measured, limit }: Finding) => [rule, leg, at, measured, limit];

describe('loads', () => {
  test('of a line with a support add up to the weight that it carries', () => {
    fc.assert(
      fc.property(randomRuns, (run) => {
        const resolved = of(run);
        const loads = new Map(supportLoads(resolved).map(({ support, lb }) => [support.field, lb]));
        for (const leg of resolved.legs) {
          const { lb } = weightPerFt(leg, resolved);
          for (const line of leg.plumb ? [] : leg.lines) {
            if (line.supports.length === 0) continue;
            const [from, to] = weightReach(line, leg);
            const sum = line.supports.reduce((all, { field }) => all + (loads.get(field) ?? Number.NaN), 0);
            expect(sum).toBeCloseTo((lb * (to - from)) / TICKS_PER_FOOT, 6);
          }
          const bearing = leg.supports.filter(({ hold }) => hold === 'load');
          if (!leg.plumb || bearing.length === 0) continue;
          const sum = leg.supports.reduce((all, { field }) => all + (loads.get(field) ?? Number.NaN), 0);
          expect(sum).toBeCloseTo((lb * leg.length) / TICKS_PER_FOOT, 6);
        }
      }),
    );
  });

  test('a row a support, in order of travel', () => {
    fc.assert(
      fc.property(randomRuns, (run) => {
        expect(takenOff(run).supportLoads).toHaveLength(run.supports?.length ?? 0);
      }),
      { numRuns: 50 },
    );
  });
});

test('a cable added never lowers fill, a load or a length of cable, and never makes a span limit longer', () => {
  const added: RunCable = {
    id: 'added',
    type: 'TC',
    odIn: 0.4,
    lbPerFt: 0.3,
    count: 1,
    make: 'multiconductor',
    use: 'power',
    side: 'left',
    to: '',
  };
  fc.assert(
    fc.property(randomRuns, fc.nat(), (run, n) => {
      const to = run.legs[n % run.legs.length]?.id ?? '';
      const [before, after] = [
        takenOff(run),
        takenOff({ ...run, cables: [...(run.cables ?? []), { ...added, to }] }),
      ];
      after.fill.forEach(({ areaIn2 }, i) => {
        expect(areaIn2).toBeGreaterThanOrEqual(before.fill[i]?.areaIn2 ?? 0);
      });
      after.supportLoads.forEach(({ lb }, i) => {
        expect(lb ?? 0).toBeGreaterThanOrEqual((before.supportLoads[i]?.lb ?? 0) - 1e-9);
      });
      expect(after.pieces).toEqual(before.pieces);
      expect(after.hardware).toEqual(before.hardware);
    }),
    { numRuns: 60 },
  );
});

test('hardware follows supports, joints and fittings', () => {
  fc.assert(
    fc.property(randomRuns, (run) => {
      const { hardware, jumpers, fasteners } = takenOff(run);
      const count = (item: string) => hardware.find((row) => row.item === item)?.count ?? 0;
      const supports = run.supports ?? [];
      const vertical = supports.filter(({ way }) => way === 'vertical').length;
      expect(count('strut')).toBe(supports.length);
      expect(count('clamp') + count('guide')).toBe(2 * supports.length);
      for (const part of ['channel-nut', 'bolt', 'washer'])
        expect(count(part)).toBe(2 * supports.length + vertical);
      expect(count('lug')).toBe(2 * jumpers.length);
      expect(count('jumper')).toBe(jumpers.length);
      const of = (kind: string) => (run.joints ?? []).filter((joint) => joint.kind === kind).length;
      expect(count('splice-sleeve')).toBe(of('socketed'));
      expect(count('splice-plate')).toBe(of('butt'));
      expect(count('splice-fastener')).toBe(4 * (of('socketed') + of('butt') + of('expansion')));
      expect(fasteners.reduce((sum, row) => sum + row.count, 0)).toBe(count('splice-fastener'));
      const fitted = hardware.filter(({ item }) => item.startsWith('fitting:'));
      // Legs that leave one tee or cross name one fitting: count the ways into fittings.
      const into = new Set(
        run.legs.filter(({ fitting }) => fitting !== null).map(({ from }) => from.split(':')[0]),
      );
      expect(fitted.reduce((sum, row) => sum + row.count, 0)).toBe(
        into.size + of('hinged') + of('expansion'),
      );
      for (const row of hardware) expect(row.count).toBeGreaterThan(0);
    }),
    { numRuns: 60 },
  );
});

test('every piece is cut once from the sticks of its channel', () => {
  fc.assert(
    fc.property(randomRuns, (run) => {
      const { pieces, sticks } = takenOff(run);
      const cut = sticks.flatMap(({ lengths }) =>
        lengths.flatMap((length) => length.pieces.map(({ in: cutIn, mark }) => [mark, cutIn])),
      );
      expect(cut.sort()).toEqual(pieces.map(({ id, cutIn }) => [id, cutIn]).sort());
    }),
    { numRuns: 40 },
  );
});

test('turning a run changes no number and no finding; a mirror changes only which side is which', () => {
  fc.assert(
    fc.property(randomRuns, (run) => {
      const { pieces, hardware, supportLoads: loads, cableLengthsIn } = takenOff(run);
      const other = takenOff(turned(run));
      expect(other).toMatchObject({ pieces, hardware, supportLoads: loads, cableLengthsIn });
      expect(findings(turned(run)).map(bare)).toEqual(findings(run).map(bare));

      const seen = takenOff(mirrored(run));
      expect(seen.cableLengthsIn).toEqual(cableLengthsIn);
      expect(sorted(seen.hardware.map(({ item, count }) => [swapped(item), count]))).toEqual(
        sorted(hardware.map(({ item, count }) => [item, count])),
      );
      expect(sorted(seen.pieces.map(({ id, cutIn }) => [id, cutIn]))).toEqual(
        sorted(pieces.map(({ id, cutIn }) => [id, cutIn])),
      );
      expect(sorted(seen.supportLoads.map(({ leg, atIn, lb }) => [leg, atIn, lb]))).toEqual(
        sorted(loads.map(({ leg, atIn, lb }) => [leg, atIn, lb])),
      );
      expect(findings(mirrored(run)).length).toBe(findings(run).length);
    }),
    { numRuns: 60 },
  );
});
const sorted = (rows: readonly (readonly unknown[])[]) => rows.map((row) => JSON.stringify(row)).sort();
/** A handed part in a mirror. */
const swapped = (item: string) => item.replace(/left|right/, (hand) => (hand === 'left' ? 'right' : 'left'));

test('one finding a rule and place', () => {
  fc.assert(
    fc.property(randomRuns, (run) => {
      // An expansion splice that stands closed has its two faces at one place.
      const places = findings(run)
        .filter(({ rule }) => rule !== 'expansion-unsupported')
        .map(({ rule, leg, at }) => `${rule} ${leg} ${at}`);
      expect(places.filter((place, i) => places.indexOf(place) < i)).toEqual([]);
    }),
  );
});
