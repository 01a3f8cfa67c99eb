/** The result of a sheet: which, after how many draws, and what they show of the person. */
import { GivenError } from '../../trade/given.ts';
import { clopperPearson, type Interval, USUAL_CONFIDENCE, whereRises } from './interval.ts';
import { type Lines, linesOf } from './lines.ts';
import { type PassRule, ruleFaults } from './rule.ts';
import { type End, ends, type Result, walk } from './walk.ts';

export interface Decision {
  readonly result: Result;
  /** Draws that count: all of them, or those up to the decision. */
  readonly n: number;
  /** Those of them that hold. */
  readonly held: number;
  /** What made the result: a critical point that was missed, or the rule. */
  readonly by: 'critical' | 'rule';
  /** For the share of such draws that the person holds. Said with every result, whatever the rule. */
  readonly interval: Interval;
}

/**
 * @param outcomes  whether each draw holds, in the order of the sheet. A rule with a fixed number takes them all; a
 *   sequential one stops at its decision, and may be given fewer than its ceiling: not asked yet, so undecided.
 * @param criticalMissed  whether a critical point was missed on any draw that was answered
 * @throws {GivenError} a rule that cannot be used with so many draws (`ruleFaults`)
 */
export function decide(rule: PassRule, outcomes: readonly boolean[], criticalMissed: boolean): Decision {
  const faults = ruleFaults(rule, rule.kind === 'sequential' ? rule.ceiling : outcomes.length);
  if (faults.length > 0) throw new GivenError(faults);
  const lines = linesOf(rule, outcomes.length);
  const end = walk(lines, outcomes);
  return {
    result: criticalMissed ? 'refuse' : end.result,
    n: end.n,
    held: end.held,
    by: criticalMissed ? 'critical' : 'rule',
    interval: intervalOf(rule, lines, end),
  };
}

/** Two-sided confidence of the interval that is said: for `bound` the one whose ends are the bounds themselves. */
export const confidenceOf = (rule: PassRule): number =>
  rule.kind === 'bound' ? 2 * rule.confidence - 1 : USUAL_CONFIDENCE;

function intervalOf(rule: PassRule, lines: Lines, end: End): Interval {
  const confidence = confidenceOf(rule);
  if (rule.kind !== 'sequential') return clopperPearson(end.held, end.n, confidence);
  return stoppedInterval(
    { ...lines, ceiling: end.result === 'undecided' ? end.n : lines.ceiling },
    end,
    confidence,
  );
}

/**
 * The interval after a sheet whose answers decided when it stopped: as Clopper and Pearson, over ways of ending from
 * the worst (refused soonest) to the best (passed soonest).
 */
export function stoppedInterval(lines: Lines, end: End, confidence: number): Interval {
  if (end.n === 0) return { low: 0, high: 1, confidence };
  const tail = (1 - confidence) / 2;
  const seen = rank(end, lines.ceiling);
  const chance = (p: number, counts: (r: number) => boolean) =>
    ends(lines, p).reduce((sum, one) => (counts(rank(one, lines.ceiling)) ? sum + one.chance : sum), 0);
  const best = end.result === 'pass' ? end.held === end.n : end.held === lines.ceiling;
  const worst = end.held === 0;
  return {
    low: worst ? 0 : whereRises((p) => chance(p, (r) => r >= seen), tail),
    high: best ? 1 : whereRises((p) => chance(p, (r) => r > seen), 1 - tail),
    confidence,
  };
}

/** Place of a way of ending among all of a rule, the worst first. */
function rank({ n, held, result }: End, ceiling: number): number {
  if (n === ceiling) return ceiling + held;
  return result === 'pass' ? 3 * ceiling - n : n;
}
