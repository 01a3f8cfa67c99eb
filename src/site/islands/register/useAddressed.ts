import { useEffect, useRef } from 'react';
import type { Mark } from '../../../schema/link.ts';
import type { Fault } from '../../../trade/given.ts';
import { handedText } from '../../handed.ts';
import type { Tell } from '../../speak.ts';
import { useDoing } from './Doing.tsx';

/**
 * Takes what is handed over in the address of the page, also where a link changes that of a page which stands already.
 * It is taken once: a reload does not bring it in again.
 * @param listens  false where another part of the page takes it
 * @param onText  takes the file's text; what it throws comes back
 */
export function useAddressed(
  mark: Mark,
  onText: (text: string) => void | Promise<void>,
  tell: Tell,
  listens = true,
): readonly Fault[] {
  const doing = useDoing(tell);
  const fromAddress = useRef(async () => {});
  fromAddress.current = async () => {
    if (!listens) return;
    const { hash, pathname, search } = window.location;
    if (!/^#(run|set|answers|key)=/.test(hash)) return;
    window.history.replaceState(null, '', `${pathname}${search}`);
    await doing.run(async () => {
      await onText(await handedText(hash, mark, 'link', tell));
      return '';
    });
  };
  useEffect(() => {
    const open = () => void fromAddress.current();
    open();
    window.addEventListener('hashchange', open);
    return () => window.removeEventListener('hashchange', open);
  }, []);
  return doing.faults;
}
