/**
 * A rule as two lines over (draws asked, draws held): on or above the one the sheet is passed, on or below the other
 * it is refused. A rule with a fixed number of draws has them at the last draw only, Wald's test at every draw; so one
 * walk decides, computes rates and gives intervals for all of them.
 */
import { atLeast, atMost } from './binomial.ts';
import type { PassRule, Sequential } from './rule.ts';

export interface Line {
  /** Fewest held that pass; above the draws asked where none do. */
  readonly passFrom: number;
  /** Most held that refuse; below 0 where none do. */
  readonly refuseTo: number;
}

export interface Lines {
  /** Draws after which nothing more is asked. */
  readonly ceiling: number;
  /** The lines after `n` draws, `n` from 0 to the ceiling. */
  readonly at: (n: number) => Line;
}

const NONE: Line = { passFrom: Number.POSITIVE_INFINITY, refuseTo: -1 };

/** @param n  draws of the sheet; a sequential rule has its own ceiling */
export function linesOf(rule: PassRule, n: number): Lines {
  if (rule.kind === 'sequential') return waldLines(rule);
  const last = n === 0 ? NONE : lastLine(rule, n);
  return { ceiling: n, at: (asked) => (asked === n ? last : NONE) };
}

function lastLine(rule: Exclude<PassRule, { kind: 'sequential' }>, n: number): Line {
  if (rule.kind === 'all') return { passFrom: n, refuseTo: n - 1 };
  // The lower bound reaches the share exactly where as many or more are that rare for someone who just has the share.
  const { share } = rule;
  const rare = 1 - rule.confidence;
  let passFrom = n + 1;
  while (passFrom > 0 && atLeast(passFrom - 1, n, share) <= rare + ROUNDING) passFrom--;
  let refuseTo = -1;
  while (refuseTo < n && atMost(refuseTo + 1, n, share) < rare - ROUNDING) refuseTo++;
  return { passFrom, refuseTo };
}

const ROUNDING = 1e-12;

/** Wald, Sequential Analysis (1947): the log of the likelihood ratio against ln((1 − β)/α) and ln(β/(1 − α)). */
export function waldNumbers({ p0, p1, alpha, beta }: Omit<Sequential, 'ceiling'>) {
  return {
    upper: Math.log((1 - beta) / alpha),
    lower: Math.log(beta / (1 - alpha)),
    perHeld: Math.log(p1 / p0),
    perMissed: Math.log((1 - p1) / (1 - p0)),
  };
}

function waldLines(rule: Sequential): Lines {
  const { upper, lower, perHeld, perMissed } = waldNumbers(rule);
  const heldAt = (ratio: number, n: number) => (ratio - n * perMissed) / (perHeld - perMissed);
  return {
    ceiling: rule.ceiling,
    at: (n) =>
      n === 0
        ? NONE
        : {
            passFrom: Math.ceil(heldAt(upper, n) - ROUNDING),
            refuseTo: Math.floor(heldAt(lower, n) + ROUNDING),
          },
  };
}
