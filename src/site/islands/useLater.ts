import { useCallback, useEffect, useState } from 'react';

/** A part that is fetched later: null until it came. */
export interface Later<T> {
  readonly part: T | null;
  /** It could not be fetched; it is tried again when the device says that it has a network, or by `again`. */
  readonly failed: boolean;
  readonly again: () => void;
}

/**
 * A part without which the page can do little, fetched once the page stands; `Fetching.tsx` says how it goes.
 * Not `lazy`: the server would render its boundary with an inline script, which the page's policy refuses.
 * @param load names the module; it must be one and the same function at every render
 */
export function useFetched<T>(load: () => Promise<T>): Later<T> {
  const [part, setPart] = useState<T | null>(null);
  const [failed, setFailed] = useState(false);
  const [turn, setTurn] = useState(0);
  const again = useCallback(() => {
    setFailed(false);
    setTurn((n) => n + 1);
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another turn fetches anew
  useEffect(() => {
    let gone = false;
    load().then(
      (found) => {
        if (!gone) setPart(() => found);
      },
      () => {
        if (!gone) setFailed(true);
      },
    );
    return () => {
      gone = true;
    };
  }, [load, turn]);
  useEffect(() => {
    if (!failed) return;
    window.addEventListener('online', again);
    return () => window.removeEventListener('online', again);
  }, [failed, again]);
  return { part, failed, again };
}

/** A part that the page can stand without; null until it came. It is tried again as `useFetched` does, and nothing is said. */
export const useLater = <T>(load: () => Promise<T>): T | null => useFetched(load).part;
