/**
 * Reading a file that travels between devices by hand, field by field, with every fault at once: the pages' content policy
 * forbids a reader that compiles code while it runs.
 */
import { type Fault, GivenError } from '../trade/given.ts';

/** What a field wants: whether a value is that, and how it is said. */
export interface Wants {
  readonly good: (value: unknown) => boolean;
  readonly message: string;
  readonly todo: string;
  /** It may be left out. */
  readonly optional?: true;
}
export type Fields = Readonly<Record<string, Wants>>;

export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Whether a value is an object with these fields and no other. */
export const hasOnly = <K extends string>(
  value: unknown,
  names: readonly K[],
): value is Readonly<Record<K, unknown>> =>
  isRecord(value) && Object.keys(value).sort().join() === [...names].sort().join();

export const exactly = (wanted: string | number): Wants => ({
  good: (value) => value === wanted,
  message: 'this is another kind of file',
  todo: `give a file that says ${JSON.stringify(wanted)} here`,
});
export const textOf = (pattern: RegExp, message: string, todo: string, longest = 200): Wants => ({
  good: (value) => typeof value === 'string' && value.length <= longest && pattern.test(value),
  message,
  todo,
});

export const anyText = textOf(/./s, 'this is no text', 'leave it as the sheet was saved');

/** Every fault of one object: a field that is none, one that is missing, one that is not what it should be. */
export function faultsIn(given: unknown, fields: Fields, at = ''): readonly Fault[] {
  if (!isRecord(given))
    return [{ field: at, value: given, message: 'this is no object', todo: 'give the file as it was saved' }];
  const named = (name: string) => (at === '' ? name : `${at}.${name}`);
  const unknown = Object.keys(given)
    .filter((name) => !Object.hasOwn(fields, name))
    .map((name) => ({
      field: named(name),
      value: given[name],
      message: 'there is no such field here',
      todo: 'take it out, or mend its spelling',
    }));
  const wrong = Object.entries(fields).flatMap(([name, { good, message, todo, optional }]) => {
    if (!Object.hasOwn(given, name))
      return optional ? [] : [{ field: named(name), message: 'this field is missing', todo }];
    return good(given[name]) ? [] : [{ field: named(name), value: given[name], message, todo }];
  });
  return [...unknown, ...wrong];
}

export function refuseIf(faults: readonly Fault[]): void {
  if (faults.length > 0) throw new GivenError(faults);
}
