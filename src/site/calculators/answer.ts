/** A sum asked with a form as it stands: what it reads, what does not go together, what the core answers. Pure. */
import type { Answered } from '../../trade/answer.ts';
import type { Settings } from '../settings.ts';
import type { Tell } from '../speak.ts';
import { type Attempt, tried } from '../tried.ts';
import type { Fields, Form } from './fields.ts';
import { type Message, readForm, rowsOf } from './form.ts';
import { type Measure, measureText } from './measure.ts';
import type { Said, Sum } from './sum.ts';

export interface Answer {
  readonly given: Readonly<Record<string, unknown>>;
  readonly answered: Answered<object>;
  readonly said: Said;
}

export interface Worked {
  /** By the name of the entry; within rows `name.id.field`. */
  readonly messages: Readonly<Record<string, Message>>;
  /** None while an entry is empty or cannot be read, or two do not go together. */
  readonly answer: Attempt<Answer> | undefined;
}

/** The fields of a sum with what the content adds to them. */
export const fieldsOf = <Data>(sum: Sum<Data>, data: Data): Fields =>
  sum.fit?.(sum.fields, data) ?? sum.fields;

export function workOut<Data>(
  sum: Sum<Data>,
  data: Data,
  form: Form,
  settings: Settings,
  tell: Tell,
): Worked {
  const { given, messages } = readForm(fieldsOf(sum, data), form, settings);
  if (given === undefined) return { messages, answer: undefined };
  const clashes = sum.check?.(given) ?? [];
  if (clashes.length > 0)
    return {
      messages: Object.fromEntries(
        clashes.map(([path, { key, values = {} }]) => [
          entryAt(path, form),
          { key, values: shownValues(values, settings, tell) },
        ]),
      ),
      answer: undefined,
    };
  return {
    messages,
    answer: tried(() => {
      const answered = sum.work(given, data);
      return { given, answered, said: sum.say(answered.result, given, data) };
    }),
  };
}

/** `points[0].at` as the entries are named: a row goes by its own number, which it keeps. */
export function entryAt(path: string, form: Form): string {
  const [, name = path, row, inner] = /^(\w+)\[(\d+)\]\.(\w+)$/.exec(path) ?? [];
  if (row === undefined) return name;
  return `${name}.${rowsOf(form[name])[Number(row)]?.id ?? row}.${inner}`;
}

/** Values of a sentence with every figure written as the device is set. */
export const shownValues = (
  values: Readonly<Record<string, string | number | Measure>>,
  settings: Settings,
  tell: Tell,
): Readonly<Record<string, string | number>> =>
  Object.fromEntries(
    Object.entries(values).map(([place, value]) => [
      place,
      typeof value === 'object' ? measureText(value, settings, tell) : value,
    ]),
  );
