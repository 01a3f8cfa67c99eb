/**
 * Issues of a zod shape as faults in plain words: path, value, what is wrong, what to write instead. Every message
 * about a field, in the command and in content alike, is worded here or carried by the shape itself
 * (`error` of a format; `params.todo` of a custom issue).
 */
import type { z } from 'zod';
import type { Fault } from '../trade/given.ts';

type Issue = z.core.$ZodIssue;
type Words = Pick<Fault, 'message' | 'todo'>;

/** What was given, checked: the value of the core's type, or every fault at once. */
export type Checked<T> = { readonly data: T } | { readonly faults: readonly Fault[] };

export function check<T>(shape: z.ZodType<T>, given: unknown): Checked<T> {
  const read = shape.safeParse(given);
  return read.success ? { data: read.data } : { faults: faultsOf(read.error.issues, given) };
}

/** Issues of a shape, for the value that was given to it, as faults. */
export function faultsOf(issues: readonly Issue[], given: unknown): readonly Fault[] {
  return issues.flatMap((issue) => faultsOfIssue(issue, given));
}

function faultsOfIssue(issue: Issue, given: unknown): readonly Fault[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) =>
      fault([...issue.path, key], given, {
        message: 'there is no such field here',
        todo: 'take it out, or mend its spelling',
      }),
    );
  }
  const value = valueAt(given, issue.path);
  if (issue.code === 'custom') {
    const todo: unknown = issue.params?.['todo'];
    const words = {
      message: issue.message,
      todo: typeof todo === 'string' ? todo : 'change it so that this holds',
    };
    return [fault(issue.path, given, words)];
  }
  if (value === undefined)
    return [fault(issue.path, given, { message: 'this field is missing', todo: `give ${wanted(issue)}` })];
  if (issue.code === 'invalid_union') return unionFaults(issue, given);
  return [fault(issue.path, given, wordsOf(issue, value))];
}

/**
 * Of several forms that all fail, the one that was meant is of the kind that was given, where one is (text, list or
 * object; and of that `kind`, where the forms name one), and fails least.
 */
function unionFaults(issue: z.core.$ZodIssueInvalidUnion, given: unknown): readonly Fault[] {
  const otherKind = (issues: readonly Issue[]) => (issues.some((i) => i.path.length === 0) ? 1 : 0);
  // Of a form that is told by a word, one told by another word was not meant.
  const otherName = (issues: readonly Issue[]) =>
    issues.some((i) => i.path.at(-1) === 'kind' || (i.code === 'invalid_union' && i.errors.length === 0))
      ? 1
      : 0;
  const [meant] = [...issue.errors].sort(
    (a, b) => otherKind(a) - otherKind(b) || otherName(a) - otherName(b) || a.length - b.length,
  );
  if (meant === undefined) {
    const words = { message: 'this is none of the kinds known here', todo: wanted(issue) };
    return [fault(issue.path, given, words)];
  }
  return meant.flatMap((inner) => faultsOfIssue({ ...inner, path: [...issue.path, ...inner.path] }, given));
}

function fault(path: readonly PropertyKey[], given: unknown, words: Words): Fault {
  const value = valueAt(given, path);
  return { field: pathText(path), ...(value === undefined ? {} : { value }), ...words };
}

const KINDS: Readonly<Record<string, string>> = {
  string: 'text in quotation marks',
  number: 'a number without quotation marks',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list [ … ]',
  object: 'an object { … }',
  record: 'an object { … }',
};

function wordsOf(issue: Issue, value: unknown): Words {
  if (issue.code === 'invalid_format') {
    const own = stock(issue.message) ? undefined : issue.message;
    return { message: own ?? 'this is not written in the form asked for', todo: `write ${wanted(issue)}` };
  }
  if (issue.code === 'invalid_type') {
    if (value === Number.POSITIVE_INFINITY || value === Number.NEGATIVE_INFINITY)
      return { message: 'this number is too large to be kept', todo: 'check the number' };
    return {
      message: `${kindOf(value)} stands where something else belongs`,
      todo: `write ${wanted(issue)}`,
    };
  }
  if (issue.code === 'invalid_value')
    return { message: 'this is none of the values known here', todo: `write ${wanted(issue)}` };
  if (issue.code === 'too_small') return sizeWords(issue, 'small', issue.minimum);
  if (issue.code === 'too_big') return sizeWords(issue, 'large', issue.maximum);
  if (issue.code === 'invalid_key') {
    const [own] = issue.issues;
    if (own !== undefined && !stock(own.message)) return { message: own.message, todo: 'mend this name' };
  }
  return { message: stock(issue.message) ? 'this does not fit here' : issue.message, todo: 'see the manual' };
}

function sizeWords(
  issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig,
  how: 'small' | 'large',
  limit: number | bigint,
): Words {
  const edge = how === 'small' ? ['above', 'from'] : ['below', 'up to'];
  const bound = `${edge[issue.inclusive === false ? 0 : 1]} ${limit}`;
  if (issue.origin === 'array' || issue.origin === 'set')
    return {
      message: `this list is too ${how === 'small' ? 'short' : 'long'}`,
      todo: how === 'small' ? `give at least ${limit}` : `give at most ${limit}`,
    };
  if (issue.origin === 'string')
    return limit === 1 && how === 'small'
      ? { message: 'nothing is written here', todo: 'write a text' }
      : { message: `this text is too ${how === 'small' ? 'short' : 'long'}`, todo: `write ${bound} signs` };
  return {
    message: `this number is too ${how}`,
    todo: `write ${issue.origin === 'int' ? 'a whole number' : 'a number'} ${bound}`,
  };
}

/** What belongs where the issue is. */
function wanted(issue: Issue): string {
  if (issue.code === 'invalid_type') return KINDS[issue.expected] ?? `a value of the kind ${issue.expected}`;
  if (issue.code === 'invalid_value') return oneOf(issue.values);
  if (issue.code === 'invalid_format')
    return stock(issue.message) ? `a text that fits ${issue.pattern ?? issue.format}` : issue.message;
  if (issue.code === 'invalid_union' && 'options' in issue && issue.options !== undefined)
    return oneOf(issue.options);
  return 'a value of the kind asked for';
}

function oneOf(values: readonly unknown[]): string {
  const texts = values.map((v) => JSON.stringify(v));
  return texts.length === 1 ? (texts[0] ?? '') : `one of ${texts.join(', ')}`;
}

function kindOf(value: unknown): string {
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'number') return Number.isInteger(value) ? 'a number' : 'a number with decimals';
  return (
    { string: 'text', boolean: 'true or false', object: 'an object' }[typeof value as string] ?? 'a value'
  );
}

/** Whether a message is zod's own and not one of ours. */
function stock(message: string): boolean {
  return /^(?:Invalid|Too |Unrecognized)/.test(message);
}

/** `pieces[2].length`. */
export function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((part) => (typeof part === 'number' ? `[${part}]` : `.${String(part)}`))
    .join('')
    .replace(/^\./, '');
}

function valueAt(given: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, part) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, part)
        ? (value as Record<PropertyKey, unknown>)[part]
        : undefined,
    given,
  );
}
