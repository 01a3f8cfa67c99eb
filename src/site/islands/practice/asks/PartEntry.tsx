import type { ReactElement } from 'react';
import type { AskKind } from '../../../../practice/family.ts';
import type { Answer } from '../../../../practice/model.ts';
import { ChoiceEntry } from './ChoiceEntry.tsx';
import type { EntryProps } from './entry.ts';
import { FaultsEntry } from './FaultsEntry.tsx';
import { NumberEntry } from './NumberEntry.tsx';
import { OrderEntry } from './OrderEntry.tsx';
import { PlaceEntry } from './PlaceEntry.tsx';
import { SticksEntry } from './SticksEntry.tsx';
import { StopEntry } from './StopEntry.tsx';

export type PartKind = Exclude<AskKind, 'job'>;

/** Sound because an answer only ever comes back to the entry of the ask it was given to. */
const entries = {
  number: NumberEntry,
  choice: ChoiceEntry,
  stop: StopEntry,
  reading: ReadingEntry,
  order: OrderEntry,
  place: PlaceEntry,
  faults: FaultsEntry,
  sticks: SticksEntry,
} as unknown as Readonly<Record<PartKind, (props: EntryProps) => ReactElement>>;

/** The entry that fits the kind of an ask that stands alone, or of a part of a step. */
export function PartEntry(props: EntryProps<Answer>) {
  const Entry = entries[props.ask.kind as PartKind];
  return <Entry {...props} />;
}

/** Something read off a figure: taken as the number, or the choice, that it is. */
function ReadingEntry(props: EntryProps<number & string>) {
  return props.ask.options === undefined ? <NumberEntry {...props} /> : <ChoiceEntry {...props} />;
}
