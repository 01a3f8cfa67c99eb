/** What the tolerance of an ask promises, of every family: inside it an answer holds; beyond it, it never does by itself. */
import { describe, expect, test } from 'vitest';
import { isNumber } from '../../src/practice/kinds/number.ts';
import type { Answer, PlacedAt } from '../../src/practice/model.ts';
import { draw, families, family, finding, world } from './means.ts';

const SEEDS = ['1', '2', '3'];

const drawsOf = (id: string) => SEEDS.map((seed) => draw(id, seed));

const numbered = [...families.values()].filter(({ asks }) => asks.some(isNumber)).map(({ id }) => id);
const placed = [...families.values()]
  .filter(({ asks }) => asks.some(({ kind }) => kind === 'place' || kind === 'faults'))
  .map(({ id }) => id);

describe.each(numbered)('%s', (id) => {
  const asks = family(id).asks.filter(isNumber);

  test('a number inside its tolerance holds; beyond it, it is near, or some mistake’s own', () => {
    for (const drawn of drawsOf(id)) {
      for (const { id: ask, tolerance, unit } of asks) {
        const right = drawn.right[ask] as number;
        const at = (by: number) => finding(drawn, ask, right + by);
        const where = `${ask} ${drawn.seed}`;
        for (const by of [-0.98, 0.98]) expect(at(by * tolerance).verdict, where).toBe('holds');
        if (unit === 'count' || tolerance === 0) continue;
        for (const by of [-1.9, -1.1, 1.1, 1.9]) {
          const { verdict, mistake } = at(by * tolerance);
          expect(verdict === 'near' || mistake !== null, `${where}: ${by} tolerances`).toBe(true);
        }
      }
    }
  });
});

describe.each(placed)('%s', (id) => {
  test('a mark inside its tolerance holds, whichever it is', () => {
    for (const drawn of drawsOf(id)) {
      for (const ask of family(id).asks) {
        if (ask.kind !== 'place' && ask.kind !== 'faults') continue;
        const marks = drawn.right[ask.id] as readonly PlacedAt[];
        const run = world.models.get(family(id).model)?.asks[ask.id]?.on?.(drawn.plan, world);
        for (const [k, mark] of marks.entries()) {
          const long = (run?.byId.get(mark.leg)?.length ?? 0) / 8128;
          const by = 0.9 * ask.tolerance;
          const at = mark.at + by <= long ? mark.at + by : mark.at - by;
          const moved = marks.with(k, { ...mark, at }) as Answer;
          expect(finding(drawn, ask.id, moved).verdict, `${ask.id} ${drawn.seed} mark ${k}`).toBe('holds');
        }
      }
    }
  });
});
