import { type ClipboardEvent, useEffect, useId, useRef, useState } from 'react';
import type { Ticks } from '../../trade/length.ts';
import type { Speak, Tell } from '../speak.ts';
import {
  fieldsOf,
  isWholeText,
  readBack,
  readFields,
  readText,
  sixteenths,
  type TapeFields,
  type TapeReading,
  type TapeScale,
  type TapeUnits,
} from '../tape.ts';
import { OnePiece } from './OnePiece.tsx';
import { Tape } from './Tape.tsx';

interface Props {
  /** What is measured; the group's name. */
  readonly legend: string;
  /** Reading shown first; `null` leaves the fields empty. */
  readonly initial: Ticks | null;
  /** Every change of what the fields read, the first included. */
  readonly onReading: (reading: TapeReading) => void;
  readonly tell: Tell;
  readonly speak: Speak;
  /** Id of words that belong to the entry besides its own messages. */
  readonly describedBy?: string | undefined;
  /** `inches` for what is short: no feet, no drawn tape, and the read-back is only spoken. */
  readonly scale?: TapeScale;
  /** Leaves the drawn tape out, where several entries stand together. */
  readonly tape?: boolean;
  /**
   * `own` where the length is the answer to a draw: only what is written is read back, with no tape and in no other unit,
   * for a tape or millimetres would give the answer away.
   */
  readonly units?: TapeUnits;
}

/**
 * The entry for a length: Feet, Inches, Part inch, the tape drawn at that reading, and what it reads in three ways.
 * A whole text pasted into Feet is taken apart into the fields. Give it a new `key` to begin anew.
 */
export function FeetInches({
  legend,
  initial,
  onReading,
  tell,
  speak,
  describedBy,
  scale = 'feet',
  units = 'any',
  tape = scale === 'feet' && units === 'any',
}: Props) {
  const id = useId();
  const [fields, setFields] = useState<TapeFields>(() => fieldsOf(initial, scale));
  const feet = useRef<HTMLInputElement>(null);
  const inches = useRef<HTMLInputElement>(null);
  const part = useRef<HTMLSelectElement>(null);

  const change = (next: TapeFields) => {
    setFields(next);
    onReading(readFields(next, scale, units));
  };
  // What was typed before script came stands in the fields but not in state; take it over.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when script takes the page over
  useEffect(() => {
    if (inches.current === null || part.current === null) return;
    change({ feet: feet.current?.value ?? '', inches: inches.current.value, part: part.current.value });
  }, []);

  const reading = readFields(fields, scale, units);
  /** Takes a whole text apart into the fields; leaves it standing, with its message, when it cannot be read. */
  const spread = (text: string) => {
    const whole = readText(text, units);
    change(whole.read === 'length' ? fieldsOf(whole.length) : { feet: text, inches: '', part: '0' });
  };
  const paste = (event: ClipboardEvent<HTMLInputElement>) => {
    const text = event.clipboardData.getData('text').trim();
    if (/^\d*$/.test(text)) return;
    event.preventDefault();
    spread(text);
  };
  const message = reading.read === 'not' ? reading.message : undefined;
  const described = [message === undefined ? `${id}-reads` : `${id}-message`, describedBy ?? '']
    .join(' ')
    .trim();
  const list = sixteenths.includes(fields.part) ? sixteenths : [...sixteenths, fields.part];

  return (
    <fieldset>
      <legend>{legend}</legend>
      <div className={`tape-entry ${scale}`}>
        {scale === 'feet' && (
          <div>
            <label htmlFor={`${id}-feet`}>{tell('entry.feet')}</label>
            <input
              ref={feet}
              id={`${id}-feet`}
              type="text"
              inputMode="numeric"
              autoComplete="off"
              value={fields.feet}
              aria-invalid={message?.field === 'feet' ? true : undefined}
              aria-describedby={described}
              onPaste={paste}
              onBlur={() => {
                if (isWholeText(fields)) spread(fields.feet);
              }}
              onChange={(event) => change({ ...fields, feet: event.currentTarget.value })}
            />
          </div>
        )}
        <div>
          <label htmlFor={`${id}-inches`}>{tell('entry.inches')}</label>
          <input
            ref={inches}
            id={`${id}-inches`}
            type="text"
            inputMode="numeric"
            autoComplete="off"
            value={fields.inches}
            aria-invalid={message?.field === 'inches' ? true : undefined}
            aria-describedby={described}
            onChange={(event) => change({ ...fields, inches: event.currentTarget.value })}
          />
        </div>
        <div>
          <label htmlFor={`${id}-part`}>{tell('entry.part')}</label>
          <select
            ref={part}
            id={`${id}-part`}
            autoComplete="off"
            value={fields.part}
            aria-describedby={described}
            onChange={(event) => change({ ...fields, part: event.currentTarget.value })}
          >
            {list.map((text) => (
              <option key={text} value={text}>
                {text}
              </option>
            ))}
          </select>
        </div>
      </div>
      {message !== undefined && (
        <p className="message" id={`${id}-message`} role="alert">
          <strong>
            <OnePiece text={tell(message.key, message.values)} />
          </strong>{' '}
          {message.offer !== undefined && (
            <button
              type="button"
              className="as-link offer"
              onClick={() => change(fieldsOf(message.offer ?? null))}
            >
              {tell('entry.takeSplit')}
            </button>
          )}
        </p>
      )}
      {tape && reading.read === 'length' && <Tape reading={reading.length} speak={speak} />}
      {message === undefined && (
        <p
          className={scale === 'inches' ? 'spoken' : reading.read === 'length' ? 'reads' : 'reads off-paper'}
          id={`${id}-reads`}
        >
          {reading.read === 'length'
            ? tell(units === 'own' ? 'entry.readsOwn' : 'entry.reads', readBack(reading.length))
            : tell('entry.readsNothing')}
        </p>
      )}
    </fieldset>
  );
}
