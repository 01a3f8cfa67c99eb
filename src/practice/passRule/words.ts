/** A rule, its rates and a sheet's result as sentences. A number is never said without the draws it rests on. */
import type { Say } from '../../trade/answer.ts';
import type { Decision } from './decide.ts';
import { linesOf } from './lines.ts';
import type { RatesAt } from './rates.ts';
import type { PassRule } from './rule.ts';

/** Key of each sentence. */
const key = {
  one: 'passRule.one',
  all: 'passRule.all',
  bound: 'passRule.bound',
  boundRefuses: 'passRule.boundRefuses',
  boundBetween: 'passRule.boundBetween',
  sequential: 'passRule.sequential',
  wanted: 'passRule.wanted',
  ceiling: 'passRule.ceiling',
  critical: 'passRule.critical',
  pass: 'passRule.pass',
  refuse: 'passRule.refuse',
  undecided: 'passRule.undecided',
  missed: 'passRule.missed',
  held: 'passRule.held',
  heldOne: 'passRule.heldOne',
  heldSingle: 'passRule.heldSingle',
  missedSingle: 'passRule.missedSingle',
  none: 'passRule.none',
  p0: 'passRule.p0',
  p1: 'passRule.p1',
  share: 'passRule.share',
  other: 'passRule.other',
  asks: 'passRule.asks',
} as const;

export const passRuleSays: readonly string[] = Object.values(key);

/** A share as so many of a hundred, to one place; to two where one would round it to none or all. */
export function outOf100(share: number): string {
  const text = (100 * share).toFixed(1);
  const shown = text === '0.0' || text === '100.0' ? (100 * share).toFixed(2) : text;
  return String(Number(shown));
}

/** @param n  draws of the sheet */
export function saysOfRule(rule: PassRule, n: number): readonly Say[] {
  return [...ownSays(rule, n), { say: key.critical }];
}

function ownSays(rule: PassRule, n: number): readonly Say[] {
  if (rule.kind === 'all') return n === 1 ? [{ say: key.one }] : [{ say: key.all, values: { n } }];
  if (rule.kind === 'bound') {
    const { passFrom, refuseTo } = linesOf(rule, n).at(n);
    const values = { n, confidence: outOf100(rule.confidence), share: outOf100(rule.share) };
    return [
      { say: key.bound, values: { ...values, need: passFrom } },
      ...(refuseTo < 0 ? [] : [{ say: key.boundRefuses, values: { ...values, most: refuseTo } }]),
      ...(refuseTo + 1 === passFrom ? [] : [{ say: key.boundBetween }]),
    ];
  }
  const { p0, p1, alpha, beta, ceiling } = rule;
  const shares = { p0: outOf100(p0), p1: outOf100(p1) };
  return [
    { say: key.sequential, values: shares },
    { say: key.wanted, values: { ...shares, alpha: outOf100(alpha), beta: outOf100(beta) } },
    { say: key.ceiling, values: { ceiling } },
  ];
}

/** The result, what made it, and what the draws show of the person. */
export function saysOfDecision(decision: Decision): readonly Say[] {
  const { result, by } = decision;
  return [{ say: key[result] }, ...(by === 'critical' ? [{ say: key.missed }] : []), saysOfHeld(decision)];
}

/** So many of so many, and the interval. */
export function saysOfHeld({ n, held, interval }: Pick<Decision, 'n' | 'held' | 'interval'>): Say {
  if (n === 0) return { say: key.none };
  const { low, high, confidence } = interval;
  const values = { confidence: outOf100(confidence), low: outOf100(low), high: outOf100(high) };
  if (n === 1) return { say: held === 1 ? key.heldSingle : key.missedSingle, values };
  return held === 1
    ? { say: key.heldOne, values: { n, ...values } }
    : { say: key.held, values: { n, held, ...values } };
}

/** What a rule does to people of one skill; the mean number of draws where it may stop early. */
export function saysOfRates(
  { p, as, pass, refuse, undecided, meanAsks }: RatesAt,
  rule: PassRule,
): readonly Say[] {
  const values = {
    p: outOf100(p),
    pass: outOf100(pass),
    refuse: outOf100(refuse),
    undecided: outOf100(undecided),
  };
  return [
    { say: key[as], values },
    ...(rule.kind === 'sequential' ? [{ say: key.asks, values: { asks: meanAsks.toFixed(1) } }] : []),
  ];
}
