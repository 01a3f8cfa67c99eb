/**
 * A practice family: content/scenarios/ID.yaml. The manual of each field is here; what the model of that name takes
 * and knows is in src/practice/models, what must hold between the two in `scenarioChecks.ts`.
 */
import { z } from 'zod';
import { type AuthoredFamily, type Parameter, PLACED, UNITS } from '../practice/family.ts';
import { inches } from '../trade/length.ts';
import { above0, count } from './fields.ts';
import { plainId as id, workId } from './ids.ts';
import { lengthAbove0, lengthFrom0 } from './length.ts';
import { familyChecks } from './scenarioChecks.ts';
import { FIRST_LANGUAGE } from './words.ts';

const name = z.string().regex(/^[A-Za-z][A-Za-z0-9]*$/, { error: 'a name is letters and digits' });
const text = z
  .string()
  .min(1)
  .refine((s) => s === s.trim(), { error: 'space at the head or the end', params: { todo: 'take it out' } });

/** A text by language; English is always there. `{places}` are facts of the model. */
export const texts = z
  .record(z.string().regex(/^[a-z]{2}$/, { error: 'a language is two small letters' }), text)
  .refine((t) => t[FIRST_LANGUAGE] !== undefined, {
    error: `the text in ${FIRST_LANGUAGE} is missing`,
    params: { todo: `write ${FIRST_LANGUAGE}: and the text` },
  });

/** One value that a seed chooses; exactly one kind. */
export const parameter: z.ZodType<Parameter> = z.lazy(() =>
  z.union([
    /** A length: from, to, and the step between. */
    z.strictObject({ length: z.strictObject({ from: lengthFrom0, to: lengthAbove0, step: lengthAbove0 }) }),
    /** A whole number, both ends included. */
    z.strictObject({ whole: z.strictObject({ from: z.int(), to: z.int() }) }),
    /** A number with decimals, at most six. */
    z.strictObject({ decimal: z.strictObject({ from: z.number(), to: z.number(), step: above0 }) }),
    /** One of these words; one that stands twice is twice as likely. */
    z.strictObject({ choice: z.array(id).min(1) }),
    /** From so many to so many rows, each with parameters of its own. */
    z.strictObject({
      list: z.strictObject({ from: count, to: count, of: z.record(name, parameter) }),
    }),
    /** From so many to so many of these, those of `always` among them, in a chance order. */
    z.strictObject({
      some: z.strictObject({ from: count, to: count, of: z.array(id).min(1), always: z.array(id) }),
    }),
  ]),
);

const given = z.strictObject({
  id,
  label: texts,
  /** The fact whose value is given. */
  fact: name,
  /** A fact that has rows: one given a row, with `{number}` from 1. */
  each: name.optional(),
  /** Of the value; empty for a word or a count. A length is always `in`. */
  unit: z.enum(['', ...UNITS]),
  /** What the person reads; the fact's own text when left out. */
  text: texts.optional(),
});

const range = z.strictObject({ from: z.number(), to: z.number() });
const asks = { id, prompt: texts };
/** Of a length: a length; of a count: 0 unless it is said. */
const lengthTolerance = lengthAbove0.transform(inches);
const numbered = {
  /** Where right answers may lie, in the unit; the proofs hold every draw against it. */
  range,
  /** Said of a number above, below the right one; `{amount}` is by how much. */
  long: texts,
  short: texts,
};
const inInches = { ...numbered, unit: z.literal('in'), tolerance: lengthTolerance };
const inCounts = { ...numbered, unit: z.literal('count'), tolerance: z.number().min(0).default(0) };
const inOther = { ...numbered, unit: z.enum(UNITS).exclude(['in', 'count']), tolerance: above0 };
const part = z.strictObject({ id, text: texts });
const options = { options: z.array(part).min(2) };
/** A number in one of the units, of either kind that is one. */
const numberOf = <K extends 'number' | 'reading'>(kind: K) => {
  const head = { ...asks, kind: z.literal(kind) };
  return [
    z.strictObject({ ...head, ...inInches }),
    z.strictObject({ ...head, ...inCounts }),
    z.strictObject({ ...head, ...inOther }),
  ] as const;
};
const numberAsk = z.discriminatedUnion('unit', numberOf('number'));
const choiceAsk = z.strictObject({ ...asks, kind: z.literal('choice'), ...options });
/** Read off a figure: a number or one of several. */
const readingAsk = z.union([
  z.discriminatedUnion('unit', numberOf('reading')),
  z.strictObject({ ...asks, kind: z.literal('reading'), ...options }),
]);
/** Go on, ask first, stop the job. */
const stopAsk = z.strictObject({ ...asks, kind: z.literal('stop') });
/** Put on the drawn run. */
const placeAsk = z.strictObject({
  ...asks,
  kind: z.literal('place'),
  what: z.array(z.enum(PLACED)).min(1),
  tolerance: lengthTolerance,
});
/** Cut from lengths and remnants. */
const sticksAsk = z.strictObject({ ...asks, kind: z.literal('sticks') });
const orderAsk = z.strictObject({
  ...asks,
  kind: z.literal('order'),
  /** All that may be shown, in one order that holds; a draw shows some. */
  items: z.array(part).min(2),
  /** Pairs, what comes directly before what; what lies further apart follows from them. */
  precedence: z.array(z.tuple([id, id])).min(1),
});
/** Found on the drawn run: `rules` are what may be named. */
const faultsAsk = z.strictObject({
  ...asks,
  kind: z.literal('faults'),
  rules: z.array(part).min(2),
  tolerance: lengthTolerance,
});
const alone = [choiceAsk, stopAsk, placeAsk, sticksAsk] as const;
/** One step of a job, answered as a whole. */
const jobAsk = z.strictObject({
  ...asks,
  kind: z.literal('job'),
  parts: z.array(z.union([z.discriminatedUnion('kind', alone), numberAsk, readingAsk])).min(1),
});
const ask = z.union([
  z.discriminatedUnion('kind', [...alone, orderAsk, faultsAsk, jobAsk]),
  numberAsk,
  readingAsk,
]);

const mistake = z.strictObject({
  id,
  /** Asks on which it is looked for. */
  asks: z.array(id).min(1),
  /** The model's slip of this name, or the two that are made together (the first goes first). */
  slip: z.union([name, z.tuple([name, name])]),
  /** What the slip is told, where it needs telling. */
  with: z.record(name, id).optional(),
  /** What went wrong and one thing to do. */
  says: texts,
});

const worked = z.strictObject({
  seed: z.string().min(1),
  /** Givens as the author read them off the draw: a length, a number, a word; or words that stand in an ask or a part of one. */
  givens: z.record(id, z.union([z.string(), z.number()])).refine((read) => Object.keys(read).length > 0, {
    error: 'nothing was read off the draw',
    params: { todo: 'name a given, or words of an ask' },
  }),
  /** The author's own answers, one to every ask. */
  answers: z.record(id, z.unknown()),
  /** His sum, a line each. */
  sum: z.array(text).min(1),
});

/** A draw on which less than this holds was not done. */
const LEAST_MARK = 80;

const shape = z.strictObject({
  id,
  /** Of its sheet among those of its first task: the next that is free. */
  number: count,
  title: texts,
  /** What it exercises, the first first: tasks, and safe work (W3). */
  tasks: z.array(workId).min(1),
  /** Name of the model in src/practice/models. */
  model: id,
  /** Least share of asks that hold, in hundredths. */
  mark: z.int().refine((mark) => mark >= LEAST_MARK && mark <= 100, {
    error: `no draw is passed with fewer than ${LEAST_MARK} of 100 asks, nor with more than all`,
    params: { todo: `write a whole number from ${LEAST_MARK} to 100` },
  }),
  /** Asks that must hold whatever the rest. */
  critical: z.array(id),
  /** In the order in which they are drawn: moving one changes every draw. */
  parameters: z.record(name, parameter),
  text: texts,
  words: z.record(name, z.record(id, texts)).default({}),
  givens: z.array(given).min(1),
  asks: z.array(ask).min(1),
  /** Without one, a wrong answer could never be told what went wrong. */
  mistakes: z.array(mistake).refine((all) => all.length > 0, {
    error: 'the family knows no mistake, so it can say of no wrong answer what went wrong',
    params: { todo: 'add the mistakes that people make here, each with its slip and what it says' },
  }),
  worked,
});

export const familyShape = shape.superRefine((family, context) =>
  familyChecks(family, (path, message, todo) =>
    context.addIssue({ code: 'custom', path: [...path], message, params: { todo } }),
  ),
);

/** A family as the core takes it; the compiler holds the two against each other. */
export type FamilyFile = z.output<typeof familyShape>;
const asFamily = (file: FamilyFile): AuthoredFamily => file;
void asFamily;
