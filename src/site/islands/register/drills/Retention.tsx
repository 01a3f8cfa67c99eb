import { useState } from 'react';
import { dayText } from '../../../dates.ts';
import type { Looking } from '../../../drills/looking.ts';
import { quietPeople } from '../../../drills/retention.ts';
import { spokenName } from '../../../people.ts';
import { TextField } from '../../TextField.tsx';

interface Props {
  readonly looking: Looking;
  /** Ids of the names file, who may have no entry at all. */
  readonly ids: readonly string[];
}

const MOST_MONTHS = 600;

/** Who has had no entry for so many months: for a person to decide on. */
export function Retention({ looking, ids }: Props) {
  const { judged, names, now, tell } = looking;
  const [text, setText] = useState('12');
  const months = /^\d+$/.test(text.trim()) ? Number(text.trim()) : 0;
  const good = months >= 1 && months <= MOST_MONTHS;
  const today = judged.view.dayIn(judged.view.zone, now);
  const quiet = good ? quietPeople(judged, ids, today, months) : [];
  return (
    <section className="act">
      <h3>{tell('drills.retention')}</h3>
      <p>{tell('drills.retentionLine')}</p>
      <TextField
        id="retention-months"
        label={tell('drills.months')}
        value={text}
        onValue={setText}
        inputMode="numeric"
        hint={tell('drills.monthsHint')}
        fault={good ? undefined : tell('drills.monthsBad')}
      />
      {good && quiet.length === 0 && <p role="status">{tell('drills.quietNone')}</p>}
      {quiet.length > 0 && (
        <table className="plain">
          <thead>
            <tr>
              <th scope="col">{tell('drills.quietPerson')}</th>
              <th scope="col">{tell('drills.quietLast')}</th>
              <th scope="col" className="num">
                {tell('drills.quietCount')}
              </th>
            </tr>
          </thead>
          <tbody>
            {quiet.map(({ person, last, entries }) => (
              <tr key={person}>
                <th scope="row">{spokenName(person, names)}</th>
                <td>{last === null ? tell('drills.quietNever') : dayText(tell, last)}</td>
                <td className="num">{entries}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
