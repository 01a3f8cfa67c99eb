import type { MayView } from '../../mayView.ts';
import type { Asked } from '../../personView.ts';
import type { Tell } from '../../speak.ts';
import { EntryLinks } from './EntryLinks.tsx';

/** The answer in the largest words of the sheet, then its reasons, numbered, each with its entry. `live`: it changes as it is asked. */
export function MayAnswer({ may, live = false }: { readonly may: MayView; readonly live?: boolean }) {
  return (
    <>
      <div className="answer under" role={live ? 'status' : undefined}>
        <p className="label">{may.label}</p>
        <p className="huge">{may.word}</p>
      </div>
      <Reasons may={may} />
    </>
  );
}

function Reasons({ may }: { readonly may: MayView }) {
  return (
    <ol className="may-why">
      {may.reasons.map(({ text, entry }) => (
        <li key={text}>
          <span>
            {text.charAt(0).toUpperCase() + text.slice(1)}.{' '}
            {entry !== undefined && <EntryLinks entries={[entry]} />}
          </span>
        </li>
      ))}
    </ol>
  );
}

/** A job's questions about one person: the first answered large, the others beside it. */
export function JobAsked({ asked, tell }: { readonly asked: Asked; readonly tell: Tell }) {
  return (
    <div className="may-asked">
      <MayAnswer may={asked.first} />
      <AlsoAsked list={asked.others} job={asked.job} tell={tell} />
    </div>
  );
}

/** The same for what else is asked: the answer beside each, the reasons on opening. */
function AlsoAsked({
  list,
  job,
  tell,
}: {
  readonly list: readonly MayView[];
  readonly job: string;
  readonly tell: Tell;
}) {
  if (list.length === 0) return null;
  return (
    <div className="may-also">
      <h3>{tell('person.also', { job })}</h3>
      {list.map((may) => (
        <details className="opens" key={may.label}>
          <summary>
            <span>{may.way}</span> <b>{may.word}</b>
          </summary>
          <div>
            <Reasons may={may} />
          </div>
        </details>
      ))}
    </div>
  );
}
