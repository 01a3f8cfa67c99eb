import { useEffect, useState } from 'react';
import { keepLastNumbers, lastNumbers } from '../../device/lastNumbers.ts';
import { fallenBack, type Fallen as Row, raised } from '../../drills/joined.ts';
import { spokenName } from '../../people.ts';
import { shortKey } from '../../shortKey.ts';
import type { Tell } from '../../speak.ts';
import type { Device } from './useDevice.ts';

interface Props {
  readonly device: Device;
  readonly tell: Tell;
}

/** Says that this device once held more of its register than it does now, and remembers how far it goes. */
export function Fallen({ device, tell }: Props) {
  const { opened, people } = device;
  const [rows, setRows] = useState<readonly Row[]>([]);
  useEffect(() => {
    if (opened === undefined) return setRows([]);
    const { view, signers } = opened.judged;
    const once = lastNumbers(view.begin.id);
    setRows(fallenBack(once, signers));
    keepLastNumbers(view.begin.id, raised(once, signers));
  }, [opened]);
  if (opened === undefined || rows.length === 0) return null;
  const { view, signers, authority } = opened.judged;
  const forget = () => {
    keepLastNumbers(view.begin.id, raised({}, signers));
    setRows([]);
  };
  return (
    <div className="hold" role="alert">
      <p>
        <strong>{tell('drills.fallen')}</strong>
      </p>
      <ul>
        {rows.map(({ signer, device: name, held, once }) => {
          const [person] = authority.persons.get(signer) ?? [];
          const who = person === undefined ? shortKey(signer) : spokenName(person, people.names);
          const values = { signer: who, device: name, once, held };
          return (
            <li key={`${signer}.${name}`} className="wrap-id">
              {tell(held < 0 ? 'drills.fallenNone' : 'drills.fallenRow', values)}
            </li>
          );
        })}
      </ul>
      <button type="button" className="as-link offer" onClick={forget}>
        {tell('drills.fallenForget')}
      </button>
    </div>
  );
}
