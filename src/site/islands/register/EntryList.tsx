import type { EntryRow } from '../../entryRows.ts';
import type { Tell } from '../../speak.ts';

interface Props {
  readonly entries: readonly EntryRow[];
  readonly tell: Tell;
}

/** Entries, the last first: id, seen, entered, by, what; each opens to all that was signed. */
export function EntryList({ entries, tell }: Props) {
  return (
    <ul className="entry-list">
      <li className="entry-head" aria-hidden="true">
        <span>{tell('entryRow.entry')}</span>
        <span>{tell('entryRow.seen')}</span>
        <span>{tell('entryRow.entered')}</span>
        <span>{tell('entryRow.by')}</span>
        <span>{tell('entryRow.what')}</span>
      </li>
      {entries.map((entry) => (
        <li className="entry-row" id={entry.anchor} key={entry.id} tabIndex={-1}>
          <b>{entry.short}</b>
          <span className="entry-seen">
            {entry.seen !== '' && (
              <>
                <span className="in-list">{tell('standing.seenShort', { day: entry.seen })}</span>
                <span className="in-table" aria-hidden="true">
                  {entry.seen}
                </span>
              </>
            )}
          </span>
          <span className="entry-entered">
            <span className="in-list">{tell('entryRow.enteredOn', { day: entry.entered })}</span>
            <span className="in-table" aria-hidden="true">
              {entry.entered}
            </span>
          </span>
          <span className="entry-by">
            <span className="spoken">{entry.byName}</span>
            <span aria-hidden="true">{entry.by}</span>
          </span>
          <span className="entry-what">{entry.what}</span>
          <details className="opens">
            <summary>
              {tell('entryRow.open')}
              <span className="spoken"> {entry.short}</span>
            </summary>
            <div>
              {[...entry.holds, ...entry.facts].map((text, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: lines of text, and two may be alike
                <p key={i}>{text}</p>
              ))}
              {entry.lists.map(({ name, lines }) => (
                <div key={name}>
                  <h3>{name}</h3>
                  <ul>
                    {lines.map((text, i) => (
                      // biome-ignore lint/suspicious/noArrayIndexKey: as above
                      <li key={i}>{text}</li>
                    ))}
                  </ul>
                </div>
              ))}
              <p className="note wrap-id">{entry.full}</p>
            </div>
          </details>
        </li>
      ))}
    </ul>
  );
}
