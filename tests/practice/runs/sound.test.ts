/** Runs of practice: sound before anything is put into them, told wholly by what was drawn, and made in good time. */
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { routeOf } from '../../../src/practice/runs/route.ts';
import { type SoundRun, soundRun } from '../../../src/practice/runs/sound.ts';
import type { RouteValues } from '../../../src/practice/runs/wants.ts';
import { inspect } from '../../../src/run/inspect/inspect.ts';
import { layout } from '../../../src/run/layout/layout.ts';
import { resolveRun, stockFaults } from '../../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../../src/run/usual.ts';
import { runJson } from '../../../src/run/writeRun.ts';
import { runShape } from '../../../src/schema/run.ts';
import { fromInches, inches } from '../../../src/trade/length.ts';
import { Chance } from '../../run/randomRun.ts';
import { bench, valuesBy } from './values.ts';

const { catalogue, tables } = bench;

function many(seed: number, tries: number): readonly { values: RouteValues; sound: SoundRun }[] {
  const chance = new Chance(seed);
  return Array.from({ length: tries }, () => valuesBy(chance)).flatMap((values) => {
    const sound = soundRun(values, bench);
    return sound === null ? [] : [{ values, sound }];
  });
}

/** One leg of 30 ft and one of 10 ft to the right, nothing between. */
const plain: RouteValues = {
  width: 'card-4',
  heading: 'east',
  start: 'ladder',
  end: 'instrument',
  legs: [
    { length: fromInches(360), turn: 'left', parted: 'none', part: 50 },
    { length: fromInches(120), turn: 'right', parted: 'none', part: 50 },
  ],
  cables: [{ cable: 'power-10', count: 2 }],
  maxSpan: fromInches(72),
};
const legs = (values: Partial<RouteValues>) => routeOf({ ...plain, ...values }, catalogue)?.legs;

describe('a sound run', () => {
  const runs = many(1, 500);

  it('is found in values often enough to be drawn', () => {
    expect(runs.length).toBeGreaterThan(100);
  });

  it('is read back as it was, and an inspection of it finds nothing', () => {
    for (const { sound } of runs) {
      const again = resolveRun(
        runShape.parse(JSON.parse(JSON.stringify(runJson(sound.run)))),
        catalogue,
        TRADE_USUAL,
      );
      expect(inspect(again, catalogue, tables).result.findings).toEqual([]);
      expect(stockFaults(again)).toEqual([]);
    }
  });

  it('has the fewest supports that any lay-out has, and at the end at a tray one of its own', () => {
    const held = runs.filter(({ values }) => values.end !== 'tray');
    for (const { values, sound } of held.slice(0, 60)) {
      const { result } = layout(routeOf(values, catalogue) ?? sound.run, catalogue, tables);
      if (result.run === null) throw new Error(`refused: ${result.refused.rule}`);
      expect(sound.run.supports?.length).toBe(result.bound.supports);
    }
  });

  it('is the same for the same values, now and for ever', () => {
    const text = (all: typeof runs) => JSON.stringify(all.map(({ sound }) => runJson(sound.run)));
    expect(text(many(1, 500))).toBe(text(runs));
    // What was drawn stays drawn: whoever changes this changes every draw that was ever answered.
    expect(
      createHash('sha256')
        .update(text(runs.slice(0, 100)))
        .digest('hex'),
    ).toMatchInlineSnapshot(`"8f52c60f6e86c22931090fe69bb8858149e065e8473f889a78206e8f2d49946e"`);
  });

  it('has the legs that were drawn', () => {
    for (const { values, sound } of runs) {
      expect(sound.run.legs.map(({ length }) => length)).toEqual(values.legs.map(({ length }) => length));
    }
  });

  // Two to five, by itself; the bound is for a machine that does other things as well.
  it('costs few milliseconds', () => {
    const from = performance.now();
    many(2, 200);
    expect((performance.now() - from) / 200).toBeLessThan(50);
  });
});

describe('turns', () => {
  const second = (turn: RouteValues['legs'][number]['turn'], heading: RouteValues['heading'] = 'east') =>
    legs({ heading, legs: plain.legs.map((leg) => ({ ...leg, turn })) })?.[1];

  it('go where they say', () => {
    expect(second('right')).toMatchObject({ dir: 'S', fitting: 'card-4-elbow-90', from: 'L1' });
    expect(second('left')).toMatchObject({ dir: 'N', fitting: 'card-4-elbow-90' });
    expect(second('left', 'north')).toMatchObject({ dir: 'W' });
    expect(second('half-right', 'north')).toMatchObject({
      dir: { azimuthDeg: 45, slopeDeg: 0 },
      fitting: 'card-4-elbow-45',
    });
    expect(second('down')).toMatchObject({ dir: 'D', fitting: 'card-4-outside-90' });
    expect(second('up')).toMatchObject({ dir: 'U', fitting: 'card-4-inside-90' });
    expect(second('hinge-left')).toMatchObject({ fitting: 'card-4-hinge', dir: { azimuthDeg: 60 } });
    expect(second('reduce-left')).toMatchObject({ fitting: 'card-4-2-reducer-left', keeps: 'left' });
  });

  it('leave a drop at its foot and a rise at its head, level and in the same heading', () => {
    const three = (turn: 'up' | 'down') =>
      legs({ legs: [plain.legs[0], { ...plain.legs[1], turn }, plain.legs[1]] as RouteValues['legs'] })?.[2];
    expect(three('down')).toMatchObject({ dir: 'E', fitting: 'card-4-inside-90' });
    expect(three('up')).toMatchObject({ dir: 'E', fitting: 'card-4-outside-90' });
  });

  it('branch at a tee that the run goes straight on through', () => {
    const [a, b] = plain.legs as [RouteValues['legs'][0], RouteValues['legs'][0]];
    const cables: RouteValues['cables'] = [
      { cable: 'power-10', count: 1 },
      { cable: 'power-6', count: 1 },
    ];
    const branched = routeOf({ ...plain, cables, legs: [a, { ...b, turn: 'branch-left' }, b] }, catalogue);
    expect(branched?.legs.slice(1)).toMatchObject([
      { from: 'L1:left', dir: 'N', fitting: 'card-4-tee' },
      { from: 'L1', dir: 'E', fitting: 'card-4-tee' },
    ]);
    expect(branched?.cables?.map(({ to }) => to)).toEqual(['L2', 'L3']);
    expect(branched?.ends?.map(({ leg }) => leg)).toEqual(['L2', 'L3']);
    // A branch with nothing behind it, and one that carries nothing.
    expect(routeOf({ ...plain, cables, legs: [a, { ...b, turn: 'branch-left' }] }, catalogue)).toBeNull();
    expect(routeOf({ ...plain, legs: [a, { ...b, turn: 'branch-left' }, b] }, catalogue)).toBeNull();
  });
});

describe('values that make no sound run', () => {
  const [first, second] = plain.legs as [RouteValues['legs'][0], RouteValues['legs'][0]];
  const no = (values: Partial<RouteValues>) => expect(soundRun({ ...plain, ...values }, bench)).toBeNull();

  it('are sent back', () => {
    expect(soundRun(plain, bench)).not.toBeNull();
    // A reducer on the narrowest channel; a leg that its two fittings would take up.
    no({ width: 'card-2', legs: [first, { ...second, turn: 'reduce' }] });
    no({ legs: [first, { ...second, length: fromInches(6) }] });
    // An expansion splice without temperatures, or outside them.
    no({ legs: [{ ...first, parted: 'expansion' }] });
    no({ legs: [{ ...first, parted: 'expansion' }], lowF: 10, highF: 90, nowF: 95 });
    // Power and signal without a barrier.
    no({ cables: [...(plain.cables ?? []), { cable: 'signal-2', count: 1 }] });
    // Too much cable for the channel.
    no({ cables: [{ cable: 'power-3', count: 4 }] });
    // A drop that would be parted.
    no({ legs: [first, { ...second, turn: 'down', parted: 'hinged' }] });
  });

  it('are those of a piece that ends in a hole: at 48 in, and not 3/8 in from it', () => {
    // A free channel of 48 in from its own end to its own end; holes stand at 6 in, every 6 in, 9/16 wide (practice catalogue).
    const free = (length: number) =>
      soundRun(
        { ...plain, start: 'free', end: 'free', legs: [{ ...first, length: fromInches(length) }] },
        bench,
      );
    expect(free(48)).toBeNull();
    expect(free(48.375)).not.toBeNull();
    expect(free(48.25)).toBeNull();
  });
});

it('an expansion splice stands at the gap of its temperature, to the sixteenth', () => {
  // (110 - 70) / (110 - 10) of 1 in = 0.4 in; 6/16 = 0.375 is nearest. DESIGN: movement 1 in.
  const leg = { ...(plain.legs[0] as RouteValues['legs'][0]), parted: 'expansion' as const };
  const route = routeOf({ ...plain, legs: [leg], lowF: 10, highF: 110, nowF: 70 }, catalogue);
  expect(route?.joints?.map(({ gap, at }) => [inches(gap ?? fromInches(0)), inches(at)])).toEqual([
    [0.375, 180],
  ]);
});
