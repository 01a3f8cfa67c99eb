import { useEffect, useState } from 'react';
import { type Mark, packed } from '../../../schema/link.ts';

/** The address that carries a thing to a page; empty until it is made. @param page  path of the page that takes it */
export function useLink(mark: Mark, json: unknown, page: string): string {
  const [link, setLink] = useState('');
  const text = JSON.stringify(json);
  useEffect(() => {
    let late = false;
    const make = async () => {
      const hash = await packed(mark, JSON.parse(text));
      if (!late) setLink(`${window.location.origin}${page}${hash}`);
    };
    void make();
    return () => {
      late = true;
    };
  }, [mark, text, page]);
  return link;
}
