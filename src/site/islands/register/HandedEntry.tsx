import { type FormEvent, useState } from 'react';
import type { Mark } from '../../../schema/link.ts';
import { readFile } from '../../device/files.ts';
import { handedText, pictureText } from '../../handed.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Refused } from '../Refused.tsx';
import { TextField } from '../TextField.tsx';
import { useDoing } from './Doing.tsx';
import { FileEntry } from './FileEntry.tsx';
import { useAddressed } from './useAddressed.ts';
import { useReader } from './useCodes.ts';

interface Props {
  /** What is wanted. */
  readonly mark: Mark;
  readonly label: string;
  readonly hint?: string;
  readonly wrong?: string;
  /** Takes the file's text, however it came; what it throws is shown beside the entry it came by. */
  readonly onText: (text: string) => void | Promise<void>;
  readonly tell: Tell;
}

/**
 * The entry for a thing that is handed over: its file, a picture of its code, or its link, pasted or in the address of
 * the page.
 */
export function HandedEntry({ mark, label, hint, wrong, onText, tell }: Props) {
  const [link, setLink] = useState('');
  useReader();
  const pasted = useDoing(tell);
  const addressed = useAddressed(mark, onText, tell);
  const take = async (text: string, came: 'text' | 'link') => {
    await onText(await handedText(text, mark, came, tell));
    return '';
  };
  const read = async (file: File): Promise<string | undefined> => {
    if (!file.type.startsWith('image/')) return readFile(file);
    return handedText(await pictureText(file, tell), mark, 'code', tell);
  };
  const open = (event: FormEvent) => {
    event.preventDefault();
    void pasted.run(() => take(link, 'link'));
  };
  return (
    <>
      <Refused faults={addressed} tell={tell} />
      <FileEntry
        label={label}
        {...(hint === undefined ? {} : { hint })}
        {...(wrong === undefined ? {} : { wrong })}
        accept="application/json,.json,image/*"
        read={read}
        onText={async (text) => {
          await take(text, 'text');
        }}
        tell={tell}
      />
      <FileEntry
        label={tell('handing.picture')}
        hint={tell('handing.pictureHint')}
        accept="image/*"
        capture="environment"
        read={read}
        onText={onText}
        tell={tell}
      />
      <details className="opens">
        <summary>{tell('handing.paste')}</summary>
        <form noValidate onSubmit={open}>
          <TextField
            id={`pasted-${mark}`}
            label={tell('handing.pasted')}
            value={link}
            onValue={setLink}
            autoCapitalize="none"
          />
          <div className="buttons">
            <button type="submit" className="button second" disabled={pasted.busy}>
              {tell('handing.takeLink')} <Arrow />
            </button>
          </div>
          <Refused faults={pasted.faults} tell={tell} />
        </form>
      </details>
    </>
  );
}
