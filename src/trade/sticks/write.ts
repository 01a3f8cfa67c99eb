/** A plan of units as the answer that is handed out: whole bars with their pieces and marks, in inches. */
import { inches, ticks } from '../length.ts';
import { type Bound, certificateOf } from './certificate.ts';
import type { Job } from './job.ts';
import { leftOf, type Plan, rankOf, tidy } from './plan.ts';
import type { CutLength, CutPiece, SticksResult } from './types.ts';

/** What was found and what of it is proven. */
export interface Found {
  readonly plan: Plan;
  readonly bound: Bound;
  /** Aims proven after the first; the first is proven by the bound. */
  readonly levels: number;
  /** Whether every plan was looked at: none takes less, be there weights that show it or not. */
  readonly tried: boolean;
}

export function writeFound(job: Job, { plan, bound, levels }: Found): SticksResult {
  const [stock, used, longest, setups, stops] = rankOf(plan, job);
  const proven = stock === bound.ticks;
  return {
    feasible: true,
    lengthsUsed: plan.reduce((n, cut) => n + (job.bars[cut.bar]?.offcut ? 0 : cut.times), 0),
    newStockIn: inches(ticks(stock)),
    lowerBoundIn: inches(ticks(bound.ticks)),
    proven,
    provenLevels: proven ? levels : 0,
    cutFromOffcutsIn: inches(ticks(0 - used)),
    longestReusableIn: inches(ticks(0 - longest)),
    setups,
    stopSettings: stops,
    lengths: lengthsOf(job, plan),
    certificate: proven ? certificateOf(job, bound) : null,
  };
}

function lengthsOf(job: Job, plan: Plan): readonly CutLength[] {
  const piles = job.kinds.map(({ ticks: length, pieces }) => {
    const one = { in: inches(ticks(length)) };
    return pieces.flatMap(({ count, mark }) =>
      Array.from({ length: count }, (): CutPiece => (mark === undefined ? one : { ...one, mark })),
    );
  });
  const next = piles.map(() => 0);
  const takeFrom = (kind: number, n: number): readonly CutPiece[] => {
    const from = next[kind] as number;
    next[kind] = from + n;
    return (piles[kind] as CutPiece[]).slice(from, from + n);
  };
  return tidy(plan).flatMap((cut) => {
    const bar = job.bars[cut.bar];
    if (bar === undefined) return [];
    return Array.from({ length: cut.times }, (): CutLength => {
      const pieces: CutPiece[] = [];
      for (let k = 0; k < cut.pattern.length; k += 2)
        pieces.push(...takeFrom(cut.pattern[k] as number, cut.pattern[k + 1] as number));
      return {
        fromIn: inches(ticks(bar.ticks)),
        offcut: bar.offcut,
        pieces,
        leftIn: inches(ticks(leftOf(cut, job))),
      };
    });
  });
}
