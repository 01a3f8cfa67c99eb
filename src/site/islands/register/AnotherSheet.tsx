import type { SetFile } from '../../../practice/sheet.ts';
import { isChangedSet } from '../../device/sheets.ts';
import { readSet } from '../../sheetFiles.ts';
import type { Tell } from '../../speak.ts';
import { Refused } from '../Refused.tsx';
import { useAddressed } from './useAddressed.ts';

interface Props {
  /** The sheet that lies here. */
  readonly lies: SetFile;
  /** Sheets that came while another one lies here. */
  readonly waiting: readonly SetFile[];
  /** What the sheet of a file is called. */
  readonly numberOf: (set: SetFile) => string | number;
  readonly onCame: (set: SetFile) => void | Promise<void>;
  readonly tell: Tell;
}

/** Takes a sheet that comes by link while another one lies here, and says of each that waits when it opens. */
export function AnotherSheet({ lies, waiting, numberOf, onCame, tell }: Props) {
  const faults = useAddressed('set', (text) => onCame(readSet(text)), tell);
  return (
    <div role="status">
      <Refused faults={faults} tell={tell} />
      {waiting.map((set, i) => {
        const { bench, person } = set;
        const number = numberOf(set);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: they only ever grow at the end, and hold nothing
          <p className="message" key={i}>
            <strong>
              {tell(isChangedSet(lies, set) ? 'handing.changed' : 'handing.another', {
                number,
                bench,
                person,
              })}
            </strong>
          </p>
        );
      })}
    </div>
  );
}
