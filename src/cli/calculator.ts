/** A calculator of the command: what it is given, what it works out, what its manual says. */
import type { z } from 'zod';
import { check } from '../schema/faults.ts';
import type { Answered } from '../trade/answer.ts';
import { GivenError } from '../trade/given.ts';
import type { CalcContent } from './calcContent.ts';
import { bad, type Envelope, good } from './envelope.ts';
import type { Call, Option } from './verb.ts';

export interface Calculator {
  readonly name: string;
  readonly line: string;
  readonly fields: z.ZodObject;
  /** The result's fields, for the manual. */
  readonly results: readonly (readonly [string, string])[];
  readonly options?: Readonly<Record<string, Option>>;
  /** Looks at the options before anything is read. @throws {GivenError} when they cannot be used */
  readonly ready?: (options: Options) => void;
  readonly answer: (given: unknown, content: CalcContent, options: Options) => Envelope;
}

/** Options of the call, as written. */
export type Options = Pick<Call, 'text' | 'has'>;

const TOO_LARGE = {
  field: '',
  message: 'these numbers are too large to be worked with',
  todo: 'check the numbers and their units',
};
const beyondNumbers = (value: unknown): boolean =>
  typeof value === 'number'
    ? !Number.isFinite(value)
    : typeof value === 'object' && value !== null && Object.values(value).some(beyondNumbers);

/** Ties what is read to what is worked out, so that the two types cannot part. */
export function calculator<Given>(
  name: string,
  line: string,
  fields: z.ZodObject & z.ZodType<Given>,
  work: (given: Given, content: CalcContent, options: Options) => Answered<object>,
  results: Calculator['results'],
  options: Calculator['options'] = {},
): Calculator {
  const answer: Calculator['answer'] = (given, content, options) => {
    const read = check<Given>(fields, given);
    if ('faults' in read) return bad(read.faults);
    try {
      const answered = work(read.data, content, options);
      return beyondNumbers(answered.result) ? bad([TOO_LARGE]) : good(answered, content.speak);
    } catch (cause) {
      if (cause instanceof GivenError) return bad(cause.faults);
      throw cause;
    }
  };
  return { name, line, fields, results, options, answer };
}
