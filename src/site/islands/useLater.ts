import { useEffect, useState } from 'react';

/**
 * A part that the page can stand without, fetched once the page stands; null until then.
 * Not `lazy`: the server would render its boundary with an inline script, which the page's policy refuses.
 * @param load names the module; it must be one and the same function at every render
 */
export function useLater<T>(load: () => Promise<T>): T | null {
  const [part, setPart] = useState<T | null>(null);
  useEffect(() => {
    void load().then((found) => setPart(() => found));
  }, [load]);
  return part;
}
