/** The tapped run: targets a thumb hits, nothing on anything else, on runs of every shape. */
import { describe, expect, test } from 'vitest';
import { pagePalette } from '../../../src/drawing/palette.ts';
import { type Box, overlaps, within } from '../../../src/drawing/shapes.ts';
import type { TapChosen, TapGiven, TapSheet } from '../../../src/drawing/tap/given.ts';
import { PLACE_WHATS } from '../../../src/drawing/tap/given.ts';
import { spread } from '../../../src/drawing/tap/spread.ts';
import { drawTap, faultAt, layTap } from '../../../src/drawing/tap/tap.ts';
import { inspect } from '../../../src/run/inspect/inspect.ts';
import { resolveRun } from '../../../src/run/resolve.ts';
import { TRADE_USUAL } from '../../../src/run/usual.ts';
import { runShape } from '../../../src/schema/run.ts';
import { inches } from '../../../src/trade/length.ts';
import { catalogue } from '../../run/practice.ts';
import { randomRun } from '../../run/randomRun.ts';
import { speak, tables } from '../../run/tables.ts';
import { flaws } from '../measure.ts';

const FORMS = [
  ['phone', false],
  ['phone', true],
  ['desk', false],
  ['paper', false],
] as const;
const how = (form: 'phone' | 'desk' | 'paper') => ({ form, palette: pagePalette, speak });
const chance = (seed: number) => resolveRun(randomRun(seed), catalogue, TRADE_USUAL);
const resolved = (run: unknown) => resolveRun(runShape.parse(run), catalogue, TRADE_USUAL);
const SEEDS = Array.from({ length: 100 }, (_, k) => k + 1);

const TAPS: readonly TapGiven['tap'][] = [
  { kind: 'faults' },
  ...PLACE_WHATS.map((what) => ({ kind: 'place', what }) as const),
];

/** What a person would mark: every third target; of faults each with a rule. */
function picked(sheet: TapSheet, tap: TapGiven['tap']): readonly TapChosen[] {
  return sheet.targets
    .filter((_, i) => i % 3 === 1)
    .map(({ leg, at }) => ({ leg, at, what: tap.kind === 'faults' ? 'span-too-long' : tap.what }));
}

/** All that is wrong with a sheet and its targets: one list, since a check of each pair takes longer than the drawing. */
function flawsOf(sheet: TapSheet): readonly string[] {
  const { targets, width, height } = sheet;
  const frame: Box = { x: 17, y: 17, w: width - 34, h: height - 34 };
  const boxes = targets.map(({ box }) => box);
  return [
    ...flaws(sheet),
    ...boxes.flatMap((b) => (b.w >= 48 && b.h >= 48 ? [] : [`small: ${JSON.stringify(b)}`])),
    ...boxes.flatMap((b) => (within(b, frame) ? [] : [`outside: ${JSON.stringify(b)}`])),
    ...boxes.flatMap((a, i) =>
      boxes.slice(i + 1).flatMap((b) => (overlaps(a, b, -0.001) ? [`meet: ${JSON.stringify([a, b])}`] : [])),
    ),
    ...targets.flatMap(({ key }, i) =>
      targets.findIndex((t) => t.key === key) === i ? [] : [`twice: ${key}`],
    ),
  ];
}

describe.each(FORMS)('%s, under 360 px: %s', (form, tiny) => {
  test.each(TAPS)(
    'random runs, %o: boxes of 48 px apart, nothing on anything else, all in the frame',
    (tap) => {
      const wrong: string[] = [];
      const whole = tap.kind === 'faults' || tap.what === 'support';
      for (const seed of whole && form !== 'paper' ? SEEDS : SEEDS.slice(0, 20)) {
        const run = chance(seed);
        const bare = layTap({ resolved: run, tap, chosen: [], tiny }, how(form));
        const chosen = picked(bare, tap);
        const found = inspect(run, catalogue, tables).result.findings.map(({ leg, at }, i) => ({
          leg,
          at: at === null ? null : inches(at),
          note: i + 1,
        }));
        const marked = layTap({ resolved: run, tap, chosen, found, ringed: true, tiny }, how(form));
        wrong.push(...[bare, marked].flatMap(flawsOf).map((flaw) => `seed ${seed}: ${flaw}`));
      }
      expect(wrong.slice(0, 5)).toEqual([]);
    },
  );
});

test('a phone figure is 328 px wide, under 360 px 304, and a foot of channel is 32 px', () => {
  const run = resolved({
    v: 1,
    tray: 'card-4',
    start: { kind: 'free', joint: 'free' },
    legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: `12'` }],
  });
  const given: TapGiven = { resolved: run, tap: { kind: 'place', what: 'support' }, chosen: [] };
  const sheet = layTap(given, how('phone'));
  expect(sheet.width).toBe(328);
  expect(layTap({ ...given, tiny: true }, how('phone')).width).toBe(304);
  const piece = sheet.plan.shapes.find((s) => s.kind === 'rect' && s.part === 'piece 1-1');
  expect(piece?.kind === 'rect' && piece.h).toBeCloseTo(12 * 32, 6);
  // Every foot of it, each as far from the next as it is on the channel.
  expect(sheet.targets.map(({ at }) => at)).toEqual(Array.from({ length: 13 }, (_, k) => 12 * k));
  const tops = sheet.targets.map(({ box }) => box.y);
  for (const [i, y] of tops.slice(1).entries()) expect(y - (tops[i] ?? 0)).toBeCloseTo(32, 6);
  expect(sheet.targets.map(({ words }) => words)[4]).toBe('Leg 1, 4 ft along it');
});

test('steel that the run names is what can be tapped, by its letter', () => {
  const run = resolved({
    v: 1,
    tray: 'card-4',
    start: { kind: 'free', joint: 'free' },
    legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: `12'` }],
    places: [{ leg: '1', at: [`6'`, `0'-6"`, `9'-3"`] }],
  });
  const { targets } = layTap(
    { resolved: run, tap: { kind: 'place', what: 'support' }, chosen: [] },
    how('phone'),
  );
  expect(targets.map(({ letters, at, words }) => [letters, at, words])).toEqual([
    ['A', 6, 'Steel A, leg 1, 6 in along it'],
    ['B', 72, 'Steel B, leg 1, 6 ft along it'],
    ['C', 111, 'Steel C, leg 1, 9 ft 3 in along it'],
  ]);
});

const spans = resolved({
  v: 1,
  tray: 'card-4',
  start: { kind: 'free', joint: 'free' },
  legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: `20'` }],
  supports: [1, 6, 13, 19].map((ft) => ({ leg: '1', at: ft * 12, way: 'horizontal', hold: 'guide' })),
});

test('before it is taped measures are plain; taped, those with a finding are clouded and the others ringed', () => {
  const parts = (sheet: TapSheet) =>
    sheet.plan.shapes.flatMap(({ part = '' }) =>
      ['plain', 'ringed', 'clouded'].includes(part) ? [part] : [],
    );
  const given: TapGiven = { resolved: spans, tap: { kind: 'faults' }, chosen: [] };
  expect(parts(layTap(given, how('phone')))).toEqual(Array(5).fill('plain'));
  const found = [{ leg: '1', at: (6 + 13) * 6, note: 1 }];
  const taped = layTap({ ...given, found, ringed: true }, how('phone'));
  expect(parts(taped)).toEqual(['ringed', 'ringed', 'clouded', 'ringed', 'ringed']);
  expect(taped.plan.texts.filter(({ part }) => part === 'triangle 1').map(({ text }) => text)).toEqual(['1']);
  expect(taped.words).toContain('Note 1: leg 1, 9 ft 6 in.');
});

test('with more found than is shown nothing is ringed, for it might not hold', () => {
  const found = [{ leg: '1', at: 114, note: 1 }];
  const { plan } = layTap({ resolved: spans, tap: { kind: 'faults' }, chosen: [], found }, how('phone'));
  const parts = plan.shapes.map(({ part }) => part);
  expect(parts).toContain('clouded');
  expect(parts).not.toContain('ringed');
});

test('a chosen mark that holds is ringed', () => {
  const chosen = [{ leg: '1', at: 42, what: 'span-too-long', held: true }];
  const { plan } = layTap({ resolved: spans, tap: { kind: 'faults' }, chosen }, how('phone'));
  expect(plan.shapes.find(({ part }) => part === 'target 1:span:42')?.kind).toBe('circle');
});

test('a chosen box is filled; one that a note is about stands in a cloud', () => {
  const tap = { kind: 'place', what: 'support' } as const;
  const chosen = [12, 60].map((at) => ({ leg: '1', at, what: 'support' }));
  const bare = { ...spans, legs: spans.legs.map((leg) => ({ ...leg, supports: [] })) };
  const sheet = layTap({ resolved: bare, tap, chosen, found: [{ leg: '1', at: 60, note: 1 }] }, how('phone'));
  const box = (at: number) =>
    sheet.plan.shapes.find(
      (s) => s.part === `target 1:mark:${at}` && (s.kind === 'cloud' || s.kind === 'rect'),
    );
  expect(box(12)).toMatchObject({ kind: 'rect', fill: 'ink' });
  expect(box(60)).toMatchObject({ kind: 'cloud' });
  expect(box(24)).toMatchObject({ kind: 'rect', pen: 'hidden' });
  expect(sheet.words).toContain('support on leg 1 at 5 ft');
});

test('every finding of a random run stands on a part that can be tapped, to 6 in', () => {
  // A cut is near the joint it goes into, a face beside its gap: the ask's own tolerance takes that much.
  const missed: string[] = [];
  for (const seed of SEEDS) {
    const run = chance(seed);
    const { targets } = layTap({ resolved: run, tap: { kind: 'faults' }, chosen: [] }, how('phone'));
    for (const { rule, leg, at } of inspect(run, catalogue, tables).result.findings) {
      const inch = at === null ? null : inches(at);
      // A section without any support is blamed at its middle, where nothing stands.
      if (rule === 'anchor-none' && !run.byId.get(leg)?.supports.some((s) => s.at === at)) continue;
      const hit = targets.some((t) => {
        const there = faultAt(t, rule);
        if (t.leg !== leg) return false;
        return inch === null || there === null ? inch === there : Math.abs(there - inch) <= 6;
      });
      if (!hit) missed.push(`seed ${seed}: ${rule} ${leg} ${inch}`);
    }
  }
  expect(missed).toEqual([]);
});

test('neighbours pushed apart stay in order, and lie about where they belong', () => {
  expect(spread([0, 100, 200], 48)).toEqual([0, 100, 200]);
  expect(spread([0, 10], 48)).toEqual([-19, 29]);
  expect(spread([], 48)).toEqual([]);
  const wanted = [5, 6, 7, 90, 91, 300];
  const stood = spread(wanted, 48);
  for (const [i, y] of stood.slice(1).entries())
    expect(y - (stood[i] ?? 0)).toBeGreaterThanOrEqual(48 - 1e-9);
});

test('the picture carries its words and its targets', () => {
  const made = drawTap({ resolved: spans, tap: { kind: 'faults' }, chosen: [] }, how('desk'));
  expect(made.svg).toContain('aria-label="The run turned');
  expect(made.targets.find(({ part }) => part === 'span')).toMatchObject({
    letters: 'A–B',
    words: 'Span A to B, 5 ft.',
    at: 42,
  });
});
