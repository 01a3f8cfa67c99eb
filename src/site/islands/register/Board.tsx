import type { CrewView } from '../../crew.ts';
import { teller, type WordTable } from '../../speak.ts';
import { stateKeys } from '../../states.ts';
import { BoardGrid } from './BoardGrid.tsx';
import { BoardLists } from './BoardLists.tsx';
import { Job } from './Job.tsx';
import { Mark } from './Mark.tsx';

interface Props {
  readonly view: CrewView;
  readonly words: WordTable;
  /** The answer stands elsewhere on the page. */
  readonly jobApart?: boolean;
}

/**
 * The crew board: who can take the job, the four marks, the grid, the lists, the signers. Holds no state and needs no
 * script: built into the demo's page, and drawn by the island for this device's register.
 */
export function Board({ view, words, jobApart = false }: Props) {
  const tell = teller(words);
  const sample = { shown: view.sample, 'show-again': '2', 'practice-only': '', 'not-shown': '' };
  return (
    <>
      <p className="label as-of">{view.asOf}</p>
      {view.job !== undefined && !jobApart && <Job job={view.job} tell={tell} />}
      <ul className="key" aria-label={tell('crew.key')}>
        {stateKeys.map((state) => (
          <li key={state}>
            <Mark state={state} text={sample[state]} />
            <span>
              {tell(`state.${state}`)} <small>{tell(`state.${state}Key`)}</small>
            </span>
          </li>
        ))}
      </ul>
      {view.people.length === 0 ? (
        <div className="nothing">
          <p>
            <strong>{tell('crew.none')}</strong>
          </p>
          <p>{tell('crew.noneLine')}</p>
        </div>
      ) : (
        <>
          <BoardGrid view={view} tell={tell} />
          {view.nameKey.length > 0 && (
            <ul className="name-key" aria-label={tell('crew.names')}>
              {view.nameKey.map(({ mark, name }) => (
                <li key={mark}>
                  <b>{mark}</b> {name}
                </li>
              ))}
            </ul>
          )}
          {view.countNote !== '' && <p className="note count-note">{view.countNote}</p>}
          <BoardLists view={view} tell={tell} />
        </>
      )}
      <div className="signers">
        <h2 className="view-title">{tell('crew.signers')}</h2>
        <ul>
          {view.signers.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
        {view.notes.length > 0 && (
          <>
            <h3>{tell('crew.notes')}</h3>
            <ul>
              {view.notes.map((text) => (
                <li key={text}>{text}.</li>
              ))}
            </ul>
          </>
        )}
      </div>
    </>
  );
}
