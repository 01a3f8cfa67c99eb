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
  /** It stands within a form, which another form cannot: links are taken by another part of the page, this takes file and code. */
  readonly inForm?: boolean;
  readonly tell: Tell;
}

/**
 * The entry for a thing that is handed over: its file, a picture of its code, or its link, pasted or in the address of
 * the page.
 */
export function HandedEntry({ mark, label, hint, wrong, onText, inForm = false, tell }: Props) {
  const [link, setLink] = useState('');
  // An entry is emptied as soon as something came by another one: no name of an earlier file stands beside what came later.
  const [emptied, setEmptied] = useState({ file: 0, picture: 0 });
  const cameBy = (entry: 'file' | 'picture' | 'link') => {
    setEmptied(({ file, picture }) => ({
      file: entry === 'file' ? file : file + 1,
      picture: entry === 'picture' ? picture : picture + 1,
    }));
    setLink('');
  };
  useReader();
  const pasted = useDoing(tell);
  const take = async (text: string, entry: 'file' | 'picture' | 'link') => {
    await onText(text);
    cameBy(entry);
  };
  const addressed = useAddressed(mark, (text) => take(text, 'link'), tell, !inForm);
  const read = async (file: File): Promise<string | undefined> => {
    if (!file.type.startsWith('image/')) return readFile(file);
    return handedText(await pictureText(file, tell), mark, 'code', tell);
  };
  const open = (event: FormEvent) => {
    event.preventDefault();
    void pasted.run(async () => {
      await take(await handedText(link, mark, 'link', tell), 'link');
      return '';
    });
  };
  return (
    <>
      <Refused faults={addressed} tell={tell} />
      <FileEntry
        key={`file-${emptied.file}`}
        label={label}
        {...(hint === undefined ? {} : { hint })}
        {...(wrong === undefined ? {} : { wrong })}
        accept="application/json,.json,image/*"
        read={read}
        onText={async (text) => take(await handedText(text, mark, 'text', tell), 'file')}
        tell={tell}
      />
      <FileEntry
        key={`picture-${emptied.picture}`}
        label={tell('handing.picture')}
        hint={tell('handing.pictureHint')}
        accept="image/*"
        capture="environment"
        read={read}
        onText={(text) => take(text, 'picture')}
        tell={tell}
      />
      {!inForm && (
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
      )}
    </>
  );
}
