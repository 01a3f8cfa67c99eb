/** What of a set of marks is missing, and what is not wanted, whichever of the two kinds it is. */
import type { FaultsAsk, PlaceAsk } from '../family.ts';
import type { Answer } from '../model.ts';
import { ruleOf } from './faults.ts';
import { type Mark, type Met, meet } from './marks.ts';
import { whatOf } from './place.ts';

export function setOf(ask: PlaceAsk | FaultsAsk, given: Answer, right: Answer): Met<Mark> {
  const name = (ask.kind === 'place' ? whatOf : ruleOf) as unknown as (mark: Mark) => string;
  return meet(given as readonly Mark[], right as readonly Mark[], ask.tolerance, name);
}
