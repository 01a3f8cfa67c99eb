import type { ReactNode } from 'react';
import type { Tell } from '../../speak.ts';
import type { TaskView } from '../../taskView.ts';
import { Heard } from './PersonSheet.tsx';
import { StandGroups } from './StandGroups.tsx';

interface Props {
  readonly view: TaskView;
  readonly tell: Tell;
  readonly acts?: ReactNode;
}

/** One task: who stands where in it, what it asks for, its revisions. Needs no script. */
export function TaskSheet({ view, tell, acts }: Props) {
  return (
    <>
      <p className="label as-of">{view.asOf}</p>
      <div className="person-sheet">
        <section className="person-asked">
          <h2 className="view-title">{tell('taskSheet.facts')}</h2>
          <dl className="task-facts">
            {view.facts.map(({ name, lines }) => (
              <div key={name}>
                <dt>{name}</dt>
                {lines.map((text) => (
                  <dd key={text}>{text}</dd>
                ))}
              </div>
            ))}
          </dl>
          <table className="revisions">
            <caption className="spoken">{tell('taskSheet.revisions')}</caption>
            <thead>
              <tr>
                <th scope="col">{tell('taskSheet.revision')}</th>
                <th scope="col">{tell('taskSheet.inForce')}</th>
                <th scope="col">{tell('taskSheet.again')}</th>
              </tr>
            </thead>
            <tbody>
              {view.revisions.map(({ n, on, again }) => (
                <tr key={n}>
                  <th scope="row">{n}</th>
                  <td>{on}</td>
                  <td>{again}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        <div className="person-stands">
          <StandGroups
            groups={view.groups}
            of={tell('standing.person')}
            none={() => tell('taskSheet.none')}
            tell={tell}
          />
        </div>
      </div>
      <Heard signers={view.signers} holds={[]} tell={tell} />
      {acts}
    </>
  );
}
