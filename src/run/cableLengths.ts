/** How long the cables of a run are along it. */
import { type Ticks, ticks } from '../trade/length.ts';
import type { ResolvedLeg, ResolvedRun } from './resolved.ts';

/** From the run's start to the end of a leg, along working points. */
export function wayTo(leg: ResolvedLeg): Ticks {
  let way = 0;
  for (let on: ResolvedLeg | null = leg; on !== null; on = on.parent) way += on.length;
  return ticks(way);
}

export interface CableLength {
  readonly id: string;
  /** Of one cable. */
  readonly each: Ticks;
  readonly count: number;
  readonly all: Ticks;
  /** Beyond the channel's end to what it goes to: not in the length. */
  readonly open: Ticks;
}

/** A row a cable, in the order given. What a drop-out and the connection take is added by whoever cuts. */
export function cableLengths({ run, byId }: Pick<ResolvedRun, 'run' | 'byId'>): readonly CableLength[] {
  return (run.cables ?? []).flatMap(({ id, to, count }) => {
    const leg = byId.get(to);
    if (leg === undefined) return [];
    const each = wayTo(leg);
    return [{ id, each, count, all: ticks(each * count), open: ticks(leg.givenEnd?.open ?? 0) }];
  });
}
