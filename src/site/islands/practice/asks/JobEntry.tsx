import { useRef } from 'react';
import type { Answer } from '../../../../practice/model.ts';
import { unbroken } from '../../../speak.ts';
import type { EntryProps } from './entry.ts';
import { PartEntry } from './PartEntry.tsx';

export type Parts = Readonly<Record<string, Answer>>;

/** One step of a job: its parts under its own heading, each with the entry of its kind. */
export function JobEntry({ ask, answer, onAnswer, taped, ...rest }: EntryProps<Parts>) {
  // Several parts report what they read as they come up; each builds on what the one before it has just said.
  const latest = useRef<Parts>(answer ?? {});
  const take = (part: string, value: Answer | undefined) => {
    if (latest.current[part] === value) return;
    const { [part]: _, ...others } = latest.current;
    latest.current = value === undefined ? others : { ...others, [part]: value };
    onAnswer(Object.keys(latest.current).length === 0 ? undefined : latest.current);
  };
  return (
    <fieldset className="job">
      <legend>{unbroken(ask.prompt)}</legend>
      {ask.parts?.map((part) => (
        <PartEntry
          key={part.id}
          {...rest}
          ask={part}
          answer={answer?.[part.id]}
          onAnswer={(value) => take(part.id, value)}
          taped={taped?.parts[part.id]}
        />
      ))}
    </fieldset>
  );
}
