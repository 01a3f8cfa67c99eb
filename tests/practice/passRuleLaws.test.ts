/** What holds for every pass rule: laws, brute force, exact coverage, and a seeded simulation. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decide } from '../../src/practice/passRule/decide.ts';
import { clopperPearson, wilson } from '../../src/practice/passRule/interval.ts';
import { linesOf } from '../../src/practice/passRule/lines.ts';
import { ratesOf } from '../../src/practice/passRule/rates.ts';
import { type PassRule, ruleFaults } from '../../src/practice/passRule/rule.ts';
import { ends } from '../../src/practice/passRule/walk.ts';
import { GivenError } from '../../src/trade/given.ts';

const wald: PassRule = { kind: 'sequential', p0: 0.6, p1: 0.85, alpha: 0.05, beta: 0.1, ceiling: 40 };
const strict: PassRule = { kind: 'sequential', p0: 0.8, p1: 0.95, alpha: 0.05, beta: 0.1, ceiling: 60 };
const bound: PassRule = { kind: 'bound', confidence: 0.95, share: 0.75 };
const rules: readonly (readonly [string, PassRule, number])[] = [
  ['sequential', wald, 40],
  ['sequential', strict, 60],
  ['bound', bound, 30],
  ['all', { kind: 'all' }, 6],
];

/** Any rule that may be used, with its number of draws. */
const anyRule = fc
  .record({
    n: fc.integer({ min: 14, max: 40 }),
    a: fc.double({ min: 0.3, max: 0.95, noNaN: true }),
    b: fc.double({ min: 0.3, max: 0.99, noNaN: true }),
    alpha: fc.double({ min: 0.01, max: 0.3, noNaN: true }),
    beta: fc.double({ min: 0.01, max: 0.3, noNaN: true }),
    kind: fc.constantFrom('all', 'bound', 'sequential'),
  })
  .map(({ n, a, b, alpha, beta, kind }): { rule: PassRule; n: number } => {
    const of: Readonly<Record<string, PassRule>> = {
      all: { kind: 'all' },
      bound: { kind: 'bound', confidence: 1 - alpha, share: a },
      sequential: { kind: 'sequential', p0: Math.min(a, b), p1: Math.max(a, b), alpha, beta, ceiling: n },
    };
    return { rule: of[kind] as PassRule, n };
  })
  .filter(({ rule, n }) => ruleFaults(rule, n).length === 0);
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('rates', () => {
  test('add up to 1, and the mean lies within the draws', () => {
    fc.assert(
      fc.property(anyRule, share, ({ rule, n }, p) => {
        const { pass, refuse, undecided, meanAsks } = ratesOf(rule, n, p);
        expect(Math.abs(pass + refuse + undecided - 1)).toBeLessThan(1e-12);
        expect(meanAsks).toBeGreaterThanOrEqual(1 - 1e-9);
        expect(meanAsks).toBeLessThanOrEqual(n + 1e-9);
      }),
    );
  });

  test('who holds more passes more often and is refused less often', () => {
    fc.assert(
      fc.property(anyRule, share, share, ({ rule, n }, p, q) => {
        const [less, more] = [ratesOf(rule, n, Math.min(p, q)), ratesOf(rule, n, Math.max(p, q))];
        expect(more.pass).toBeGreaterThanOrEqual(less.pass - 1e-12);
        expect(more.refuse).toBeLessThanOrEqual(less.refuse + 1e-12);
      }),
    );
  });

  test('nobody passes who holds nothing', () => {
    fc.assert(
      fc.property(anyRule, ({ rule, n }) => {
        expect(ratesOf(rule, n, 0).pass).toBe(0);
      }),
    );
  });

  test.each([
    [wald, 14],
    [{ kind: 'sequential', p0: 0.4, p1: 0.8, alpha: 0.1, beta: 0.1, ceiling: 14 } as PassRule, 14],
    [{ kind: 'bound', confidence: 0.9, share: 0.7 } as PassRule, 14],
    [{ kind: 'all' } as PassRule, 5],
  ])('%j: the same as every sheet of %i draws, one by one', (given, n) => {
    const rule = given.kind === 'sequential' ? { ...given, ceiling: n } : given;
    for (const p of [0.2, 0.6, 0.9]) {
      const sums = { pass: 0, refuse: 0, undecided: 0, meanAsks: 0 };
      for (let sheet = 0; sheet < 2 ** n; sheet++) {
        const outcomes = Array.from({ length: n }, (_, i) => ((sheet >> i) & 1) === 1);
        const chance = outcomes.reduce((product, held) => product * (held ? p : 1 - p), 1);
        const decided = bruteForce(rule, outcomes);
        sums[decided.result] += chance;
        sums.meanAsks += chance * decided.n;
      }
      const rates = ratesOf(rule, n, p);
      for (const name of ['pass', 'refuse', 'undecided', 'meanAsks'] as const)
        expect(Math.abs(rates[name] - sums[name]), name).toBeLessThan(1e-10);
    }
  });
});

/** A rule as its definition says it: likelihood ratios added up one by one, or the interval's ends against the share. */
function bruteForce(rule: PassRule, outcomes: readonly boolean[]) {
  const n = outcomes.length;
  const held = outcomes.filter(Boolean).length;
  if (rule.kind === 'all') return { result: held === n ? 'pass' : 'refuse', n } as const;
  if (rule.kind === 'bound') {
    const { low, high } = boundsOf(held, n, rule.confidence);
    return { result: low >= rule.share ? 'pass' : high < rule.share ? 'refuse' : 'undecided', n } as const;
  }
  const { p0, p1, alpha, beta } = rule;
  let log = 0;
  for (const [i, outcome] of outcomes.entries()) {
    log += outcome ? Math.log(p1 / p0) : Math.log((1 - p1) / (1 - p0));
    if (log >= Math.log((1 - beta) / alpha)) return { result: 'pass', n: i + 1 } as const;
    if (log <= Math.log(beta / (1 - alpha))) return { result: 'refuse', n: i + 1 } as const;
  }
  return { result: 'undecided', n } as const;
}
const boundsMemo = new Map<string, { low: number; high: number }>();
function boundsOf(held: number, n: number, confidence: number) {
  const key = `${held}/${n}/${confidence}`;
  const known = boundsMemo.get(key) ?? clopperPearson(held, n, 2 * confidence - 1);
  boundsMemo.set(key, known);
  return known;
}

describe('promises', () => {
  test('bound: who only just has the share passes no more often than is said, whatever the numbers', () => {
    fc.assert(
      fc.property(anyRule, ({ rule, n }) => {
        fc.pre(rule.kind === 'bound');
        if (rule.kind !== 'bound') return;
        const { pass, refuse } = ratesOf(rule, n, rule.share);
        expect(pass).toBeLessThanOrEqual(1 - rule.confidence + 1e-9);
        expect(refuse).toBeLessThanOrEqual(1 - rule.confidence + 1e-9);
      }),
    );
  });

  test('sequential: wrong passes and wrong refusals stay within what Wald guarantees, α/(1−β) and β/(1−α)', () => {
    fc.assert(
      fc.property(anyRule, ({ rule, n }) => {
        fc.pre(rule.kind === 'sequential');
        if (rule.kind !== 'sequential') return;
        const { p0, p1, alpha, beta } = rule;
        expect(ratesOf(rule, n, p0).pass).toBeLessThanOrEqual(alpha / (1 - beta) + 1e-9);
        expect(ratesOf(rule, n, p1).refuse).toBeLessThanOrEqual(beta / (1 - alpha) + 1e-9);
      }),
    );
  });

  test.each(rules)('%s: 20,000 sheets of invented people agree with the computed rates', (_, rule, n) => {
    const SHEETS = 20_000;
    const chance = chances(20261126);
    for (const p of [0.6, 0.85, 0.95]) {
      const seen = { pass: 0, refuse: 0, undecided: 0 };
      for (let sheet = 0; sheet < SHEETS; sheet++) {
        const outcomes = Array.from({ length: n }, () => chance() < p);
        seen[bruteForce(rule, outcomes).result] += 1;
      }
      const rates = ratesOf(rule, n, p);
      for (const result of ['pass', 'refuse', 'undecided'] as const) {
        const { low, high } = wilson(seen[result], SHEETS, 0.999);
        expect(rates[result], `${result} at ${p}: seen ${seen[result]}`).toBeGreaterThanOrEqual(low);
        expect(rates[result], `${result} at ${p}: seen ${seen[result]}`).toBeLessThanOrEqual(high);
      }
    }
  });
});

/** Numbers from 0 to 1 by a seed: 32-bit xorshift (Marsaglia, J. Stat. Softw. 8(14), 2003), good enough to count sheets by. */
function chances(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

describe('decisions', () => {
  const run = (pattern: string) => [...pattern].map((sign) => sign === '+');

  test('nine straight pass, three straight misses refuse; what follows does not count', () => {
    expect(decide(wald, run('+++++++++---'), false)).toMatchObject({
      result: 'pass',
      n: 9,
      held: 9,
      by: 'rule',
    });
    expect(decide(wald, run('++++++++'), false)).toMatchObject({ result: 'undecided', n: 8, held: 8 });
    expect(decide(wald, run('---++++++++++'), false)).toMatchObject({ result: 'refuse', n: 3, held: 0 });
    expect(decide(wald, [], false)).toMatchObject({
      result: 'undecided',
      n: 0,
      interval: { low: 0, high: 1 },
    });
  });

  test('at the ceiling it stays undecided', () => {
    const outcomes = run('+++-'.repeat(20));
    expect(decide({ ...wald, ceiling: 24 }, outcomes, false)).toMatchObject({
      result: 'undecided',
      n: 24,
      held: 18,
    });
  });

  test('bound: both sides of both limits', () => {
    const of30 = (held: number) => decide(bound, run('+'.repeat(held).padEnd(30, '-')), false);
    // One-sided 95 % bounds, scipy 1.17.1 beta.ppf: 26 of 30 from 0.7203, 27 of 30 from 0.7614; 17 of 30 to 0.7231, 18 of 30 to 0.7516.
    expect([27, 26, 18, 17].map((held) => of30(held).result)).toEqual([
      'pass',
      'undecided',
      'undecided',
      'refuse',
    ]);
    for (let held = 0; held <= 30; held++) {
      const { result, n, interval } = of30(held);
      expect(n).toBe(30);
      expect(interval.confidence).toBeCloseTo(0.9, 12);
      expect(result === 'pass').toBe(interval.low >= 0.75);
      expect(result === 'refuse').toBe(interval.high < 0.75);
    }
  });

  test('a critical point missed refuses whatever the rest', () => {
    for (const [, rule, n] of rules)
      expect(decide(rule, run('+'.repeat(n)), true)).toMatchObject({ result: 'refuse', by: 'critical' });
  });

  test('n of n, and nothing at all', () => {
    const all: PassRule = { kind: 'all' };
    expect(decide(all, run('++++++'), false)).toMatchObject({ result: 'pass', n: 6, held: 6 });
    expect(decide(all, run('+++++-'), false)).toMatchObject({ result: 'refuse', n: 6, held: 5 });
    expect(decide(all, [], false).result).toBe('undecided');
  });

  test('a rule that may not be used is no decision', () => {
    expect(() => decide(bound, run('+'.repeat(13)), false)).toThrow(GivenError);
    expect(() => decide({ ...wald, ceiling: 13 } as PassRule, run('+'.repeat(13)), false)).toThrow(
      GivenError,
    );
  });
});

describe('the interval of a sheet that stopped', () => {
  test('is that of Clopper and Pearson where nothing could stop it', () => {
    // Three misses or nine held are the first that decide: two answers are two answers.
    for (const pattern of ['+-', '++', '--'] as const) {
      const { n, held, interval } = decide(
        wald,
        [...pattern].map((s) => s === '+'),
        false,
      );
      const { low, high } = clopperPearson(held, n);
      expect(interval.low).toBeCloseTo(low, 9);
      expect(interval.high).toBeCloseTo(high, 9);
    }
  });

  test.each([wald, strict])('covers the share at least as often as is said: $p0 against $p1', (rule) => {
    if (rule.kind !== 'sequential') throw new Error('a sequential rule');
    const lines = linesOf(rule, rule.ceiling);
    const intervals = new Map<string, { low: number; high: number }>();
    const intervalAt = (n: number, held: number, result: string) => {
      const key = `${n}/${held}`;
      // Any order of answers that ends there: misses first for a pass, last for a refusal, if the lines allow it.
      const found = intervals.get(key) ?? intervalOf(rule, n, held, result);
      intervals.set(key, found);
      return found;
    };
    for (let p = 0.05; p < 1; p += 0.05) {
      let covered = 0;
      for (const { n, held, result, chance } of ends(lines, p)) {
        const { low, high } = intervalAt(n, held, result);
        if (low <= p && p <= high) covered += chance;
      }
      expect(covered, `at ${p}`).toBeGreaterThanOrEqual(0.95 - 1e-9);
    }
  });

  function intervalOf(rule: PassRule, n: number, held: number, result: string) {
    const outcomes = pathTo(rule, n, held, result);
    const decision = decide(rule, outcomes, false);
    expect(decision).toMatchObject({ n, held, result });
    return decision.interval;
  }

  /** Answers that end there and nowhere before: one walked back from the end, always to a point still undecided. */
  function pathTo(rule: PassRule, n: number, held: number, result: string): boolean[] {
    const lines = linesOf(rule, n);
    const open = (at: number, h: number) => {
      const { passFrom, refuseTo } = lines.at(at);
      return h >= 0 && h <= at && h < passFrom && h > refuseTo;
    };
    const outcomes: boolean[] = [];
    let h = held;
    for (let at = n; at > 0; at--) {
      const last = at === n && result === 'pass' ? true : at === n && result === 'refuse' ? false : undefined;
      const taken = last ?? (open(at - 1, h - 1) || (at === 1 && h === 1));
      outcomes.unshift(taken);
      if (taken) h -= 1;
    }
    return outcomes;
  }
});
