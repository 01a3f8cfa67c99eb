import { useState } from 'react';
import type { Regrade } from '../../../register/checks.ts';
import type { CrewSource } from '../../crewLines.ts';
import { saveFile } from '../../device/files.ts';
import type { Opened } from '../../device/register.ts';
import { heldAbout } from '../../heldAbout.ts';
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
  /** The register as it is known now, whatever day the sheet is of. */
  readonly opened: Opened;
  readonly regrade: Regrade;
}

/** The sheet of one person or one task of this device's register. Loaded when one is asked for. */
export function OwnSheet({ person, task, source, opened, regrade }: Props) {
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
        acts={<PersonActs source={source} opened={opened} person={person} name={view.name} />}
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

/** The sheet with every entry, and what was signed in each: opened for paper, and shut again after it. */
function printAll() {
  const entries = document.querySelector('.person-entries');
  if (entries === null) return;
  const shut = [...entries.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
  for (const one of shut) one.open = true;
  entries.classList.add('on-paper');
  addEventListener(
    'afterprint',
    () => {
      entries.classList.remove('on-paper');
      for (const one of shut) one.open = false;
    },
    { once: true },
  );
  print();
}

function PersonActs({
  source: { tell },
  opened,
  person,
  name,
}: Pick<Props, 'source' | 'opened'> & { readonly person: string; readonly name: string }) {
  const [took, setTook] = useState('');
  const takeOut = () => {
    const file = heldAbout(opened.judged, person, opened.at);
    saveFile(file.name, file.text);
    setTook(tell('person.tookOut', { name: file.name }));
  };
  return (
    <>
      <div className="buttons">
        <button type="button" className="button" onClick={() => print()}>
          {tell('person.print')} <Arrow />
        </button>
        <button type="button" className="button second" onClick={printAll}>
          {tell('person.printAll')} <Arrow />
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
