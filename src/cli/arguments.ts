/** Reads what stands after the verb, and says everything that is wrong with it at once. */
import { parseArgs } from 'node:util';
import { type Fault, GivenError } from '../trade/given.ts';
import { readInput } from './input.ts';
import type { Call, Option, Verb } from './verb.ts';

/** @throws {GivenError} unknown options, missing values, missing or too many words */
export function readCall(verb: Verb, args: readonly string[]): Call {
  const options = verb.options ?? {};
  const { tokens } = parseArgs({
    args: [...args],
    strict: false,
    tokens: true,
    options: Object.fromEntries(
      Object.entries(options).map(
        ([name, o]) => [name, { type: o.value === undefined ? 'boolean' : 'string' }] as const,
      ),
    ),
  });
  const faults: Fault[] = [];
  const values = new Map<string, string[]>();
  const given: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') given.push(token.value);
    if (token.kind !== 'option') continue;
    const wrong = optionFault(
      token.rawName,
      token.value,
      options[token.name],
      values.has(token.name),
      options,
    );
    if (wrong !== undefined) faults.push(wrong);
    else values.set(token.name, [...(values.get(token.name) ?? []), token.value ?? '']);
  }
  const { words, file, faults: wordFaults } = sortWords(verb, given);
  if (faults.length + wordFaults.length > 0) throw new GivenError([...faults, ...wordFaults]);
  return {
    words,
    text: (option) => values.get(option)?.at(-1),
    all: (option) => values.get(option) ?? [],
    has: (option) => values.has(option),
    input: () => readInput(file),
  };
}

function optionFault(
  field: string,
  value: string | undefined,
  option: Option | undefined,
  again: boolean,
  options: NonNullable<Verb['options']>,
): Fault | undefined {
  if (option === undefined) {
    const known = Object.keys(options).map((name) => `--${name}`);
    const todo = known.length === 0 ? 'leave it out' : `the options here are ${known.join(' ')}`;
    return { field, message: 'there is no such option here', todo };
  }
  if (option.value === undefined && value !== undefined)
    return { field, value, message: 'this is a switch and takes no value', todo: `write ${field} alone` };
  if (option.value !== undefined && value === undefined)
    return { field, message: 'its value is missing', todo: `write ${field} ${option.value}` };
  if (again && option.many !== true)
    return {
      field,
      ...(value === undefined ? {} : { value }),
      message: 'this stands twice',
      todo: 'keep one',
    };
  return undefined;
}

function sortWords(verb: Verb, given: readonly string[]) {
  const names = verb.words ?? [];
  const many = names.at(-1)?.endsWith('…') === true;
  const needed = many ? names.length - 1 : names.length;
  const faults: Fault[] = names.slice(given.length, needed).map((field) => ({
    field,
    message: `${field} is missing`,
    todo: `write it after ${verb.name}`,
  }));
  const most = many ? given.length : needed + (verb.takesInput ? 1 : 0);
  for (const value of given.slice(most)) {
    faults.push({
      field: '',
      value,
      message: 'there is one word too many',
      todo: 'leave it out; --help shows the form',
    });
  }
  const words = many ? given : given.slice(0, needed);
  return { words, file: many ? undefined : given[needed], faults };
}
