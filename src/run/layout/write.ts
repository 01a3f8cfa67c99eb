/** The run as it is laid out. */
import { type Ticks, ticks } from '../../trade/length.ts';
import type { Catalogue } from '../catalogue.ts';
import { jumpersNeeded } from '../jumpers.ts';
import type { ResolvedRun } from '../resolved.ts';
import type { RunTables } from '../tables.ts';
import type { Joint, Jumper, Run, Support } from '../types.ts';
import type { LineJob } from './jobs.ts';
import type { LineLayout } from './line.ts';

export interface LaidOut {
  readonly job: LineJob;
  readonly layout: LineLayout;
}

export const supportsOf = (lines: readonly LaidOut[]): number =>
  lines.reduce((sum, { layout }) => sum + layout.supports.length, 0);

/** Supports and splices put into the bare run, by legs in order of travel; what supports do is not yet said. */
export function withLines(bare: Run, lines: readonly LaidOut[]): Run {
  const supports = lines.flatMap(({ job: { leg }, layout }) =>
    layout.supports.map((at): Support => {
      const way = leg.plumb ? 'vertical' : 'horizontal';
      return { leg: leg.leg, at: ticks(at), way, hold: 'guide' };
    }),
  );
  const splices = lines.flatMap(({ job: { leg }, layout }) =>
    layout.splices.map((at): Joint => ({ leg: leg.leg, at: ticks(at), kind: 'socketed' })),
  );
  const order = new Map([...new Set(lines.map(({ job }) => job.leg.leg))].map((leg, i) => [leg, i]));
  const along = (a: { leg: string; at: Ticks }, b: { leg: string; at: Ticks }) =>
    (order.get(a.leg) ?? 0) - (order.get(b.leg) ?? 0) || a.at - b.at;
  return { ...bare, joints: [...(bare.joints ?? []), ...splices].sort(along), supports };
}

/** A jumper wherever one is needed and its size is known. */
export function withJumpers(resolved: ResolvedRun, catalogue: Catalogue, tables: RunTables): Run {
  const { run } = resolved;
  const sizes = new Map<string, Jumper>(
    jumpersNeeded(resolved, catalogue, tables).flatMap(({ field, size }) =>
      size === null ? [] : [[field, size]],
    ),
  );
  const fitted = <T extends object>(one: T, field: string): T => {
    const jumper = sizes.get(field);
    return jumper === undefined ? one : { ...one, jumper };
  };
  return {
    ...run,
    start: fitted(run.start, 'start'),
    legs: run.legs.map((leg, k) => fitted(leg, `legs[${k}]`)),
    ends: run.ends?.map((end, k) => fitted(end, `ends[${k}]`)),
    joints: run.joints?.map((joint, k) => fitted(joint, `joints[${k}]`)),
  };
}
