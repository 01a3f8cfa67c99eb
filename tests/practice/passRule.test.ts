import { describe, expect, test } from 'vitest';
import { atLeast, atMost, exactly } from '../../src/practice/passRule/binomial.ts';
import { clopperPearson, normalQuantile, successRun, wilson } from '../../src/practice/passRule/interval.ts';
import { linesOf, waldNumbers } from '../../src/practice/passRule/lines.ts';
import { ratesOf } from '../../src/practice/passRule/rates.ts';
import {
  type PassRule,
  passRuleOf,
  type SheetRule,
  sheetRuleFaults,
} from '../../src/practice/passRule/rule.ts';
import { walk } from '../../src/practice/passRule/walk.ts';
import independent from '../references/passRule.json' with { type: 'json' };
import statistics from '../references/statistics.json' with { type: 'json' };

interface Case {
  readonly id: string;
  readonly given: Readonly<Record<string, unknown>> & { readonly op: string };
  readonly expect: unknown;
  readonly tolerance?: number;
  readonly source: string;
}
const cases = (...ops: readonly string[]) =>
  (statistics.cases as readonly Case[]).filter((c) => ops.includes(c.given.op));
const near = (got: number, wanted: number, tolerance: number) =>
  expect(Math.abs(got - wanted), `${got}, wanted ${wanted}`).toBeLessThanOrEqual(tolerance);

interface Wald {
  readonly p0: number;
  readonly p1: number;
  readonly alpha: number;
  readonly beta: number;
}
/** Wald's average number until a decision, where there is no ceiling. */
function expectedNumber(rule: Wald, p: number, pass: number): number {
  const { upper, lower, perHeld, perMissed } = waldNumbers(rule);
  return (pass * upper + (1 - pass) * lower) / (p * perHeld + (1 - p) * perMissed);
}
/** The numbers that a published row gives, by how it names them. */
const published: Readonly<Record<string, (rule: Wald) => number>> = {
  lnA: (rule) => waldNumbers(rule).upper,
  lnB: (rule) => waldNumbers(rule).lower,
  perPass: (rule) => waldNumbers(rule).perHeld,
  perFail: (rule) => waldNumbers(rule).perMissed,
  E0: (rule) => expectedNumber(rule, rule.p0, rule.alpha),
  E1: (rule) => expectedNumber(rule, rule.p1, 1 - rule.beta),
  // Lines over (asks, counted), as the handbook draws them for defectives.
  slope: (rule) => -waldNumbers(rule).perMissed / spread(rule),
  upperIntercept: (rule) => waldNumbers(rule).upper / spread(rule),
  lowerIntercept: (rule) => waldNumbers(rule).lower / spread(rule),
};
const spread = (rule: Wald) => waldNumbers(rule).perHeld - waldNumbers(rule).perMissed;
const waldOf = (given: Case['given']) => given as unknown as Wald;

describe('published values', () => {
  test.each(cases('cp', 'wilson'))('$id: $given', ({ given, expect: wanted, tolerance = 0 }) => {
    const { x, n, confidence = 0.95 } = given as unknown as { x: number; n: number; confidence?: number };
    const { low, high } = (given.op === 'cp' ? clopperPearson : wilson)(x, n, confidence);
    const [wantedLow, wantedHigh] = wanted as [number, number];
    near(low, wantedLow, tolerance);
    near(high, wantedHigh, tolerance);
  });

  test.each(cases('zeroFail'))('$id: none of $given.n missed', ({ given, expect: wanted, tolerance = 0 }) => {
    const n = Number(given['n']);
    const { exactUpper, ruleOfThree } = wanted as Readonly<Record<string, number>>;
    // 95 % on one side are 90 % on two.
    const { high } = clopperPearson(0, n, 0.9);
    near(high, exactUpper as number, tolerance);
    near(3 / n, ruleOfThree as number, tolerance);
    expect(high).toBeLessThan(3 / n);
  });

  test.each(cases('minN'))('$id: $given', ({ given, expect: wanted }) => {
    expect(successRun(Number(given['confidence']), Number(given['passRate']))).toBe(wanted);
  });

  test.each(cases('sprt', 'expected'))('$id: $given', ({ given, expect: wanted, tolerance = 0 }) => {
    for (const [name, value] of Object.entries(wanted as Readonly<Record<string, number>>))
      near((published[name] as (rule: Wald) => number)(waldOf(given)), value, tolerance);
  });

  test.each(cases('sprtRun'))('$id: $given.results', ({ given, expect: wanted }) => {
    const rule = { kind: 'sequential', ...waldOf(given), ceiling: 100 } as const;
    const { result, n } = walk(
      linesOf(rule, 100),
      (given['results'] as number[]).map((r) => r === 1),
    );
    const said = { pass: 'accept p1', refuse: 'accept p0', undecided: 'continue' }[result];
    expect({ decision: said, after: n }).toEqual(wanted);
  });

  test.each(cases('earliest'))('$id', ({ given, expect: wanted }) => {
    // Counting defectives, none at all is what accepts p0 soonest.
    const lines = linesOf({ kind: 'sequential', ...waldOf(given), ceiling: 100 }, 100);
    expect(
      walk(
        lines,
        Array.from({ length: 100 }, () => false),
      ),
    ).toEqual({
      n: wanted,
      held: 0,
      result: 'refuse',
    });
  });
});

describe('the same numbers, computed elsewhere', () => {
  test('every interval', () => {
    for (const { held, n, confidence, ...wanted } of independent.intervals) {
      const exact = clopperPearson(held, n, confidence);
      const close = wilson(held, n, confidence);
      [exact.low, exact.high].map((end, i) => near(end, wanted.clopperPearson[i] as number, 1e-9));
      [close.low, close.high].map((end, i) => near(end, wanted.wilson[i] as number, 1e-9));
    }
    expect(independent.intervals.length).toBeGreaterThan(100);
  });

  const sheets: readonly { rule: PassRule; n: number; p: number; rates: Readonly<Record<string, number>> }[] =
    [
      ...independent.sequential.map(({ rule, ...rest }) => ({
        rule: { kind: 'sequential' as const, ...rule },
        n: rule.ceiling,
        ...rest,
      })),
      ...independent.bound.map(({ rule, ...rest }) => ({
        rule: { kind: 'bound' as const, ...rule },
        ...rest,
      })),
    ];
  test.each(sheets)('rates of $rule with $n draws at $p', ({ rule, n, p, rates }) => {
    for (const [name, got] of Object.entries(ratesOf(rule, n, p))) near(got, rates[name] as number, 1e-9);
  });

  test('the normal quantile that everyone knows', () => {
    // Any table of the normal distribution: 1.959963985 (97.5 %), 2.575829304 (99.5 %), 3.290526731 (99.95 %).
    near(normalQuantile(0.975), 1.959963984540054, 1e-12);
    near(normalQuantile(0.995), 2.575829303548901, 1e-12);
    near(normalQuantile(0.9995), 3.290526731491926, 1e-11);
    near(normalQuantile(0.5), 0, 1e-12);
  });

  test('chances of counts: by hand, and far out', () => {
    near(exactly(2, 4, 0.5), 6 / 16, 1e-15);
    near(atLeast(3, 4, 0.5), 5 / 16, 1e-15);
    near(atMost(1, 4, 0.5), 5 / 16, 1e-15);
    near(atLeast(0, 1000, 0.3), 1, 1e-12);
    near(atLeast(59, 59, 0.95), 0.95 ** 59, 1e-14);
    expect(atLeast(5, 4, 0.5)).toBe(0);
    expect([exactly(0, 3, 0), exactly(3, 3, 1), exactly(1, 3, 1)]).toEqual([1, 1, 0]);
  });
});

describe('rules that are refused', () => {
  const bound = (confidence: number, share: number): SheetRule => ({ bound: { confidence, share } });
  const wald = (change: object): SheetRule => ({
    sequential: { p0: 0.6, p1: 0.85, alpha: 0.05, beta: 0.1, ceiling: 40, ...change },
  });
  const fields = (rule: SheetRule, n: number) => sheetRuleFaults(rule, n).map((f) => f.field);

  test.each([
    [bound(0.95, 0.8), 14, []],
    [bound(0.95, 0.5), 13, ['bound']],
    // 0.8074 ^ 14 is 0.05 to four places: 14 of 14 show 0.807 and no more.
    [bound(0.95, 0.807), 14, []],
    [bound(0.95, 0.808), 14, ['bound']],
    [bound(0.95, 0.9), 28, ['bound']],
    [bound(0.95, 0.9), 29, []],
    [bound(0.5, 0.8), 20, ['bound.confidence']],
    [bound(1, 0.8), 20, ['bound.confidence']],
    [bound(Number.NaN, 0), 13, ['bound.confidence', 'bound.share', 'bound']],
    [bound(0.95, 0.5), 1001, ['bound']],
    [wald({}), 40, []],
    [wald({}), 41, ['sequential.ceiling']],
    [wald({ ceiling: 13 }), 13, ['sequential.ceiling']],
    [wald({ ceiling: 14 }), 14, []],
    [wald({ p1: 0.6 }), 40, ['sequential.p1']],
    [wald({ p0: 0, p1: 1 }), 40, ['sequential.p0', 'sequential.p1']],
    [wald({ alpha: 0.5, beta: 0 }), 40, ['sequential.alpha', 'sequential.beta']],
    // Nobody could pass: ln(0.95/0.001) / ln(0.85/0.6) is 19.7.
    [wald({ alpha: 0.001, beta: 0.05, ceiling: 19 }), 19, ['sequential']],
    [wald({ alpha: 0.001, beta: 0.05, ceiling: 20 }), 20, []],
    [{ need: 1, of: 1 }, 1, []],
    [{ need: 6, of: 6 }, 6, []],
    [{ need: 5, of: 6 }, 6, ['need']],
    [{ need: 7, of: 6 }, 6, ['need']],
    [{ need: 5, of: 5 }, 6, ['of']],
  ] as readonly [SheetRule, number, string[]][])('%j with %i draws', (rule, n, wanted) => {
    expect(fields(rule, n)).toEqual(wanted);
  });

  test('too few draws: said plainly, with what to do', () => {
    expect(sheetRuleFaults(bound(0.95, 0.5), 13)).toEqual([
      {
        field: 'bound',
        value: 13,
        message: '13 draws are too few for this rule',
        todo: 'have from 14 to 1000 draws, or ask that all of them hold (need and of)',
      },
    ]);
  });

  test('as a sheet writes them', () => {
    expect(passRuleOf({ need: 6, of: 6 })).toEqual({ kind: 'all' });
    expect(passRuleOf(bound(0.95, 0.8))).toEqual({ kind: 'bound', confidence: 0.95, share: 0.8 });
  });
});
