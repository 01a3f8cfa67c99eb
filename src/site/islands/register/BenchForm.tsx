import { useMemo, useState } from 'react';
import { MOST_BENCHES, type Practice, type SetFile } from '../../../practice/sheet.ts';
import type { OpenSheetFile } from '../../../practice/sheetFiles.ts';
import { readSheetForm, sheetForm } from '../../../practice/sheetForm.ts';
import { personId } from '../../../register/shapes.ts';
import type { Speak, Tell } from '../../speak.ts';
import { tried } from '../../tried.ts';
import { wholeIn } from '../../whole.ts';
import { Arrow } from '../Arrow.tsx';
import { Refused } from '../Refused.tsx';
import { TextField } from '../TextField.tsx';

interface Props {
  readonly file: OpenSheetFile;
  readonly practice: Practice;
  readonly onSet: (set: SetFile) => Promise<void>;
  readonly onAway: () => void;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** A sheet for whoever has it: bench and person make it a set one. */
export function BenchForm({ file, practice, onSet, onAway, speak, tell }: Props) {
  const [benchText, setBench] = useState('');
  const [person, setPerson] = useState('');
  const [chosen, setChosen] = useState('');
  const [asked, setAsked] = useState(false);
  const read = useMemo(() => tried(() => readSheetForm(file.of, practice)), [file, practice]);
  if (!read.good)
    return (
      <>
        <Refused faults={read.faults} tell={tell} />
        <p className="way">
          <button type="button" className="as-link offer" onClick={onAway}>
            {tell('answerPage.away')}
          </button>
        </p>
      </>
    );
  const { id: sheet, number, tasks } = read.value;
  const bench = wholeIn(benchText, MOST_BENCHES);
  const badPerson = personId(person.trim()) !== undefined;
  const task = tasks.includes(chosen) ? chosen : (tasks[0] ?? '');
  // A sheet of the works is known here by its id; one made on a page goes along whole, and so does one that only bears
  // the name of another.
  const known = practice.sheets.get(sheet);
  const isKnown =
    known !== undefined && JSON.stringify(sheetForm(known)) === JSON.stringify(sheetForm(read.value));
  const own = isKnown ? {} : { of: file.of };
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        setAsked(true);
        if (bench === undefined || badPerson) return;
        void onSet({ v: 1, kind: 'set', sheet, bench, person: person.trim(), task, ...own });
      }}
    >
      <section className="answer" role="status">
        <p className="huge">{tell('answerPage.open-sheet', { number })}</p>
      </section>
      <TextField
        id="open-bench"
        label={tell('setPage.bench')}
        value={benchText}
        onValue={setBench}
        hint={tell('answerPage.benchHint')}
        fault={asked && bench === undefined ? tell('setPage.badBench') : undefined}
        inputMode="numeric"
      />
      <TextField
        id="open-person"
        label={tell('answerPage.person')}
        value={person}
        onValue={setPerson}
        hint={tell('setPage.personHint')}
        fault={asked && badPerson ? tell('setPage.badPerson') : undefined}
        autoCapitalize="none"
      />
      {tasks.length > 1 && (
        <>
          <label htmlFor="open-task">{tell('setPage.task')}</label>
          <select id="open-task" value={task} onChange={(event) => setChosen(event.currentTarget.value)}>
            {tasks.map((one) => (
              <option key={one} value={one}>
                {tell('setPage.taskOption', { id: one, name: speak({ say: `${one}.name` }) })}
              </option>
            ))}
          </select>
        </>
      )}
      <div className="buttons">
        <button className="button" type="submit">
          {tell('answerPage.toSheet')} <Arrow />
        </button>
      </div>
      <p className="way">
        <button type="button" className="as-link offer" onClick={onAway}>
          {tell('answerPage.away')}
        </button>
      </p>
    </form>
  );
}
