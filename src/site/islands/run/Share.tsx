import { useState } from 'react';
import type { RunFile } from '../../../run/edit/file.ts';
import { LONGEST_LINK, packed } from '../../../schema/link.ts';
import type { Fault } from '../../../trade/given.ts';
import { GivenError } from '../../../trade/given.ts';
import { saveFile } from '../../device/files.ts';
import { fileName } from '../../run/fileName.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { LinkOut } from '../LinkOut.tsx';
import { FileEntry } from '../register/FileEntry.tsx';

interface Props {
  readonly file: RunFile;
  /** Reads the JSON of a file or link. */
  readonly onRead: (json: unknown) => Promise<readonly Fault[]>;
  readonly json: () => Promise<{ readonly file: unknown; readonly run: unknown }>;
  readonly tell: Tell;
}

/** Handing a run on, and taking one in: files, and a link that needs no server. */
export function Share({ file, onRead, json, tell }: Props) {
  const [link, setLink] = useState<string | null>(null);
  const [long, setLong] = useState(0);
  const save = async (which: 'file' | 'run') => {
    const text = `${JSON.stringify((await json())[which], null, 2)}\n`;
    saveFile(fileName(file, which), text);
  };
  const makeLink = async () => {
    const hash = await packed('run', (await json()).file);
    const { origin, pathname } = window.location;
    const whole = `${origin}${pathname}${hash}`;
    setLong(whole.length > LONGEST_LINK ? whole.length : 0);
    setLink(whole.length > LONGEST_LINK ? null : whole);
  };
  const taken = async (text: string) => {
    let given: unknown;
    try {
      given = JSON.parse(text);
    } catch {
      throw new GivenError([{ field: '', message: tell('yourRun.noJson'), todo: tell('file.giveOther') }]);
    }
    const faults = await onRead(given);
    if (faults.length > 0) {
      throw new GivenError(
        faults.map((f) => ({
          ...f,
          message: tell('yourRun.atField', { field: f.field, message: f.message }),
        })),
      );
    }
  };
  return (
    <details className="opens">
      <summary>{tell('yourRun.share')}</summary>
      <div>
        <div className="buttons">
          <button type="button" className="button second" onClick={() => void save('file')}>
            {tell('yourRun.saveWhole')} <Arrow />
          </button>
          <button type="button" className="button second" onClick={() => void save('run')}>
            {tell('yourRun.saveRun')} <Arrow />
          </button>
          <button type="button" className="button second" onClick={() => void makeLink()}>
            {tell('yourRun.makeLink')} <Arrow />
          </button>
        </div>
        <p className="hint">{tell('yourRun.shareHint')}</p>
        <div aria-live="polite">
          {long > 0 && <p className="message">{tell('yourRun.linkLong', { long, most: LONGEST_LINK })}</p>}
          {link !== null && <LinkOut link={link} tell={tell} />}
        </div>
        <FileEntry
          label={tell('yourRun.bringIn')}
          hint={tell('yourRun.bringInHint')}
          wrong={tell('yourRun.notRun')}
          onText={taken}
          tell={tell}
        />
      </div>
    </details>
  );
}
