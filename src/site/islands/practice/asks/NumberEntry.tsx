import { useEffect, useId, useRef, useState } from 'react';
import { fromInches, inches } from '../../../../trade/length.ts';
import { readNumber } from '../../../practice.ts';
import { type SiteKey, unbroken } from '../../../speak.ts';
import type { TapeReading } from '../../../tape.ts';
import { FeetInches } from '../../FeetInches.tsx';
import type { EntryProps } from './entry.ts';

/** A length in feet, inches and part inch; any other unit as a plain number. */
export function NumberEntry(props: EntryProps<number>) {
  return props.ask.unit === 'in' ? <LengthEntry {...props} /> : <PlainEntry {...props} />;
}

function LengthEntry({ ask, answer, onAnswer, tell, speak }: EntryProps<number>) {
  const [first] = useState(answer);
  const read = (reading: TapeReading) =>
    onAnswer(reading.read === 'length' ? inches(reading.length) : undefined);
  return (
    <FeetInches
      legend={unbroken(ask.prompt)}
      initial={typeof first === 'number' ? fromInches(first) : null}
      onReading={read}
      units="own"
      tell={tell}
      speak={speak}
    />
  );
}

function PlainEntry({ ask, answer, onAnswer, tell }: EntryProps<number>) {
  const id = useId();
  const box = useRef<HTMLInputElement>(null);
  const [text, setText] = useState(typeof answer === 'number' ? String(answer) : '');
  const unit = ask.unit === undefined ? '' : tell(`unit.${ask.unit}` as SiteKey);
  const change = (next: string) => {
    setText(next);
    onAnswer(readNumber(next, ask.unit) ?? undefined);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when script takes the page over
  useEffect(() => {
    if (box.current !== null && box.current.value !== '') change(box.current.value);
  }, []);
  const bad = readNumber(text, ask.unit) === undefined;
  return (
    <fieldset>
      <legend>{unbroken(ask.prompt)}</legend>
      <div className="number-entry">
        <label htmlFor={id}>
          {ask.unit === 'count' ? tell('asks.number') : tell('practicePage.inUnit', { unit })}
        </label>
        <input
          ref={box}
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={text}
          aria-invalid={bad ? true : undefined}
          aria-describedby={`${id}-message`}
          onChange={(event) => change(event.currentTarget.value)}
        />
      </div>
      <p className="message" id={`${id}-message`}>
        {bad && (
          <strong>{tell(text.includes(',') ? 'practicePage.numberComma' : 'practicePage.numberNot')}</strong>
        )}
      </p>
    </fieldset>
  );
}
