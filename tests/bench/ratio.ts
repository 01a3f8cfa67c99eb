/** Times as ratios: work and baseline in the same run, turn and turn about, so that a busy machine slows both. */

export interface Pair {
  readonly what: string;
  readonly baseline: string;
  readonly work: () => unknown;
  readonly against: () => unknown;
}

const TURNS = 9;

const median = (times: readonly number[]) =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;

export async function timed(work: () => unknown): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

/** Prints the median of each, its ratio to its baseline, and hands the medians back. */
export async function compare(pairs: readonly Pair[]): Promise<readonly number[]> {
  const medians: number[] = [];
  for (const { what, baseline, work, against } of pairs) {
    const times = { work: [] as number[], against: [] as number[] };
    for (let turn = -1; turn < TURNS; turn++) {
      const [a, b] = [await timed(work), await timed(against)];
      if (turn < 0) continue; // the first turn warms up
      times.work.push(a);
      times.against.push(b);
    }
    const [a, b] = [median(times.work), median(times.against)];
    console.log(`${what}: ${a.toFixed(1)} ms, ${(a / b).toFixed(2)} × ${baseline} (${b.toFixed(1)} ms)`);
    medians.push(a);
  }
  return medians;
}
