/**
 * Weights that are known without a search. The area bound weighs a piece by its size. The bound L2 of Martello and
 * Toth (Discrete Applied Mathematics 28, 1990) leaves small pieces out, and gives a large one a whole bar.
 */
import type { Job } from './job.ts';

/** Every set of weights worth trying, as whole numbers by kind. */
export function knownWeights(job: Job): readonly (readonly number[])[] {
  const sizes = job.kinds.map((k) => k.size);
  const rooms = [...new Set(job.bars.filter((b) => !b.offcut).map((b) => b.room))];
  const found: (readonly number[])[] = [sizes];
  for (const room of rooms) {
    found.push(sizes.map((s) => (2 * s > room ? 1 : 0)));
    const best = bestCut(job, room);
    if (best > 0) found.push(sizes.map((s) => (s > room - best ? room : s >= best ? s : 0)));
  }
  return found.filter((weights) => weights.some((u) => u > 0));
}

/** The smallest size kept with which the bound is greatest. */
function bestCut(job: Job, room: number): number {
  let best = { cut: 0, bars: 0 };
  for (const { size: cut } of job.kinds) {
    if (2 * cut > room) continue;
    let weight = 0;
    for (const { size, count } of job.kinds)
      weight += count * (size > room - cut ? room : size >= cut ? size : 0);
    if (weight / room > best.bars) best = { cut, bars: weight / room };
  }
  return best.cut;
}
