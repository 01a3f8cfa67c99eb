/**
 * Fewest stock lengths among the lay-outs with the fewest supports: a plan, and a bound that no such lay-out is under.
 *
 * The plan is the best of those that prices, refilling and exchange come upon. The bound is that of weights: where the
 * pieces of no stock length weigh more than `most`, the lightest lay-out of every line tells how many lengths there must
 * be. Both are of the whole run, channel by channel.
 */
import { ticks } from '../../trade/length.ts';
import { sticks } from '../../trade/sticks/sticks.ts';
import { stockSearch } from './search.ts';
import { type LaidOut, supportsOf } from './write.ts';

export interface LeastStock {
  readonly laid: readonly LaidOut[];
  readonly used: number;
  readonly bound: number;
}

/** @param lines  of the whole run, in order */
export function leastStock(lines: readonly LaidOut[], kerf: number): LeastStock {
  const byTray = Map.groupBy(lines, ({ job }) => job.leg.tray.id);
  const laid = new Map<LaidOut, LaidOut>();
  let used = 0;
  let bound = 0;
  for (const group of byTray.values()) {
    const stock = { length: (group[0] as LaidOut).job.problem.stock, kerf };
    const found = stockSearch(
      group.map(({ job, layout }) => ({ problem: job.problem, layout })),
      stock,
    );
    const plan = sticks({
      stock: [{ length: ticks(stock.length) }],
      pieces: found.layouts.flatMap(({ cuts }) => cuts.map((cut) => ({ length: ticks(cut), count: 1 }))),
      kerf: ticks(kerf),
    }).result;
    used += plan.lengthsUsed ?? found.used;
    bound += found.bound;
    group.forEach((line, i) => {
      const layout = found.layouts[i];
      if (layout !== undefined) laid.set(line, { job: line.job, layout });
    });
  }
  return { laid: lines.map((line) => laid.get(line) as LaidOut), used, bound };
}

/**
 * A bound for every lay-out of lines with as many supports in all as those laid anew have.
 *
 * @param lines  each with its fewest supports
 * @param laid   the same, some with places taken from them or supports added
 */
export function freeBound(lines: readonly LaidOut[], laid: readonly LaidOut[], kerf: number): number {
  const more = supportsOf(laid) - supportsOf(lines);
  // None more: every line has its fewest, wherever they stand. Else nobody knows which line has more: all may be cut shorter.
  if (more === 0) return leastStock(lines, kerf).bound;
  let bound = 0;
  for (const group of Map.groupBy(lines, ({ job }) => job.leg.tray.id).values()) {
    const { stock } = (group[0] as LaidOut).job.problem;
    const area = group.reduce((sum, { job: { problem }, layout }) => {
      const { channel, splice } = problem;
      const splices = Math.max(0, layout.supports.length + more - 3);
      const saved = Math.max(0, splice.before + splice.behind - kerf);
      return sum + channel[1] - channel[0] + kerf - splices * saved;
    }, 0);
    bound += Math.max(1, Math.ceil(area / (stock + kerf)));
  }
  return bound;
}
