/** What a job asks of its crew: the tasks that must be shown, and the order of the work. */
import type { ResolvedFitting, ResolvedRun } from '../../../run/resolved.ts';
import type { Takeoff } from '../../../run/takeoff.ts';

export type CardStep = 'hang' | 'drop' | 'cut' | 'fit' | 'join' | 'gap' | 'bond' | 'cables';

const FITTING_TASK: Readonly<Record<string, string>> = {
  flat: 'T08a',
  inside: 'T08b',
  outside: 'T08b',
  tee: 'T08c',
  cross: 'T08c',
  reducer: 'T08d',
  hinge: 'T08e',
};
const taskOf = ({ item }: Pick<ResolvedFitting, 'item'>): string =>
  FITTING_TASK[item.kind === 'elbow' ? item.turn : item.kind] ?? 'T08';

/** Tasks by what stands on the run: its supports, joints, fittings, start, jumpers and cables. */
export function needsOf(resolved: ResolvedRun, takeoff: Pick<Takeoff, 'jumpers'>): readonly string[] {
  const { legs, fittings, start, run } = resolved;
  const joints = legs.flatMap((leg) => leg.joints);
  const supports = legs.flatMap((leg) => leg.supports);
  const has = (task: string, when: boolean) => (when ? [task] : []);
  const ends = run.ends ?? [];
  return [
    ...new Set([
      ...has(
        'T03',
        supports.some(({ way }) => way === 'horizontal'),
      ),
      ...has(
        'T04',
        supports.some(({ way }) => way === 'vertical'),
      ),
      'T05',
      'T06',
      ...has(
        'T07',
        joints.some(({ kind }) => kind === 'socketed' || kind === 'butt'),
      ),
      ...fittings.map(taskOf),
      ...has(
        'T08e',
        joints.some(({ kind }) => kind === 'hinged'),
      ),
      ...has('T09', start.kind === 'ladder'),
      ...has(
        'T10',
        joints.some(({ kind }) => kind === 'expansion' || kind === 'gap') ||
          start.joint === 'expansion' ||
          ends.some(({ joint }) => joint === 'expansion'),
      ),
      ...has('T11', takeoff.jumpers.length > 0),
      ...has('T12', (run.cables ?? []).length > 0),
    ]),
  ].sort();
}

export function stepsOf(
  { legs, fittings, run }: ResolvedRun,
  { jumpers, gaps }: Takeoff,
): readonly CardStep[] {
  const supports = legs.flatMap((leg) => leg.supports);
  const joints = legs.flatMap((leg) => leg.joints);
  const has = (step: CardStep, when: boolean): readonly CardStep[] => (when ? [step] : []);
  return [
    ...has(
      'hang',
      supports.some(({ way }) => way === 'horizontal'),
    ),
    ...has(
      'drop',
      supports.some(({ way }) => way === 'vertical'),
    ),
    'cut',
    ...has('fit', fittings.length > 0),
    ...has(
      'join',
      joints.some(({ kind }) => kind === 'socketed' || kind === 'butt' || kind === 'hinged'),
    ),
    ...has('gap', gaps.length > 0),
    ...has('bond', jumpers.length > 0),
    ...has('cables', (run.cables ?? []).length > 0),
  ];
}
