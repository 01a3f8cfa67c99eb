import type { RowsField, WrittenRow } from '../../calculators/fields.ts';
import { formOf, isAsked, type Message, rowsOf } from '../../calculators/form.ts';
import { Entry, type EntryProps } from './Entry.tsx';

interface Props extends Omit<EntryProps<RowsField>, 'message'> {
  readonly messages: Readonly<Record<string, Message>>;
}

/** Rows of the same few entries: add one, take one out. A row keeps its own entries while others come and go. */
export function Rows({ field, name, written, onWritten, messages, settings, tell, speak }: Props) {
  const rows = rowsOf(written);
  const first = field.first ?? 1;
  const next = rows.reduce((most, { id }) => Math.max(most, id), 0) + 1;
  const change = (row: WrittenRow, form: WrittenRow['form']) =>
    onWritten(rows.map((other) => (other.id === row.id ? { ...other, form } : other)));
  return (
    <fieldset>
      <legend>{tell(field.label)}</legend>
      {field.hint !== undefined && <p className="hint">{tell(field.hint)}</p>}
      <ol className="cable-rows">
        {rows.map((row, k) => (
          <li key={row.id}>
            <p className="label">{tell(field.row, { number: k + first })}</p>
            <div className="row-fields">
              {Object.entries(field.fields).map(
                ([inner, asked]) =>
                  isAsked(asked, row.form) && (
                    <Entry
                      key={inner}
                      field={asked}
                      name={`${name}.${row.id}.${inner}`}
                      written={row.form[inner]}
                      onWritten={(value) => change(row, { ...row.form, [inner]: value })}
                      message={messages[`${name}.${row.id}.${inner}`]}
                      settings={settings}
                      tell={tell}
                      speak={speak}
                    />
                  ),
              )}
            </div>
            {rows.length > field.least && (
              <button
                type="button"
                className="as-link offer"
                onClick={() => onWritten(rows.filter(({ id }) => id !== row.id))}
              >
                {tell(field.takeOut, { number: k + first })}
              </button>
            )}
          </li>
        ))}
      </ol>
      <button
        type="button"
        className="as-link offer"
        onClick={() => onWritten([...rows, { id: next, form: formOf(field.fields, field.fresh, settings) }])}
      >
        {tell(field.add)}
      </button>
    </fieldset>
  );
}
