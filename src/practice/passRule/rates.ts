/** What a rule does to people of a stated skill, computed exactly: no simulation, and nothing of Wald's approximation. */
import { linesOf } from './lines.ts';
import type { PassRule } from './rule.ts';
import { ends, type Result } from './walk.ts';

export interface Rates extends Readonly<Record<Result, number>> {
  /** Draws asked until the end, on average. */
  readonly meanAsks: number;
}

/**
 * @param n  draws of the sheet; a sequential rule has its own ceiling
 * @param p  share of such draws that the person holds, from 0 to 1
 */
export function ratesOf(rule: PassRule, n: number, p: number): Rates {
  const rates = { pass: 0, refuse: 0, undecided: 0, meanAsks: 0 };
  for (const end of ends(linesOf(rule, n), p)) {
    rates[end.result] += end.chance;
    rates.meanAsks += end.n * end.chance;
  }
  return rates;
}

/** Shares at which a rule's rates are stated beside its own. */
const STATED = [0.5, 0.7, 0.8, 0.9, 0.95, 0.98];

export interface RatesAt extends Rates {
  readonly p: number;
  /** Why this share: the one who must not pass, the one who should, the share to be shown, or for comparison. */
  readonly as: 'p0' | 'p1' | 'share' | 'other';
}

/** A rule's rates at its own shares and some others, from the least to the greatest. */
export function statedRates(rule: PassRule, n: number): readonly RatesAt[] {
  const own: readonly (readonly [number, RatesAt['as']])[] =
    rule.kind === 'sequential'
      ? [
          [rule.p0, 'p0'],
          [rule.p1, 'p1'],
        ]
      : rule.kind === 'bound'
        ? [[rule.share, 'share']]
        : [];
  const others = STATED.filter((p) => own.every(([q]) => Math.abs(p - q) > 1e-9));
  return [...own, ...others.map((p) => [p, 'other'] as const)]
    .sort(([a], [b]) => a - b)
    .map(([p, as]) => ({ p, as, ...ratesOf(rule, n, p) }));
}
