/** A run as it is before it is laid out: what `layout` chooses taken away, what it must keep set as it should be. */
import type { RunTables } from '../tables.ts';
import type { Joint, Run } from '../types.ts';
import { wantedGap } from '../wantedGap.ts';

/** Joints that part lines stay; straight splices go. */
const stays = ({ kind }: Joint): boolean => kind !== 'socketed' && kind !== 'butt';

/** Expansion splices stand open as wanted, where temperatures tell; channel goes into hinges as the catalogue says. */
export function bareRun(run: Run, { limits }: RunTables): Run {
  const wanted = run.temps === undefined ? null : wantedGap(run.temps, limits.movement.value);
  return {
    ...run,
    start: { ...run.start, jumper: undefined },
    legs: run.legs.map((leg) => ({ ...leg, jumper: undefined })),
    ends: run.ends?.map((end) => ({ ...end, jumper: undefined })),
    joints: (run.joints ?? []).filter(stays).map((joint) => ({
      ...joint,
      jumper: undefined,
      insertions: undefined,
      ...(joint.kind === 'expansion' && wanted !== null ? { gap: wanted } : {}),
    })),
    supports: [],
  };
}
