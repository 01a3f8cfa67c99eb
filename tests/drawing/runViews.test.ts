/** Strip, bonding diagram and section of a whole run stand where the run has things, and say what it comes to. */
import { describe, expect, test } from 'vitest';
import { layBonding } from '../../src/drawing/bonding/bonding.ts';
import { rowsOf } from '../../src/drawing/bonding/rows.ts';
import { pagePalette } from '../../src/drawing/palette.ts';
import { jointNames } from '../../src/drawing/runNames.ts';
import { layRunSection } from '../../src/drawing/runSection.ts';
import type { Circle, Rect } from '../../src/drawing/shapes.ts';
import type { Sheet } from '../../src/drawing/svg.ts';
import { flowOf } from '../../src/drawing/unfolded/flow.ts';
import { layUnfolded } from '../../src/drawing/unfolded/unfolded.ts';
import { drawRun, VIEWS } from '../../src/drawing/views.ts';
import { fillOver } from '../../src/run/fillOver.ts';
import { jumpersNeeded } from '../../src/run/jumpers.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { runShape } from '../../src/schema/run.ts';
import { GivenError } from '../../src/trade/given.ts';
import { inches } from '../../src/trade/length.ts';
import { catalogue } from '../run/practice.ts';
import { randomRun } from '../run/randomRun.ts';
import { speak, tables } from '../run/tables.ts';
import { forms } from './subjects.ts';

const how = (form: (typeof forms)[number]) => ({ form, palette: pagePalette, speak });
const resolved = (run: unknown) => resolveRun(runShape.parse(run), catalogue, TRADE_USUAL);
const chance = (seed: number) => resolveRun(randomRun(seed), catalogue, TRADE_USUAL);
const SEEDS = Array.from({ length: 60 }, (_, k) => k + 1);
const rects = ({ plan }: Sheet, part: RegExp) =>
  plan.shapes.filter((s): s is Rect => s.kind === 'rect' && part.test(s.part ?? ''));

describe.each(forms)('strip of a whole run on %s', (form) => {
  test('one scale: every bar as long as its leg, or as its part of it; all of every leg is there', () => {
    for (const seed of SEEDS) {
      const run = chance(seed);
      const { bars, pxPerInch } = flowOf(run, form);
      for (const { from, to, x } of bars) expect(x(to) - x(from)).toBeCloseTo((to - from) * pxPerInch, 6);
      for (const leg of run.legs) {
        const own = bars.filter((b) => b.leg === leg);
        expect(own[0]?.from).toBe(0);
        expect(own.at(-1)?.to).toBe(inches(leg.length));
        own.slice(1).forEach((b, i) => {
          expect(b.from).toBe(own[i]?.to);
        });
      }
    }
  });

  test('bars of one row stand clear of each other', () => {
    for (const seed of SEEDS) {
      const { bars } = flowOf(chance(seed), form);
      bars.slice(1).forEach((bar, i) => {
        const before = bars[i];
        if (before?.row !== bar.row) return;
        expect(bar.cell.x).toBeGreaterThan(before.cell.x + before.cell.w);
      });
    }
  });

  test('pieces as long as they are cut, joints of every kind at their places', () => {
    for (const seed of SEEDS.slice(0, 20)) {
      const run = chance(seed);
      const flow = flowOf(run, form);
      const sheet = layUnfolded({ resolved: run }, how(form));
      const names = jointNames(run);
      for (const leg of run.legs) {
        for (const piece of leg.pieces) {
          const drawn = rects(sheet, new RegExp(`^piece ${piece.id}$`)).reduce((sum, r) => sum + r.w, 0);
          // What goes into a ladder, tray or instrument lies beyond the working points and is not drawn.
          const seen = Math.min(piece.to, leg.length) - Math.max(piece.from, 0);
          expect(drawn).toBeCloseTo((seen / 8128) * flow.pxPerInch, 4);
        }
        for (const joint of leg.joints) {
          const part = `splice ${names.get(joint)}`;
          const bar = flow.bars.find(
            (b) => b.leg === leg && inches(joint.at) >= b.from && inches(joint.at) < b.to,
          );
          const lines = sheet.plan.shapes.filter(
            (s) => s.kind === 'line' && s.part === part && s.pen === 'centre',
          );
          const [line] = lines;
          if (line?.kind !== 'line' || bar === undefined) throw new Error(part);
          expect(lines).toHaveLength(1);
          expect(line.from[0]).toBeCloseTo(bar.x(inches(joint.at)), 6);
        }
      }
    }
  });

  test('words say every piece, and each support or how far apart they stand', () => {
    const run = chance(7);
    const { words } = layUnfolded({ resolved: run }, how(form));
    for (const { id } of run.legs.flatMap((l) => l.pieces)) expect(words).toContain(`Piece ${id} is `);
    const many = resolved({
      v: 1,
      tray: 'card-4',
      start: { kind: 'free', joint: 'free' },
      legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: `100'` }],
      supports: Array.from({ length: 18 }, (_, i) => ({
        leg: '1',
        at: 12 + 60 * i,
        way: 'horizontal',
        hold: 'clamp',
      })),
    });
    expect(layUnfolded({ resolved: many }, how(form)).words).toContain(
      'Leg 1 has 18 supports, A at 1 ft to U at 86 ft, none farther apart than 5 ft.',
    );
  });
});

describe('bonding diagram', () => {
  test('a loop for every jumper that is needed, and for those that are fitted where none is', () => {
    for (const seed of SEEDS) {
      const run = chance(seed);
      const needed = jumpersNeeded(run, catalogue, tables);
      const rows = rowsOf({ resolved: run, tables, catalogue }, speak).filter((r) => r.kind === 'jumper');
      const needless = rows.filter((r) => r.parts.includes('none needed'));
      expect(rows.length - needless.length, `run ${seed}`).toBe(needed.length);
      const sheet = layBonding({ resolved: run, tables, catalogue }, how('desk'));
      const loops = sheet.plan.shapes.filter((s) => s.part === 'jumper' && s.kind === 'polygon');
      expect(loops).toHaveLength(rows.length);
    }
  });

  test('place, reason, size, and what is fitted, are said; joints that need none too', () => {
    const run = resolved({
      v: 1,
      tray: 'card-4',
      start: { kind: 'ladder', joint: 'socketed', jumper: '12 AWG' },
      legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: `60'` }],
      ends: [{ leg: '1', kind: 'instrument', joint: 'free', open: 6 }],
      joints: [
        { leg: '1', at: `15'`, kind: 'socketed' },
        { leg: '1', at: `30'`, kind: 'hinged' },
        { leg: '1', at: `45'`, kind: 'gap', gap: 6, jumper: '14 AWG' },
      ],
      cables: [
        {
          id: 'P',
          type: 'TC',
          odIn: 0.5,
          lbPerFt: 0.2,
          count: 1,
          make: 'multiconductor',
          use: 'power',
          deviceA: 20,
          to: '1',
        },
      ],
    });
    const { words } = layBonding(
      { resolved: run, tables, catalogue, tags: { ends: { '1': 'FT-204' } } },
      how('phone'),
    );
    // 20 A: 12 AWG copper, NFPA 70 table 250.122 (from memory).
    for (const said of [
      'Jumper at Ladder tray: start; 12 AWG or larger; fitted: 12 AWG.',
      'S1 at 15 ft: none.',
      'Jumper at S2 at 30 ft: hinge; 12 AWG or larger; not fitted yet.',
      'Jumper at S3 at 45 ft: gap; 12 AWG or larger; fitted: 14 AWG, too small.',
      'Jumper at FT-204: end; 12 AWG or larger; not fitted yet.',
    ]) {
      expect(words).toContain(said);
    }
  });

  test('without tables nothing is said of bonding', () => {
    expect(() => layBonding({ resolved: chance(1) }, how('desk'))).toThrow(GivenError);
  });
});

describe.each(forms)('section of a run on %s', (form) => {
  const circles = ({ plan }: Sheet) =>
    plan.shapes.filter((s): s is Circle => s.kind === 'circle' && s.part?.startsWith('cable') === true);

  test('cables to one scale, none in another, none through wall or barrier', () => {
    let seen = 0;
    for (const seed of SEEDS) {
      const run = chance(seed);
      for (const leg of run.legs.slice(0, 3)) {
        const sheet = layRunSection({ resolved: run, tables, leg: leg.leg }, how(form));
        // The extension lines of the inside width stand on the walls.
        const [from = 0, to = 0] = sheet.plan.shapes.flatMap((s) =>
          s.part === 'inside width' && s.kind === 'line' && s.from[0] === s.to[0] ? [s.from[0]] : [],
        );
        const px = (to - from) / inches(leg.tray.width);
        const laid = circles(sheet);
        const cables = run.cablesOver(leg);
        laid.forEach((c, i) => {
          const cable = cables[Number(c.part?.slice(6))];
          expect((2 * c.r) / px).toBeCloseTo(cable?.odIn ?? 0, 6);
          expect(c.at[0] - c.r).toBeGreaterThan(from - 0.01);
          expect(c.at[0] + c.r).toBeLessThan(to + 0.01);
          if (leg.given.barrier === true) {
            const middle = (from + to) / 2;
            if (cable?.side === 'right') expect(c.at[0] - c.r).toBeGreaterThan(middle);
            else expect(c.at[0] + c.r).toBeLessThan(middle);
          }
          for (const o of laid.slice(i + 1)) {
            expect(Math.hypot(o.at[0] - c.at[0], o.at[1] - c.at[1])).toBeGreaterThan(c.r + o.r - 0.01);
          }
          seen++;
        });
      }
    }
    expect(seen).toBeGreaterThan(200);
  });
});

describe('section of a run', () => {
  test('shows the fullest leg where none is named', () => {
    for (const seed of SEEDS) {
      const run = chance(seed);
      const full = (leg: (typeof run.legs)[number]) =>
        Math.max(0, ...fillOver(leg, run, tables).map((r) => r.answer?.result.fraction ?? 0));
      const most = Math.max(...run.legs.map(full));
      if (most === 0) continue;
      const { words } = layRunSection({ resolved: run, tables }, how('desk'));
      const said = run.legs.find((l) => words.startsWith(`Section of leg ${l.leg},`));
      expect(said && full(said)).toBe(most);
    }
  });

  const four = (cables: readonly object[], rest: object = {}) =>
    layRunSection(
      {
        resolved: resolved({
          v: 1,
          tray: 'card-4',
          start: { kind: 'free', joint: 'free' },
          legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: `10'`, ...rest }],
          cables: cables.map((c, i) => ({
            id: `C${i + 1}`,
            type: 'TC',
            odIn: 0.5,
            lbPerFt: 0.2,
            count: 1,
            make: 'multiconductor',
            use: 'power',
            to: '1',
            ...c,
          })),
        }),
        tables,
      },
      how('desk'),
    ).words;

  // 4-in ventilated channel holds 2.5 in² of several multiconductor cables: NFPA 70, table 392.22(A)(5) (from memory).
  test.each([
    // 2 of 0.5 in: 2 · π/4 · 0.25 = 0.3927
    ['within', [{ count: 2 }], 'fill 0.39 of 2.5 in², within'],
    // 13 of 0.5 in: 2.5525
    ['over', [{ count: 13 }], 'fill 2.55 of 2.5 in², over'],
    ['air is no cable', [{ use: 'air', type: 'tube' }], 'Cable C1: 1 of 0.50 in, air.'],
    ['none', [], 'No cables.'],
  ])('%s', (_, cables, said) => {
    expect(four(cables)).toContain(said);
  });

  test('a barrier: each side by itself; no row for half of 4 in', () => {
    const words = four([{ side: 'left' }, { side: 'right' }], { barrier: true });
    expect(words).toContain('A barrier parts it into two halves.');
    expect(words).toMatch(/left 0\.2 in², no limit in the table: ask the engineer/);
  });

  test('a cable that cannot lie between the walls is said not to fit', () => {
    expect(four([{ odIn: 4.5 }, {}])).toContain('Cable C1 does not fit between the walls and is not drawn.');
  });

  test('a leg that is not there is a fault', () => {
    expect(() => layRunSection({ resolved: chance(1), tables, leg: 'none' }, how('desk'))).toThrow(
      GivenError,
    );
  });
});

test('a run is drawn in all its views, or in those asked for', () => {
  const run = chance(3);
  const given = { tables, catalogue };
  const all = drawRun(run, given, how('desk')).map(({ view }) => view);
  expect(all.slice(0, 4)).toEqual(['strip', 'isometric', 'section', 'bonding']);
  expect(VIEWS.filter((v) => all.includes(v))).toEqual(all);
  const two = drawRun(run, { ...given, views: ['bonding', 'strip'] }, how('phone'));
  expect(two.map(({ view, form }) => `${view} ${form}`)).toEqual(['strip phone', 'bonding phone']);
});
