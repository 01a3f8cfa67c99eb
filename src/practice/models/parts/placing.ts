/** What the families share in which things are put on a drawn run: from runs to answers and back. */

import { jointNames } from '../../../drawing/runNames.ts';
import type { Drawing, How } from '../../../drawing/types.ts';
import { drawRun } from '../../../drawing/views.ts';
import type { Finding, RuleId } from '../../../run/inspect/inspect.ts';
import type { ResolvedRun } from '../../../run/resolved.ts';
import type { Run, Support } from '../../../run/types.ts';
import type { Say } from '../../../trade/answer.ts';
import { fromInches, inches } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Ask } from '../../family.ts';
import type { FiguredOf } from '../../figured.ts';
import type { Answer, PlacedAt, World } from '../../model.ts';
import { findingsIn, resolvedOf } from '../../runs/sound.ts';

/** Inches along the leg within which a mark is held to stand at a place. */
export const toleranceOf = (ask: Ask): number => ('tolerance' in ask ? ask.tolerance : 0);

/** What is only a little out was meant for the place, and is near. */
export const meantWithin = (ask: Ask): number => 2 * toleranceOf(ask);

export const placed = (answer: Answer): readonly PlacedAt[] => answer as readonly PlacedAt[];

export const supportsPlaced = (run: Run): readonly PlacedAt[] =>
  (run.supports ?? []).map(({ leg, at }) => ({ leg, at: inches(at), what: 'support' }));

/** The run with the supports that a person placed; in a run that nothing lets slide all hold fast. */
export function withPlaced(run: Run, answer: Answer): Run {
  const supports = placed(answer).map(
    ({ leg, at }): Support => ({ leg, at: fromInches(at), way: 'horizontal', hold: 'clamp' }),
  );
  return { ...run, supports };
}

/** What an inspection finds of these rules; null where a support stands where none can, as on a fitting. */
export function foundIn(run: Run, rules: readonly RuleId[], world: World): readonly Finding[] | null {
  const resolved = resolvedOf(run, world);
  return resolved === null ? null : findingsIn(resolved, world).filter(({ rule }) => rules.includes(rule));
}

/** @throws {Error} when a run that was drawn as sound is not: a fault of the model */
export function mustResolve(run: Run, world: World): ResolvedRun {
  const resolved = resolvedOf(run, world);
  if (resolved === null) throw new Error('a drawn run has faults');
  return resolved;
}

/** Where to look again, without saying what is wrong there. */
export const LOOK_AT = 'route.lookAt';
export const lookAt = ({ leg, at }: Finding): Say => ({
  say: LOOK_AT,
  values: { leg, at: at === null ? '0' : shortLength(fromInches(Math.round(inches(at)))) },
});

/** The run unfolded, to scale; it shows what stands, and judges nothing. */
export function stripOf(resolved: ResolvedRun, world: World, how: How): readonly Drawing[] {
  const { tables, catalogue } = world;
  return drawRun(resolved, { tables, catalogue, views: ['strip'] }, how);
}

/** What such a drawing shows, for its model's `figured`. */
export function strippedLegs(resolved: ResolvedRun): FiguredOf<'legs'> {
  const names = jointNames(resolved);
  const legs = resolved.legs.map(({ length, supports, joints }) => ({
    length,
    supports,
    joints: joints.map((joint) => ({ name: names.get(joint) ?? joint.name, at: joint.at })),
  }));
  return { kind: 'legs', legs };
}

/** What a drawing of the legs in space shows. */
export const courses = ({ legs }: ResolvedRun): FiguredOf<'courses'> => ({
  kind: 'courses',
  courses: legs.map(({ length, frame }) => ({ length, along: frame.along })),
});

/** The legs in space, by working points: no piece and no cut is told. */
export function isometricOf(resolved: ResolvedRun, world: World, how: How): readonly Drawing[] {
  const { tables, catalogue } = world;
  return drawRun(resolved, { tables, catalogue, views: ['isometric'] }, how);
}
