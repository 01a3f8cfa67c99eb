import { useCallback, useEffect, useRef, useState } from 'react';

/** What was read of this device, the reason why nothing could be, and how to read it again. */
export interface Reading<T> {
  readonly value: T | undefined;
  readonly failed: unknown;
  readonly refresh: () => Promise<void>;
}

/**
 * Reads something of this device once the page stands, on `refresh`, and whenever the page is shown again: another window
 * may have written meanwhile. Of two readings the one that was begun later is kept, however long the earlier one takes.
 * @param read  one and the same function at every call
 */
export function useReading<T>(read: () => Promise<T>): Reading<T> {
  const [value, setValue] = useState<T>();
  const [failed, setFailed] = useState<unknown>();
  const begun = useRef(0);
  const refresh = useCallback(async () => {
    begun.current += 1;
    const turn = begun.current;
    try {
      const found = await read();
      if (turn !== begun.current) return;
      setValue(found);
      setFailed(undefined);
    } catch (error) {
      if (turn === begun.current) setFailed(error);
    }
  }, [read]);
  useEffect(() => {
    void refresh();
    const back = () => {
      if (document.visibilityState === 'visible') void refresh();
    };
    document.addEventListener('visibilitychange', back);
    return () => document.removeEventListener('visibilitychange', back);
  }, [refresh]);
  return { value, failed, refresh };
}
