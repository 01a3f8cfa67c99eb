import { byState, type CrewCell, type CrewPerson, type CrewTask, type CrewView } from '../../crew.ts';
import type { Tell } from '../../speak.ts';
import { EntryLinks } from './EntryLinks.tsx';
import { Mark } from './Mark.tsx';

interface Props {
  readonly view: CrewView;
  readonly tell: Tell;
}

/** The same as lists: choose a task, or choose a person. Rows that open, no script. */
export function BoardLists({ view, tell }: Props) {
  return (
    <div className="board-lists">
      <nav className="pick" aria-label={tell('crew.pick')}>
        <a href="#by-task">{tell('crew.byTask')}</a>
        <a href="#by-person">{tell('crew.byPerson')}</a>
      </nav>
      <section id="by-task">
        <h2 className="view-title">{tell('crew.byTask')}</h2>
        {view.tasks.map((task) => (
          <OneTask key={task.id} task={task} view={view} tell={tell} />
        ))}
      </section>
      <section id="by-person">
        <h2 className="view-title">{tell('crew.byPerson')}</h2>
        {view.people.map((person) => (
          <OnePerson key={person.id} person={person} view={view} tell={tell} />
        ))}
        {view.erased.length > 0 && (
          <p className="erased">
            {tell('crew.erasedList')}{' '}
            {view.erased.map(({ id, href }) => (
              <a className="offer" key={id} href={href}>
                {id}
              </a>
            ))}
          </p>
        )}
      </section>
    </div>
  );
}

function OneTask({ task, view, tell }: Props & { readonly task: CrewTask }) {
  const people = view.people.map((person) => ({ person, cell: view.cell(task.id, person.id) }));
  return (
    <details className={`opens${task.needed ? ' needed' : ''}`}>
      <summary>
        <span>
          {task.id} {task.name}
        </span>
        <b>{task.count}</b>
      </summary>
      <div id={`task-${task.id}`}>
        <p>
          <a className="offer" href={task.href}>
            {tell('taskSheet.sheet')}
          </a>
        </p>
        {byState(people).map(({ state, list }) => (
          <div key={state}>
            <h3>
              {tell(`state.${state}`)} <span>{list.length}</span>
            </h3>
            <ul>
              {list.map(({ person, cell }) => (
                <li key={person.id}>
                  <a className="board-row" href={`#${cell.anchor}`}>
                    <b>{person.short}</b>
                    {person.name === person.short ? (
                      <span>{cell.line}</span>
                    ) : (
                      <span>
                        {person.name}
                        <small>{cell.line}</small>
                      </span>
                    )}
                    <Mark state={cell.state} text={cell.mark} />
                  </a>
                </li>
              ))}
            </ul>
          </div>
        ))}
      </div>
    </details>
  );
}

function OnePerson({ person, view, tell }: Props & { readonly person: CrewPerson }) {
  const tasks = view.tasks.map((task) => ({ task, cell: view.cell(task.id, person.id) }));
  return (
    <details className="opens">
      <summary>
        <span>{person.short === person.name ? person.name : `${person.short} ${person.name}`}</span>
        <b>{person.count}</b>
      </summary>
      <div>
        <p>
          <a className="offer" href={person.href}>
            {tell('person.sheetOf', { person: person.name })}
          </a>
        </p>
        {person.tickets !== '' && <p className="note">{person.tickets}</p>}
        {byState(tasks).map(({ state, list }) => (
          <div key={state}>
            <h3>
              {tell(`state.${state}`)} <span>{list.length}</span>
            </h3>
            <ul>
              {list.map(({ task, cell }) => (
                <li key={task.id}>
                  <Reasons task={task} cell={cell} />
                </li>
              ))}
            </ul>
          </div>
        ))}
      </div>
    </details>
  );
}

/** One person in one task, with the reasons and the entries behind it. The place that a grid's cell leads to. */
function Reasons({ task, cell }: { readonly task: CrewTask; readonly cell: CrewCell }) {
  return (
    <div className="board-reasons" id={cell.anchor}>
      <div className="board-row">
        <b>{task.id}</b>
        <span>
          {task.name}
          <small>{cell.line}</small>
        </span>
        <Mark state={cell.state} text={cell.mark} />
      </div>
      {cell.ways.length > 0 && (
        <ul className="reasons">
          {cell.ways.map(({ text, entries }) => (
            <li key={text}>
              {text}. <EntryLinks entries={entries} />
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
