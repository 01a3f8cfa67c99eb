/** A run as it is before it is laid out: what `layout` chooses taken away, what it must keep set as it should be. */
import type { Catalogue } from '../catalogue.ts';
import type { ResolvedRun } from '../resolved.ts';
import type { ResolvedJoint } from '../straight.ts';
import type { RunTables } from '../tables.ts';
import type { Joint, Run } from '../types.ts';
import { wantedGap } from '../wantedGap.ts';

/** Joints that part lines stay; straight splices go. */
const stays = ({ kind }: Joint): boolean => kind !== 'socketed' && kind !== 'butt';

/**
 * Joints that stay are left as they are given, except where an inspection would find something: an expansion splice then
 * stands open as wanted, and channel goes into a hinge as the catalogue says.
 *
 * @param resolved  the run as given
 */
export function bareRun({ run, legs }: ResolvedRun, catalogue: Catalogue, { limits }: RunTables): Run {
  const wanted = run.temps === undefined ? null : wantedGap(run.temps, limits.movement.value);
  const placed = new Map(legs.flatMap(({ joints }) => joints.map((joint) => [joint.given, joint])));

  const gapOf = ({ kind, gap }: Joint): Joint['gap'] => {
    if (kind !== 'expansion' || wanted === null || gap === undefined) return gap;
    return Math.abs(gap - wanted) <= limits.expansionOff.value ? gap : wanted;
  };
  const goesInWell = ({ item, insertions }: ResolvedJoint): boolean => {
    const part = item === null ? undefined : catalogue.get(item);
    return (
      part?.kind === 'hinge' &&
      insertions.every((one) => Math.abs(one - part.insertion) <= limits.insertionOff.value)
    );
  };
  const insertionsOf = (joint: Joint): Joint['insertions'] => {
    const here = placed.get(joint);
    return here !== undefined && goesInWell(here) ? joint.insertions : undefined;
  };
  return {
    ...run,
    start: { ...run.start, jumper: undefined },
    legs: run.legs.map((leg) => ({ ...leg, jumper: undefined })),
    ends: run.ends?.map((end) => ({ ...end, jumper: undefined })),
    joints: (run.joints ?? []).filter(stays).map((joint) => ({
      ...joint,
      jumper: undefined,
      insertions: insertionsOf(joint),
      gap: gapOf(joint),
    })),
    supports: [],
  };
}
