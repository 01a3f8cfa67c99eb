import type { Ref } from 'react';
import type { Fields, Form, Written, WrittenRow } from '../calculators/fields.ts';
import { isAsked, type Message, rowsOf } from '../calculators/form.ts';
import type { Settings } from '../settings.ts';
import type { Speak, Tell } from '../speak.ts';
import { Arrow } from './Arrow.tsx';
import { Entry } from './entries/Entry.tsx';
import { Rows } from './entries/Rows.tsx';

interface EntriesProps {
  readonly fields: Fields;
  readonly form: Form;
  readonly messages: Readonly<Record<string, Message>>;
  readonly onForm: (change: (old: Form) => Form) => void;
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

interface FormProps extends EntriesProps {
  readonly element: Ref<HTMLFormElement>;
  readonly title: string;
  /** Stands alone beside the answer, and is left off paper. */
  readonly className?: string;
}

/** The form of a sum: its entries, and on the phone the way back up to the answer. */
export function SumForm({ element, title, className, ...entries }: FormProps) {
  return (
    <form ref={element} id="sum-given" className={className} onSubmit={(event) => event.preventDefault()}>
      <h2 className="view-title">{title}</h2>
      <Entries {...entries} />
      <p className="at-phone">
        <a className="button" href="#sum-answer">
          {entries.tell('sums.workOut')} <Arrow />
        </a>
      </p>
    </form>
  );
}

/** The entries of a sum that are asked, as its form stands. */
function Entries({ fields, form, messages, onForm, ...rest }: EntriesProps) {
  const set = (name: string) => (written: Written) => onForm((old) => ({ ...old, [name]: written }));
  return Object.entries(fields).map(([name, field]) => {
    if (!isAsked(field, form)) return null;
    const props = { name, written: form[name], onWritten: set(name), ...rest };
    return field.kind === 'rows' ? (
      <Rows key={name} {...props} field={field} messages={messages} />
    ) : (
      <Entry key={name} {...props} field={field} message={messages[name]} />
    );
  });
}

/** What stood in the entries before script came; lengths see to themselves. */
export function takenOver(fields: Fields, form: Form, values: FormData, under: string): Form {
  return Object.fromEntries(
    Object.entries(form).map(([name, written]): readonly [string, Written] => {
      const field = fields[name];
      const at = `${under}${name}`;
      if (field === undefined || field.kind === 'length' || !isAsked(field, form)) return [name, written];
      if (field.kind === 'truth') return [name, values.has(at)];
      if (field.kind === 'rows')
        return [
          name,
          rowsOf(written).map(
            ({ id, form: row }): WrittenRow => ({
              id,
              form: takenOver(field.fields, row, values, `${at}.${id}.`),
            }),
          ),
        ];
      return [name, String(values.get(at) ?? written)];
    }),
  );
}
