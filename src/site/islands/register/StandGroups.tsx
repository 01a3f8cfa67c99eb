import type { ReactNode } from 'react';
import type { Tell } from '../../speak.ts';
import type { StandGroup, StandRow } from '../../standRows.ts';
import type { Way } from '../../ways.ts';
import { shortWay } from '../../ways.ts';
import { EntryLinks } from './EntryLinks.tsx';
import { Mark } from './Mark.tsx';

interface Props {
  readonly groups: readonly StandGroup[];
  /** Heading of the second column: tasks or people. */
  readonly of: string;
  /** What stands in a group without rows. */
  readonly none: (group: StandGroup) => string;
  readonly tell: Tell;
}

/** The four groups in their order, each a list of rows that read as a table on the desk and on paper. */
export function StandGroups({ groups, of, none, tell }: Props) {
  return groups.map((group) => (
    <section className="stand-group" key={group.state}>
      <h2 className="view-title">
        {tell(`state.${group.state}`)} <span className="label">{group.count}</span>
      </h2>
      {group.rows.length === 0 ? (
        <p className="nothing">{none(group)}</p>
      ) : (
        <ul className="stands">
          <li className="stands-head" aria-hidden="true">
            <span />
            <span>{of}</span>
            <span>{tell('standing.ways')}</span>
            <span>{tell('standing.by')}</span>
            <span>{tell('standing.seen')}</span>
            <span>{tell('standing.until')}</span>
          </li>
          {group.rows.map((row) => (
            <Row key={row.anchor} row={row} tell={tell} />
          ))}
        </ul>
      )}
    </section>
  ));
}

function Row({ row, tell }: { readonly row: StandRow; readonly tell: Tell }) {
  const { lowest, others, anchor, code, name, href } = row;
  return (
    <li className="stand" id={anchor}>
      <Mark state={lowest.state} text={lowest.mark} />
      <a className="stand-name" href={href}>
        <span>
          <b>{code}</b> {name === code ? '' : name}
        </span>
      </a>
      <div className="stand-ways">
        <WayLine way={lowest} tell={tell} />
        {others.map((way) => (
          <p key={way.name}>
            <Reason strong={way.state === 'show-again'}>
              {tell('standing.reason', { reason: shortWay({ tell }, way) })}
            </Reason>{' '}
            <EntryLinks entries={way.entries} />
          </p>
        ))}
      </div>
      <span className="stand-by">
        {lowest.by !== '' && (
          <>
            <span className="spoken">{tell('standing.byWitness', { witness: lowest.byName })}</span>
            <span aria-hidden="true">{lowest.by}</span>
          </>
        )}
      </span>
      <span className="stand-seen">
        {lowest.seen !== '' && (
          <Day long={tell('standing.seenShort', { day: lowest.short.seen })} day={lowest.short.seen} />
        )}
      </span>
      <span className="stand-until">
        {lowest.until !== '' && (
          <Day long={tell('standing.untilShort', { day: lowest.short.until })} day={lowest.short.until} />
        )}
      </span>
    </li>
  );
}

/** Under a heading the day alone; in a list with its word. */
function Day({ long, day }: { readonly long: string; readonly day: string }) {
  return (
    <>
      <span className="in-list">{long}</span>
      <span className="in-table" aria-hidden="true">
        {day}
      </span>
    </>
  );
}

/** The way that a row stands as: its name, what speaks against it, the entries it rests on. */
function WayLine({ way, tell }: { readonly way: Way; readonly tell: Tell }) {
  const end = (text: string) => tell('standing.reason', { reason: text });
  const since = way.since === '' ? '' : tell('standing.since', { day: way.since });
  const why = [...way.why, since].filter((text) => text !== '').join(', ');
  return (
    <p>
      {way.name !== '' && `${end(capital(way.name))} `}
      {why !== '' && <Reason strong={way.state === 'show-again'}>{end(capital(why))} </Reason>}
      <EntryLinks entries={way.entries} />
    </p>
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What speaks against a showing stands out. */
function Reason({ strong, children }: { readonly strong: boolean; readonly children: ReactNode }) {
  return strong ? <strong>{children}</strong> : children;
}
