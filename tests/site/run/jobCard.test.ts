import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { takeoff } from '../../../src/run/takeoff.ts';
import type { Run } from '../../../src/run/types.ts';
import { bareFile } from '../../../src/schema/runFile.ts';
import { jobCard } from '../../../src/site/run/jobCard.ts';
import { workOut } from '../../../src/site/run/workOut.ts';
import { catalogue, leg, whole } from '../../run/practice.ts';
import { randomRuns } from '../../run/randomRun.ts';
import { tables } from '../../run/tables.ts';

const world = { catalogue, tables };

function cardOf(run: Run) {
  const { resolved, inspected, takeoff: taken } = workOut(run, world, {}, takeoff);
  if (resolved === null || inspected === null || taken === null) return null;
  const { findings } = inspected.result;
  return { card: jobCard(resolved, taken.result, findings, bareFile(run)), resolved, findings, taken };
}

test('nothing of a run is lost: what stands on the card and what is left to the list make all of it (by chance)', () => {
  let seen = 0;
  fc.assert(
    fc.property(randomRuns, (run) => {
      const made = cardOf(run);
      if (made === null) return;
      seen++;
      const { card, resolved, findings, taken } = made;
      const shown = card.cuts.flatMap(({ pieces }) => pieces);
      const pieces = resolved.legs.flatMap((l) => l.pieces);
      expect(shown.length + card.left.cuts).toBe(pieces.length);
      for (const { pieces: ids, cut } of card.cuts)
        for (const id of ids) expect(pieces.find((p) => p.id === id)?.cut).toBe(cut);
      expect(card.splices.length + card.left.splices).toBe(resolved.legs.flatMap((l) => l.joints).length);
      const held = card.supports.reduce((sum, row) => sum + row.supports.length, 0);
      expect(held + card.left.supports).toBe(resolved.legs.flatMap((l) => l.supports).length);
      expect(card.jumpers.length + card.left.jumpers).toBe(taken.result.jumpers.length);
      expect(card.findings.length + card.left.findings).toBe(findings.length);
    }),
    { numRuns: 60 },
  );
  expect(seen).toBeGreaterThan(20);
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
  expect(made?.card.cuts.map(({ pieces }) => pieces)).toEqual([['1-1', '1-2', '1-3']]);
});
