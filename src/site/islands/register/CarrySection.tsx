import { useState } from 'react';
import { peopleOfText } from '../../../register/people.ts';
import { dayText } from '../../dates.ts';
import { type BroughtIn, bringIn } from '../../device/bringIn.ts';
import { keepNames } from '../../device/register.ts';
import { saveRegister } from '../../device/saveRegister.ts';
import { type CarriedState, carriedState } from '../../drills/carried.ts';
import type { Speak, Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Brought } from './Brought.tsx';
import { FileEntry } from './FileEntry.tsx';
import type { Device } from './useDevice.ts';

/** The whole of a names file, in three lines. */
const namesExample = `{"people": [
  {"id": "p-17", "name": "Ann Pell"},
  {"id": "p-18", "name": "Abe Poll"}]}`;

interface Props {
  readonly device: Device;
  readonly refresh: () => Promise<void>;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** Why the register should be carried off now; nothing when there is no need. */
export function carryWarnings({ days, own, warn }: CarriedState, tell: Tell): readonly string[] {
  if (!warn) return [];
  const lines: string[] = [];
  if (own > 0) lines.push(tell(own === 1 ? 'drills.warnOwnOne' : 'drills.warnOwn', { count: own }));
  if (days !== null && days > 1) lines.push(tell('drills.warnDays', { days }));
  return lines;
}

/** How the carrying off of this device's register stands; nothing without a register. */
export function carriedOf({ opened, carried, chains }: Device): CarriedState | undefined {
  return opened === undefined ? undefined : carriedState(opened.judged, carried, chains, opened.at);
}

/** When the register was last carried off, and what has come since. */
function carriedLine({ opened, carried }: Device, since: number, tell: Tell): string {
  if (opened === undefined) return '';
  if (carried === undefined) return tell('register.carriedNever');
  const { view } = opened.judged;
  const day = dayText(tell, view.dayIn(view.zone, Date.parse(carried.at)));
  const line = tell('register.carriedOn', { day });
  return since > 0 ? `${line} ${tell('drills.since', { count: since })}` : line;
}

/** One file out, one file in; and the names, which go neither way with it. */
export function CarrySection({ device, refresh, speak, tell }: Props) {
  const [brought, setBrought] = useState<BroughtIn>();
  const state = carriedOf(device);
  const off = async () => {
    await saveRegister();
    await refresh();
  };
  return (
    <section>
      <h2 className="view-title">{tell('register.carry')}</h2>
      {state !== undefined && (
        <>
          <p>{tell('register.carryLine')}</p>
          <p role="status">{carriedLine(device, state.since, tell)}</p>
          {carryWarnings(state, tell).map((line) => (
            <p className="message" key={line}>
              <strong>{line}</strong>
            </p>
          ))}
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
          setBrought(undefined);
          setBrought(await bringIn(text));
          await refresh();
        }}
        tell={tell}
      />
      {brought !== undefined && <Brought came={brought} device={device} speak={speak} tell={tell} />}
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
