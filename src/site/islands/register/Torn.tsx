import { saveFile } from '../../device/files.ts';
import { keepFiles } from '../../device/register.ts';
import { withoutTorn } from '../../drills/torn.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Refused } from '../Refused.tsx';
import { useDoing } from './Doing.tsx';
import type { Device } from './useDevice.ts';

interface Props {
  readonly device: Device;
  readonly refresh: () => Promise<void>;
  readonly tell: Tell;
}

/** Where a file of the register ends in mid-line: takes that end off and saves it, so that nothing is thrown away. */
export function Torn({ device, refresh, tell }: Props) {
  const { opened } = device;
  const doing = useDoing(tell);
  const torn = opened?.held.torn.size ?? 0;
  if (opened === undefined || (torn === 0 && doing.done === '')) return null;
  const mend = () =>
    void doing
      .run(async () => {
        const { files, ends } = withoutTorn(opened.files, opened.held.torn);
        await keepFiles(opened.files, files);
        saveFile('torn-ends.json', `${JSON.stringify(ends, null, 2)}\n`);
        return tell('drills.mendFileDone');
      })
      .then(refresh);
  return (
    <div className="hold">
      <p>
        <strong>{tell('drills.mendFile')}</strong>
      </p>
      {torn > 0 && (
        <>
          <p>{tell('drills.mendFileLine')}</p>
          <div className="buttons">
            <button type="button" className="button second" disabled={doing.busy} onClick={mend}>
              {tell('drills.mendFileNow')} <Arrow />
            </button>
          </div>
        </>
      )}
      <p role="status">{doing.done}</p>
      <Refused faults={doing.faults} tell={tell} />
    </div>
  );
}
