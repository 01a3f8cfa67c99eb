import { useMemo } from 'react';
import type { BroughtIn } from '../../device/bringIn.ts';
import type { ChainSpan } from '../../drills/joined.ts';
import { spokenName } from '../../people.ts';
import { problemRows } from '../../registerWords.ts';
import { shortKey } from '../../shortKey.ts';
import type { Speak, Tell } from '../../speak.ts';
import type { Device } from './useDevice.ts';

interface Props {
  readonly came: BroughtIn;
  readonly device: Device;
  readonly speak: Speak;
  readonly tell: Tell;
}

const sum = (spans: readonly ChainSpan[]): number => spans.reduce((all, { count }) => all + count, 0);

/** What a file brought, by who signed it where; whether it was older than what is here; what was left behind, and why. */
export function Brought({ came, device, speak, tell }: Props) {
  const added = sum(came.added);
  const rows = useMemo(() => {
    const persons = device.opened?.judged.authority.persons;
    return came.added.map(({ signer, device: name, from, to, count }) => {
      const [person] = persons?.get(signer) ?? [];
      const who = person === undefined ? shortKey(signer) : spokenName(person, device.people.names);
      const values = { signer: who, device: name, from, to, count };
      return tell(count === 1 ? 'drills.cameFromOne' : 'drills.cameFrom', values);
    });
  }, [came, device, tell]);
  const lacks = sum(came.lacks);
  const left = problemRows(came.left, speak, tell);
  return (
    <>
      <p role="status">
        {tell(added === 1 ? 'register.broughtOne' : 'register.brought', { added, entries: came.entries })}
      </p>
      {rows.length > 0 && (
        <ul className="note">
          {rows.map((row) => (
            <li key={row} className="wrap-id">
              {row}
            </li>
          ))}
        </ul>
      )}
      {lacks > 0 && (
        <p className="message">
          <strong>{tell(added === 0 ? 'drills.older' : 'drills.lacksSome')}</strong>
        </p>
      )}
      {came.dropped > 0 && <p className="note">{tell('drills.cameDropped', { count: came.dropped })}</p>}
      {came.foreign > 0 && <p className="note">{tell('drills.cameForeign', { count: came.foreign })}</p>}
      {left.length > 0 && (
        <>
          <p>
            <strong>
              {tell(left.length === 1 ? 'register.notTakenOne' : 'register.notTaken', { count: left.length })}
            </strong>
          </p>
          <ul className="note">
            {left.map(({ at, what }) => (
              <li key={`${at} ${what}`} className="wrap-id">
                {what} {at}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
