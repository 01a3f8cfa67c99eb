import type { SetFile } from '../../../practice/sheet.ts';
import { readSet } from '../../sheetFiles.ts';
import type { Tell } from '../../speak.ts';
import { Refused } from '../Refused.tsx';
import { useAddressed } from './useAddressed.ts';

interface Props {
  /** Sheets that came while another one lies here. */
  readonly waiting: readonly SetFile[];
  /** What the sheet of a file is called. */
  readonly numberOf: (set: SetFile) => string | number;
  readonly onCame: (set: SetFile) => void | Promise<void>;
  readonly tell: Tell;
}

/** Takes a sheet that comes by link while another one lies here, and says of each that waits when it opens. */
export function AnotherSheet({ waiting, numberOf, onCame, tell }: Props) {
  const faults = useAddressed('set', (text) => onCame(readSet(text)), tell);
  return (
    <div role="status">
      <Refused faults={faults} tell={tell} />
      {waiting.map((set) => {
        const { bench, person, task } = set;
        const number = numberOf(set);
        return (
          <p className="message" key={`${set.sheet} ${bench} ${person} ${task}`}>
            <strong>{tell('handing.another', { number, bench, person })}</strong>
          </p>
        );
      })}
    </div>
  );
}
