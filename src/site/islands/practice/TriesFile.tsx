import { useId, useState } from 'react';
import type { Fault } from '../../../trade/given.ts';
import type { Tell } from '../../speak.ts';

interface Props {
  /** Takes a file in; hands back what is wrong with it. */
  readonly onFile: (file: File) => Promise<readonly Fault[]>;
  readonly tell: Tell;
}

/** So many faults are shown: a file with more is no such file. They stand behind a row; what to do stands first. */
const SHOWN = 10;

/** The entry for a file of tries. Emptied after each, so that the same file may be given again. */
export function TriesFile({ onFile, tell }: Props) {
  const id = useId();
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const take = async (box: HTMLInputElement) => {
    const file = box.files?.[0];
    if (file === undefined) return;
    setFaults(await onFile(file));
    box.value = '';
  };
  return (
    <div className="file-entry">
      <label htmlFor={id}>{tell('keptPractice.file')}</label>
      <input
        id={id}
        type="file"
        accept="application/json,.json"
        aria-describedby={`${id}-hint ${id}-refused`}
        onChange={(event) => void take(event.currentTarget)}
      />
      <p className="hint" id={`${id}-hint`}>
        {tell('keptPractice.inHint')}
      </p>
      <div className="message" id={`${id}-refused`} role="alert">
        {faults.length > 0 && (
          <>
            <p>
              <strong>{tell('keptPractice.notOne')}</strong> {tell('keptPractice.nothingCame')}
            </p>
            <details className="opens">
              <summary>{tell('keptPractice.wrong')}</summary>
              <div>
                {faults.slice(0, SHOWN).map(({ field, message, todo }) => (
                  <p key={`${field} ${message}`}>
                    {field === '' ? '' : `${field}: `}
                    {tell('keptPractice.refused', { message, todo })}
                  </p>
                ))}
              </div>
            </details>
          </>
        )}
      </div>
    </div>
  );
}
