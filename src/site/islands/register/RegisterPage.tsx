import { useEffect, useMemo, useState } from 'react';
import type { TaskMap } from '../../../register/taskMap.ts';
import { askToKeep } from '../../device/edge.ts';
import { forget } from '../../device/forget.ts';
import { faultsFrom } from '../../refusals.ts';
import { registerAnswer } from '../../registerWords.ts';
import { speaker, type Tell, teller, type WordTable } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Refused } from '../Refused.tsx';
import { useLater } from '../useLater.ts';
import { AppointSection } from './AppointSection.tsx';
import { BeginSection } from './BeginSection.tsx';
import { CarrySection, carriedOf, carryWarnings } from './CarrySection.tsx';
import { Fallen } from './Fallen.tsx';
import { Guard } from './Guard.tsx';
import { KeySection } from './KeySection.tsx';
import { Torn } from './Torn.tsx';
import { type Device, useDevice } from './useDevice.ts';
import { VerifySection } from './VerifySection.tsx';

interface Props {
  readonly lang: string;
  readonly words: WordTable;
  readonly map: TaskMap;
  /** Address of the page with the texts of the drills. */
  readonly drillsPage: string;
  /** Address of the page on which a sheet is answered. */
  readonly answerPage: string;
}

/** The register on this device: what it is and whether it holds; begin, appoint, carry in and out, names, key. */
export default function RegisterPage({ lang, words, map, drillsPage, answerPage }: Props) {
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const { device, failed, refresh } = useDevice();
  const [done, setDone] = useState('');
  const Drills = useLater(loadDrills)?.DrillSections ?? null;
  // Whenever the register is read, and not only once an erase is signed: it may have come in, or the page been left then.
  const erased = device?.opened?.judged.view.erased;
  useEffect(() => {
    if (erased === undefined) return;
    forget(erased)
      .then((gone) => (gone ? refresh() : undefined))
      .catch(() => undefined);
  }, [erased, refresh]);
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
      <Fallen device={device} tell={tell} />
      <Torn device={device} refresh={refresh} tell={tell} />
      <div className="columns even">
        <div>
          {opened !== undefined && (
            <VerifySection judged={opened.judged} names={device.people.names} speak={speak} tell={tell} />
          )}
          <CarrySection device={device} refresh={refresh} speak={speak} tell={tell} />
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
      <h2 className="view-title">{tell('drills.title')}</h2>
      <p>
        {tell('drills.lead')} <a href={drillsPage}>{tell('drills.texts')}</a>
      </p>
      {opened !== undefined &&
        answering === undefined &&
        (Drills === null ? (
          <p role="status">{tell('drills.reading')}</p>
        ) : (
          <Drills
            device={{ ...device, opened }}
            map={map}
            lang={lang}
            drillsPage={drillsPage}
            refresh={refresh}
            speak={speak}
            tell={tell}
          />
        ))}
      <Gone drillsPage={drillsPage} tell={tell} />
    </>
  );
}

/** What the page can stand without, fetched once it stands. */
const loadDrills = () => import('./drills/DrillSections.tsx');

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
  const carried = carriedOf(device);
  const { label, line } =
    opened === undefined
      ? { label: tell('register.noneLine'), line: tell('register.none') }
      : registerAnswer(opened.judged, tell);
  return (
    <section className="answer" role="status">
      <p className="label">{label}</p>
      <p className="huge">{line}</p>
      {done !== '' && device.carried === undefined && opened?.judged.entries === 1 && <p>{done}</p>}
      {carried !== undefined && carryWarnings(carried, tell).map((text) => <p key={text}>{text}</p>)}
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

/** What to do when the browser has cleared what was kept: it stands here whether or not a register is. */
function Gone({ drillsPage, tell }: { readonly drillsPage: string; readonly tell: Tell }) {
  return (
    <details className="opens" id="drill-storage-cleared">
      <summary>{tell('drills.gone')}</summary>
      <div>
        <p>{tell('drills.goneLine')}</p>
        <p>
          <a className="offer" href={`${drillsPage}#storage-cleared`}>
            {tell('drills.how')}
          </a>
        </p>
        <ol className="drill">
          <li>{tell('drills.goneDo1')}</li>
          <li>{tell('drills.goneDo2')}</li>
          <li>{tell('drills.goneDo3')}</li>
        </ol>
      </div>
    </details>
  );
}
