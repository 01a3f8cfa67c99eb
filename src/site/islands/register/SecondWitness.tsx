import { useMemo, useRef, useState } from 'react';
import type { Demands } from '../../../register/acts/ownStanding.ts';
import { second, secondFaults } from '../../../register/acts/second.ts';
import type { Check } from '../../../register/checks.ts';
import type { TaskMap } from '../../../register/taskMap.ts';
import { GivenError } from '../../../trade/given.ts';
import { dayText } from '../../dates.ts';
import { chance } from '../../device/edge.ts';
import { withoutSecret } from '../../device/keys.ts';
import { signHere } from '../../device/sign.ts';
import { named, spokenName } from '../../people.ts';
import { shortKey } from '../../shortKey.ts';
import { speaker, teller, type WordTable } from '../../speak.ts';
import type { WitnessTask } from '../../witness.ts';
import { waitingOf } from '../../witnessEntries.ts';
import { useLater } from '../useLater.ts';
import { useDoing } from './Doing.tsx';
import { FirstSigned } from './FirstSigned.tsx';
import { lacking } from './lacking.tsx';
import { loadGrader } from './loadGrader.ts';
import { meOn } from './me.ts';
import { emptyPassphrase } from './Passphrase.tsx';
import { Signed, type SignedEntry } from './Signed.tsx';
import { SignForm } from './SignForm.tsx';
import { standsNow } from './stands.ts';
import { useDevice } from './useDevice.ts';

interface Props {
  readonly lang: string;
  readonly words: WordTable;
  readonly tasks: readonly WitnessTask[];
  readonly demands: Demands;
  readonly answerPage: string;
  readonly registerPage: string;
  readonly secondPage: string;
  readonly ownPage: string;
}

/** Checks that wait for a second witness: what the first signed, "I saw it myself", the signature. */
export default function SecondWitness(props: Props) {
  const { lang, words, tasks, demands } = props;
  const { answerPage, registerPage, secondPage, ownPage } = props;
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const map: TaskMap = useMemo(() => ({ tasks }), [tasks]);
  const grader = useLater(loadGrader);
  const { device, failed, refresh } = useDevice();
  const [open, setOpen] = useState<string>();
  const [saw, setSaw] = useState(false);
  const [signed, setSigned] = useState<SignedEntry>();
  const doing = useDoing(tell);
  const top = useRef<HTMLElement>(null);
  const regrade = useMemo(() => grader?.regradeIn(lang), [grader, lang]);
  const register = device?.opened?.judged;
  const publicKey = device?.key?.publicKey;
  const { mine, others } = useMemo(
    () =>
      register === undefined || publicKey === undefined
        ? { mine: [], others: 0 }
        : waitingOf(register, map, publicKey, regrade),
    [register, map, publicKey, regrade],
  );

  const lacks = lacking({ device, failed, answerPage, registerPage, tell });
  if (lacks !== undefined || device?.key === undefined || device.opened === undefined) return lacks;
  const { key, opened, people } = device;
  const { judged } = opened;
  const { view } = judged;
  const { me, initials } = meOn(judged, key, people);
  const today = view.dayIn(view.zone, opened.at);
  const writing = { signer: withoutSecret(key), now: opened.at, chance };
  const nameOf = ({ body: { task } }: Check) => `${task} ${speak({ say: `${task}.name` })}`;
  const witnessOf = ({ entry: { header } }: Check) => {
    const [person] = judged.authority.persons.get(header.signer) ?? [];
    return person === undefined ? shortKey(header.signer) : spokenName(person, people.names);
  };
  const sign = async (check: Check, passphrase: string) => {
    const good = await doing.run(async () => {
      const unwritten = emptyPassphrase(passphrase, tell);
      if (unwritten.length > 0) throw new GivenError(unwritten);
      const again = (await loadGrader()).regradeIn(lang);
      const entry = await signHere(key, passphrase, (register, how) =>
        second(register, { entry: check.entry.id }, map, how, again, demands),
      );
      const about = { entry, person: check.person, task: check.body.task, days: '' };
      setSigned(await standsNow({ ...about, today, map, regrade: again, names: people.names, speak, tell }));
      return '';
    });
    if (!good) return;
    setOpen(undefined);
    setSaw(false);
    await refresh();
    requestAnimationFrame(() => top.current?.focus());
  };
  if (signed !== undefined) {
    return (
      <Signed
        signed={signed}
        top={top}
        onAnother={() => setSigned(undefined)}
        secondPage={secondPage}
        ownPage={ownPage}
        tell={tell}
      />
    );
  }
  const signing = (check: Check) => {
    const { body, person, entry } = check;
    const faults = secondFaults(judged, { entry: entry.id }, map, writing, regrade, demands);
    return (
      <SignForm
        id="second-pass"
        says={
          saw
            ? tell('secondSheet.says', {
                me,
                person: named(person, people.names, (values) => tell('look.nameId', values)),
                task: nameOf(check),
                day: dayText(tell, body.on),
                witness: witnessOf(check),
                entry: shortKey(entry.id),
              })
            : undefined
        }
        cannot={[
          ...faults.map(({ message, todo }) => tell('witness.cannotFor', { message, todo })),
          ...(saw ? [] : [tell('secondSheet.openSaw')]),
        ]}
        me={me}
        doing={doing}
        onSign={(passphrase) => void sign(check, passphrase)}
        tell={tell}
      >
        <p>
          <strong>{tell('secondSheet.refuse')}</strong>
        </p>
        <fieldset className="choices">
          <legend>{tell('secondSheet.sawLine')}</legend>
          <div>
            <label className="choice">
              <input
                type="checkbox"
                checked={saw}
                onChange={(event) => setSaw(event.currentTarget.checked)}
              />
              <i aria-hidden="true">
                <span>{initials}</span>
              </i>
              {tell('secondSheet.saw')}
            </label>
          </div>
        </fieldset>
      </SignForm>
    );
  };
  return (
    <>
      <h2 className="view-title">
        {tell('secondSheet.listLine')} <span className="label">{mine.length}</span>
      </h2>
      {mine.length === 0 && (
        <div className="nothing">
          <p>
            <strong>{tell('secondSheet.none')}</strong>
          </p>
          <p>{tell(tasks.some((task) => task.second) ? 'secondSheet.noneLine' : 'secondSheet.noTask')}</p>
        </div>
      )}
      {mine.map((check) => {
        const isOpen = check.entry.id === open;
        return (
          <details
            className="opens"
            key={check.entry.id}
            open={isOpen}
            onToggle={(event) => {
              const opens = event.currentTarget.open;
              if (opens === isOpen) return;
              setOpen(opens ? check.entry.id : undefined);
              setSaw(false);
            }}
          >
            <summary>
              <span>
                {tell('secondSheet.row', {
                  task: nameOf(check),
                  person: spokenName(check.person, people.names),
                })}
                <span className="label">
                  {tell('secondSheet.rowLine', {
                    day: dayText(tell, check.body.on),
                    witness: witnessOf(check),
                  })}
                </span>
              </span>
            </summary>
            {isOpen && (
              <div>
                <FirstSigned
                  person={named(check.person, people.names, (values) => tell('look.nameId', values))}
                  body={check.body}
                  entered={view.dayIn(view.zone, check.entry.entered)}
                  witness={witnessOf(check)}
                  tasks={tasks}
                  speak={speak}
                  tell={tell}
                />
                {signing(check)}
              </div>
            )}
          </details>
        );
      })}
      {others > 0 && (
        <p className="note">
          {tell(others === 1 ? 'secondSheet.othersOne' : 'secondSheet.others', {
            count: others,
            why: tell('secondSheet.othersWhy'),
          })}
        </p>
      )}
    </>
  );
}
