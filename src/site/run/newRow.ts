/** Whether what was entered for one more row of a list is whole: nothing that was typed may be dropped without a word. */
import type { Form } from '../calculators/fields.ts';
import { readField } from '../calculators/form.ts';
import type { Settings } from '../settings.ts';
import type { RunFields } from './fields.ts';

/** Names of the fields in which something stands that cannot be read. A pair says of itself whether it can be. */
export function unreadOf(
  fields: RunFields,
  form: Form,
  settings: Settings,
  pairs: ReadonlySet<string>,
): readonly string[] {
  return Object.entries(fields).flatMap(([name, field]) => {
    const unread =
      field.kind === 'pair' ? pairs.has(name) : 'message' in readField(field, form[name], settings);
    return unread ? [name] : [];
  });
}

/** Names of the fields that must be given and are not. */
export const missingOf = (fields: RunFields, row: Readonly<Record<string, unknown>>): readonly string[] =>
  Object.entries(fields).flatMap(([name, { optional }]) =>
    optional !== true && row[name] === undefined ? [name] : [],
  );

/** A row is added once nothing is missing, and everything that was typed was read. */
export const mayAdd = (
  fields: RunFields,
  row: Readonly<Record<string, unknown>>,
  unread: readonly string[],
): boolean => unread.length === 0 && missingOf(fields, row).length === 0;
