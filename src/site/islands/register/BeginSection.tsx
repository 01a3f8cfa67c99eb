import { type FormEvent, useEffect, useState } from 'react';
import { GivenError } from '../../../trade/given.ts';
import { beginHere, beginHereFaults } from '../../device/begin.ts';
import { ownZone } from '../../device/edge.ts';
import { shortKey } from '../../shortKey.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Refused } from '../Refused.tsx';
import { TextField } from '../TextField.tsx';
import { Came, useDoing } from './Doing.tsx';
import { emptyPassphrase, Passphrase, usePassphrase } from './Passphrase.tsx';
import type { Device } from './useDevice.ts';

interface Props {
  readonly device: Device;
  readonly refresh: () => Promise<void>;
  /** Says at the head of the page what was done: this part goes away with it. */
  readonly onDone: (text: string) => void;
  readonly tell: Tell;
}

/** Begins a register with the key of this device: its holder becomes the owner. */
export function BeginSection({ device, refresh, onDone, tell }: Props) {
  const { key } = device;
  const [person, setPerson] = useState('');
  const [zone, setZone] = useState('');
  const pass = usePassphrase();
  const doing = useDoing(tell);
  const [deviceZone, setDeviceZone] = useState('');
  useEffect(() => setDeviceZone(ownZone()), []);
  const start = (event: FormEvent) => {
    event.preventDefault();
    if (key === undefined) return;
    const passphrase = pass.take();
    void doing.run(async () => {
      const who = person.trim();
      const given = { zone: zone.trim(), ...(who === '' ? {} : { person: who }) };
      // Before the key is opened: a wrong passphrase hides nothing else that is wrong.
      const faults = [...beginHereFaults(key, given), ...emptyPassphrase(passphrase, tell)];
      if (faults.length > 0) throw new GivenError(faults);
      const entry = await beginHere(key, passphrase, given);
      const text = tell('register.begun', { entry: shortKey(entry) });
      onDone(text);
      await refresh();
      return text;
    });
  };
  return (
    <section>
      <h2 className="view-title">{tell('register.begin')}</h2>
      <p>{tell('register.beginLine')}</p>
      {key === undefined ? (
        <p className="nothing">{tell('register.beginNoKey')}</p>
      ) : (
        <form onSubmit={start} noValidate>
          <div className="fields">
            <TextField
              id="begin-person"
              label={tell('register.ownId')}
              value={person}
              onValue={setPerson}
              hint={tell('register.ownIdHint')}
              autoCapitalize="none"
            >
              <Refused faults={doing.faults} fields={['person']} tell={tell} />
            </TextField>
            <TextField
              id="begin-zone"
              label={tell('register.zone')}
              value={zone}
              onValue={setZone}
              hint={tell('register.zoneHint')}
              autoCapitalize="none"
            >
              {deviceZone !== '' && zone !== deviceZone && (
                <button type="button" className="as-link offer" onClick={() => setZone(deviceZone)}>
                  {tell('register.zoneUse', { zone: deviceZone })}
                </button>
              )}
              <Refused faults={doing.faults} fields={['zone']} tell={tell} />
            </TextField>
            <div>
              <Passphrase
                id="begin-pass"
                label={tell('register.pass')}
                hint={tell('register.passOnce')}
                field={pass}
                faults={doing.faults}
                tell={tell}
              />
            </div>
          </div>
          <div className="buttons">
            <button type="submit" className="button" disabled={doing.busy}>
              {tell('register.beginNow')} <Arrow />
            </button>
          </div>
          <Came doing={doing} without={['person', 'zone', 'passphrase']} tell={tell} />
        </form>
      )}
    </section>
  );
}
