import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bareFile } from '../../../src/run/edit/file.ts';
import { takeoff } from '../../../src/run/takeoff.ts';
import type { Run } from '../../../src/run/types.ts';
import type { CardRows } from '../../../src/site/run/card/rows.ts';
import { jobCard } from '../../../src/site/run/jobCard.ts';
import { workOut } from '../../../src/site/run/workOut.ts';
import { usual } from '../../../src/site/settings.ts';
import { catalogue, leg, whole } from '../../run/practice.ts';
import { randomRuns } from '../../run/randomRun.ts';
import { speak, tables } from '../../run/tables.ts';

const world = { catalogue, tables };
const words = {
  settings: usual,
  speak,
  tell: (say: string, values?: Readonly<Record<string, string | number>>) =>
    speak(values === undefined ? { say } : { say, values }),
};
const size = { about: ['Where ____', 'Size 4 in'], strip: 40 };

function cardOf(run: Run, crew = '') {
  const { resolved, inspected, takeoff: taken } = workOut(run, world, {}, takeoff);
  if (resolved === null || inspected === null || taken === null) return null;
  const { findings } = inspected.result;
  const card = jobCard(resolved, taken.result, findings, { ...bareFile(run), crew }, words, size);
  return { card, resolved, findings, taken };
}
type Made = NonNullable<ReturnType<typeof cardOf>>;
/** Rows of the card and of the sheets behind it. */
const all = <Part extends keyof CardRows>({ card }: Made, part: Part): readonly CardRows[Part][number][] =>
  [card.rows, ...card.lists].flatMap((rows) => rows[part] as readonly CardRows[Part][number][]);

test('nothing of a run is lost: it stands on the card or on a sheet behind it, once (by chance)', () => {
  let seen = 0;
  let behind = 0;
  fc.assert(
    fc.property(randomRuns, (run) => {
      const made = cardOf(run, 'HV, RK, LZ, KD, MO');
      if (made === null) return;
      seen++;
      const { card, resolved, findings, taken } = made;
      if (card.lists.length > 0) behind++;
      const pieces = resolved.legs.flatMap((l) => l.pieces);
      const cuts = all(made, 'cuts');
      expect(cuts.flatMap((row) => row.pieces).sort()).toEqual(pieces.map(({ id }) => id).sort());
      for (const { pieces: ids, cut } of cuts)
        for (const id of ids) expect(pieces.find((p) => p.id === id)?.cut).toBe(cut);
      const joints = resolved.legs.flatMap((l) => l.joints).filter(({ kind }) => kind !== 'expansion');
      expect(all(made, 'splices').length).toBe(joints.length + taken.result.gaps.length);
      expect(
        all(made, 'supports')
          .flatMap((row) => row.supports.map(({ name }) => name))
          .sort(),
      ).toEqual(resolved.legs.flatMap((l) => l.supports.map(({ name }) => name)).sort());
      expect(all(made, 'jumpers').length).toBe(taken.result.jumpers.length);
      expect(all(made, 'findings').map(({ number }) => number)).toEqual(findings.map((_, k) => k + 1));
      expect(all(made, 'crew')).toEqual(['HV', 'RK', 'LZ', 'KD', 'MO']);
    }),
    { numRuns: 60 },
  );
  expect(seen).toBeGreaterThan(20);
  expect(behind).toBeLessThan(seen);
});

test('a run that one sheet cannot hold goes on behind it; a small one does not', () => {
  const joints = Array.from({ length: 60 }, (_, k) => ({
    leg: '1',
    at: 30 + 37 * k + (k % 7),
    kind: 'butt',
  }));
  const made = cardOf(whole([leg('1', 'E', 'start', null, { length: 2400 })], { joints }));
  expect(made?.card.lists.length).toBeGreaterThan(0);
  const ids = made?.resolved.legs.flatMap((l) => l.pieces.map(({ id }) => id)) ?? [];
  expect(made && all(made, 'cuts').flatMap(({ pieces }) => pieces).length).toBe(ids.length);
  const small = cardOf(whole([leg('1', 'E')]));
  expect(small?.card.lists).toEqual([]);
  expect(small?.card.setting.strip).toBe(true);
});

test('a crew of ten has a row each', () => {
  const crew = Array.from({ length: 10 }, (_, k) => `W${k}`);
  const made = cardOf(whole([leg('1', 'E')]), crew.join('; '));
  expect(made && all(made, 'crew')).toEqual(crew);
});

test('expansion splices at start, in a leg and at an end stand with the gap wanted now', () => {
  // RUN.md: movement 1 in, (120 - 68) / (120 - -20) = 0.371 in, on the tape 3/8 in.
  const made = cardOf(
    whole([leg('1', 'E', 'start', null, { length: 200 })], {
      start: { kind: 'tray', joint: 'expansion' },
      ends: [{ leg: '1', kind: 'tray', joint: 'expansion' }],
      joints: [{ leg: '1', at: 100, kind: 'expansion' }],
      temps: { lowF: -20, highF: 120, nowF: 68 },
    }),
  );
  expect(made && all(made, 'splices').map(({ name, at, opening }) => [name, at, opening])).toEqual([
    ['Leg 1 start', '0"', '3/8"'],
    ['Leg 1 S1', `8'-4"`, '3/8"'],
    ['Leg 1 end', `16'-8"`, '3/8"'],
  ]);
  expect(made?.card.steps).toContain('gap');
});

test('supports of one leg stand by the way they are set', () => {
  const made = cardOf(
    whole([leg('1', 'D')], {
      supports: [
        { leg: '1', at: 12, way: 'horizontal', hold: 'guide' },
        { leg: '1', at: 40, way: 'vertical', hold: 'load' },
      ],
    }),
  );
  expect(made && all(made, 'supports').map(({ way, supports }) => [way, supports.length])).toEqual([
    ['horizontal', 1],
    ['vertical', 1],
  ]);
});

test('a length on the card reads as on the page: to 1/64 in where it stands so', () => {
  const made = cardOf(whole([leg('1', 'E', 'start', null, { length: 60 + 5 / 64 })]));
  expect(made && all(made, 'cuts').map(({ text }) => text)).toEqual([`5'-0 5/64"`]);
});

describe('tasks a run demands, by what stands on it', () => {
  const needs = (run: Run) => cardOf(run)?.card.needs;
  test('a straight run without anything: measured and cut', () =>
    expect(needs(whole([leg('1', 'E')]))).toEqual(['T05', 'T06']));
  test('ladder start, splice, both kinds of support, elbow, drop', () =>
    expect(
      needs(
        whole(
          [leg('1', 'E'), leg('2', 'N', '1', 'card-4-elbow-90'), leg('3', 'D', '2', 'card-4-outside-90')],
          {
            start: { kind: 'ladder', joint: 'socketed' },
            joints: [{ leg: '1', at: 50, kind: 'socketed' }],
            supports: [
              { leg: '1', at: 12, way: 'horizontal', hold: 'clamp' },
              { leg: '3', at: 30, way: 'vertical', hold: 'load' },
            ],
          },
        ),
      ),
    ).toEqual(['T03', 'T04', 'T05', 'T06', 'T07', 'T08a', 'T08b', 'T09', 'T11']));
  test('expansion, tee, cables', () =>
    expect(
      needs(
        whole([leg('1', 'E'), leg('2', 'N', '1:left', 'card-4-tee')], {
          joints: [{ leg: '1', at: 50, kind: 'expansion', gap: 0.5 }],
          cables: [
            {
              id: 'a',
              type: 'TC',
              odIn: 0.5,
              lbPerFt: 0.2,
              count: 1,
              make: 'multiconductor',
              use: 'signal',
              to: '2',
            },
          ],
        }),
      ),
    ).toEqual(['T05', 'T06', 'T08c', 'T10', 'T11', 'T12']));
});

test('equal pieces stand in one row', () => {
  const made = cardOf(
    whole([leg('1', 'E', 'start', null, { length: 180 })], {
      joints: [60, 120].map((at) => ({ leg: '1', at, kind: 'butt' })),
    }),
  );
  expect(made?.card.rows.cuts.map(({ pieces }) => pieces)).toEqual([['1-1', '1-2', '1-3']]);
});
