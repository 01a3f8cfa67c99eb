/** A run that came in the address of the page. */
import { useEffect, useState } from 'react';
import type { RunFile } from '../../../run/edit/file.ts';
import { unpacked } from '../../../schema/link.ts';
import type { Fault } from '../../../trade/given.ts';
import { faultWords } from '../../run/said.ts';
import type { Tell } from '../../speak.ts';

interface Shared {
  readonly shared: RunFile | null;
  /** What is wrong with a link that is not read. */
  readonly notice: readonly string[];
  /** Puts the link aside. */
  readonly leave: () => void;
}

export function useSharedRun(
  read: (json: unknown) => Promise<RunFile | readonly Fault[]>,
  tell: Tell,
): Shared {
  const [shared, setShared] = useState<RunFile | null>(null);
  const [notice, setNotice] = useState<readonly string[]>([]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the address is read once, and when it changes
  useEffect(() => {
    const open = async () => {
      const found = await unpacked(window.location.hash);
      if (found.found === 'none' || found.mark !== 'run') return;
      if (found.found !== 'json') return setNotice([tell(`yourRun.link-${found.found}`)]);
      const given = await read(found.json);
      if ('v' in given) setShared(given);
      else setNotice([tell('yourRun.link-broken'), ...given.map((f) => faultWords(f, tell))]);
    };
    void open();
    // A link opened in a page that shows a run already changes the address alone.
    const opened = () => void open();
    window.addEventListener('hashchange', opened);
    return () => window.removeEventListener('hashchange', opened);
  }, []);
  const leave = () => {
    window.history.replaceState(null, '', window.location.pathname);
    setShared(null);
  };
  return { shared, notice, leave };
}
