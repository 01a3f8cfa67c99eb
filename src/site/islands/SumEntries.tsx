import type { Fields, Form, Written, WrittenRow } from '../calculators/fields.ts';
import { isAsked, type Message, rowsOf } from '../calculators/form.ts';
import type { Settings } from '../settings.ts';
import type { Speak, Tell } from '../speak.ts';
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

/** The entries of a sum that are asked, as its form stands. */
export function Entries({ fields, form, messages, onForm, ...rest }: EntriesProps) {
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
