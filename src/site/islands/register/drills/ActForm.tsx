import { type FormEvent, useId, useState } from 'react';
import { readPublicFile } from '../../../../register/keyFile.ts';
import { GivenError } from '../../../../trade/given.ts';
import { chance } from '../../../device/edge.ts';
import { withoutSecret } from '../../../device/keys.ts';
import type { Opened } from '../../../device/register.ts';
import { signHere } from '../../../device/sign.ts';
import { type Act, type ActField, type Means, type Values, valuesOf } from '../../../drills/act.ts';
import type { Looking } from '../../../drills/looking.ts';
import { shortKey } from '../../../shortKey.ts';
import { Arrow } from '../../Arrow.tsx';
import { Refused } from '../../Refused.tsx';
import { TextField } from '../../TextField.tsx';
import { Came, useDoing } from '../Doing.tsx';
import { FileEntry } from '../FileEntry.tsx';
import { HandedEntry } from '../HandedEntry.tsx';
import { emptyPassphrase, Passphrase, usePassphrase } from '../Passphrase.tsx';
import type { Device } from '../useDevice.ts';

interface Props {
  readonly act: Act;
  readonly device: Device & { readonly opened: Opened };
  readonly looking: Looking;
  readonly means: Means;
  readonly refresh: () => Promise<void>;
}

/** One act of the register: its fields, everything that keeps it from being signed, what it will do, the passphrase, the result. */
export function ActForm({ act, device, looking, means, refresh }: Props) {
  const { tell } = looking;
  const { key, opened } = device;
  const id = useId();
  const [written, setWritten] = useState<Values>({});
  const pass = usePassphrase();
  const doing = useDoing(tell);
  const bar = act.bar(looking);
  // A pick may ask for further fields, which start with something themselves.
  const first = act.fields(looking, written);
  const fields = act.fields(looking, valuesOf(first, written));
  const values = valuesOf(fields, written);
  const before = act.before?.(looking, values) ?? [];
  const names = fields.map(({ name }) => name);
  /** A fault of a part, `evidence.person`, stands beside its field. */
  const faults = doing.faults.map((fault) => {
    const [root = ''] = fault.field.split(/[.[]/);
    return names.includes(root) ? { ...fault, field: root } : fault;
  });

  const sign = (event: FormEvent) => {
    event.preventDefault();
    if (key === undefined) return;
    const passphrase = pass.take();
    void doing
      .run(async () => {
        // Before the key is opened: a wrong passphrase hides nothing else that is wrong.
        const looks = { signer: withoutSecret(key), now: opened.at, chance };
        const wrong = [
          ...act.faults(opened.judged, values, looks, means),
          ...emptyPassphrase(passphrase, tell),
        ];
        if (wrong.length > 0) throw new GivenError(wrong);
        const entry = await signHere(key, passphrase, (judged, writing) =>
          act.write(judged, values, writing, means),
        );
        return tell(act.done, { entry: shortKey(entry) });
      })
      .then((good) => {
        if (good) setWritten({});
        return refresh();
      });
  };

  return (
    <section className="act">
      <h3>{tell(act.title)}</h3>
      {bar !== undefined ? (
        <>
          <p className="nothing">{tell(bar)}</p>
          <p role="status">{doing.done}</p>
        </>
      ) : (
        <form onSubmit={sign} noValidate>
          <div className="fields">
            {fields.map((field) => (
              <Field
                key={field.name}
                id={`${id}-${field.name}`}
                field={field}
                value={values[field.name] ?? ''}
                written={written[field.name] ?? ''}
                onValue={(value) => setWritten((all) => ({ ...all, [field.name]: value }))}
                looking={looking}
              >
                <Refused faults={faults} fields={[field.name]} tell={tell} />
              </Field>
            ))}
          </div>
          {before.length > 0 && (
            <div className="says">
              {before.map((line, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: lines of text, and two may be alike
                <p key={i}>{line}</p>
              ))}
            </div>
          )}
          <Passphrase
            id={`${id}-pass`}
            label={tell('register.pass')}
            hint={tell('drills.passHint')}
            field={pass}
            faults={doing.faults}
            tell={tell}
          />
          <div className="buttons">
            <button type="submit" className="button" disabled={doing.busy}>
              {tell(act.button)} <Arrow />
            </button>
          </div>
          <Came doing={{ ...doing, faults }} without={[...names, 'passphrase']} tell={tell} />
        </form>
      )}
    </section>
  );
}

interface FieldProps {
  readonly id: string;
  readonly field: ActField;
  readonly value: string;
  /** As it stands in the field, untrimmed. */
  readonly written: string;
  readonly onValue: (value: string) => void;
  readonly looking: Looking;
  readonly children: React.ReactNode;
}

function Field({ id, field, value, written, onValue, looking, children }: FieldProps) {
  const { tell } = looking;
  const { label, hint, options = [] } = field;
  const said = hint === undefined ? {} : { hint };
  switch (field.is) {
    case 'pick':
      return (
        <div>
          <label htmlFor={id}>{label}</label>
          <select
            id={id}
            value={value}
            aria-describedby={hint === undefined ? undefined : `${id}-hint`}
            onChange={(event) => onValue(event.currentTarget.value)}
          >
            {field.start === undefined && <option value="">{tell('drills.choose')}</option>}
            {options.map((option) => (
              <option key={option.value} value={option.value}>
                {option.text}
              </option>
            ))}
          </select>
          {hint !== undefined && (
            <p className="hint" id={`${id}-hint`}>
              {hint}
            </p>
          )}
          {children}
        </div>
      );
    case 'text':
      return (
        <div>
          <label htmlFor={id}>{label}</label>
          <textarea
            id={id}
            rows={2}
            value={written}
            aria-describedby={hint === undefined ? undefined : `${id}-hint`}
            onChange={(event) => onValue(event.currentTarget.value)}
          />
          {hint !== undefined && (
            <p className="hint" id={`${id}-hint`}>
              {hint}
            </p>
          )}
          {children}
        </div>
      );
    case 'public':
      return (
        <div>
          <HandedEntry
            mark="key"
            label={label}
            {...said}
            onText={(text) => {
              onValue('');
              onValue(readPublicFile(text));
            }}
            inForm
            tell={tell}
          />
          <p className="wrap-id" role="status">
            {value !== '' && tell('drills.publicIs', { key: shortKey(value) })}
          </p>
          {children}
        </div>
      );
    case 'file':
      return (
        <div>
          <FileEntry label={label} {...said} onText={onValue} tell={tell} />
          <p className="wrap-id" role="status">
            {value !== '' && tell('drills.fileIn', { name: label })}
          </p>
          {children}
        </div>
      );
    default:
      return (
        <TextField
          id={id}
          label={label}
          {...said}
          {...(field.is === 'moment' ? { type: 'datetime-local' } : {})}
          value={written}
          onValue={onValue}
          autoCapitalize="none"
        >
          {children}
        </TextField>
      );
  }
}
