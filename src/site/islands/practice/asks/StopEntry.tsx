import { ChoiceEntry } from './ChoiceEntry.tsx';
import type { EntryProps } from './entry.ts';

/** Go on, ask first, stop the job: three large ruled choices, as heavy as each other. */
export const StopEntry = (props: EntryProps<string>) => <ChoiceEntry {...props} look="choice large" />;
