import { useEffect, useMemo, useState } from 'react';
import { createPortal } from 'react-dom';
import { type Turns, type TurnTask, turnsOf } from '../../../practice/comingBack.ts';
import { dayText } from '../../dates.ts';
import { allAttempts } from '../../device/attempts.ts';
import { dayHere, now } from '../../device/edge.ts';
import { HeldOpen } from '../../device/practiceStore.ts';
import { teller, type WordTable } from '../../speak.ts';
import { useLater } from '../useLater.ts';

/** A sheet of the list. */
export interface PracticeRow {
  readonly id: string;
  readonly tasks: readonly string[];
  readonly number: string;
  readonly name: string;
  readonly href: string;
}

interface Props {
  readonly words: WordTable;
  /** In the order of the list. */
  readonly families: readonly PracticeRow[];
  readonly tasks: readonly TurnTask[];
  /** Id of what holds the whole list, which stands without script: its rows are marked with their turn. */
  readonly list: string;
}

/** So many of those that wait today are named; the others are counted. */
const SHOWN = 5;
/** Fetched once the page stands. */
const loadRest = async () => (await import('../../rest.ts')).restUntil;

/** What to take next on this device, from its own tries. Before they are read: what a device without any is told. */
export default function WhatNext({ words, families, tasks, list }: Props) {
  const tell = useMemo(() => teller(words), [words]);
  const rows = useMemo(() => new Map(families.map((family) => [family.id, family])), [families]);
  const restUntil = useLater(loadRest);
  const [turns, setTurns] = useState<Turns>(() => newDevice(families, tasks));
  /** What is said of the tries, once they were looked at. */
  const [said, setSaid] = useState<'looking' | 'notKept' | 'heldOpen' | null>(null);
  useEffect(() => {
    if (restUntil === null) return;
    const look = async () => {
      const attempts = await allAttempts();
      setTurns(turnsOf({ families, tasks, attempts, now: now(), dayOf: dayHere, restUntil }));
      setSaid('looking');
    };
    const looked = () => {
      look().catch((why: unknown) => setSaid(why instanceof HeldOpen ? 'heldOpen' : 'notKept'));
    };
    looked();
    // A page brought back from behind another one may be days old.
    const shown = () => document.visibilityState === 'visible' && looked();
    document.addEventListener('visibilitychange', shown);
    return () => document.removeEventListener('visibilitychange', shown);
  }, [restUntil, families, tasks]);

  const { today, next, later } = turns;
  const [first] = next;
  const [soonest] = later;
  const row = (id: string, line: string) => <Row key={id} row={rows.get(id)} line={line} />;
  const mark = (id: string, text: string) => (
    <Mark key={id} list={list} href={rows.get(id)?.href} text={text} />
  );
  return (
    <>
      <ul className="sheets what-next" aria-live="polite">
        {today.slice(0, SHOWN).map((id) => row(id, tell('practiceList.today')))}
        {first !== undefined && row(first, tell('practiceList.next'))}
      </ul>
      {today.length > SHOWN && (
        <p className="note">
          {today.length === SHOWN + 1
            ? tell('practiceList.moreTodayOne')
            : tell('practiceList.moreToday', { count: today.length - SHOWN })}
        </p>
      )}
      {today.length === 0 && first === undefined && (
        <p className="lead">
          {soonest === undefined
            ? tell('practiceList.nothingEver')
            : tell('practiceList.nothing', { day: dayText(tell, soonest.day) })}
        </p>
      )}
      {later.length > 0 && (
        <details className="opens">
          <summary>{tell('practiceList.later')}</summary>
          <div>
            <ul className="sheets">
              {later.map(({ family, day }) =>
                row(family, tell('practiceList.onDay', { day: dayText(tell, day) })),
              )}
            </ul>
          </div>
        </details>
      )}
      {said !== null && <p className="note">{tell(`practiceList.${said}`)}</p>}
      {said === 'looking' && (
        <>
          {today.map((id) => mark(id, tell('practiceList.markToday')))}
          {later.map(({ family, day }) =>
            mark(family, tell('practiceList.markOn', { day: dayText(tell, day) })),
          )}
        </>
      )}
    </>
  );
}

/** Nothing was tried, so no rest is asked for. */
const newDevice = (families: readonly PracticeRow[], tasks: readonly TurnTask[]): Turns =>
  turnsOf({ families, tasks, attempts: [], now: 0, dayOf: () => '', restUntil: () => 0 });

/** Its turn, at the row of the list that stands below; only after the tries were read, so never at build time. */
function Mark({
  list,
  href,
  text,
}: {
  readonly list: string;
  readonly href?: string | undefined;
  readonly text: string;
}) {
  const row = document.querySelector(`#${list} a[href="${href}"]`);
  return row === null ? null : createPortal(<span className="turn">{text}</span>, row);
}

function Row({ row, line }: { readonly row: PracticeRow | undefined; readonly line: string }) {
  if (row === undefined) return null;
  return (
    <li>
      <a href={row.href}>
        <span className="number">{row.number}</span>
        <span className="name">{row.name}</span>
        <span className="line">{line}</span>
      </a>
    </li>
  );
}
