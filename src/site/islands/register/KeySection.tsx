import { type FormEvent, useState } from 'react';
import { type KeyFile, keyFileText, publicKeyText } from '../../../register/keyFile.ts';
import { GivenError } from '../../../trade/given.ts';
import { saveFile } from '../../device/files.ts';
import { deviceFaults, makeOwnKey, sealOwnKey, takeInKey } from '../../device/keys.ts';
import { standingOfKey } from '../../registerWords.ts';
import { shortKey } from '../../shortKey.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Refused } from '../Refused.tsx';
import { TextField } from '../TextField.tsx';
import { Came, useDoing } from './Doing.tsx';
import { FileEntry } from './FileEntry.tsx';
import { KeyOut } from './KeyOut.tsx';
import { NewPassphrase, useNewPassphrase } from './NewPassphrase.tsx';
import { emptyPassphrase, Passphrase, usePassphrase } from './Passphrase.tsx';
import type { Device } from './useDevice.ts';

interface Props {
  readonly device: Device;
  readonly refresh: () => Promise<void>;
  readonly tell: Tell;
}

/** The key of this device: made here under a passphrase, its public half taken out, carried off wrapped, brought in. */
export function KeySection({ device, refresh, tell }: Props) {
  const { key, opened } = device;
  // Here and not in the form: that stands elsewhere as soon as there is a key, and what came of it must stay to be read.
  const making = useDoing(tell);
  const make = <MakeKey seen={key} doing={making} refresh={refresh} tell={tell} />;
  return (
    <section>
      <h2 className="view-title">{tell('register.key')}</h2>
      {key === undefined ? (
        <>
          <p>{tell('register.keyNone')}</p>
          {make}
        </>
      ) : (
        <>
          <p className="wrap-id">
            {tell('register.keyLine', { key: shortKey(key.publicKey), device: key.device })}{' '}
            {opened !== undefined && standingOfKey(opened.judged, key.publicKey, tell).join(' ')}
          </p>
          <div className="buttons">
            <button
              type="button"
              className="button second"
              onClick={() =>
                saveFile(`public-key-${shortKey(key.publicKey)}.json`, publicKeyText(key.publicKey))
              }
            >
              {tell('register.takePublic')} <Arrow />
            </button>
            <button
              type="button"
              className="button second"
              onClick={() => saveFile(`wrapped-key-${shortKey(key.publicKey)}.json`, keyFileText(key))}
            >
              {tell('register.takeWrapped')} <Arrow />
            </button>
          </div>
          <p className="note">{tell('register.takeWrappedLine')}</p>
          <KeyOut publicKey={key.publicKey} tell={tell} />
        </>
      )}
      <Came doing={making} without={['device', 'passphrase']} tell={tell} />
      {key !== undefined && device.answering === undefined && (
        <details className="opens">
          <summary>{tell('drills.sealed')}</summary>
          <div>
            <SealKey own={key} refresh={refresh} tell={tell} />
          </div>
        </details>
      )}
      {key !== undefined && (
        <details className="opens">
          <summary>{tell('register.anotherKey')}</summary>
          <div>
            <p>{tell('register.inPlace')}</p>
            {make}
          </div>
        </details>
      )}
      <details className="opens">
        <summary>{tell('register.bringKey')}</summary>
        <div>
          {key !== undefined && <p>{tell('register.inPlace')}</p>}
          <BringKey seen={key} refresh={refresh} tell={tell} />
        </div>
      </details>
    </section>
  );
}

interface KeyProps extends Omit<Props, 'device'> {
  /** The key that stands here now, as far as this page knows. */
  readonly seen: KeyFile | undefined;
}

function MakeKey({ seen, doing, refresh, tell }: KeyProps & { readonly doing: ReturnType<typeof useDoing> }) {
  const [name, setName] = useState('');
  const next = useNewPassphrase();
  const make = (event: FormEvent) => {
    event.preventDefault();
    const { passphrase, faults: unfit } = next.take(tell);
    void doing
      .run(async () => {
        const faults = [...deviceFaults(name.trim()), ...unfit];
        if (faults.length > 0) throw new GivenError(faults);
        await makeOwnKey(seen, name.trim(), passphrase);
        return tell('register.keyMade');
      })
      .then(refresh);
  };
  return (
    <form onSubmit={make} noValidate>
      <div className="fields">
        <TextField
          id="key-device"
          label={tell('register.device')}
          value={name}
          onValue={setName}
          hint={tell('register.deviceHint')}
          autoCapitalize="none"
        >
          <Refused faults={doing.faults} fields={['device']} tell={tell} />
        </TextField>
        <NewPassphrase
          id="key"
          label={tell('register.pass')}
          fields={next}
          faults={doing.faults}
          tell={tell}
        />
      </div>
      <div className="buttons">
        <button type="submit" className="button" disabled={doing.busy}>
          {tell('register.makeKey')} <Arrow />
        </button>
      </div>
    </form>
  );
}

interface SealProps extends Omit<Props, 'device'> {
  readonly own: KeyFile;
}

/** Another passphrase: for the key as it is kept here, or for a copy that is carried off. */
function SealKey({ own, refresh, tell }: SealProps) {
  const now = usePassphrase();
  const next = useNewPassphrase();
  const doing = useDoing(tell);
  const seal = (here: boolean) => {
    const present = now.take();
    const { passphrase, faults: unfit } = next.take(tell);
    void doing
      .run(async () => {
        const faults = [
          ...emptyPassphrase(present, tell).map((fault) => ({ ...fault, field: 'now' })),
          ...unfit,
        ];
        if (faults.length > 0) throw new GivenError(faults);
        const sealed = await sealOwnKey(own, present, passphrase, here).catch(ofNow);
        if (!here) saveFile(`wrapped-key-${shortKey(own.publicKey)}.json`, keyFileText(sealed));
        return tell(here ? 'drills.changedHere' : 'drills.sealedOff');
      })
      .then(refresh);
  };
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const { submitter } = event.nativeEvent as SubmitEvent;
    seal(submitter?.getAttribute('value') !== 'off');
  };
  return (
    <form onSubmit={submit} noValidate>
      <p>{tell('drills.sealedLine')}</p>
      <div className="fields">
        <div>
          <Passphrase
            id="seal-now"
            label={tell('drills.passNow')}
            hint={tell('register.passOnce')}
            field={now}
            faults={doing.faults}
            of="now"
            tell={tell}
          />
        </div>
        <NewPassphrase
          id="seal"
          label={tell('drills.passNext')}
          fields={next}
          faults={doing.faults}
          tell={tell}
        />
      </div>
      <div className="buttons">
        <button type="submit" value="here" className="button second" disabled={doing.busy}>
          {tell('drills.changeHere')} <Arrow />
        </button>
        <button type="submit" value="off" className="button second" disabled={doing.busy}>
          {tell('drills.sealOff')} <Arrow />
        </button>
      </div>
      <Came doing={doing} without={['now', 'passphrase']} tell={tell} />
    </form>
  );
}

/** The next passphrase was looked at before: what is refused of a passphrase then is of the one that is now. */
function ofNow(cause: unknown): never {
  if (!(cause instanceof GivenError)) throw cause;
  throw new GivenError(
    cause.faults.map((fault) => (fault.field === 'passphrase' ? { ...fault, field: 'now' } : fault)),
  );
}

function BringKey({ seen, refresh, tell }: KeyProps) {
  const [name, setName] = useState('');
  const [done, setDone] = useState('');
  return (
    <>
      <p>{tell('register.bringKeyLine')}</p>
      <TextField
        id="bring-device"
        label={tell('register.device')}
        value={name}
        onValue={setName}
        hint={tell('register.deviceHint')}
        autoCapitalize="none"
      />
      <FileEntry
        label={tell('register.keyFile')}
        onText={async (text) => {
          setDone('');
          try {
            await takeInKey(seen, text, name.trim());
          } finally {
            await refresh();
          }
          setDone(tell('register.keyIn'));
        }}
        tell={tell}
      />
      <p role="status">{done}</p>
    </>
  );
}
