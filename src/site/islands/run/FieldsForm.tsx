import { useId, useState } from 'react';
import type { Fault } from '../../../trade/given.ts';
import { formatLength, type Ticks, tryLength } from '../../../trade/length.ts';
import type { Field } from '../../run/fields.ts';
import type { Speak, Tell } from '../../speak.ts';
import { LengthField } from './LengthField.tsx';

export type Values = Readonly<Record<string, unknown>>;

interface Props {
  readonly fields: readonly Field[];
  readonly values: Values;
  /** Path of these values in the run, `joints[2]`; faults of a field stand at it. */
  readonly path: string;
  readonly faults: readonly Fault[];
  readonly legs: readonly string[];
  /** Told once every field that must be given is; while one is empty, the form holds the rest and says which. */
  readonly onValues: (values: Values) => void;
  /** `all`: tells every change, whole or not. `none`: nothing given at all is whole too. */
  readonly tells?: 'all' | 'none';
  readonly tell: Tell;
  readonly speak: Speak;
}

/** Every field of one row of a run. Give it a new `key` when its values come from elsewhere than its own fields. */
export function FieldsForm({ fields, values, path, faults, onValues, tells, ...more }: Props) {
  const [own, setOwn] = useState(values);
  const missing = fields.filter((f) => f.optional !== true && own[f.name] === undefined);
  const blank = tells === 'none' && Object.keys(own).length === 0;
  const { tell } = more;
  const said = tells === 'all' || blank ? [] : missing;
  const set = (name: string, value: unknown) => {
    const { [name]: _, ...rest } = own;
    const next = value === undefined ? rest : { ...own, [name]: value };
    setOwn(next);
    const whole = fields.every((f) => f.optional === true || next[f.name] !== undefined);
    if (whole || tells === 'all' || (tells === 'none' && Object.keys(next).length === 0)) onValues(next);
  };
  return (
    <div className="fields run-fields">
      {fields.map((field) => {
        const at = path === '' ? field.name : `${path}.${field.name}`;
        const wrong = said.includes(field)
          ? [{ field: at, message: tell('yourRun.missing'), todo: tell('yourRun.giveIt') }]
          : faults.filter((f) => f.field === at || f.field.startsWith(`${at}[`));
        return (
          <OneField
            key={field.name}
            field={field}
            value={own[field.name]}
            faults={wrong}
            onValue={(value) => set(field.name, value)}
            {...more}
          />
        );
      })}
    </div>
  );
}

interface OneProps extends Pick<Props, 'faults' | 'legs' | 'tell' | 'speak'> {
  readonly field: Field;
  readonly value: unknown;
  readonly onValue: (value: unknown) => void;
}

function OneField(props: OneProps) {
  const id = useId();
  const { field, faults, tell } = props;
  return (
    <div>
      <Entry {...props} id={id} />
      {faults.length > 0 && (
        <div className="message" id={`${id}-fault`} role="alert">
          {faults.map(({ message, todo }) => (
            <p key={message}>
              <strong>{tell('yourRun.fault', { message, todo })}</strong>
            </p>
          ))}
        </div>
      )}
      {field.optional === true && faults.length === 0 && field.kind !== 'choice' && (
        <p className="hint">{tell('yourRun.mayBeLeft')}</p>
      )}
    </div>
  );
}

function Entry({ field, value, faults, legs, onValue, tell, speak, id }: OneProps & { readonly id: string }) {
  const label = tell(field.label);
  const wrong = faults.length > 0;
  const described = wrong ? `${id}-fault` : undefined;
  if (field.kind === 'length') {
    return (
      <LengthField
        legend={label}
        value={value as Ticks | undefined}
        onValue={onValue}
        describedBy={described}
        tell={tell}
        speak={speak}
      />
    );
  }
  if (field.kind === 'pair') return <Pair {...{ label, value, onValue, tell, speak, described }} />;
  if (field.kind === 'choice' || field.kind === 'leg') {
    const options =
      field.kind === 'leg'
        ? legs.map((leg) => ({ value: leg, text: tell('yourRun.leg', { leg }) }))
        : field.options.map((o) => ({
            value: o.value,
            text: o.key === undefined ? String(o.value) : tell(o.key),
          }));
    const chosen = options.findIndex((o) => o.value === value);
    return (
      <>
        <label htmlFor={id}>{label}</label>
        <select
          id={id}
          value={chosen < 0 ? '' : String(chosen)}
          aria-invalid={wrong ? true : undefined}
          aria-describedby={described}
          onChange={(event) => onValue(options[Number.parseInt(event.currentTarget.value, 10)]?.value)}
        >
          {(field.optional === true || chosen < 0) && <option value="">{tell('yourRun.unsaid')}</option>}
          {options.map(({ text }, k) => (
            <option key={text} value={String(k)}>
              {text}
            </option>
          ))}
        </select>
      </>
    );
  }
  return <Typed {...{ id, field, label, value, onValue, wrong, described, tell }} />;
}

interface PairProps {
  readonly label: string;
  readonly value: unknown;
  readonly onValue: (value: unknown) => void;
  readonly described: string | undefined;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** Two lengths that are given together or not at all. */
function Pair({ label, value, onValue, described, tell, speak }: PairProps) {
  const [pair, setPair] = useState<readonly (Ticks | undefined)[]>(
    () => (value as readonly [Ticks, Ticks] | undefined) ?? [undefined, undefined],
  );
  const set = (k: number, length: Ticks | undefined) => {
    const next = pair.map((old, i) => (i === k ? length : old));
    setPair(next);
    const given = next.filter((one) => one !== undefined);
    if (given.length !== 1) onValue(given.length === 2 ? given : undefined);
  };
  return (
    <>
      {[0, 1].map((k) => (
        <LengthField
          key={k}
          legend={tell(k === 0 ? 'yourRun.firstOf' : 'yourRun.secondOf', { label })}
          value={pair[k]}
          onValue={(length) => set(k, length)}
          describedBy={described}
          tell={tell}
          speak={speak}
        />
      ))}
    </>
  );
}

interface TypedProps {
  readonly id: string;
  readonly field: Field;
  readonly label: string;
  readonly value: unknown;
  readonly onValue: (value: unknown) => void;
  readonly wrong: boolean;
  readonly described: string | undefined;
  readonly tell: Tell;
}

/** What is typed stays as typed; the run takes it once it can be read. */
function Typed({ id, field, label, value, onValue, wrong, described, tell }: TypedProps) {
  const [text, setText] = useState(() => written(field, value));
  const unread = text.trim() !== '' && readOf(field, text) === undefined;
  return (
    <>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        inputMode={field.kind === 'number' ? 'text' : undefined}
        value={text}
        aria-invalid={wrong || unread ? true : undefined}
        aria-describedby={unread ? `${id}-unread` : described}
        onChange={(event) => {
          const typed = event.currentTarget.value;
          setText(typed);
          const read = readOf(field, typed);
          if (typed.trim() === '' || read !== undefined) onValue(read);
        }}
      />
      {unread && (
        <p className="message" id={`${id}-unread`} role="alert">
          <strong>{tell(field.kind === 'number' ? 'yourRun.noNumber' : 'yourRun.noLengths')}</strong>
        </p>
      )}
    </>
  );
}

function written({ kind }: Field, value: unknown): string {
  if (value === undefined) return '';
  if (kind === 'lengths') return (value as readonly Ticks[]).map((one) => formatLength(one, 64)).join('; ');
  return String(value);
}

function readOf(field: Field, text: string): unknown {
  const { kind } = field;
  const plain = text.trim();
  if (plain === '') return undefined;
  if (field.kind === 'number') {
    const read = /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : Number.NaN;
    const fits = field.above === undefined || read > field.above;
    return fits && (field.whole !== true || Number.isInteger(read)) && !Number.isNaN(read) ? read : undefined;
  }
  if (kind === 'lengths') {
    const lengths = plain
      .split(/\s*;\s*/)
      .map((one) => tryLength(/^\d+(\.\d+)?$/.test(one) ? Number(one) : one));
    return lengths.every((one) => typeof one === 'number') ? lengths : undefined;
  }
  return plain;
}
