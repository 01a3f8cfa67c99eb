/** What an isometric shows stands where the run has it. */
import { describe, expect, test } from 'vitest';
import { layIsometric } from '../../src/drawing/isometric/isometric.ts';
import { crossings, paintOrder } from '../../src/drawing/isometric/order.ts';
import { routeOf } from '../../src/drawing/isometric/route.ts';
import { sceneOf } from '../../src/drawing/isometric/scene.ts';
import { nearness, off, project } from '../../src/drawing/isometric/space.ts';
import { pagePalette } from '../../src/drawing/palette.ts';
import type { Circle, Point } from '../../src/drawing/shapes.ts';
import { inspect } from '../../src/run/inspect/inspect.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { runShape } from '../../src/schema/run.ts';
import { GivenError } from '../../src/trade/given.ts';
import { inches } from '../../src/trade/length.ts';
import { catalogue } from '../run/practice.ts';
import { randomRun } from '../run/randomRun.ts';
import { speak, tables } from '../run/tables.ts';
import { forms } from './subjects.ts';

const COS_30 = Math.sqrt(3) / 2;
const resolved = (run: unknown) => resolveRun(runShape.parse(run), catalogue, TRADE_USUAL);
const how = (form: (typeof forms)[number]) => ({ form, palette: pagePalette, speak });

const at = (leg: string, places: readonly (string | number)[]) =>
  places.map((place) => ({ leg, at: place, way: 'horizontal', hold: 'clamp' }));
/** East, north, down: a flat elbow to the left, an outside elbow, an instrument 1 ft 6 in below the end. */
const three = {
  v: 1,
  tray: 'card-4',
  start: { kind: 'ladder', joint: 'socketed' },
  legs: [
    { id: '1', from: 'start', fitting: null, dir: 'E', length: `24' 8 1/2"` },
    { id: '2', from: '1', fitting: 'card-4-elbow-90', dir: 'N', length: `10' 9"` },
    { id: '3', from: '2', fitting: 'card-4-outside-90', dir: 'D', length: `6' 4"` },
  ],
  ends: [{ leg: '3', kind: 'instrument', joint: 'free', open: `1' 6"` }],
  joints: [{ leg: '1', at: `15'`, kind: 'socketed' }],
  supports: at('1', [`1' 6"`, `7'`, `12' 6"`, `18'`, `23'`]),
  limits: { maxSpan: `6'` },
};

describe('the axes: true isometric', () => {
  test.each([
    ['east', [1, 0, 0], [COS_30, 0.5]],
    ['north', [0, 1, 0], [COS_30, -0.5]],
    ['up', [0, 0, 1], [0, -1]],
  ] as const)('%s', (_, way, want) => {
    expect(project(way)).toEqual(want.map((v) => expect.closeTo(v, 12)));
    expect(Math.hypot(...project(way))).toBeCloseTo(1, 12);
  });
  test('who looks stands south-east and above: what lies along the line of sight falls on one point', () => {
    expect(project([3, -3, 3])).toEqual([expect.closeTo(0, 12), expect.closeTo(0, 12)]);
    expect(nearness([1, 0, 0])).toBeGreaterThan(0);
    expect(nearness([0, 1, 0])).toBeLessThan(0);
    expect(nearness([0, 0, 1])).toBeGreaterThan(0);
  });
});

describe.each(forms)('on %s', (form) => {
  const run = resolved(three);
  const scene = sceneOf(run, form);

  test('legs run along their ways, as long as they are, end to end', () => {
    const { legs, pxPerInch, longer } = scene.route;
    expect(longer).toBe(0);
    // Hand: 296 1/2, 129 and 76 in.
    expect(legs.map((l) => l.length / pxPerInch)).toEqual([296.5, 129, 76].map((v) => expect.closeTo(v, 6)));
    legs.forEach(({ leg, from, to, length }, i) => {
      expect(to).toEqual(off(from, leg.frame.along, length).map((v) => expect.closeTo(v, 9)));
      if (i > 0) expect(from).toEqual(legs[i - 1]?.to);
    });
  });

  test('struts stand under their places, the splice at its own', () => {
    const [first] = scene.route.legs;
    if (first === undefined) throw new Error('no leg');
    for (const { support, ends } of scene.supports) {
      const middle = (ends[0][0] + ends[1][0]) / 2;
      expect(middle - first.from[0]).toBeCloseTo(first.along(support.at), 6);
      // A level leg that runs east has its strut across, along north.
      expect(ends[0][0]).toBeCloseTo(ends[1][0], 9);
    }
    const [splice] = scene.joints;
    expect(splice?.at[0]).toBeCloseTo(first.from[0] + first.along(180 * 8128), 6);
    expect(scene.supports.map((s) => s.support.name)).toEqual(['A', 'B', 'C', 'D', 'E']);
  });

  test('a place on a leg keeps its order, whatever the fittings take', () => {
    for (let seed = 1; seed <= 40; seed++) {
      for (const drawn of routeOf(resolveRun(randomRun(seed), catalogue, TRADE_USUAL), form).legs) {
        const along = Array.from({ length: 21 }, (_, i) => drawn.along((drawn.leg.length * i) / 20));
        expect(along[0]).toBeCloseTo(0, 6);
        expect(along.at(-1)).toBeCloseTo(drawn.length, 6);
        for (let i = 1; i < along.length; i++)
          expect(along[i]).toBeGreaterThanOrEqual(along[i - 1] as number);
      }
    }
  });

  test('short legs that cannot be drawn to scale are drawn longer, and the sheet says so', () => {
    const long = resolved({
      ...three,
      legs: three.legs.map((l, i) => ({ ...l, length: [`400'`, `2'`, `300'`][i] })),
      joints: [],
      supports: [],
    });
    expect(routeOf(long, form).longer).toBeGreaterThan(0);
    const sheet = layIsometric({ resolved: long }, how(form));
    expect(sheet.plan.texts.some((t) => t.text.includes('short legs drawn longer'))).toBe(true);
    expect(sheet.words).toContain('but short legs longer');
    expect(layIsometric({ resolved: run }, how(form)).words).not.toContain('but short');
  });

  test('every leg wears its balloon in the zone that is said, its length beside it or dimensioned or listed', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const one = resolveRun(randomRun(seed), catalogue, TRADE_USUAL);
      const sheet = layIsometric({ resolved: one }, how(form));
      expect(Object.keys(sheet.zones)).toHaveLength(one.legs.length);
      for (const [mark, zone] of Object.entries(sheet.zones)) {
        expect(
          sheet.plan.texts.some((t) => t.part === `balloon ${mark}` && t.text === mark),
          mark,
        ).toBe(true);
        expect(zone).toMatch(/^[A-Z]\d+$/);
      }
    }
  });

  test('a finding is clouded with what was measured, its triangle numbered, in its zone', () => {
    const { findings } = inspect(run, catalogue, tables).result;
    const past = findings.filter((f) => f.rule === 'splice-past-quarter');
    expect(past).toHaveLength(1);
    const sheet = layIsometric({ resolved: run, findings: past }, how(form));
    // Hand: the splice at 15 ft, its nearest support at 12 ft 6 in.
    expect(sheet.plan.texts.filter((t) => t.part === 'finding 1').map((t) => t.text)).toEqual([`2'-6"`]);
    expect(sheet.plan.shapes.some((s) => s.kind === 'cloud')).toBe(true);
    expect(sheet.plan.texts.some((t) => t.part === 'triangle 1' && t.text === '1')).toBe(true);
    expect(Object.keys(sheet.noted ?? {})).toEqual(['1']);
  });

  test('leaders of balloons end on their legs', () => {
    const sheet = layIsometric({ resolved: run }, how(form));
    const dots = sheet.plan.shapes.filter((s): s is Circle => s.kind === 'circle' && s.r === 2.8);
    expect(dots).toHaveLength(3);
    const shapes = sheet.plan.shapes.filter((s) => s.kind === 'polygon' && /^leg \d$/.test(s.part ?? ''));
    for (const { at: dot } of dots) {
      const near = shapes.some((s) => s.kind === 'polygon' && s.fill !== undefined && holds(s.points, dot));
      expect(near, JSON.stringify(dot)).toBe(true);
    }
  });
});

/** Whether a point lies in a polygon (even-odd), or within 2 px of one of its corners' box. */
function holds(points: readonly Point[], [x, y]: Point): boolean {
  let inside = false;
  points.forEach(([ax, ay], i) => {
    const [bx, by] = points[(i + 1) % points.length] as Point;
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
  });
  return inside;
}

describe('what passes before what', () => {
  const over = resolved({
    v: 1,
    tray: 'card-4',
    start: { kind: 'ladder', joint: 'socketed' },
    legs: [
      { id: '1', from: 'start', fitting: null, dir: 'E', length: `15'` },
      { id: '2', from: '1', fitting: 'card-4-elbow-90', dir: 'N', length: `8'` },
      { id: '3', from: '2', fitting: 'card-4-inside-90', dir: 'U', length: `6'` },
      { id: '4', from: '3', fitting: 'card-4-outside-90', dir: 'N', length: `4'` },
      { id: '5', from: '4', fitting: 'card-4-elbow-90', dir: 'W', length: `8'` },
      { id: '6', from: '5', fitting: 'card-4-elbow-90', dir: 'S', length: `20'` },
    ],
  });

  test('a leg that passes over another is painted after it, and breaks it', () => {
    const { solids } = sceneOf(over, 'desk');
    const order = solids.map((s) => s.plates.find((p) => /^leg/.test(p.part ?? ''))?.part);
    expect(order.lastIndexOf('leg 6')).toBeGreaterThan(order.lastIndexOf('leg 1'));
    const breaking = solids.filter((s) => s.breaks.length > 0);
    expect(breaking.flatMap((s) => s.plates.map((p) => p.part)).includes('leg 6')).toBe(true);
  });

  test('in any run, of two that pass the nearer is painted later; rings apart', () => {
    let [kept, all] = [0, 0];
    for (let seed = 1; seed <= 60; seed++) {
      const { solids } = sceneOf(resolveRun(randomRun(seed), catalogue, TRADE_USUAL), 'desk');
      const touch = (i: number, j: number) => {
        const [a, b] = [solids[i]?.axis ?? [], solids[j]?.axis ?? []];
        return a.some((p) => b.some((q) => Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]) < 2));
      };
      for (const { behind, front } of crossings(solids, touch)) {
        all++;
        if (front > behind) kept++;
      }
    }
    expect(all).toBeGreaterThan(50);
    expect(kept / all).toBeGreaterThan(0.9);
  });

  test('order: every pair kept, a ring opened', () => {
    const pairs = [
      [0, 1],
      [1, 2],
      [3, 0],
    ] as const;
    const order = paintOrder(4, (i) => -i, pairs);
    for (const [a, b] of pairs) expect(order.indexOf(a)).toBeLessThan(order.indexOf(b));
    expect(
      [
        ...paintOrder(3, (i) => i, [
          [0, 1],
          [1, 2],
          [2, 0],
        ]),
      ].sort(),
    ).toEqual([0, 1, 2]);
  });
});

test('words say the way of every leg, its joints and the measures', () => {
  const { words } = layIsometric(
    { resolved: resolved(three), tags: { start: 'LAD-2', ends: { '3': 'FT-204' } } },
    how('desk'),
  );
  for (const said of [
    'Leg 1 goes east 24 ft 8 1/2 in from LAD-2.',
    'Splice S1 at 15 ft.',
    'Leg 2 leaves leg 1, flat elbow 90°, left, and goes north 10 ft 9 in.',
    'Leg 3 leaves leg 2, outside elbow 90°, and goes down 6 ft 4 in.',
    'Leg 3 ends 1 ft 6 in short of FT-204.',
    '5 supports, A to E.',
    'No span over 6 ft.',
  ]) {
    expect(words).toContain(said);
  }
});

test('balloons of steps stand in place of the names of the legs; one at nothing is a fault', () => {
  const run = resolved(three);
  const numbered = (parts: readonly string[]) =>
    parts.map((part, i) => ({ number: String(i + 1), at: part }));
  const sheet = layIsometric(
    { resolved: run, balloons: numbered(['start', 's1', 'support-C', 'fitting-2', 'end-3']) },
    how('phone'),
  );
  expect(Object.keys(sheet.zones)).toEqual(['1', '2', '3', '4', '5']);
  expect(() => layIsometric({ resolved: run, balloons: numbered(['s9']) }, how('phone'))).toThrow(GivenError);
});

test('legs with long names are numbered in order of travel', () => {
  const ids = ['riser in the east stair', 'b'];
  const run = resolved({
    ...three,
    legs: [
      { ...three.legs[0], id: ids[0] },
      { ...three.legs[1], id: ids[1], from: ids[0] },
    ],
    joints: [],
    ends: [],
    supports: [],
  });
  const sheet = layIsometric({ resolved: run }, how('phone'));
  expect(Object.keys(sheet.zones)).toEqual(['1', '2']);
  expect(sheet.words).toContain('Leg riser in the east stair goes east');
  expect(inches(run.legs[0]?.length ?? (0 as never))).toBe(296.5);
});
