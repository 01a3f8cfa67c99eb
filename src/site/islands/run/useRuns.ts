/** The run that is open, every edit of it, and the runs kept beside it on this device. */
import { useCallback, useEffect, useRef, useState } from 'react';
import type { RunFile } from '../../../run/edit/file.ts';
import { amended, begun, edited, type History, redone, undone } from '../../../run/edit/history.ts';
import type { Say } from '../../../trade/answer.ts';
import { dropRun, type KeptRun, keepRun, keptRuns } from '../../device/runs.ts';

export interface Runs {
  readonly history: History<RunFile, Say>;
  readonly kept: readonly KeptRun[];
  readonly open: number | null;
  /** False where the device keeps nothing: the page goes on, and says so. */
  readonly stays: boolean;
  readonly ready: boolean;
  /** Counts up whenever values come from elsewhere than the fields that show them. */
  readonly epoch: number;
  /** `fresh`: the change came from elsewhere than the fields that show it. */
  readonly edit: (file: RunFile, what: Say, fresh?: 'fresh') => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Opens a run that is kept, or begins one with this content under an id of its own. */
  readonly show: (file: RunFile, id?: number) => void;
  readonly remove: (id: number) => void;
}

export function useRuns(blank: RunFile): Runs {
  const [history, setHistory] = useState<History<RunFile, Say>>(() => begun(blank));
  const [kept, setKept] = useState<readonly KeptRun[]>([]);
  const [open, setOpen] = useState<number | null>(null);
  const [stays, setStays] = useState(true);
  const [ready, setReady] = useState(false);
  const [epoch, setEpoch] = useState(0);
  const all = useRef<readonly KeptRun[]>([]);
  const openId = useRef<number | null>(null);

  const hold = useCallback((runs: readonly KeptRun[]) => {
    all.current = runs;
    setKept(runs);
  }, []);
  useEffect(() => {
    keptRuns()
      .then((runs) => {
        hold(runs);
        const [newest] = runs;
        if (newest === undefined || openId.current !== null) return;
        openId.current = newest.id;
        setOpen(newest.id);
        setHistory(begun(newest.file));
        setEpoch((n) => n + 1);
      })
      .catch(() => setStays(false))
      .finally(() => setReady(true));
  }, [hold]);

  const write = (file: RunFile) => {
    const turn = all.current.reduce((most, one) => Math.max(most, one.turn), 0) + 1;
    openId.current ??= all.current.reduce((most, one) => Math.max(most, one.id), 0) + 1;
    const own = { id: openId.current, file, turn };
    setOpen(own.id);
    hold([own, ...all.current.filter(({ id }) => id !== own.id)]);
    keepRun(own).catch(() => setStays(false));
  };
  const move = (next: History<RunFile, Say>) => {
    setHistory(next);
    setEpoch(epoch + 1);
    if (next.now !== history.now) write(next.now);
  };
  return {
    history,
    kept,
    open,
    stays,
    ready,
    epoch,
    edit: (file, what, fresh) => {
      const last = history.past.at(-1)?.what;
      // The strokes of one field are one edit; adding and taking off are one each.
      const goesOn = what.say === 'yourRun.did-change' && JSON.stringify(last) === JSON.stringify(what);
      setHistory(goesOn ? amended(history, file) : edited(history, file, what));
      if (fresh !== undefined) setEpoch(epoch + 1);
      write(file);
    },
    undo: () => move(undone(history)),
    redo: () => move(redone(history)),
    show: (file, id) => {
      openId.current = id ?? null;
      setOpen(id ?? null);
      setHistory(begun(file));
      setEpoch(epoch + 1);
      if (id === undefined && file.run.legs.length > 0) write(file);
    },
    remove: (id) => {
      hold(all.current.filter((one) => one.id !== id));
      dropRun(id).catch(() => setStays(false));
      if (openId.current !== id) return;
      const [next] = all.current;
      openId.current = next?.id ?? null;
      setOpen(next?.id ?? null);
      setHistory(begun(next?.file ?? blank));
      setEpoch(epoch + 1);
    },
  };
}
