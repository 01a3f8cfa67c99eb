import { useEffect, useMemo, useRef, useState } from 'react';
import { boardOf } from '../../../register/board.ts';
import { isDay } from '../../../register/days.ts';
import { judge } from '../../../register/judge.ts';
import type { TaskMap } from '../../../register/taskMap.ts';
import { boardMarks, crewView } from '../../crew.ts';
import { type CrewSource, entryAnchor } from '../../crewLines.ts';
import { dayText } from '../../dates.ts';
import { namesText, ownRegister } from '../../device/register.ts';
import { dayIn } from '../../device/verify.ts';
import { keptPeople, nobody, spokenName, withoutErased } from '../../people.ts';
import { speaker, type Tell, teller, type WordTable } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { TextField } from '../TextField.tsx';
import { useLater } from '../useLater.ts';
import { Job } from './Job.tsx';
import { loadGrader } from './loadGrader.ts';
import { TaskChoices } from './TaskChoices.tsx';
import { useReading } from './useReading.ts';
import { ownLinks, useWhich, type Which } from './useWhich.ts';

interface Props {
  readonly lang: string;
  readonly words: WordTable;
  readonly map: TaskMap;
  /** Address of the register's page. */
  readonly registerPage: string;
  /** Address of the page for those who assign. */
  readonly assignPage: string;
  /** Address of the demo's board. */
  readonly demoPage: string;
}

/** All that this page wants of the device; its key is not among it. */
async function readBoard() {
  const [opened, names] = await Promise.all([ownRegister(), namesText()]);
  return { opened, people: keptPeople(names) };
}

const sheets = () => import('./OwnSheet.tsx').then(({ OwnSheet }) => OwnSheet);
const boards = () => import('./Board.tsx').then(({ Board }) => Board);

/**
 * The crew board of this device's register, on any day and as known on any day, for the tasks that a job needs; and from
 * it the sheet of one person or one task. Nothing of it leaves the device.
 */
export default function DeviceBoard(props: Props) {
  const { lang, words, map, registerPage, assignPage, demoPage } = props;
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const which = useWhich();
  const OwnSheet = useLater(sheets);
  const Board = useLater(boards);
  const { value: read, failed } = useReading(readBoard);
  const [chosen, setDay] = useState<string>();
  const [known, setKnown] = useState('');
  const [needs, setNeeds] = useState<readonly string[]>([]);
  const broken = failed !== undefined;
  const opened = broken ? undefined : read?.opened;
  const people = read?.people ?? nobody;
  const today = opened === undefined ? '' : opened.judged.view.dayIn(opened.judged.view.zone, opened.at);
  const day = chosen ?? today;

  const grader = useLater(loadGrader);
  const regrade = useMemo(() => grader?.regradeIn(lang), [grader, lang]);
  const on = day.trim();
  const knownOn = known.trim() === '' ? undefined : known.trim();
  const knownGood = knownOn === undefined || isDay(knownOn);
  const judged = useMemo(() => {
    if (opened === undefined || !knownGood) return undefined;
    if (knownOn === undefined) return opened.judged;
    const { begin, zone } = opened.judged.view;
    // Before its beginning there was nothing to know.
    if (knownOn < dayIn(zone, begin.time)) return undefined;
    return judge(opened.held, { now: opened.at, dayIn, knownOn });
  }, [opened, knownOn, knownGood]);
  const source = useMemo((): CrewSource | undefined => {
    if (judged === undefined || regrade === undefined || !isDay(on)) return undefined;
    const board = boardOf(judged, { on, knownOn, map, people: people.ids, regrade });
    const names = withoutErased(people.names, judged.view.erased);
    const marks = boardMarks(board, judged, names);
    return { board, judged, map, names, marks, links: ownLinks, speak, tell };
  }, [judged, on, knownOn, map, people, regrade, speak, tell]);
  const apart = which.person !== undefined || which.task !== undefined;
  const view = useMemo(
    () =>
      source === undefined || apart
        ? undefined
        : crewView({ ...source, job: { needs: needs.map((task) => ({ task })) } }),
    [source, apart, needs],
  );
  const title = titleOf(which, source?.names ?? people.names, tell);
  const top = useRef<HTMLHeadingElement>(null);
  useTitleBlock(title.block, isDay(on) && opened !== undefined ? dayText(tell, on) : undefined);
  useArrival(which, source !== undefined && OwnSheet !== null, top);

  const days = (
    <div className="chosen-days">
      <TextField
        id="board-day"
        label={tell('crew.day')}
        value={day}
        onValue={setDay}
        hint={tell('crewDevice.onHint')}
        fault={isDay(on) ? undefined : tell('crew.dayBad')}
      />
      <TextField
        id="board-known"
        label={tell('crewDevice.known')}
        value={known}
        onValue={setKnown}
        hint={tell('crewDevice.knownHint')}
        fault={knownFault(knownGood, judged === undefined, tell)}
      />
    </div>
  );
  return (
    <>
      <p className="where">
        <a href={assignPage}>{tell('sheet.assign')}</a> /{' '}
        {apart ? (
          <>
            <a href="#board">{tell('crew.where')}</a> / {title.where}
          </>
        ) : (
          tell('crew.where')
        )}
      </p>
      <h1 ref={top} tabIndex={-1}>
        {title.head}
      </h1>
      {!apart && (
        <nav className="pick whose" aria-label={tell('crew.boards')}>
          <a href={demoPage}>{tell('crew.demo')}</a>
          <a href="#board" aria-current="page">
            {tell('crew.device')}
          </a>
        </nav>
      )}
      {read === undefined && !broken && <p role="status">{tell('register.reading')}</p>}
      {(broken || (read !== undefined && opened === undefined)) && (
        <NothingHere broken={broken} registerPage={registerPage} tell={tell} />
      )}
      {opened !== undefined && (
        <>
          <div className="board-controls">
            {apart ? (
              <details className="opens">
                <summary>{tell('crewDevice.otherDay')}</summary>
                {days}
              </details>
            ) : (
              days
            )}
            {view?.job !== undefined && <Job job={view.job} tell={tell} />}
            {!apart && (
              <details className="opens">
                <summary>
                  {tell('crew.choose')} <b>{needs.length}</b>
                </summary>
                <fieldset>
                  <legend className="spoken">{tell('crew.choose')}</legend>
                  <p className="hint">{tell('crew.chooseHint')}</p>
                  <TaskChoices map={map} chosen={needs} onChosen={setNeeds} speak={speak} />
                </fieldset>
              </details>
            )}
          </div>
          {view !== undefined && Board !== null && (
            <>
              <Board view={view} words={words} jobApart />
              <div className="buttons">
                <button type="button" className="button" onClick={() => print()}>
                  {tell('crewDevice.print')} <Arrow />
                </button>
              </div>
            </>
          )}
          {apart && source !== undefined && regrade !== undefined && OwnSheet !== null && (
            <OwnSheet
              key={`${which.person} ${which.task}`}
              person={which.person}
              task={which.task}
              source={source}
              opened={opened}
              regrade={regrade}
            />
          )}
        </>
      )}
    </>
  );
}

function knownFault(isDay: boolean, nothing: boolean, tell: Tell): string | undefined {
  if (!isDay) return tell('crewDevice.knownBad');
  return nothing ? tell('crewDevice.before') : undefined;
}

/** What the page is called, in its heading, in the line above it and in its title block. */
function titleOf({ person, task }: Which, names: ReadonlyMap<string, string>, tell: Tell) {
  if (person !== undefined) {
    const name = spokenName(person, names);
    return { head: name, where: tell('person.where'), block: tell('person.title', { person: name }) };
  }
  if (task !== undefined) {
    const block = tell('taskSheet.title', { task });
    return { head: block, where: tell('taskSheet.where'), block };
  }
  return { head: tell('crew.ask'), where: '', block: tell('crew.title') };
}

/** The title block was set when the site was built: what is shown is named and dated by its own. */
function useTitleBlock(title: string, dated: string | undefined): void {
  useEffect(() => {
    const block = document.getElementById('sheet-title');
    if (block !== null) block.textContent = title;
    const day = document.getElementById('sheet-dated');
    if (day !== null && dated !== undefined) day.textContent = dated;
  }, [title, dated]);
}

/** On coming to another sheet its head is read first; an entry that was asked for is gone to. */
function useArrival(
  { person, task, entry }: Which,
  ready: boolean,
  top: { readonly current: HTMLElement | null },
): void {
  const came = useRef('');
  useEffect(() => {
    const here = [person, task, entry].join(' ');
    if (!ready || came.current === here) return;
    const first = came.current === '';
    came.current = here;
    const row = entry === undefined ? null : document.getElementById(entryAnchor(entry));
    if (row !== null) row.focus();
    else if (!first || person !== undefined || task !== undefined) {
      scrollTo(0, 0);
      top.current?.focus({ preventScroll: true });
    }
  }, [person, task, entry, ready, top]);
}

function NothingHere({
  broken,
  registerPage,
  tell,
}: {
  readonly broken: boolean;
  readonly registerPage: string;
  readonly tell: Tell;
}) {
  return (
    <div className="nothing">
      <p>
        <strong>{tell(broken ? 'crew.broken' : 'register.none')}</strong>
      </p>
      <p>{tell(broken ? 'crew.brokenLine' : 'register.noneLine')}</p>
      <p>
        <a className="offer" href={registerPage}>
          {tell('witness.toRegister')}
        </a>
      </p>
    </div>
  );
}
