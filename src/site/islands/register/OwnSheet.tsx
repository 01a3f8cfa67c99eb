import { useState } from 'react';
import type { Regrade } from '../../../register/checks.ts';
import { personFile } from '../../../register/person.ts';
import type { CrewSource } from '../../crewLines.ts';
import { saveFile } from '../../device/files.ts';
import { personView } from '../../personView.ts';
import { taskView } from '../../taskView.ts';
import { Arrow } from '../Arrow.tsx';
import { MayForm } from './MayForm.tsx';
import { PersonSheet } from './PersonSheet.tsx';
import { TaskSheet } from './TaskSheet.tsx';

interface Props {
  readonly person: string | undefined;
  readonly task: string | undefined;
  readonly source: CrewSource;
  readonly regrade: Regrade;
}

/** The sheet of one person or one task of this device's register. Loaded when one is asked for. */
export function OwnSheet({ person, task, source, regrade }: Props) {
  const { tell } = source;
  if (person !== undefined) {
    const view = personView(source, person);
    if (view === undefined) {
      return <Unknown title={tell('person.unknown', { person })} line={tell('person.unknownLine')} />;
    }
    return (
      <PersonSheet
        view={view}
        tell={tell}
        asked={<MayForm source={source} person={person} regrade={regrade} />}
        acts={<PersonActs source={source} person={person} name={view.name} />}
      />
    );
  }
  const view = taskView(source, { task: task ?? '' });
  return view === undefined ? (
    <Unknown title={tell('taskSheet.unknown', { task: task ?? '' })} line={tell('person.unknownLine')} />
  ) : (
    <TaskSheet view={view} tell={tell} acts={<Print source={source} />} />
  );
}

function Unknown({ title, line }: { readonly title: string; readonly line: string }) {
  return (
    <div className="nothing">
      <p>
        <strong>{title}</strong>
      </p>
      <p>{line}</p>
    </div>
  );
}

function Print({ source: { tell } }: Pick<Props, 'source'>) {
  return (
    <div className="buttons">
      <button type="button" className="button" onClick={() => print()}>
        {tell('person.print')} <Arrow />
      </button>
    </div>
  );
}

function PersonActs({
  source,
  person,
  name,
}: Pick<Props, 'source'> & { readonly person: string; readonly name: string }) {
  const { judged, tell } = source;
  const [took, setTook] = useState('');
  const takeOut = () => {
    const file = `everything-${person}.json`;
    saveFile(file, `${JSON.stringify(personFile(judged, person), null, 2)}\n`);
    setTook(tell('person.tookOut', { name: file }));
  };
  return (
    <>
      <div className="buttons">
        <button type="button" className="button" onClick={() => print()}>
          {tell('person.print')} <Arrow />
        </button>
        <button type="button" className="button second" onClick={takeOut}>
          {tell('person.takeOut')} <Arrow />
        </button>
      </div>
      <p className="note off-paper">{tell('person.takeOutLine', { person: name })}</p>
      <p className="status-line off-paper" role="status">
        {took}
      </p>
    </>
  );
}
