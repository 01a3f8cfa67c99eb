import { useState } from 'react';
import { peopleOfText } from '../../../register/people.ts';
import { dayText } from '../../dates.ts';
import { type BroughtIn, bringIn } from '../../device/bringIn.ts';
import { saveFile } from '../../device/files.ts';
import { carryOff, keepNames } from '../../device/register.ts';
import { isBehind } from '../../registerWords.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { FileEntry } from './FileEntry.tsx';
import type { Device } from './useDevice.ts';

/** The whole of a names file, in three lines. */
const namesExample = `{"people": [
  {"id": "p-17", "name": "Ann Pell"},
  {"id": "p-18", "name": "Abe Poll"}]}`;

interface Props {
  readonly device: Device;
  readonly refresh: () => Promise<void>;
  readonly tell: Tell;
}

/** When the register was last carried off, and whether anything was signed since. */
function carriedLine({ opened, carried }: Device, tell: Tell): string {
  if (opened === undefined) return '';
  if (carried === undefined) return tell('register.carriedNever');
  const { view } = opened.judged;
  const line = tell('register.carriedOn', { day: dayText(tell, view.dayIn(view.zone, Date.parse(carried))) });
  return isBehind(opened.judged, carried) ? `${line} ${tell('register.carriedBehind')}` : line;
}

/** What a file brought, and what of it was left behind. */
function broughtLine(came: BroughtIn, tell: Tell): string {
  const line = tell(came.added === 1 ? 'register.broughtOne' : 'register.brought', { ...came });
  if (came.notTaken === 0) return line;
  const left = tell(came.notTaken === 1 ? 'register.notTakenOne' : 'register.notTaken', {
    count: came.notTaken,
  });
  return `${line} ${left}`;
}

/** One file out, one file in; and the names, which go neither way with it. */
export function CarrySection({ device, refresh, tell }: Props) {
  const [brought, setBrought] = useState('');
  const off = async () => {
    const file = await carryOff();
    if (file !== undefined) saveFile(file.name, file.text);
    await refresh();
  };
  return (
    <section>
      <h2 className="view-title">{tell('register.carry')}</h2>
      {device.opened !== undefined && (
        <>
          <p>{tell('register.carryLine')}</p>
          <p role="status">{carriedLine(device, tell)}</p>
          <div className="buttons">
            <button type="button" className="button second" onClick={() => void off()}>
              {tell('register.carryOff')} <Arrow />
            </button>
          </div>
        </>
      )}
      <FileEntry
        label={tell('register.bringIn')}
        hint={tell('register.bringLine')}
        onText={async (text) => {
          setBrought('');
          const came = await bringIn(text);
          setBrought(broughtLine(came, tell));
          await refresh();
        }}
        tell={tell}
      />
      <p role="status">{brought}</p>
      <h3>{tell('register.names')}</h3>
      <p className="note">{tell('register.namesLine')}</p>
      <p className="note">{tell('register.namesShape')}</p>
      <pre className="example">{namesExample}</pre>
      <FileEntry
        label={tell('register.namesFile')}
        onText={async (text) => {
          peopleOfText(text);
          await keepNames(text);
          await refresh();
        }}
        tell={tell}
      />
      <p role="status">
        {device.people.names.size === 0
          ? tell('register.namesNone')
          : tell('register.namesNow', { count: device.people.names.size })}
      </p>
    </section>
  );
}
