import { useMemo, useRef, useState } from 'react';
import { check, checkFaults } from '../../../register/acts/check.ts';
import type { Demands } from '../../../register/acts/ownStanding.ts';
import { personId } from '../../../register/shapes.ts';
import type { TaskMap } from '../../../register/taskMap.ts';
import { GivenError } from '../../../trade/given.ts';
import { chance } from '../../device/edge.ts';
import { withoutSecret } from '../../device/keys.ts';
import { signHere } from '../../device/sign.ts';
import { idsOfName, named } from '../../people.ts';
import { speaker, teller, type WordTable } from '../../speak.ts';
import { tried } from '../../tried.ts';
import {
  bars,
  earlyFaults,
  givenOf,
  mayCheck,
  nothingSeen,
  openPairs,
  outcomeOf,
  type Saw,
  seenEntered,
  stillOpen,
  type WitnessTask,
} from '../../witness.ts';
import { useFetched } from '../useLater.ts';
import { Answers } from './Answers.tsx';
import { useDoing } from './Doing.tsx';
import { HowDone } from './HowDone.tsx';
import { lacking } from './lacking.tsx';
import { loadGrader } from './loadGrader.ts';
import { MeasuredRows } from './MeasuredRows.tsx';
import { meOn } from './me.ts';
import { emptyPassphrase } from './Passphrase.tsx';
import { Points } from './Points.tsx';
import { Signed, type SignedEntry } from './Signed.tsx';
import { SignSection } from './SignSection.tsx';
import { standsNow } from './stands.ts';
import { useDevice } from './useDevice.ts';
import { WhoAndTask } from './WhoAndTask.tsx';

interface Props {
  readonly lang: string;
  readonly words: WordTable;
  readonly tasks: readonly WitnessTask[];
  /** What the site asks of a witness beyond his appointment. */
  readonly demands: Demands;
  readonly answerPage: string;
  readonly registerPage: string;
  readonly secondPage: string;
  readonly ownPage: string;
  /** Address above the paper sheets, one a task. */
  readonly paperPage: string;
}

/** What a witness saw, put together and signed: one entry of the register on this device. */
export default function Witness(props: Props) {
  const { lang, words, tasks, demands } = props;
  const { answerPage, registerPage, secondPage, ownPage, paperPage } = props;
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const language = useMemo(() => ({ lang, speak }), [lang, speak]);
  const map: TaskMap = useMemo(() => ({ tasks }), [tasks]);
  const later = useFetched(loadGrader);
  const grader = later.part;
  const practice = grader?.practice;
  const regrade = useMemo(() => grader?.regradeIn(lang), [grader, lang]);
  const { device, failed, refresh } = useDevice();
  const [saw, setSaw] = useState<Saw>(nothingSeen);
  const [signed, setSigned] = useState<SignedEntry>();
  const doing = useDoing(tell);
  const top = useRef<HTMLElement>(null);
  // Until a day is written it is today's; once it is, an emptied field stays empty.
  const [dayWritten, setDayWritten] = useState(false);
  const change = (part: Partial<Saw>) => {
    if (part.on !== undefined) setDayWritten(true);
    setSaw((old) => ({ ...old, ...part }));
  };

  const task = tasks.find(({ id }) => id === saw.task);
  const graded = useMemo(() => {
    const { answers } = saw;
    if (answers === null || grader === null) return undefined;
    return tried(() => grader.gradeIn(lang, answers));
  }, [saw, grader, lang]);
  const grade = graded?.good === true ? graded.value : undefined;

  const lacks = lacking({ device, failed, answerPage, registerPage, tell });
  if (lacks !== undefined || device?.key === undefined || device.opened === undefined) return lacks;
  const { key, opened, people } = device;
  const { judged } = opened;
  const { view } = judged;
  const today = view.dayIn(view.zone, opened.at);
  const { me, initials, known } = meOn(judged, key, people);
  // A name that one person here goes by stands for that person's id; what is signed is the id.
  const called = idsOfName(saw.person, people, known);
  const who = called.length === 1 ? (called[0] ?? '') : saw.person;
  const now: Saw = { ...saw, person: who, on: dayWritten ? saw.on : today };
  const barred = bars(now, task, grade);
  const outcome = outcomeOf(now, barred);
  const open = stillOpen(now, task, outcome);
  const isNew = personId(now.person.trim()) === undefined && !known.includes(now.person.trim());
  const writing = { signer: withoutSecret(key), now: opened.at, chance };
  // Who may not sign this is told as soon as it is known: before all is chosen, and before a passphrase is asked for.
  const asked = openPairs(now, task).length > 0 ? undefined : demands;
  const faults = [
    ...(outcome === null || open.length > 0
      ? earlyFaults(now, checkFaults(judged, givenOf(now, 'not-yet'), map, writing, regrade, asked))
      : checkFaults(judged, givenOf(now, outcome), map, writing, regrade, asked)),
    ...(graded?.good === false ? graded.faults : []),
  ];

  const sign = async (passphrase: string) => {
    if (outcome === null || open.length > 0) return;
    const given = givenOf(now, outcome);
    const good = await doing.run(async () => {
      const unwritten = emptyPassphrase(passphrase, tell);
      if (unwritten.length > 0) throw new GivenError(unwritten);
      const again = (await loadGrader()).regradeIn(lang);
      const entry = await signHere(key, passphrase, (register, how) =>
        check(register, given, map, how, again, demands),
      );
      const about = { entry, person: given.person, task: given.task, days: seenEntered(now, today, tell) };
      setSigned(await standsNow({ ...about, today, map, regrade: again, names: people.names, speak, tell }));
      return '';
    });
    if (!good) return;
    setSaw(nothingSeen);
    setDayWritten(false);
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
  const takeAnswers = async (text: string) => {
    const { readAnswers, gradeIn } = await loadGrader();
    const answers = readAnswers(text);
    gradeIn(lang, answers);
    const first = saw.person.trim() === '' ? { person: answers.person } : {};
    const about = saw.task === '' ? { task: answers.task, variant: {}, points: {} } : {};
    change({ answers, ...first, ...about });
  };
  const sheet = practice?.sheets.get(saw.answers?.sheet ?? '');
  return (
    <div className="columns even witness">
      <section>
        <WhoAndTask
          saw={saw}
          on={now.on}
          today={today}
          zone={view.zone}
          tasks={tasks}
          known={known}
          mayCheck={(id) => mayCheck(judged, key.publicKey, id, now.on)}
          paperPage={paperPage}
          isNew={isNew}
          called={called}
          names={people.names}
          faults={faults}
          onChange={change}
          speak={speak}
          tell={tell}
        />
        <Answers
          saw={now}
          sheet={sheet}
          grade={grade}
          ownDevice={key.device}
          judged={judged}
          map={map}
          practice={practice}
          grading={later}
          language={language}
          onText={takeAnswers}
          onTakeOff={() => change({ answers: null })}
          tell={tell}
        />
        <Points
          task={task}
          saw={now}
          onPoints={(points) => change({ points })}
          initials={initials}
          speak={speak}
          tell={tell}
        />
        <MeasuredRows
          wants={task?.measures ?? 0}
          rows={saw.measured}
          onRows={(measured) => change({ measured })}
          speak={speak}
          tell={tell}
        />
      </section>
      <section>
        <HowDone
          saw={now}
          outcome={outcome}
          barred={barred}
          onChange={change}
          initials={initials}
          tell={tell}
        />
        <SignSection
          saw={now}
          spoken={named(now.person.trim(), people.names, (values) => tell('look.nameId', values))}
          task={task}
          outcome={outcome}
          open={open}
          faults={faults.filter(({ field }) => !['person', 'task', 'key', 'on', 'at'].includes(field))}
          grade={grade}
          sheetNumber={sheet?.number ?? 0}
          entered={today}
          me={me}
          doing={doing}
          onSign={(passphrase) => void sign(passphrase)}
          refused={faults}
          newPerson={isNew ? now.person.trim() : undefined}
          speak={speak}
          tell={tell}
        />
      </section>
    </div>
  );
}
