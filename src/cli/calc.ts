/**
 * `calc VERB`: one object in, one answer out; a list in, a list of answers out, each with its own faults. A new
 * calculator is a line of CALCULATORS.
 */
import type { z } from 'zod';
import { convertInput, cutInput, fillInput, markInput } from '../schema/calcInputs.ts';
import { check } from '../schema/faults.ts';
import type { Answered } from '../trade/answer.ts';
import { convert } from '../trade/convert.ts';
import { cut } from '../trade/cut.ts';
import { fill } from '../trade/fill.ts';
import { GivenError } from '../trade/given.ts';
import { mark } from '../trade/mark.ts';
import { type CalcContent, calcContent } from './calcContent.ts';
import { bad, type Envelope, good } from './envelope.ts';
import { table } from './help.ts';
import type { Group, Verb } from './verb.ts';

interface Calculator {
  readonly name: string;
  readonly line: string;
  readonly fields: z.ZodObject;
  /** The result's fields, for the manual. */
  readonly results: readonly (readonly [string, string])[];
  readonly answer: (given: unknown, content: CalcContent) => Envelope;
}

const TOO_LARGE = {
  field: '',
  message: 'these numbers are too large to be worked with',
  todo: 'check the numbers and their units',
};
const beyondNumbers = (value: unknown) => typeof value === 'number' && !Number.isFinite(value);

/** Ties what is read to what is worked out, so that the two types cannot part. */
function calculator<Given>(
  name: string,
  line: string,
  fields: z.ZodObject & z.ZodType<Given>,
  work: (given: Given, content: CalcContent) => Answered<object>,
  results: Calculator['results'],
): Calculator {
  const answer: Calculator['answer'] = (given, content) => {
    const read = check<Given>(fields, given);
    if ('faults' in read) return bad(read.faults);
    try {
      const answered = work(read.data, content);
      return Object.values(answered.result).some(beyondNumbers)
        ? bad([TOO_LARGE])
        : good(answered, content.speak);
    } catch (cause) {
      if (cause instanceof GivenError) return bad(cause.faults);
      throw cause;
    }
  };
  return { name, line, fields, results, answer };
}

const CALCULATORS: readonly Calculator[] = [
  calculator(
    'length',
    'reads a length and writes it in inches, millimetres and feet and inches',
    convertInput,
    convert,
    [
      ['in, mm', 'the length, not rounded'],
      ['text, roundedIn', 'rounded to toFraction, halves away from zero'],
    ],
  ),
  calculator(
    'cut',
    'the length to cut a piece to, from what was measured and what goes into its splices',
    cutInput,
    cut,
    [
      ['cutIn, cutMm, text', 'the cut'],
      ['fitsStock', 'whether one stock length is long enough'],
    ],
  ),
  calculator(
    'mark',
    'whether a cutting mark is clear of the holes, and the nearest places that are',
    markInput,
    mark,
    [
      ['clear', 'whether it is'],
      ['shorterIn, longerIn', 'nearest clear places towards and away from the end; null: there is none'],
    ],
  ),
  calculator(
    'fill',
    'how full a channel is by the tables of NFPA 70',
    fillInput,
    (given, { fillTables }) => fill(given, fillTables),
    [
      ['areaIn2, column, table', 'of the multiconductor cables; column 1 one cable, 2 more'],
      ['allowedIn2, within, fraction', "the table's limit; whether it holds; share used of what may be used"],
      ['spareIn2', 'what may still go in; below 0 when over'],
      ['cables', 'how many in all'],
      ['sumOfDiametersIn, allowedIn', 'of single conductors, with the width they are held against'],
      ['refer, why', 'true: ask the authority or the engineer; numbers that depend on it are null'],
    ],
  ),
];

function verbOf({ name, line, fields, results, answer }: Calculator): Verb {
  return {
    name,
    line,
    takesInput: true,
    manual: () => [
      'In: one object, or a list of them. Fields with a value in brackets may be left out.',
      ...table(Object.entries(fields.shape).map(([field, shape]) => [field, shape.description ?? ''])),
      '',
      'Out, in "result":',
      ...table(results),
      '',
      'A length is a number of inches or a text: 12\'-3 1/2", 7-3 5/8, 87 5/8, 112.5 ft, 2 350 mm.',
    ],
    run: async (call) => {
      const given = await call.input();
      const content = calcContent();
      const answers = Array.isArray(given)
        ? given.map((one) => answer(one, content))
        : [answer(given, content)];
      return { json: Array.isArray(given) ? answers : answers[0], exit: answers.every((a) => a.ok) ? 0 : 2 };
    },
  };
}

export const group: Group = {
  name: 'calc',
  line: 'the calculators: lengths, cutting, marking, fill',
  verbs: CALCULATORS.map(verbOf),
};
