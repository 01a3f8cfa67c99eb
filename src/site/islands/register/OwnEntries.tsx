import { useMemo, useState } from 'react';
import { dayText } from '../../dates.ts';
import { chance } from '../../device/edge.ts';
import { withoutSecret } from '../../device/keys.ts';
import { spokenName } from '../../people.ts';
import { shortKey } from '../../shortKey.ts';
import { speaker, teller, type WordTable } from '../../speak.ts';
import type { WitnessTask } from '../../witness.ts';
import { canTakeBack, ownEntriesOf, ownEntryText } from '../../witnessEntries.ts';
import { FirstSigned } from './FirstSigned.tsx';
import { lacking } from './lacking.tsx';
import { meOn } from './me.ts';
import { PutRight } from './PutRight.tsx';
import { TakeBack } from './TakeBack.tsx';
import { useDevice } from './useDevice.ts';

interface Props {
  readonly lang: string;
  readonly words: WordTable;
  readonly tasks: readonly WitnessTask[];
  readonly answerPage: string;
  readonly registerPage: string;
}

/** How many are listed at first, and how many more at a time. */
const SOME = 20;

/** What the person of this device's key has signed: each opens to its words, to taking it back, to putting answers right. */
export default function OwnEntries(props: Props) {
  const { lang, words, tasks, answerPage, registerPage } = props;
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const { device, failed, refresh } = useDevice();
  const [most, setMost] = useState(SOME);
  const [open, setOpen] = useState<string>();
  const [done, setDone] = useState('');
  const register = device?.opened?.judged;
  const own = useMemo(
    () =>
      register === undefined || device?.key === undefined ? [] : ownEntriesOf(register, device.key.publicKey),
    [register, device?.key],
  );

  const lacks = lacking({ device, failed, answerPage, registerPage, tell });
  if (lacks !== undefined || device?.key === undefined || device.opened === undefined) return lacks;
  const { key, opened, people } = device;
  const { judged } = opened;
  const { view } = judged;
  const { me } = meOn(judged, key, people);
  const writing = { signer: withoutSecret(key), now: opened.at, chance };
  const after = async (entry: string) => {
    setOpen(undefined);
    setDone(tell('ownEntries.done', { entry: shortKey(entry) }));
    await refresh();
  };
  return (
    <>
      <p className="status-line" role="status">
        {done !== '' && (
          <strong>
            {done} {tell('witness.carryLine')} <a href={registerPage}>{tell('witness.toRegister')}</a>
          </strong>
        )}
      </p>
      {own.length === 0 && (
        <div className="nothing">
          <p>{tell('ownEntries.none')}</p>
        </div>
      )}
      {own.slice(0, most).map((one) => {
        const { entry, kind, check, withdrawn } = one;
        const isOpen = entry.id === open;
        const canBack = isOpen && canTakeBack(judged, one, writing);
        const day = view.dayIn(view.zone, entry.entered);
        return (
          <details
            className="opens"
            key={entry.id}
            open={isOpen}
            onToggle={(event) => {
              const opens = event.currentTarget.open;
              if (opens !== isOpen) setOpen(opens ? entry.id : undefined);
            }}
          >
            <summary>
              <span>
                {ownEntryText(one, { judged, names: people.names, speak, tell })}
                <span className="label">
                  {tell('ownEntries.entered', { entry: shortKey(entry.id), day: dayText(tell, day) })}
                  {withdrawn && ` · ${tell('ownEntries.gone')}`}
                </span>
              </span>
            </summary>
            {isOpen && (
              <div>
                {check !== undefined && kind === 'check' && (
                  <FirstSigned
                    person={spokenName(entry.header.about ?? '', people.names)}
                    body={check}
                    entered={day}
                    witness={me}
                    tasks={tasks}
                    speak={speak}
                    tell={tell}
                  />
                )}
                {canBack && <TakeBack deviceKey={key} entry={entry.id} me={me} onDone={after} tell={tell} />}
                {canBack && check !== undefined && kind === 'check' && (
                  <PutRight
                    deviceKey={key}
                    entry={entry.id}
                    of={{ person: entry.header.about ?? '', task: check.task }}
                    me={me}
                    lang={lang}
                    onDone={after}
                    tell={tell}
                  />
                )}
              </div>
            )}
          </details>
        );
      })}
      {own.length > most && (
        <p className="way">
          <button type="button" className="as-link offer" onClick={() => setMost(most + SOME)}>
            {tell('ownEntries.more')}
          </button>
        </p>
      )}
    </>
  );
}
