import { type FormEvent, useState } from 'react';
import { GivenError } from '../../../../trade/given.ts';
import { saveFile } from '../../../device/files.ts';
import { peopleOnRecord } from '../../../drills/erasing.ts';
import type { Looking } from '../../../drills/looking.ts';
import { heldAbout } from '../../../heldAbout.ts';
import { Arrow } from '../../Arrow.tsx';
import { Refused } from '../../Refused.tsx';
import { useDoing } from '../Doing.tsx';

/** Everything held about one person, saved as one file: what a person may ask for. */
export function PersonHeld({ looking }: { readonly looking: Looking }) {
  const { judged, names, now, tell } = looking;
  const [person, setPerson] = useState('');
  const doing = useDoing(tell);
  const save = (event: FormEvent) => {
    event.preventDefault();
    void doing.run(async () => {
      if (person === '') {
        throw new GivenError([
          { field: 'person', message: tell('drills.pickFirst'), todo: tell('drills.pickTodo') },
        ]);
      }
      const { name, text, entries, bodies } = heldAbout(judged, person, now);
      saveFile(name, text);
      return tell('drills.heldSaved', { name, entries, bodies });
    });
  };
  return (
    <section className="act">
      <h3>{tell('drills.held')}</h3>
      <p>{tell('drills.heldLine')}</p>
      <form onSubmit={save} noValidate>
        <label htmlFor="held-person">{tell('drills.person')}</label>
        <select id="held-person" value={person} onChange={(event) => setPerson(event.currentTarget.value)}>
          <option value="">{tell('drills.choose')}</option>
          {peopleOnRecord(judged).map((id) => (
            <option key={id} value={id}>
              {names.has(id) ? tell('drills.nameId', { name: names.get(id) ?? id, id }) : id}
            </option>
          ))}
        </select>
        <Refused faults={doing.faults} tell={tell} />
        <div className="buttons">
          <button type="submit" className="button second">
            {tell('drills.heldSave')} <Arrow />
          </button>
        </div>
        <p role="status">{doing.done}</p>
      </form>
    </section>
  );
}
