import { useEffect, useId, useRef } from 'react';
import { unbroken } from '../../../speak.ts';
import type { EntryProps } from './entry.ts';

/** One of several; `look` is how its rows are ruled. */
export function ChoiceEntry({
  ask,
  answer,
  onAnswer,
  look = 'choice',
}: EntryProps<string> & { readonly look?: string }) {
  const id = useId();
  const group = useRef<HTMLFieldSetElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when script takes the page over
  useEffect(() => {
    const chosen = group.current?.querySelector<HTMLInputElement>('input:checked')?.value;
    if (chosen !== undefined) onAnswer(chosen);
  }, []);
  return (
    <fieldset ref={group}>
      <legend>{unbroken(ask.prompt)}</legend>
      {ask.options?.map((option) => (
        <label className={look} key={option.id}>
          <input
            type="radio"
            name={`${id}-${ask.id}`}
            value={option.id}
            checked={answer === option.id}
            onChange={() => onAnswer(option.id)}
          />
          <i />
          {option.text}
        </label>
      ))}
    </fieldset>
  );
}
