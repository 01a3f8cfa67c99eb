import { useId, useState } from 'react';
import { type Fault, GivenError } from '../../../trade/given.ts';
import { readFile } from '../../device/files.ts';
import { attempt } from '../../refusals.ts';
import type { Tell } from '../../speak.ts';
import { Refused } from '../Refused.tsx';

interface Props {
  readonly label: string;
  readonly hint?: string;
  /** Says in one sentence what the file is not, before what is wrong with it. */
  readonly wrong?: string;
  /** Kinds of file it offers; JSON when left out. */
  readonly accept?: string;
  /** Opens the camera at once, on a device that has one. */
  readonly capture?: 'environment';
  /** How a file becomes a text; `undefined` for one that is too large. */
  readonly read?: (file: File) => Promise<string | undefined>;
  /** Takes the file's text; what it throws is shown here. */
  readonly onText: (text: string) => void | Promise<void>;
  readonly tell: Tell;
}

/** The entry for a file that somebody hands over. */
export function FileEntry({
  label,
  hint,
  wrong,
  accept = 'application/json,.json',
  capture,
  read = readFile,
  onText,
  tell,
}: Props) {
  const id = useId();
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const [busy, setBusy] = useState(false);
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    setBusy(true);
    const done = await attempt(tell, async () => {
      const text = await read(file);
      if (text === undefined) {
        throw new GivenError([
          { field: 'file', message: tell('file.tooLarge'), todo: tell('file.giveOther') },
        ]);
      }
      await onText(text);
    });
    setBusy(false);
    setFaults(done.good ? [] : done.faults);
  };
  return (
    <div className="file-entry">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="file"
        accept={accept}
        capture={capture}
        aria-describedby={`${id}-hint ${id}-refused`}
        onChange={(event) => {
          const { files } = event.currentTarget;
          void take(files?.[0]);
        }}
      />
      {hint !== undefined && (
        <p className="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {busy && <p role="status">{tell('file.busy')}</p>}
      {wrong !== undefined && faults.length > 0 && (
        <p className="message" role="alert">
          <strong>{wrong}</strong>
        </p>
      )}
      <Refused faults={faults} id={`${id}-refused`} tell={tell} />
    </div>
  );
}
