/**
 * Looks for a cutting plan: at once on the page for as long as nobody notices, then in a worker of its own, which tells
 * every better plan. While it computes a worker hears nothing, so stopping ends it, and the last plan it told stands.
 * The search is loaded when it is first asked.
 */
import type { Answered } from '../../trade/answer.ts';
import type { Fault } from '../../trade/given.ts';
import type { Budget, SticksGiven, SticksResult } from '../../trade/sticks/types.ts';
import { tried } from '../tried.ts';
import type { Asked, Told } from './messages.ts';

type Plan = Answered<SticksResult>;

export type News =
  | { readonly news: 'refused'; readonly faults: readonly Fault[] }
  /** The search itself could not be loaded. */
  | { readonly news: 'noSolver' }
  /** `how`: goes on; came to its end; ran out of time; the worker could not be started. */
  | { readonly news: 'plan'; readonly plan: Plan; readonly how: 'looking' | 'ended' | 'late' | 'lost' };

export interface WorkerLike {
  postMessage(asked: Asked): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Told>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** What it is made of; a test hands in its own. */
export interface Parts {
  readonly load: () => Promise<(given: SticksGiven, budget: Budget) => Plan>;
  readonly worker: () => WorkerLike;
  readonly now: () => number;
}

const parts: Parts = {
  load: async () => (await import('../../trade/sticks/sticks.ts')).sticks,
  worker: () => new Worker(new URL('./sticksWorker.ts', import.meta.url), { type: 'module' }) as WorkerLike,
  now: () => performance.now(),
};

/** How long the page itself looks, ms. */
const AT_ONCE = 50;

/**
 * @param on  told every better plan, and how the search stands; nothing after it is stopped
 * @returns stops the search
 */
export function look(
  asked: Asked,
  on: (news: News) => void,
  { load, worker, now }: Parts = parts,
): () => void {
  let over = false;
  let hired: WorkerLike | undefined;
  const stop = (): void => {
    over = true;
    hired?.terminate();
    hired = undefined;
  };
  const begin = async (): Promise<void> => {
    const sticks = await load().catch(() => undefined);
    if (over) return;
    if (sticks === undefined) return on({ news: 'noSolver' });
    const end = now() + AT_ONCE;
    let late = false;
    const first = tried(() => sticks(asked.given, { stop: () => (late ||= now() >= end) }));
    if (!first.good) return on({ news: 'refused', faults: first.faults });
    let plan = first.value;
    if (!late) return on({ news: 'plan', plan, how: 'ended' });
    on({ news: 'plan', plan, how: 'looking' });
    const lost = (): void => {
      stop();
      on({ news: 'plan', plan, how: 'lost' });
    };
    try {
      hired = worker();
    } catch {
      return lost();
    }
    hired.onerror = lost;
    hired.onmessage = ({ data }) => {
      if (over) return;
      plan = betterOf(plan, data.answered);
      if (data.told === 'better') return on({ news: 'plan', plan, how: 'looking' });
      stop();
      on({ news: 'plan', plan, how: data.late ? 'late' : 'ended' });
    };
    hired.postMessage(asked);
  };
  void begin();
  return stop;
}

/** The later one, unless it is the worse plan: a worker begins anew, with the rule of thumb. */
function betterOf(old: Plan, next: Plan): Plan {
  const [a, b] = [rankOf(old.result), rankOf(next.result)];
  const at = a.findIndex((value, k) => value !== b[k]);
  if (at >= 0) return (b[at] ?? 0) > (a[at] ?? 0) ? old : next;
  return (next.result.lowerBoundIn ?? 0) < (old.result.lowerBoundIn ?? 0) ? old : next;
}

/** The five aims, less is better; without a plan nothing is worse. */
function rankOf(result: SticksResult): readonly number[] {
  if (!result.feasible) return [Number.POSITIVE_INFINITY];
  const { newStockIn, cutFromOffcutsIn, longestReusableIn, setups, stopSettings } = result;
  return [
    newStockIn ?? 0,
    -(cutFromOffcutsIn ?? 0),
    -(longestReusableIn ?? 0),
    setups ?? 0,
    stopSettings ?? 0,
  ];
}
