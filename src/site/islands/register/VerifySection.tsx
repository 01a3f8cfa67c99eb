import type { Judged } from '../../../register/judged.ts';
import { dayText } from '../../dates.ts';
import type { Names } from '../../people.ts';
import { spokenName } from '../../people.ts';
import { problemRows } from '../../registerWords.ts';
import { shortKey } from '../../shortKey.ts';
import type { Speak, Tell } from '../../speak.ts';

interface Props {
  readonly judged: Judged;
  readonly names: Names;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** What does not hold with what to do, and how far each signer is known. */
export function VerifySection({ judged, names, speak, tell }: Props) {
  const rows = problemRows(judged.problems, speak, tell);
  return (
    <section>
      <h2 className="view-title">{tell('register.verify')}</h2>
      {rows.length === 0 ? (
        <p>{tell('register.verifyNone')}</p>
      ) : (
        <ul className="sources">
          {rows.map(({ at, what, todo, settled }) => (
            <li key={`${at} ${what}`}>
              <p>
                <strong>{what}</strong>
                {settled && ` (${tell('register.settled')})`}
              </p>
              {todo !== '' && <p>{todo}</p>}
              <p className="note wrap-id">{at}</p>
            </li>
          ))}
        </ul>
      )}
      <h3>{tell('register.signers')}</h3>
      <table className="plain">
        <thead>
          <tr>
            <th scope="col">{tell('register.signer')}</th>
            <th scope="col">{tell('register.deviceHead')}</th>
            <th scope="col" className="num">
              {tell('register.last')}
            </th>
            <th scope="col">{tell('register.at')}</th>
          </tr>
        </thead>
        <tbody>
          {judged.signers.map(({ id, device, person, last, at }) => (
            <tr key={`${id}.${device}`}>
              <th scope="row">{person === null ? shortKey(id) : spokenName(person, names)}</th>
              <td className="wrap-id">{device}</td>
              <td className="num">{last}</td>
              <td>{dayText(tell, judged.view.dayIn(judged.view.zone, Date.parse(at)))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
