/** The search for a plan that goes with a job: begun anew with every change of it, ended when the page is left. */
import { useEffect, useRef, useState } from 'react';
import type { Answered } from '../../../trade/answer.ts';
import type { Fault } from '../../../trade/given.ts';
import type { SticksGiven, SticksResult } from '../../../trade/sticks/types.ts';
import { look, type News } from '../../sticks/solver.ts';

export type Standing = 'waiting' | 'looking' | 'ended' | 'late' | 'lost' | 'stopped' | 'noSolver';

export interface Search {
  readonly plan: Answered<SticksResult> | undefined;
  readonly faults: readonly Fault[];
  readonly standing: Standing;
  /** How long it looks at most. */
  readonly most: number;
  /** How long it has been looking. */
  readonly seconds: number;
  readonly stop: () => void;
  /** Looks on, for twice as long as before. */
  readonly again: () => void;
}

const SECONDS = 60;

interface State {
  /** The job that it all belongs to. */
  readonly key: string;
  readonly plan?: Answered<SticksResult>;
  readonly faults: readonly Fault[];
  readonly standing: Standing;
}

/** @param known  the answer to one job, worked out when the page was built */
export function useSearch(
  given: SticksGiven | undefined,
  known: { readonly given: SticksGiven; readonly plan: Answered<SticksResult> },
): Search {
  const key = JSON.stringify(given ?? null);
  const isKnown = key === JSON.stringify(known.given);
  const [state, setState] = useState<State>({ key: '', faults: [], standing: 'waiting' });
  const [most, setMost] = useState({ key, seconds: SECONDS, turn: 0 });
  const [seconds, setSeconds] = useState(0);
  const end = useRef(() => {});
  const own = most.key === key ? most : { key, seconds: SECONDS, turn: 0 };

  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says everything of the job; a turn looks on
  useEffect(() => {
    if (given === undefined || isKnown) return;
    const on = (news: News) =>
      setState((old) => {
        if (news.news === 'refused') return { key, faults: news.faults, standing: 'ended' };
        const before = old.key === key ? old : { key, faults: [] };
        if (news.news === 'noSolver') return { ...before, standing: 'noSolver' };
        return { ...before, plan: news.plan, standing: news.how };
      });
    end.current = look({ given, seconds: own.seconds }, on);
    return () => end.current();
  }, [key, isKnown, own.turn]);

  const mine = state.key === key ? state : undefined;
  const looking = !isKnown && mine?.standing === 'looking';
  useEffect(() => {
    setSeconds(0);
    if (!looking) return;
    const each = setInterval(() => setSeconds((n) => n + 1), 1000);
    return () => clearInterval(each);
  }, [looking]);

  if (isKnown)
    return { plan: known.plan, faults: [], standing: 'ended', most: own.seconds, seconds, stop, again: stop };
  return {
    plan: mine?.plan,
    faults: mine?.faults ?? [],
    standing: mine?.standing ?? 'waiting',
    most: own.seconds,
    seconds,
    stop: () => {
      end.current();
      setState((old) => ({ ...old, standing: 'stopped' }));
    },
    again: () => setMost({ key, seconds: own.seconds * 2, turn: own.turn + 1 }),
  };
}

function stop(): void {}
