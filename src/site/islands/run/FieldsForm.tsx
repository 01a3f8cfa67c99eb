import { useEffect, useId, useState } from 'react';
import type { Fault } from '../../../trade/given.ts';
import { roundTo, type Ticks } from '../../../trade/length.ts';
import type { PlainField, Written } from '../../calculators/fields.ts';
import { formOf, type Message, readField, restated } from '../../calculators/form.ts';
import type { Field, RunFields } from '../../run/fields.ts';
import { unreadOf } from '../../run/newRow.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { Entry } from '../entries/Entry.tsx';
import { LengthField } from './LengthField.tsx';

export type Values = Readonly<Record<string, unknown>>;

interface Props {
  readonly fields: RunFields;
  readonly values: Values;
  /** Path of these values in the run, `joints[2]`; faults of a field stand at it. */
  readonly path: string;
  readonly faults: readonly Fault[];
  /** Told once every field that must be given is; while one is empty, the form holds the rest and says which. */
  readonly onValues: (values: Values) => void;
  /** `all`: tells every change, whole or not. `none`: nothing given at all is whole too. */
  readonly tells?: 'all' | 'none';
  /** Names of the fields whose text cannot be read, at every change of them. */
  readonly onUnread?: (names: readonly string[]) => void;
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

/**
 * Every field of one row of a run. What is typed stays as typed; the run takes it once it can be read. Give it a new `key`
 * when its values come from elsewhere than its own fields.
 */
export function FieldsForm({
  fields,
  values,
  path,
  faults,
  onValues,
  tells,
  onUnread,
  settings,
  tell,
  speak,
}: Props) {
  const id = useId();
  const [own, setOwn] = useState(values);
  const plain = plainOf(fields);
  const [form, setForm] = useState(() => formOf(plain, values, settings));
  const [stated, setStated] = useState(settings);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once the device's settings are known
  useEffect(() => {
    if (stated === settings) return;
    setForm((old) => restated(plain, old, stated, settings));
    setStated(settings);
  }, [settings]);

  const [pairs, setPairs] = useState<ReadonlySet<string>>(new Set());
  const unread = unreadOf(fields, form, stated, pairs).join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: by what the names are, not by who listens
  useEffect(() => onUnread?.(unread === '' ? [] : unread.split(',')), [unread]);
  const setPair = (name: string, not: boolean) =>
    setPairs((old) => {
      if (old.has(name) === not) return old;
      const names = new Set(old);
      if (not) names.add(name);
      else names.delete(name);
      return names;
    });

  const isMissing = (name: string, field: Field) => field.optional !== true && own[name] === undefined;
  const blank = tells === 'none' && Object.keys(own).length === 0;
  const set = (name: string, value: unknown) => {
    const { [name]: _, ...rest } = own;
    const next = value === undefined ? rest : { ...own, [name]: value };
    setOwn(next);
    const whole = Object.entries(fields).every(([n, f]) => f.optional === true || next[n] !== undefined);
    if (whole || tells === 'all' || (tells === 'none' && Object.keys(next).length === 0)) onValues(next);
  };
  const write = (name: string, field: PlainField, written: Written) => {
    setForm((old) => ({ ...old, [name]: written }));
    const read = readField(field, written, stated);
    if ('message' in read) return;
    const value = 'value' in read ? read.value : undefined;
    if (!isShown(field, own[name], value)) set(name, value);
  };
  const wrongAt = (name: string, field: Field): readonly Message[] => {
    const at = path === '' ? name : `${path}.${name}`;
    if (isMissing(name, field) && tells !== 'all' && !blank)
      return [faultOf({ message: tell('yourRun.missing'), todo: tell('yourRun.giveIt') })];
    return faults.filter((f) => f.field === at || f.field.startsWith(`${at}[`)).map(faultOf);
  };
  return (
    <div className="fields run-fields">
      {Object.entries(fields).map(([name, field]) => {
        const wrong = wrongAt(name, field);
        if (field.kind === 'pair') {
          return (
            <div key={name}>
              <Pair
                label={tell(field.label)}
                value={own[name]}
                onValue={(value) => set(name, value)}
                onUnread={(not) => setPair(name, not)}
                described={wrong.length > 0 ? `${id}-${name}-more` : undefined}
                tell={tell}
                speak={speak}
              />
              <More id={`${id}-${name}-more`} messages={wrong} tell={tell} />
            </div>
          );
        }
        const read = readField(field, form[name], stated);
        const messages = 'message' in read ? [read.message] : wrong;
        return (
          <div key={name}>
            <Entry
              field={hinted(field)}
              name={`${id}-${name}`}
              written={form[name]}
              onWritten={(written) => write(name, field, written)}
              message={messages[0]}
              settings={stated}
              tell={tell}
              speak={speak}
            />
            <More messages={messages.slice(1)} tell={tell} />
          </div>
        );
      })}
    </div>
  );
}

const plainOf = (fields: RunFields): Readonly<Record<string, PlainField>> =>
  Object.fromEntries(Object.entries(fields).flatMap(([name, f]) => (f.kind === 'pair' ? [] : [[name, f]])));

const faultOf = ({ message, todo }: Pick<Fault, 'message' | 'todo'>): Message => ({
  key: 'yourRun.fault',
  values: { message, todo },
});

/** What may be left empty says so; an empty choice says it itself. */
const hinted = (field: PlainField): PlainField =>
  field.optional === true && field.kind !== 'choice' ? { ...field, hint: 'yourRun.mayBeLeft' } : field;

/** What the fields show of a value is no edit of it, though it be rounded for the tape. */
const isShown = (field: PlainField, own: unknown, read: unknown): boolean =>
  read === own || (field.kind === 'length' && own !== undefined && roundTo(own as Ticks, 64) === read);

function More({
  id,
  messages,
  tell,
}: {
  readonly id?: string;
  readonly messages: readonly Message[];
  readonly tell: Tell;
}) {
  if (messages.length === 0) return null;
  return (
    <div className="message" id={id}>
      {messages.map(({ key, values }) => (
        <p key={JSON.stringify(values)}>
          <strong>{tell(key, values)}</strong>
        </p>
      ))}
    </div>
  );
}

interface PairProps {
  readonly label: string;
  readonly value: unknown;
  readonly onValue: (value: unknown) => void;
  /** One side cannot be read, or stands alone. */
  readonly onUnread: (unread: boolean) => void;
  readonly described: string | undefined;
  readonly tell: Tell;
  readonly speak: Speak;
}

function Pair({ label, value, onValue, onUnread, described, tell, speak }: PairProps) {
  const [pair, setPair] = useState<readonly (Ticks | undefined)[]>(
    () => (value as readonly [Ticks, Ticks] | undefined) ?? [undefined, undefined],
  );
  const [garbled, setGarbled] = useState<readonly boolean[]>([false, false]);
  const half = (pair[0] === undefined) !== (pair[1] === undefined);
  const unread = half || garbled.includes(true);
  // biome-ignore lint/correctness/useExhaustiveDependencies: by what it is, not by who listens
  useEffect(() => onUnread(unread), [unread]);
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
          onUnread={(not) => setGarbled((old) => old.map((was, i) => (i === k ? not : was)))}
          describedBy={described}
          tell={tell}
          speak={speak}
        />
      ))}
      {half && !garbled.includes(true) && (
        <p className="message">
          <strong>
            {tell('yourRun.fault', { message: tell('yourRun.half'), todo: tell('yourRun.giveBoth') })}
          </strong>
        </p>
      )}
    </>
  );
}
