import { useEffect, useMemo, useState } from 'react';
import { boardOf } from '../../../register/board.ts';
import { isDay } from '../../../register/days.ts';
import type { TaskMap } from '../../../register/taskMap.ts';
import { regradeWith } from '../../../schema/regrade.ts';
import { crewView } from '../../crew.ts';
import { dayText } from '../../dates.ts';
import { namesText, type Opened, ownRegister } from '../../device/register.ts';
import { keptPeople, nobody } from '../../people.ts';
import { speaker, teller, type WordTable } from '../../speak.ts';
import { Board } from './Board.tsx';
import { Job } from './Job.tsx';
import { TaskChoices } from './TaskChoices.tsx';
import { type PracticeGiven, usePractice } from './usePractice.ts';

interface Props extends PracticeGiven {
  readonly lang: string;
  readonly words: WordTable;
  readonly map: TaskMap;
  /** Address of the register's page. */
  readonly registerPage: string;
}

type State =
  | { readonly is: 'reading' | 'none' | 'broken' }
  | { readonly is: 'here'; readonly opened: Opened };

/** The crew board of this device's register, on a day of one's choosing, for the tasks that a job needs. */
export default function DeviceBoard({ lang, words, map, sheets, families, world, registerPage }: Props) {
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const [state, setState] = useState<State>({ is: 'reading' });
  const [people, setPeople] = useState(nobody);
  const [day, setDay] = useState('');
  const [needs, setNeeds] = useState<readonly string[]>([]);
  useEffect(() => {
    const open = async () => {
      const opened = await ownRegister();
      setPeople(keptPeople(await namesText()));
      if (opened === undefined) return setState({ is: 'none' });
      const { view } = opened.judged;
      setDay(view.dayIn(view.zone, opened.at));
      setState({ is: 'here', opened });
    };
    open().catch(() => setState({ is: 'broken' }));
  }, []);

  const practice = usePractice({ sheets, families, world });
  const regrade = useMemo(
    () => regradeWith(() => ({ practice, language: { lang, speak } })),
    [practice, lang, speak],
  );
  const on = day.trim();
  const view = useMemo(() => {
    if (state.is !== 'here' || !isDay(on)) return undefined;
    const { judged } = state.opened;
    const board = boardOf(judged, { on, map, people: people.ids, regrade });
    const job = { needs: needs.map((task) => ({ task })) };
    return crewView({ board, judged, map, names: people.names, job, speak, tell });
  }, [state, on, map, people, regrade, needs, speak, tell]);

  // The title block was set when the site was built: a board is dated by its own day.
  useEffect(() => {
    const dated = document.getElementById('sheet-dated');
    if (dated !== null && state.is === 'here' && isDay(on)) dated.textContent = dayText(tell, on);
  }, [state, on, tell]);

  if (state.is === 'reading') return <p role="status">{tell('register.reading')}</p>;
  if (state.is !== 'here') {
    const broken = state.is === 'broken';
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
  return (
    <>
      <div className="board-controls">
        <div className="chosen-day">
          <label htmlFor="board-day">{tell('crew.day')}</label>
          <input
            id="board-day"
            type="text"
            autoComplete="off"
            value={day}
            aria-invalid={isDay(on) ? undefined : true}
            aria-describedby="board-day-message"
            onChange={(event) => setDay(event.currentTarget.value)}
          />
          <p className="message" id="board-day-message" role="status">
            {!isDay(on) && <strong>{tell('crew.dayBad')}</strong>}
          </p>
        </div>
        {view?.job !== undefined && <Job job={view.job} tell={tell} />}
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
      </div>
      {view !== undefined && <Board view={view} words={words} jobApart />}
    </>
  );
}
