import type { ReactNode } from 'react';
import type { ChoiceField, PlainField, Written } from '../../calculators/fields.ts';
import { type Message, textOf } from '../../calculators/form.ts';
import { measure, measureText } from '../../calculators/measure.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { FeetInches } from '../FeetInches.tsx';
import { OnePiece } from '../OnePiece.tsx';

export interface EntryProps<F> {
  readonly field: F;
  /** Name in the form, and the beginning of every id of the entry. */
  readonly name: string;
  readonly written: Written | undefined;
  readonly onWritten: (written: Written) => void;
  /** What is wrong with what stands in it. */
  readonly message: Message | undefined;
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** One entry of a sum: its label above, the entry, what it reads or what is wrong with it below. */
export function Entry(props: EntryProps<PlainField>) {
  const { field } = props;
  if (field.kind === 'length') return <LengthEntry {...props} field={field} />;
  if (field.kind === 'choice') return <ChoiceEntry {...props} field={field} />;
  if (field.kind === 'truth') return <TruthEntry {...props} />;
  return <WrittenEntry {...props} field={field} />;
}

/** Hint and message under an entry; the message stands in the place of the hint. */
function Below({ field, name, message, tell, children }: EntryProps<PlainField> & { children?: ReactNode }) {
  return (
    <>
      {message === undefined ? (
        field.hint !== undefined && (
          <p className="hint" id={`${name}-below`}>
            <OnePiece text={tell(field.hint)} />
          </p>
        )
      ) : (
        <p className="message" id={`${name}-below`}>
          <strong>
            <OnePiece text={tell(message.key, message.values)} />
          </strong>
        </p>
      )}
      {children}
    </>
  );
}

const describes = ({ field, name, message }: EntryProps<PlainField>): string | undefined =>
  message !== undefined || field.hint !== undefined ? `${name}-below` : undefined;

type Length = Extract<PlainField, { kind: 'length' }>;

function LengthEntry(props: EntryProps<Length>) {
  const { field, name, written, onWritten, message, tell, speak } = props;
  const reading = typeof written === 'object' && 'read' in written ? written : { read: 'blank' as const };
  // What cannot be read the control says itself; what is read and yet does not do is said here.
  const own = reading.read === 'not' ? undefined : message;
  return (
    <div className="entry">
      <FeetInches
        legend={tell(field.label)}
        initial={reading.read === 'length' ? reading.length : null}
        onReading={onWritten}
        tell={tell}
        speak={speak}
        scale={field.scale}
        tape={false}
        describedBy={own === undefined && field.hint === undefined ? undefined : `${name}-below`}
      />
      <Below {...props} message={own} />
    </div>
  );
}

type WrittenKind = Exclude<PlainField, { kind: 'length' | 'choice' | 'truth' }>;

function WrittenEntry(props: EntryProps<WrittenKind>) {
  const { field, name, written, onWritten, message, settings, tell } = props;
  const label =
    field.kind === 'temperature'
      ? tell(field.label, {
          unit: tell(`measure.unit${settings.degrees}`),
        })
      : tell(field.label);
  return (
    <div className="entry">
      <label htmlFor={name}>{label}</label>
      <input
        id={name}
        name={name}
        type="text"
        // A minus sign and a stroke are not on every number pad of a phone.
        inputMode={field.kind === 'count' ? 'numeric' : field.kind === 'number' ? 'decimal' : 'text'}
        autoComplete="off"
        value={textOf(written)}
        aria-invalid={message === undefined ? undefined : true}
        aria-describedby={describes(props)}
        onChange={(event) => onWritten(event.currentTarget.value)}
      />
      <Below {...props}>
        {message === undefined && field.kind === 'number' && <InMetric {...props} field={field} />}
      </Below>
    </div>
  );
}

/** What a number is in metric, where the device shows metric. */
function InMetric({ field, written, settings, tell }: EntryProps<Extract<PlainField, { kind: 'number' }>>) {
  const value = Number(textOf(written));
  if (settings.metric === 'none' || textOf(written).trim() === '' || !Number.isFinite(value)) return null;
  const text = measureText(measure(field.as, value), { ...settings, metric: 'instead' }, tell);
  const own = measureText(measure(field.as, value), { ...settings, metric: 'none' }, tell);
  return text === own ? null : <p className="hint">{tell('measure.thatIs', { text })}</p>;
}

/** Few choices stand open as boxes; many are a list. */
function ChoiceEntry(props: EntryProps<ChoiceField>) {
  const { field, name, written, onWritten, tell } = props;
  const words = ({ value, label, text }: ChoiceField['options'][number]) =>
    label === undefined ? (text ?? String(value)) : tell(label);
  const listed = field.edition === true || field.list === true || field.none !== undefined;
  if (listed || field.options.length > 4)
    return (
      <div className="entry">
        <label htmlFor={name}>{tell(field.label)}</label>
        <select
          id={name}
          name={name}
          value={textOf(written)}
          aria-invalid={props.message === undefined ? undefined : true}
          aria-describedby={describes(props)}
          onChange={(event) => onWritten(event.currentTarget.value)}
        >
          {field.none !== undefined && <option value="">{tell(field.none)}</option>}
          {field.options.map((option) => (
            <option key={String(option.value)} value={String(option.value)}>
              {words(option)}
            </option>
          ))}
        </select>
        <Below {...props} />
      </div>
    );
  return (
    <fieldset aria-describedby={describes(props)}>
      <legend>{tell(field.label)}</legend>
      {field.options.map((option) => (
        <label className="choice" key={String(option.value)}>
          <input
            type="radio"
            name={name}
            value={String(option.value)}
            checked={textOf(written) === String(option.value)}
            onChange={() => onWritten(String(option.value))}
          />
          <i />
          {words(option)}
        </label>
      ))}
      <Below {...props} />
    </fieldset>
  );
}

function TruthEntry(props: EntryProps<PlainField>) {
  const { field, name, written, onWritten, tell } = props;
  return (
    <div className="entry">
      <label className="choice">
        <input
          type="checkbox"
          name={name}
          checked={written === true}
          aria-describedby={describes(props)}
          onChange={(event) => onWritten(event.currentTarget.checked)}
        />
        <i />
        {tell(field.label)}
      </label>
      <Below {...props} />
    </div>
  );
}
