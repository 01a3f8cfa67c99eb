import { useId, useState } from 'react';
import type { Tell } from '../speak.ts';

interface Props {
  readonly link: string;
  readonly tell: Tell;
}

/** A link to be copied: whole in its field, where a page may not write to the clipboard. */
export function LinkOut({ link, tell }: Props) {
  const id = useId();
  const [copied, setCopied] = useState('');
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      setCopied(link);
    } catch {
      const field = document.getElementById(id);
      if (field instanceof HTMLInputElement) field.select();
    }
  };
  return (
    <>
      <label htmlFor={id}>{tell('handing.link')}</label>
      <input id={id} type="text" readOnly value={link} onFocus={(event) => event.currentTarget.select()} />
      <p>
        <button type="button" className="as-link offer" onClick={() => void copy()}>
          {tell(copied === link ? 'handing.copied' : 'handing.copyLink')}
        </button>
      </p>
    </>
  );
}
