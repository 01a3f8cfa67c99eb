/** The states and patterns of a small job, numbered so that a state is one place of a list. */
import type { Job } from './job.ts';
import { type Pattern, patternOf, piecesOf } from './plan.ts';

/** A pattern with what is asked of it again and again. */
export interface Listed {
  readonly pattern: Pattern;
  readonly counts: readonly number[];
  readonly size: number;
  /** What it takes from the number of a state. */
  readonly step: number;
  readonly pieces: number;
  readonly index: number;
}

export interface Layout {
  readonly strides: readonly number[];
  readonly barCounts: readonly number[];
  readonly barStrides: readonly number[];
  readonly states: number;
}

/** States are numbered: what is left of each kind, then what is left of each bar that there is only so many of. */
export function layoutOf(job: Job, most: number): Layout | undefined {
  let states = 1;
  const strides: number[] = [];
  const radix = job.kinds.map((k) => k.count + 1);
  for (const r of radix) {
    strides.push(states);
    states *= r;
    if (states > most) return undefined;
  }
  const pieces = job.kinds.reduce((n, k) => n + k.count, 0);
  // Stock times the length of all pieces is counted exactly or not at all.
  const length = job.kinds.reduce((n, k) => n + k.count * k.ticks, 1);
  if (Math.max(...job.bars.map((b) => b.ticks)) * pieces * length > Number.MAX_SAFE_INTEGER) return undefined;
  const barCounts = job.bars.map((b) => Math.min(b.count, pieces));
  const barStrides: number[] = [];
  job.bars.forEach((b, i) => {
    // As many bars as pieces are as good as no end of them.
    const endless = b.count >= pieces;
    barStrides.push(endless ? 0 : states);
    if (!endless) states *= (barCounts[i] as number) + 1;
  });
  return states > most ? undefined : { strides, barCounts, barStrides, states };
}

/** Every pattern of pieces wanted that the longest bar holds, by its first kind. */
export function patternsOf(
  job: Job,
  strides: readonly number[],
  most: number,
): readonly (readonly Listed[])[] | undefined {
  const room = Math.max(...job.bars.map((b) => b.room), 0);
  const found: Listed[][] = job.kinds.map(() => []);
  const counts = new Array<number>(job.kinds.length).fill(0);
  let index = 0;
  const visit = (kind: number, first: number, size: number): boolean => {
    const k = job.kinds[kind];
    if (k === undefined) {
      if (first < 0) return true;
      const pattern = patternOf(counts);
      (found[first] as Listed[]).push({
        pattern,
        counts: [...counts],
        size,
        step: counts.reduce((sum, n, i) => sum + n * (strides[i] as number), 0),
        pieces: piecesOf(pattern, job),
        index: index++,
      });
      return index <= most;
    }
    for (let n = Math.min(k.count, Math.floor((room - size) / k.size)); n >= 0; n--) {
      counts[kind] = n;
      if (!visit(kind + 1, first < 0 && n > 0 ? kind : first, size + n * k.size)) return false;
    }
    counts[kind] = 0;
    return true;
  };
  return visit(0, -1, 0) ? found : undefined;
}
