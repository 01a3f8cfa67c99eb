import type { CrewView } from '../../crew.ts';
import type { Tell } from '../../speak.ts';
import { Mark } from './Mark.tsx';

/** Tasks down, people across: desk and paper. Each cell leads to its reasons and says itself in words. */
export function BoardGrid({ view, tell }: { readonly view: CrewView; readonly tell: Tell }) {
  const crowded = view.people.length > 16 ? ' crowded' : '';
  return (
    <div className={`board-grid${crowded}`}>
      <table>
        <caption className="spoken">{tell('crew.grid')}</caption>
        <thead>
          <tr>
            <th scope="col">{tell('crew.task')}</th>
            {view.people.map(({ id, short, name, href }) => (
              <th scope="col" key={id}>
                <a className="person-link" href={href}>
                  <span aria-hidden="true">{short}</span>
                  <span className="spoken">{name}</span>
                </a>
              </th>
            ))}
            <th scope="col">{tell('crew.count')}</th>
          </tr>
        </thead>
        <tbody>
          {view.tasks.map((task) => (
            <tr
              key={task.id}
              className={[task.needed ? 'needed' : '', task.part ? 'part' : ''].join(' ').trim()}
            >
              <th scope="row">
                <a className="task-link" href={`#task-${task.id}`}>
                  <i>{task.id}</i> {task.name}
                </a>
              </th>
              {view.people.map(({ id }) => {
                const cell = view.cell(task.id, id);
                return (
                  <td key={id}>
                    <a className="cell-link" href={`#${cell.anchor}`}>
                      <Mark state={cell.state} text={cell.mark} />
                      <span className="spoken">{cell.spoken}</span>
                    </a>
                  </td>
                );
              })}
              <td className="num">{task.count}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
