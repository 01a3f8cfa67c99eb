/** Formulas against published values (tests/references/statistics.json: each with its source), and where there is no figure. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../src/practice/statistics/figure.ts';
import { type Matrix, pointBiserial, pointBiserialWithout } from '../../src/practice/statistics/item.ts';
import { kappa } from '../../src/practice/statistics/kappa.ts';
import { errorOf, errorOfMeasurement, kr20 } from '../../src/practice/statistics/reliability.ts';
import { shareOf } from '../../src/practice/statistics/share.ts';
import statistics from '../references/statistics.json' with { type: 'json' };

const matrixA: Matrix = statistics.matrices.A.rows.map((row) => row.map((one) => one === 1));
const figureOf = (figure: Figure): number => {
  if ('none' in figure) throw new Error(figure.none);
  return figure.value;
};

interface Case {
  readonly id: string;
  readonly given: Readonly<Record<string, unknown>> & { readonly op: string };
  readonly expect: unknown;
  readonly tolerance?: number;
  readonly source: string;
}
const compute: Readonly<Record<string, (given: Case['given']) => number>> = {
  itemP: ({ item }) => {
    const { held, n } = shareOf(matrixA.filter((row) => row[Number(item) - 1]).length, matrixA.length);
    return held / n;
  },
  rpb: ({ item }) => figureOf(pointBiserial(matrixA, Number(item) - 1)),
  rpbCorrected: ({ item }) => figureOf(pointBiserialWithout(matrixA, Number(item) - 1)),
  kr20: () => figureOf(kr20(matrixA)),
  semKr20: () => figureOf(errorOf(matrixA)),
  sem: ({ sd, reliability }) => errorOfMeasurement(Number(sd), Number(reliability)),
};
const cases = statistics.cases as readonly Case[];

test.each(cases.filter(({ given }) => given.op in compute))(
  '$id: $given.op ($source)',
  ({ given, expect: wanted, tolerance = 0 }) => {
    const got = (compute[given.op] as (typeof compute)[string])(given);
    expect(Math.abs(got - Number(wanted)), String(got)).toBeLessThanOrEqual(tolerance);
  },
);

test.each(cases.filter(({ given }) => given.op === 'kappa'))('$id: kappa ($source)', (row) => {
  const { po, pe, kappa: wanted } = row.expect as { po: number; pe: number; kappa: number | null };
  const got = kappa(row.given['table'] as number[][]);
  expect(got.agreed / got.n).toBeCloseTo(po, 9);
  expect(got.byChance).toBeCloseTo(pe, 9);
  if (wanted === null) expect(got.kappa).toEqual({ none: 'one class only' });
  else expect(Math.abs(figureOf(got.kappa) - wanted)).toBeLessThanOrEqual(row.tolerance ?? 0);
});

test('every published row that this room computes is there', () => {
  const ops = cases.filter(({ given }) => given.op in compute || given.op === 'kappa');
  expect(ops.length).toBe(10);
});

describe('where there is no figure, it says why', () => {
  const rows = (...patterns: readonly string[]): Matrix => patterns.map((p) => [...p].map((s) => s === '+'));

  test('point-biserial', () => {
    expect(pointBiserial(rows('++', '+-'), 0)).toEqual({ none: 'one class only' });
    expect(pointBiserial(rows('-+', '--'), 0)).toEqual({ none: 'one class only' });
    expect(pointBiserial(rows('+-', '-+'), 0)).toEqual({ none: 'no spread' });
    expect(pointBiserialWithout(rows('+-', '--'), 0)).toEqual({ none: 'no spread' });
    expect(pointBiserial(rows('+-'), 0)).toEqual({ none: 'too few' });
    expect(pointBiserial([], 0)).toEqual({ none: 'too few' });
    // By hand: two people, one holds both and one none: 1.
    expect(figureOf(pointBiserial(rows('++', '--'), 0))).toBeCloseTo(1, 12);
  });

  test('KR-20 and the error', () => {
    expect(kr20(rows('+-', '-+'))).toEqual({ none: 'no spread' });
    expect(kr20(rows('+', '-'))).toEqual({ none: 'too few' });
    expect(kr20(rows('++'))).toEqual({ none: 'too few' });
    expect(kr20([])).toEqual({ none: 'too few' });
    expect(errorOf(rows('+-', '-+'))).toEqual({ none: 'no spread' });
    // By hand: totals 2 and 0, variance 1, Σpq 0.5: 2 · (1 − 0.5) = 1, and nothing is left open.
    expect(figureOf(kr20(rows('++', '--')))).toBeCloseTo(1, 12);
    expect(figureOf(errorOf(rows('++', '--')))).toBeCloseTo(0, 12);
  });

  test('kappa', () => {
    expect(
      kappa([
        [0, 0],
        [0, 0],
      ]),
    ).toEqual({ n: 0, agreed: 0, byChance: null, kappa: { none: 'too few' } });
    expect(
      kappa([
        [0, 0],
        [0, 7],
      ]).kappa,
    ).toEqual({ none: 'one class only' });
    // One of them said only one thing: as good as chance.
    expect(
      kappa([
        [4, 0],
        [3, 0],
      ]).kappa,
    ).toEqual({ value: 0 });
    expect(
      kappa([
        [0, 5],
        [5, 0],
      ]).kappa,
    ).toEqual({ value: -1 });
    expect(() => kappa([[1, 2]])).toThrow(RangeError);
  });
});

test('laws: within −1 and 1; the order of people changes nothing; a trainer agrees with himself', () => {
  const matrix = fc
    .tuple(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 2, max: 20 }))
    .chain(([items, people]) =>
      fc.array(fc.array(fc.boolean(), { minLength: items, maxLength: items }), {
        minLength: people,
        maxLength: people,
      }),
    );
  fc.assert(
    fc.property(matrix, (rows) => {
      const reversed = [...rows].reverse();
      for (const [got, again] of [
        [kr20(rows), kr20(reversed)],
        [pointBiserial(rows, 0), pointBiserial(reversed, 0)],
      ] as const) {
        if ('none' in got) expect(again).toEqual(got);
        else {
          expect(got.value).toBeLessThanOrEqual(1 + 1e-9);
          expect(figureOf(again)).toBeCloseTo(got.value, 9);
        }
      }
      const alone = pointBiserial(rows, 0);
      if ('value' in alone) expect(alone.value).toBeGreaterThanOrEqual(-1 - 1e-9);
    }),
  );
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 1, max: 50 }), (a, b) => {
      expect(
        kappa([
          [a, 0],
          [0, b],
        ]).kappa,
      ).toEqual({ value: 1 });
    }),
  );
});
