import { useMemo, useState } from 'react';
import type { TaskMap } from '../../../register/taskMap.ts';
import { askToKeep } from '../../device/edge.ts';
import { faultsFrom } from '../../refusals.ts';
import { registerAnswer } from '../../registerWords.ts';
import { speaker, type Tell, teller, type WordTable } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Refused } from '../Refused.tsx';
import { AppointSection } from './AppointSection.tsx';
import { BeginSection } from './BeginSection.tsx';
import { CarrySection } from './CarrySection.tsx';
import { Guard } from './Guard.tsx';
import { KeySection } from './KeySection.tsx';
import { type Device, useDevice } from './useDevice.ts';
import { VerifySection } from './VerifySection.tsx';

interface Props {
  readonly words: WordTable;
  readonly map: TaskMap;
  /** Address of the page on which a sheet is answered. */
  readonly answerPage: string;
}

/** The register on this device: what it is and whether it holds; begin, appoint, carry in and out, names, key. */
export default function RegisterPage({ words, map, answerPage }: Props) {
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const { device, failed, refresh } = useDevice();
  const [done, setDone] = useState('');
  if (failed !== undefined) return <Refused faults={faultsFrom(failed, tell)} tell={tell} />;
  if (device === undefined) {
    return (
      <section className="answer">
        <p className="huge">{tell('register.reading')}</p>
      </section>
    );
  }
  const { opened, key, answering } = device;
  const owner = opened !== undefined && opened.judged.authority.owner === key?.publicKey;
  return (
    <>
      <Head device={device} done={done} tell={tell} />
      <div className="columns even">
        <div>
          {opened !== undefined && (
            <VerifySection judged={opened.judged} names={device.people.names} speak={speak} tell={tell} />
          )}
          <CarrySection device={device} refresh={refresh} tell={tell} />
          <KeepSection device={device} refresh={refresh} tell={tell} />
        </div>
        <div>
          <KeySection device={device} refresh={refresh} tell={tell} />
          {answering !== undefined && <Guard sheet={answering} answerPage={answerPage} tell={tell} />}
          {answering === undefined && opened === undefined && (
            <BeginSection device={device} refresh={refresh} onDone={setDone} tell={tell} />
          )}
          {answering === undefined && owner && (
            <AppointSection device={device} map={map} refresh={refresh} speak={speak} tell={tell} />
          )}
        </div>
      </div>
    </>
  );
}

function Head({
  device,
  done,
  tell,
}: {
  readonly device: Device;
  readonly done: string;
  readonly tell: Tell;
}) {
  const { opened } = device;
  const { label, line } =
    opened === undefined
      ? { label: tell('register.noneLine'), line: tell('register.none') }
      : registerAnswer(opened.judged, tell);
  return (
    <section className="answer" role="status">
      <p className="label">{label}</p>
      <p className="huge">{line}</p>
      {done !== '' && device.carried === undefined && <p>{done}</p>}
    </section>
  );
}

interface KeepProps {
  readonly device: Device;
  readonly refresh: () => Promise<void>;
  readonly tell: Tell;
}

/** Whether the browser may clear what is kept here. */
function KeepSection({ device, refresh, tell }: KeepProps) {
  const { kept } = device;
  return (
    <section>
      <h2 className="view-title">{tell('register.keep')}</h2>
      <p role="status">
        {tell(kept === undefined ? 'register.keepUnknown' : kept ? 'register.keepYes' : 'register.keepNo')}
      </p>
      {kept !== true && (
        <div className="buttons">
          <button type="button" className="button second" onClick={() => void askToKeep().then(refresh)}>
            {tell('register.keepAsk')} <Arrow />
          </button>
        </div>
      )}
    </section>
  );
}
