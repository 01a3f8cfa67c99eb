/** Laws of every run, on runs by chance with every kind of joint and fitting. Source: arithmetic and plain geometry. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { resolveRun } from '../../src/run/resolve.ts';
import type { ResolvedLeg, ResolvedRun } from '../../src/run/resolved.ts';
import { fromMiddle } from '../../src/run/sections.ts';
import type { Run } from '../../src/run/types.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { runJson } from '../../src/run/writeRun.ts';
import { runShape } from '../../src/schema/run.ts';
import { formatLength, TICKS_PER_INCH, ticks } from '../../src/trade/length.ts';
import { catalogue } from './practice.ts';
import { mirrored, randomRun, randomRuns, turned } from './randomRun.ts';

const resolve = (run: Run): ResolvedRun => resolveRun(run, catalogue, TRADE_USUAL);
const law = (holds: (run: Run) => void) => fc.assert(fc.property(randomRuns, holds), { numRuns: 300 });
const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);

/** All the numbers of a leg, without where it lies in space, and without names given in order of travel. */
function numbersOf({ leg, length, tray, start, end, joints, pieces, supports, lines }: ResolvedLeg) {
  return {
    ...{ leg, length, start, end, pieces, tray: tray.id },
    joints: joints.map(({ given: _, ...rest }) => rest),
    supports: supports.map(({ name: _, ...rest }) => rest),
    lines: lines.map(({ from, to, spans, splices, supports: own }) => ({
      ...{ from: [from.kind, from.face], to: [to.kind, to.face], spans },
      splices: splices.map((s) => s.name),
      supports: own.map((s) => s.field),
    })),
  };
}

function allNumbers(run: ResolvedRun) {
  const sections = run.sections.map(({ stretches, bounds, expansions, branches, supports, middle }) => ({
    stretches: stretches.map(({ leg, from, to }) => `${leg.leg} ${from} ${to}`).sort(),
    bounds: [...bounds].sort(),
    ...{ expansions, branches, middle: middle && [middle.leg.leg, middle.at] },
    supports: supports.map((s) => s.field).sort(),
  }));
  return {
    legs: new Map(run.legs.map((leg) => [leg.leg, numbersOf(leg)])),
    fittings: run.fittings
      .map(({ item, into, turnDeg }) => `${into.leg} ${item.kind} ${turnDeg.toFixed(6)}`)
      .sort(),
    sections: sections.sort((a, b) => (String(a.stretches) < String(b.stretches) ? -1 : 1)),
  };
}

describe('pieces, take-outs, insertions and openings', () => {
  test('add up to each leg, to the tick', () => {
    law((run) => {
      for (const { length, start, end, joints, pieces } of resolve(run).legs) {
        const given = sum(pieces.map((p) => p.cut)) + sum(joints.map((j) => j.opening));
        const face = ({ takeOut, share, insertion }: typeof start) => takeOut + share - insertion;
        expect(given + face(start) + face(end)).toBe(length);
      }
    });
  });

  test('each piece reaches from one channel end to the next, and has a length', () => {
    law((run) => {
      for (const { joints, pieces, start, end, length } of resolve(run).legs) {
        expect(pieces).toHaveLength(joints.length + 1);
        for (const { cut, clear, from, to, ends } of pieces) {
          expect(cut).toBeGreaterThan(0);
          expect(cut).toBe(to - from);
          expect(cut - clear).toBe(ends[0].insertion + ends[1].insertion);
        }
        expect(pieces.slice(1).map((p) => p.from)).toEqual(joints.map((j) => j.channelEnds[1]));
        expect(pieces.slice(0, -1).map((p) => p.to)).toEqual(joints.map((j) => j.channelEnds[0]));
        expect(pieces[0]?.from).toBe(start.takeOut + start.share - start.insertion);
        expect(pieces.at(-1)?.to).toBe(length - end.takeOut - end.share + end.insertion);
      }
    });
  });

  test('of a joint: what goes in and the opening make its length; shares make the opening', () => {
    law((run) => {
      for (const joint of resolve(run).legs.flatMap((leg) => leg.joints)) {
        const { kind, insertions, opening, shares, takeOuts, channelEnds, length } = joint;
        expect(channelEnds[1] - channelEnds[0]).toBe(opening);
        if (kind === 'socketed' || kind === 'hinged') {
          expect(insertions[0] + opening + insertions[1]).toBe(length);
          expect(takeOuts[0] + takeOuts[1]).toBe(length);
        } else {
          expect(shares[0] + shares[1]).toBe(opening);
          expect([...takeOuts, ...insertions]).toEqual([0, 0, 0, 0]);
        }
      }
    });
  });
});

describe('turning and mirroring', () => {
  test('the whole run turned a quarter changes no number', () => {
    law((run) => {
      expect(allNumbers(resolve(turned(run)))).toEqual(allNumbers(resolve(run)));
    });
  });

  test('the whole run as in a mirror changes no number', () => {
    law((run) => {
      expect(allNumbers(resolve(mirrored(run)))).toEqual(allNumbers(resolve(run)));
    });
  });

  test('in what order lists are given changes nothing', () => {
    law((run) => {
      const turnedRound: Run = { ...run, legs: [...run.legs].reverse() };
      const here = resolve(run);
      const there = resolve(turnedRound);
      expect(there.legs.map((l) => l.leg)).toEqual(here.legs.map((l) => l.leg));
      expect(allNumbers(there)).toEqual(allNumbers(here));
    });
  });
});

describe('a length is the same however it is written', () => {
  /** Every length of a run written by `write`. */
  const written = (run: Run, write: (t: number) => unknown) =>
    JSON.parse(
      JSON.stringify(runJson(run), (name, value: unknown) =>
        typeof value === 'number' && /^(?:stock|kerf|length|open|gap|maxSpan|at)$/.test(name)
          ? write(Math.round(value * TICKS_PER_INCH))
          : value,
      ),
    ) as unknown;
  const feet = (t: number) => (t % 127 === 0 ? formatLength(ticks(t), 64) : t / TICKS_PER_INCH);
  const metric = (t: number) => `${t / 320} mm`;

  test('feet and inches, millimetres, and the JSON of the run itself', () => {
    law((run) => {
      expect(runShape.parse(runJson(run))).toEqual(run);
      expect(runShape.parse(JSON.parse(JSON.stringify(runJson(run))))).toEqual(run);
      expect(runShape.parse(written(run, feet))).toEqual(run);
      expect(runShape.parse(written(run, metric))).toEqual(run);
    });
  });

  test('a field that is undefined is left out of the JSON', () => {
    const run = { ...randomRun(1), stock: undefined, limits: { maxSpan: undefined } };
    expect(runJson(run)).not.toHaveProperty('stock');
    expect(runJson(run)).toHaveProperty('limits', {});
  });
});

describe('legs in space', () => {
  test('along, open and left are square to each other; each leg begins where the one before it ends', () => {
    law((run) => {
      for (const { frame, at, parent, length } of resolve(run).legs) {
        const { along, open, left } = frame;
        const dot = (a: readonly number[], b: readonly number[]) => sum(a.map((x, i) => x * (b[i] ?? 0)));
        for (const v of [along, open, left]) expect(dot(v, v)).toBeCloseTo(1, 9);
        for (const [a, b] of [[along, open] as const, [along, left] as const, [open, left] as const]) {
          expect(dot(a, b)).toBeCloseTo(0, 9);
        }
        // Left along the travel, seen with the open side up.
        const cross = (a: readonly number[], b: readonly number[]) =>
          [0, 1, 2].map((i) => {
            const [j, k] = [(i + 1) % 3, (i + 2) % 3];
            return (a[j] ?? 0) * (b[k] ?? 0) - (a[k] ?? 0) * (b[j] ?? 0);
          });
        cross(open, along).forEach((x, i) => {
          expect(x).toBeCloseTo(left[i] ?? 0, 9);
        });
        expect(at[0]).toEqual(parent?.at[1] ?? [0, 0, 0]);
        expect(Math.hypot(...at[1].map((x, i) => x - at[0][i as 0])) / length).toBeCloseTo(1, 9);
      }
    });
  });

  test('the angle between two legs is the one of the fitting between them', () => {
    law((run) => {
      for (const { item, into, out } of resolve(run).fittings) {
        for (const { leg, way, turn } of out) {
          const [a, b] = [into.frame.along, leg.frame.along];
          const deg =
            (Math.acos(Math.max(-1, Math.min(1, sum(a.map((x, i) => x * b[i as 0]))))) * 180) / Math.PI;
          const straight =
            item.kind === 'reducer' || ((item.kind === 'tee' || item.kind === 'cross') && way === 'straight');
          if (straight) expect(deg).toBeLessThan(0.01);
          else if (item.kind === 'elbow') expect(Math.abs(deg - item.angleDeg)).toBeLessThan(0.1);
          else if (item.kind !== 'hinge') expect(Math.abs(deg - 90)).toBeLessThan(0.1);
          if (item.kind === 'elbow') expect(turn === item.turn || item.turn === 'flat').toBe(true);
          if (straight) expect(turn).toBe('none');
        }
      }
    });
  });

  test('a level leg lies with its open side up, or level when it is on edge', () => {
    law((run) => {
      for (const { frame, given } of resolve(run).legs) {
        if (frame.along[2] !== 0) continue;
        expect(frame.open[2]).toBe(given.onEdge === true ? 0 : 1);
      }
    });
  });
});

describe('lines, spans, sections, cables', () => {
  test('every support stands in one line and one section, and has a name of its own, in order of travel', () => {
    law((run) => {
      const resolved = resolve(run);
      const all = resolved.legs.flatMap((leg) => leg.supports);
      const names = all.map((s) => s.name);
      expect(new Set(names).size).toBe(run.supports?.length ?? 0);
      expect(names.join('')).not.toMatch(/[IOQ]/);
      const inLines = resolved.legs.flatMap((leg) => leg.lines.flatMap((line) => line.supports));
      expect(inLines.map((s) => s.name)).toEqual(names);
      expect(resolved.sections.flatMap((s) => s.supports.map((x) => x.name)).sort()).toEqual(
        [...names].sort(),
      );
      for (const { supports, spans } of resolved.legs.flatMap((leg) => leg.lines)) {
        expect(spans.length).toBe(Math.max(0, supports.length - 1));
        expect(sum(spans.map((s) => s.length))).toBe((supports.at(-1)?.at ?? 0) - (supports[0]?.at ?? 0));
        spans.forEach(({ end }, i) => {
          expect(end).toBe(i === 0 || i === spans.length - 1);
        });
      }
    });
  });

  test('lines are parted by hinges, expansion splices and gaps; every splice stands in one', () => {
    law((run) => {
      for (const { joints, lines } of resolve(run).legs) {
        const rigid = joints.filter((j) => j.kind === 'socketed' || j.kind === 'butt');
        expect(lines.length).toBe(joints.length - rigid.length + 1);
        expect(lines.flatMap((line) => line.splices)).toEqual(rigid);
        for (const { from, to, supports } of lines) {
          for (const { at } of supports) {
            const slack = (bound: typeof from) =>
              bound.kind === 'expansion' ? (bound.joint?.opening ?? 0) : 0;
            expect(at).toBeGreaterThanOrEqual(from.face - slack(from));
            expect(at).toBeLessThanOrEqual(to.face + slack(to));
          }
        }
      }
    });
  });

  test('sections: one more than expansion splices and gaps; with their openings they make the whole', () => {
    law((run) => {
      const { legs, sections } = resolve(run);
      const parting = legs.flatMap((leg) =>
        leg.joints.filter((j) => j.kind === 'expansion' || j.kind === 'gap'),
      );
      expect(sections).toHaveLength(parting.length + 1);
      const stretches = sum(sections.flatMap((s) => s.stretches.map(({ from, to }) => to - from)));
      const gaps = sum(parting.filter((j) => j.kind === 'gap').map((j) => j.opening));
      expect(stretches + gaps).toBe(sum(legs.map((leg) => leg.length)));
      for (const section of sections) {
        const branched = section.stretches.some(
          ({ leg, to }) => leg.children.length > 1 && to === leg.length,
        );
        expect(section.branches).toBe(branched);
        expect(section.middle === null).toBe(branched);
        if (section.middle === null) continue;
        const half = fromMiddle(section, { leg: section.middle.leg.leg, at: section.middle.at });
        expect(half).toBeLessThanOrEqual(0.5);
      }
    });
  });

  test('a cable runs over the leg it is given for and every leg before it, over no other', () => {
    law((run) => {
      const { legs, byId, cablesOver } = resolve(run);
      for (const cable of run.cables ?? []) {
        const way = new Set<string>();
        for (let leg = byId.get(cable.to) ?? null; leg !== null; leg = leg.parent) way.add(leg.leg);
        for (const leg of legs) expect(cablesOver(leg).includes(cable)).toBe(way.has(leg.leg));
      }
    });
  });
});
