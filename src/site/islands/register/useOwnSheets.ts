import { useEffect, useRef, useState } from 'react';
import type { SetFile } from '../../../practice/sheet.ts';
import type { OpenSheetFile } from '../../../practice/sheetFiles.ts';
import { deviceOfOwn } from '../../device/keys.ts';
import {
  beginSheet,
  isSameSet,
  type KeptSheet,
  keepAnswers,
  keepWaiting,
  ownSheet,
  putSheetAway,
  waitingSheets,
} from '../../device/sheets.ts';

/** The sheets that came to this device: the one that lies open, those that wait, and what is written on it. */
export function useOwnSheets() {
  const [kept, setKept] = useState<KeptSheet | null>(null);
  // What was kept last, for a stroke and a step that come before the page is drawn anew.
  const latest = useRef<KeptSheet | null>(null);
  const hold = (next: KeptSheet | null) => {
    latest.current = next;
    setKept(next);
  };
  const [set, setSet] = useState<SetFile | null>(null);
  const [waiting, setWaiting] = useState<readonly SetFile[]>([]);
  const waits = useRef(waiting);
  /** One for whoever has it: it wants a bench and a person first. */
  const [unset, setUnset] = useState<OpenSheetFile | null>(null);
  const [device, setDevice] = useState('');
  const [stays, setStays] = useState(true);
  const lost = () => setStays(false);
  const back = useRef<Promise<void>>(undefined);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when script takes the page over
  useEffect(() => {
    const bringBack = async () => {
      const own = (await ownSheet()) ?? null;
      hold(own);
      const others = await waitingSheets();
      waits.current = others;
      setWaiting(others);
      if (own === null) setSet((came) => came ?? others[0] ?? null);
      setDevice((await deviceOfOwn()) ?? '');
    };
    back.current = bringBack().catch(lost);
  }, []);
  const wait = (sheets: readonly SetFile[]) => {
    waits.current = sheets;
    setWaiting(sheets);
    keepWaiting(sheets).catch(lost);
  };
  const asked = kept?.set ?? set;
  return {
    /** The sheet that is being answered, with what is written on it. */
    kept,
    /** What is set on the sheet that lies here, begun or not. */
    asked,
    waiting,
    unset,
    leaveUnset: () => setUnset(null),
    device,
    setDevice,
    /** Whether this device keeps what is written. */
    stays,
    /** A sheet that came by file, code or link: it opens, or waits until the one that lies here is put away. */
    came: async (next: SetFile | OpenSheetFile) => {
      if (next.kind === 'sheet') {
        setUnset(next);
        return;
      }
      setUnset(null);
      // What lies here is known only once it was read: a link is taken before that.
      await back.current;
      const lies = latest.current?.set;
      if (lies === undefined) setSet(next);
      else if (![lies, ...waits.current].some((one) => isSameSet(one, next))) wait([...waits.current, next]);
    },
    begin: (sheet: SetFile) => {
      wait(waiting.filter((one) => !isSameSet(one, sheet)));
      void beginSheet(sheet, device.trim()).then(hold, () => {
        lost();
        hold({ set: sheet, device: device.trim(), answers: {}, begun: '', handed: null });
      });
    },
    /** @param part  made of the sheet as it was kept last */
    change: (part: (now: KeptSheet) => Partial<KeptSheet>) => {
      if (latest.current === null) return;
      const next = { ...latest.current, ...part(latest.current) };
      hold(next);
      keepAnswers(next).catch(lost);
    },
    /** Puts the sheet that lies here away; the next that waits comes up. */
    away: () => {
      const others = waiting.filter((one) => asked === null || !isSameSet(one, asked));
      hold(null);
      setSet(others[0] ?? null);
      wait(others);
      putSheetAway().catch(lost);
    },
  };
}
