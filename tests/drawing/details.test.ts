/** Details of runs by chance, measured as the views of whole runs are: every place of every view. */
import { describe, expect, test } from 'vitest';
import type { Detail, DetailGiven, DetailView } from '../../src/drawing/details/detail.ts';
import { detailViews } from '../../src/drawing/details/details.ts';
import { explodedPlaces, layExploded } from '../../src/drawing/details/exploded.ts';
import { fittingScale, layFitting } from '../../src/drawing/details/fitting.ts';
import { bodyOf } from '../../src/drawing/details/fittingGeometry.ts';
import { layHoles } from '../../src/drawing/details/holes.ts';
import { laySupport } from '../../src/drawing/details/support.ts';
import { pagePalette } from '../../src/drawing/palette.ts';
import type { Polygon } from '../../src/drawing/shapes.ts';
import { render } from '../../src/drawing/svg.ts';
import type { How } from '../../src/drawing/types.ts';
import { hardware } from '../../src/run/hardware.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { GivenError } from '../../src/trade/given.ts';
import { readLength as L } from '../../src/trade/length.ts';
import { catalogue, resolved } from '../run/practice.ts';
import { randomRun } from '../run/randomRun.ts';
import { speak, tables } from '../run/tables.ts';
import { extent, flaws } from './measure.ts';
import { forms } from './subjects.ts';

/** Enough to hold every kind of fitting, joint and support many times over. */
const SEEDS = Array.from({ length: 110 }, (_, k) => k + 1);
/** Places of one run that are measured: the whole of a run says little more than its first ones. */
const MOST = 3;

const runs = SEEDS.map((seed) => ({
  seed,
  given: { resolved: resolveRun(randomRun(seed), catalogue, TRADE_USUAL), catalogue, tables },
}));

const how = (form: How['form']): How => ({ form, palette: pagePalette, speak });

const places = (view: DetailView, given: DetailGiven) => view.places(given).slice(0, MOST);

function measured(sheet: Detail, name: string): void {
  expect(flaws(sheet), name).toEqual([]);
}

describe.each(detailViews.map((view) => [view.view, view] as const))('%s', (_, view) => {
  test.each(forms)('of any run on %s: texts apart, all inside, all finite', { timeout: 60_000 }, (form) => {
    let count = 0;
    for (const { seed, given } of runs) {
      for (const of of places(view, given)) {
        const sheet = view.lay({ ...given, of }, how(form));
        measured(sheet, `run ${seed}, ${of}`);
        if (form === 'phone') expect(sheet.width).toBe(328);
        count += 1;
      }
    }
    expect(count).toBeGreaterThan(60);
  });

  test('balloons stand at every part, each in a zone', () => {
    for (const { seed, given } of runs.slice(0, 25)) {
      for (const of of places(view, given)) {
        const { parts } = view.lay({ ...given, of }, how('desk'));
        const balloons = parts.map((at, i) => ({ number: String(i + 1), at }));
        const sheet = view.lay({ ...given, of, balloons }, how('desk'));
        measured(sheet, `run ${seed}, ${of}`);
        expect(Object.keys(sheet.zones)).toHaveLength(parts.length);
      }
    }
  });

  test('without a name it shows the first; a name that is none is a fault', () => {
    const one = runs.find(({ given }) => view.places(given).length > 0);
    if (one === undefined) throw new Error('no run has such a place');
    const [first] = view.places(one.given);
    const svg = (given: DetailGiven) => render(view.lay(given, how('paper')), how('paper')).svg;
    expect(svg({ ...one.given, of: undefined })).toBe(svg({ ...one.given, of: first }));
    expect(svg(one.given)).not.toMatch(/style|class=|<script|href|NaN|undefined/i);
    expect(() => view.lay({ ...one.given, of: 'no such' }, how('desk'))).toThrow(GivenError);
  });
});

/** Lengths on a sheet by what they are the dimension of. */
const texts = ({ plan }: Detail, part: string) =>
  plan.texts.filter((t) => t.part === part).map((t) => t.text);

function sketch(length: string, rest: Record<string, unknown> = {}): DetailGiven {
  return { resolved: resolved(length, rest), catalogue, tables };
}
const hold = (at: string, way: string, as: string) => ({ leg: '1', at, way, hold: as });

describe('fitting', () => {
  test('is to scale: face, radius and take-out of every elbow', () => {
    for (const { given } of runs) {
      for (const fitting of given.resolved.fittings) {
        const body = bodyOf(fitting);
        const { px, to } = fittingScale(body, 'desk');
        const [a, b] = [to([0, 0]), to([1, 0])];
        expect(b[0] - a[0]).toBeCloseTo(px, 6);
        if (body.bend === undefined || fitting.item.kind !== 'elbow') continue;
        // Both faces stand square to the centre line, the take-out from the working point.
        for (const arm of body.arms) expect(arm.take).toBe(fitting.item.takeOut / L(1));
        const away = Math.hypot(body.bend.on[0] - body.bend.centre[0], body.bend.on[1] - body.bend.centre[1]);
        expect(away).toBeCloseTo(body.bend.inner, 9);
      }
    }
  });

  test('turns the way the leg goes: left up the sheet, right down it', () => {
    for (const { given } of runs) {
      for (const fitting of given.resolved.fittings) {
        const [first] = fitting.out;
        if (fitting.item.kind !== 'elbow' || first === undefined) continue;
        const y = bodyOf(fitting).arms[1]?.way[1] ?? 0;
        expect(y < 0, fitting.item.id).toBe(first.turn === 'left' || first.turn === 'inside');
      }
    }
  });

  test('letters take-out, insertion, radius and the cuts of the pieces', () => {
    const one = runs.find(({ given }) => given.resolved.fittings.some(({ item }) => item.kind === 'elbow'));
    const fitting = one?.given.resolved.fittings.find(({ item }) => item.kind === 'elbow');
    if (one === undefined || fitting === undefined) throw new Error('no elbow');
    const sheet = layFitting({ ...one.given, of: fitting.out[0]?.leg.leg }, how('desk'));
    expect(texts(sheet, 'take-out')).toHaveLength(2);
    expect(texts(sheet, 'insertion')).toHaveLength(2);
    expect(texts(sheet, 'radius')[0]).toMatch(/^R /);
    expect(texts(sheet, 'callout').filter((t) => t.startsWith('cut '))).toHaveLength(2);
  });
});

describe('support', () => {
  test('a clamp bears on the channel, a guide leaves air, and the word says which', () => {
    const of = (as: string) =>
      laySupport(sketch(`10'`, { supports: [hold(`5'`, 'horizontal', as)] }), how('desk'));
    const [clamp, guide] = [of('clamp'), of('guide')];
    // Between the foot's inner edge, on the strut, and the channel's wall.
    const air = ({ plan }: Detail, part: string) => {
      const [first] = plan.shapes.filter((s): s is Polygon => s.kind === 'polygon' && s.part === part);
      const channel = plan.shapes.find((s) => s.kind === 'polygon' && s.part === 'channel');
      if (first === undefined || channel === undefined) throw new Error(part);
      const foot = Math.max(...first.points.map((p) => p[1]));
      const inner = Math.max(...first.points.filter((p) => p[1] === foot).map((p) => p[0]));
      return extent(channel).x - inner;
    };
    expect(air(clamp, 'clamp')).toBeCloseTo(0, 6);
    expect(air(guide, 'guide')).toBeGreaterThanOrEqual(4);
    expect(clamp.plan.shapes.some((s) => s.part === 'guide')).toBe(false);
    expect(clamp.words).toContain('cannot slide');
    expect(guide.words).toContain('slides through');
  });

  test('half of the load stands on each rod: 10 ft of 1.2 lb/ft on one support', () => {
    // Practice catalogue: 4 in channel weighs 1.2 lb/ft (training value); 12 lb, by hand.
    const sheet = laySupport(sketch(`10'`, { supports: [hold(`5'`, 'horizontal', 'clamp')] }), how('desk'));
    expect(texts(sheet, 'load')).toEqual(['6 lb', '6 lb']);
    expect(sheet.words).toContain('12 lb');
  });
});

describe('exploded', () => {
  test('counts of a support are those of the take-off', () => {
    for (const { given } of runs.slice(0, 30)) {
      for (const of of explodedPlaces(given).filter((n) => n === 'horizontal' || n === 'vertical')) {
        const sheet = layExploded({ ...given, of }, how('desk'));
        const counts = texts(sheet, 'count').map(Number);
        const leg = given.resolved.legs.find((l) => l.supports.some((s) => s.way === of));
        const support = leg?.supports.find((s) => s.way === of);
        if (leg === undefined || support === undefined) throw new Error('no support');
        const alone = hardware(
          { legs: [{ ...leg, fittingBefore: null, joints: [], supports: [support] }] },
          catalogue,
          0,
        );
        const taken = new Map<string, number>(alone.hardware.map(({ item, count }) => [item, count]));
        expect(counts).toEqual([
          taken.get('strut'),
          taken.get('channel-nut'),
          1,
          taken.get('clamp') ?? taken.get('guide'),
          taken.get('washer'),
          taken.get('bolt'),
        ]);
      }
    }
  });

  test('hole, bolt and washer of a splice are those of its fastening place', () => {
    const sheet = layExploded(
      { ...sketch(`30'`, { joints: [{ leg: '1', at: `15'`, kind: 'socketed' }] }), of: 'sleeve' },
      how('desk'),
    );
    // Practice catalogue, splice-fastener (training values).
    expect(texts(sheet, 'row')).toEqual(
      expect.arrayContaining([
        '4 in channel, small holes, 9/16"',
        'bolt, round head, 1/2" × 1"',
        'washer, 1 1/4" across',
      ]),
    );
  });
});

describe('holes', () => {
  const of = (at: string) =>
    layHoles(
      { ...sketch(`19'`, { joints: [{ leg: '1', at, kind: 'butt', gap: 0 }] }), of: '1-1' },
      how('desk'),
    );

  test('says whether the cut is on a hole, and where it is clear', () => {
    // Holes 9/16 in, first at 6, every 6 in (training values): 10 ft falls on one; 10 ft 3 in half-way between two.
    expect(of(`10'`).words).toContain('It is on the hole.');
    expect(of(`10'`).words).toContain('The nearest clear place before it is at 9 ft 11 5/32 in.');
    expect(of(`10'-3"`).words).not.toContain('It is on the hole.');
    expect(of(`10'-3"`).words).toContain('The cut is 3 in from the middle of the nearest hole.');
    expect(of(`10'-3"`).words).toContain('The first end keeps its factory holes');
  });

  test('a whole length is not cut', () => {
    const sheet = layHoles({ ...sketch(`20'`), of: '1-1' }, how('desk'));
    expect(sheet.words).toContain('both ends keep their factory holes');
    expect(sheet.plan.shapes.some((s) => s.part === 'cut')).toBe(false);
  });
});
