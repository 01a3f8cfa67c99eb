/** A calculator of the command: what it is given, what it works out, what its manual says. */
import type { z } from 'zod';
import { check } from '../schema/faults.ts';
import type { Answered } from '../trade/answer.ts';
import { GivenError } from '../trade/given.ts';
import type { Work } from './answering.ts';
import type { CalcContent } from './calcContent.ts';
import type { Option } from './verb.ts';

export interface Calculator {
  readonly name: string;
  readonly line: string;
  readonly fields: z.ZodObject;
  /** The result's fields, for the manual. */
  readonly results: readonly (readonly [string, string])[];
  readonly options?: Readonly<Record<string, Option>>;
  readonly work: Work<unknown, CalcContent>;
}

type Answer<Given> = (given: Given, content: CalcContent) => Answered<object>;

/** Ties what is read to what is worked out, so that the two types cannot part. */
export function reading<Given>(
  fields: z.ZodObject & z.ZodType<Given>,
  answer: Answer<Given>,
): Answer<unknown> {
  return (given, content) => {
    const read = check<Given>(fields, given);
    if ('faults' in read) throw new GivenError(read.faults);
    return answer(read.data, content);
  };
}

/** A calculator without options. */
export function calculator<Given>(
  name: string,
  line: string,
  fields: z.ZodObject & z.ZodType<Given>,
  answer: Answer<Given>,
  results: Calculator['results'],
): Calculator {
  return { name, line, fields, results, work: () => reading<Given>(fields, answer) };
}
