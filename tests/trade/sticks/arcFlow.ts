/**
 * The same job for a general solver: a bar is a path of arcs over its units, a piece an arc as long as its size (the
 * arc-flow model of Valério de Carvalho, Annals of Operations Research 86, 1999). Baseline of the bench.
 */
import highsLoader from 'highs';
import type { Job } from '../../../src/trade/sticks/job.ts';

export interface Flow {
  /** Least new stock in ticks, or null when it was not found in time. */
  readonly stock: number | null;
  readonly arcs: number;
  readonly ms: number;
}

/** @param mostArcs  a larger model is not tried */
export async function byArcFlow(job: Job, seconds: number, mostArcs: number): Promise<Flow> {
  const began = performance.now();
  const model = modelOf(job, mostArcs);
  if (model === undefined) return { stock: null, arcs: mostArcs, ms: performance.now() - began };
  // An instance of its own: one that ran out of memory solves nothing after.
  const highs = await highsLoader();
  try {
    const { Status, ObjectiveValue } = highs.solve(model.text, { time_limit: seconds, mip_rel_gap: 0 });
    const stock = Status === 'Optimal' ? Math.round(ObjectiveValue * model.unit) : null;
    return { stock, arcs: model.arcs, ms: performance.now() - began };
  } catch {
    return { stock: null, arcs: model.arcs, ms: performance.now() - began };
  }
}

function modelOf(job: Job, mostArcs: number) {
  const longest = Math.max(...job.bars.map((b) => b.room));
  const unit = Math.max(...job.bars.map((b) => b.ticks));
  const into = new Map<number, string[]>();
  const out = new Map<number, string[]>();
  const bounds: string[] = [];
  const whole: string[] = [];
  const wants: string[] = [];
  const costs: string[] = [];
  let arcs = 0;
  const arc = (name: string, from: number, to: number): void => {
    arcs++;
    whole.push(name);
    out.set(from, [...(out.get(from) ?? []), name]);
    into.set(to, [...(into.get(to) ?? []), name]);
  };
  // Pieces lie on a bar from the longest to the shortest, so only such arcs are needed.
  let reached = new Set([0]);
  for (const [kind, { size, count }] of job.kinds.entries()) {
    const names: string[] = [];
    const next = new Set(reached);
    const tails = new Set<number>();
    for (const from of reached)
      for (let n = 0, at = from; n < count && at + size <= longest; n++, at += size) {
        tails.add(at);
        next.add(at + size);
      }
    for (const at of tails) {
      const name = `x${kind}_${at}`;
      names.push(name);
      arc(name, at, at + size);
      bounds.push(` ${name} <= ${count}`);
    }
    if (arcs > mostArcs) return undefined;
    wants.push(` want${kind}: ${names.join(' + ')} >= ${count}`);
    reached = next;
  }
  const nodes = [...new Set([...reached, ...job.bars.map((b) => b.room)])].sort((a, b) => a - b);
  for (const [i, node] of nodes.entries()) {
    const from = nodes[i - 1];
    if (from !== undefined && from > 0) arc(`l${node}`, from, node);
  }
  for (const [i, { room, ticks, count, offcut }] of job.bars.entries()) {
    arc(`z${i}`, room, 0);
    if (!offcut) costs.push(`${ticks / unit} z${i}`);
    if (count < Number.POSITIVE_INFINITY) bounds.push(` z${i} <= ${count}`);
  }
  const flow = nodes.map(
    (node) =>
      ` n${node}: ${[...(into.get(node) ?? []).map((n) => `+ ${n}`), ...(out.get(node) ?? []).map((n) => `- ${n}`)].join(' ')} = 0`,
  );
  const text = [
    'Minimize',
    ` obj: ${costs.join(' + ')}`,
    'Subject To',
    ...wants,
    ...flow,
    'Bounds',
    ...bounds,
    'General',
    ` ${whole.join(' ')}`,
    'End',
  ].join('\n');
  return { text, arcs, unit };
}
