import type { ReactNode } from 'react';
import type { PersonView } from '../../personView.ts';
import type { Tell } from '../../speak.ts';
import { EntryLinks } from './EntryLinks.tsx';
import { EntryList } from './EntryList.tsx';
import { StandGroups } from './StandGroups.tsx';

interface Props {
  readonly view: PersonView;
  readonly tell: Tell;
  /** What is asked about this person, and the answer: first on the phone and on paper, at the right on the desk. */
  readonly asked: ReactNode;
  /** What can be done with the sheet on a device. */
  readonly acts?: ReactNode;
}

/** One person: the question, the four groups, tickets, entries, how far signers are known. Needs no script. */
export function PersonSheet({ view, tell, asked, acts }: Props) {
  return (
    <>
      <p className="label as-of">{view.asOf}</p>
      {view.erased !== '' && <p className="nothing">{view.erased}</p>}
      {view.erased === '' && <Stands view={view} tell={tell} asked={asked} />}
      <section className="person-entries">
        <h2 className="view-title">
          {tell('entryRow.behind', { person: view.name })}{' '}
          <span className="label">{view.entries.length}</span>
        </h2>
        {view.entries.length === 0 ? (
          <p className="nothing">{tell('entryRow.none')}</p>
        ) : (
          <EntryList entries={view.entries} tell={tell} />
        )}
      </section>
      <Heard signers={view.signers} holds={view.holds} tell={tell} />
      {acts}
    </>
  );
}

/** The question, the four groups, tickets: nothing of it is left of somebody who was erased. */
function Stands({ view, tell, asked }: Omit<Props, 'acts'>) {
  return (
    <div className="person-sheet">
      <section className="person-asked">
        <h2 className="view-title">{tell('person.may', { person: view.name })}</h2>
        {asked}
        <p className="note off-paper">{tell('person.note')}</p>
      </section>
      <div className="person-stands">
        <StandGroups
          groups={view.groups}
          of={tell('standing.task')}
          none={({ state }) => tell(`person.none-${state}`)}
          tell={tell}
        />
        {view.countNote !== '' && <p className="note off-paper">{view.countNote}</p>}
        <Tickets view={view} tell={tell} />
        {view.signed !== '' && (
          <section>
            <h2 className="view-title">{tell('person.signed')}</h2>
            <p>{view.signed}</p>
          </section>
        )}
      </div>
    </div>
  );
}

function Tickets({ view, tell }: { readonly view: PersonView; readonly tell: Tell }) {
  return (
    <section className="tickets">
      <h2 className="view-title">
        {tell('person.tickets')} <span className="label">{tell('person.ticketsNote')}</span>
      </h2>
      {view.tickets.length === 0 ? (
        <p className="nothing">{tell('person.ticketsNone')}</p>
      ) : (
        <ul className="ticket-list">
          {view.tickets.map(({ ticket, name, issuer, until, past, entry }) => (
            <li key={ticket}>
              <span>
                <b>{ticket}</b> {name}
              </span>
              <span>{issuer}</span>
              <span>
                {tell('crew.goodTo', { day: until })}
                {past !== '' && <strong>, {past}</strong>}
              </span>
              <EntryLinks entries={[entry]} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** How far each signer is known, and whether what is here holds. */
export function Heard({
  signers,
  holds,
  tell,
}: {
  readonly signers: readonly string[];
  readonly holds: readonly string[];
  readonly tell: Tell;
}) {
  return (
    <section className="heard">
      <h2 className="view-title">{tell('entryRow.heard')}</h2>
      <ul>
        {[...signers, ...holds].map((text, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines of text, and two may be alike
          <li key={i}>{text}</li>
        ))}
      </ul>
    </section>
  );
}
