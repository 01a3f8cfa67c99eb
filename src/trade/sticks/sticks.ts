/**
 * Which sticks to cut which pieces from. Of all plans that give exactly the pieces wanted the best is, in this order:
 * least new stock; most taken from off-cuts; the longest single remainder worth keeping; fewest set-ups; fewest stop
 * settings. `proven` stands only with a certificate that anybody can check with whole numbers (`check.ts` does).
 *
 * Bounds: Martello and Toth, Discrete Applied Mathematics 28 (1990); Gilmore and Gomory, Operations Research 9 (1961).
 */
import type { Answered } from '../answer.ts';
import { REUSABLE } from '../habits.ts';
import { bestOfAll } from './allPlans.ts';
import type { Bound } from './certificate.ts';
import { byHand } from './firstFit.ts';
import { claimed, trueBound } from './honest.ts';
import { type Job, jobOf } from './job.ts';
import { laterAims } from './laterAims.ts';
import { leastStock } from './leastStock.ts';
import type { Plan } from './plan.ts';
import type { Budget, SticksGiven, SticksResult } from './types.ts';
import { givenSteps, workingOf } from './working.ts';
import { type Found, writeFound } from './write.ts';

/** Jobs whose plans are all looked at. */
const SMALL = { states: 60_000, patterns: 4000, steps: 200_000 };

/**
 * @throws {GivenError} a piece longer than every bar, more pieces than any job has
 */
export function sticks(given: SticksGiven, budget: Budget = {}): Answered<SticksResult> {
  const job = jobOf(given);
  const stop = budget.stop ?? (() => false);
  const small = bestOfAll(job, SMALL, stop);
  if (small === null) return infeasible(job, 'sticks.shortTried');
  let hand: Plan | null | undefined;
  let holds: number | undefined;
  const answer = (found: Found): Answered<SticksResult> => {
    if (hand === undefined) hand = byHand(job);
    if (job.rounded) holds ??= trueBound(given, stop);
    const sure = holds === undefined ? found : claimed(found, holds);
    const result = writeFound(job, sure);
    const rounded = { say: result.proven ? 'sticks.roundedProof' : 'sticks.roundedOpen' };
    return {
      result: job.rounded ? { ...result, why: [{ say: 'sticks.rounded' }, rounded] } : result,
      steps: workingOf(job, sure, hand),
      sources: given.minReusable === undefined ? [REUSABLE.source] : [],
    };
  };
  const found = (plan: Plan, bound: Bound): void =>
    budget.found?.(answer({ plan, bound, levels: 1, tried: false }));
  const first = leastStock(job, { stop, found }, budget.stop !== undefined, small?.plan);
  const { plan, bound } = first;
  if (plan === null)
    return infeasible(
      job,
      bound.ticks === Number.POSITIVE_INFINITY ? 'sticks.shortProven' : 'sticks.shortFound',
    );
  const best =
    small === undefined ? laterAims(job, first, plan, stop) : { plan, levels: small.whole ? 5 : 3 };
  return answer({ ...best, bound, tried: small !== undefined });
}

function infeasible(job: Job, why: string): Answered<SticksResult> {
  return {
    result: {
      feasible: false,
      lengthsUsed: null,
      newStockIn: null,
      lowerBoundIn: null,
      proven: false,
      provenLevels: 0,
      cutFromOffcutsIn: null,
      longestReusableIn: null,
      setups: null,
      stopSettings: null,
      lengths: [],
      certificate: null,
      why: job.rounded
        ? [{ say: 'sticks.short' }, { say: 'sticks.shortFound' }, { say: 'sticks.rounded' }]
        : [{ say: 'sticks.short' }, { say: why }],
    },
    steps: givenSteps(job),
    sources: [],
  };
}
