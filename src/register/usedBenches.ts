import type { Bodies, Variant } from './bodies.ts';
import type { Json } from './canonical.ts';
import { seenOf } from './checks.ts';
import type { Day } from './days.ts';
import type { Judged } from './judged.ts';
import { isObject } from './shapes.ts';

/** The numbers of a sheet as a person had them: sheet and bench fix every draw, so the same answers do again. */
export interface Bench {
  readonly sheet: string;
  readonly bench: number;
}

/** A check whose evidence, or what was put in its place, is of a bench. */
export interface UsedBench extends Bench {
  /** Id of the check. */
  readonly entry: string;
  readonly task: string;
  readonly variant: Variant;
  /** The day it was seen. */
  readonly on: Day;
}

/** Which bench evidence is of; `undefined` for none, or for what is no answers to a sheet. */
export function benchOf(evidence: Json): Bench | undefined {
  if (!isObject(evidence)) return undefined;
  const { sheet, bench } = evidence;
  return typeof sheet === 'string' && typeof bench === 'number' ? { sheet, bench } : undefined;
}

/**
 * Every bench of a person that stands as evidence of a check which counts and was not withdrawn, the checks in the order of
 * the register. No rule forbids to use one again; whoever sets or signs is told.
 */
export function usedBenches(judged: Judged, person: string): readonly UsedBench[] {
  const { people, corrections } = seenOf(judged);
  return (people.get(person) ?? []).flatMap(({ entry, body, withdrawn }): readonly UsedBench[] => {
    if (withdrawn !== undefined) return [];
    const put = (corrections.get(entry.id) ?? []).map((by) => {
      const state = judged.authority.body(by, 'correct');
      return state.state === 'held' ? state.body.evidence : null;
    });
    const { task, variant, on }: Bodies['check'] = body;
    const benches = [body.evidence, ...put].map(benchOf).filter((b) => b !== undefined);
    return benches
      .filter((b, i) => benches.findIndex((other) => isSame(other, b)) === i)
      .map((b) => ({ ...b, entry: entry.id, task, variant, on }));
  });
}

const isSame = (a: Bench, b: Bench): boolean => a.sheet === b.sheet && a.bench === b.bench;

/** Those of one bench. */
export const usesOf = (judged: Judged, person: string, bench: Bench | undefined): readonly UsedBench[] =>
  bench === undefined ? [] : usedBenches(judged, person).filter((used) => isSame(used, bench));
