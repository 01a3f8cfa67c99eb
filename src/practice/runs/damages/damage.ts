/** What a damage is, and the small changes to a run that damages are made of. */
import type { RuleId } from '../../../run/inspect/inspect.ts';
import type { PlacedSupport, ResolvedRun } from '../../../run/resolved.ts';
import type { End, Joint, Leg, Run, RunCable, Support } from '../../../run/types.ts';
import { fromInches, type HalfTicks, TICKS_PER_INCH, type Ticks, ticks } from '../../../trade/length.ts';
import type { Bench } from '../sound.ts';

/** A fault as it was put in. `at` as findings give it: ticks from the leg's first working point, null: the whole leg. */
export interface Planted {
  readonly rule: RuleId;
  readonly leg: string;
  readonly at: HalfTicks | null;
}

/** The run with one fault put in at one place. */
export interface Spoilt {
  readonly run: Run;
  readonly planted: Planted;
}

/** Every way to make this damage, by legs in order of travel. Each is looked over by an inspection before it is used. */
export type Damage = (resolved: ResolvedRun, bench: Bench) => readonly Spoilt[];

/** How far a thing is out, so that it can be seen. */
export const OUT = [3, 5, 8, 11].map(fromInches);

/** The nearest whole inch: where an apprentice would set it. */
export const wholeInch = (at: number): Ticks => ticks(Math.round(at / TICKS_PER_INCH) * TICKS_PER_INCH);

type Change<T> = Partial<{ -readonly [K in keyof T]: T[K] }>;

function changedAt<T extends object>(all: readonly T[], at: number, change: Change<T>): readonly T[] {
  return all.map((one, i) => (i === at ? { ...one, ...change } : one));
}

/** `supports[3]` → 3 */
const indexIn = (field: string): number => Number(field.slice(field.indexOf('[') + 1, -1));

export function withSupport(run: Run, { field }: PlacedSupport, change: Change<Support>): Run {
  return { ...run, supports: changedAt(run.supports ?? [], indexIn(field), change) };
}
export function withoutSupport(run: Run, { field }: PlacedSupport): Run {
  return { ...run, supports: (run.supports ?? []).toSpliced(indexIn(field), 1) };
}
export function withJoint(run: Run, given: Joint | null, change: Change<Joint>): Run {
  return {
    ...run,
    joints: (run.joints ?? []).map((joint) => (joint === given ? { ...joint, ...change } : joint)),
  };
}
export function moreJoints(run: Run, joint: Joint): Run {
  return { ...run, joints: [...(run.joints ?? []), joint] };
}
export function withLeg(run: Run, leg: string, change: Change<Leg>): Run {
  return { ...run, legs: run.legs.map((one) => (one.id === leg ? { ...one, ...change } : one)) };
}
export function withEnd(run: Run, leg: string, change: Change<End>): Run {
  return { ...run, ends: (run.ends ?? []).map((end) => (end.leg === leg ? { ...end, ...change } : end)) };
}
/** One more cable, to be numbered behind those there are; on a leg with a barrier it lies on the side of its use. */
export function moreCables(
  run: Run,
  cable: Omit<RunCable, 'id' | 'side' | 'count' | 'make'> & { count?: number },
): Run {
  const cables = run.cables ?? [];
  const sided = cables.some(({ side }) => side !== undefined) && cable.use !== 'air';
  const added: RunCable = {
    count: 1,
    ...cable,
    id: `C${cables.length + 1}`,
    make: 'multiconductor',
    ...(sided ? { side: cable.use === 'power' ? 'left' : 'right' } : {}),
  };
  return { ...run, cables: [...cables, added] };
}
