import type { Answer } from '../../../../practice/model.ts';
import type { EntryProps } from './entry.ts';
import { JobEntry, type Parts } from './JobEntry.tsx';
import { PartEntry } from './PartEntry.tsx';

/** The entry that fits the kind of an ask. Sound because an answer only ever comes back to the ask it was given to. */
export function AskEntry(props: EntryProps<Answer>) {
  return props.ask.kind === 'job' ? (
    <JobEntry {...(props as unknown as EntryProps<Parts>)} />
  ) : (
    <PartEntry {...props} />
  );
}
