import type { EntryLink } from '../../crewLines.ts';

/** Entries by the beginnings of their ids, each leading to the entry itself where it is here. */
export function EntryLinks({ entries }: { readonly entries: readonly EntryLink[] }) {
  return (
    <span className="entry-links">
      {entries.map(({ short, href }) =>
        href === undefined ? (
          <span key={short}>{short}</span>
        ) : (
          <a key={short} href={href}>
            {short}
          </a>
        ),
      )}
    </span>
  );
}
