/**
 * A practice family: content/scenarios/ID.yaml. The manual of each field is here; what the model of that name takes
 * and knows is in src/practice/models.
 */
import { z } from 'zod';
import { type AuthoredFamily, type OrderAsk, type Parameter, PLACED, UNITS } from '../practice/family.ts';
import type { AnyModel, Want } from '../practice/model.ts';
import { models } from '../practice/models/index.ts';
import { inches } from '../trade/length.ts';
import { above0, count } from './fields.ts';
import { plainId as id, workId } from './ids.ts';
import { lengthAbove0, lengthFrom0 } from './length.ts';
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
  /** Givens as the author read them off the draw: a length, a number, a word. */
  givens: z.record(id, z.union([z.string(), z.number()])),
  /** The author's own answers, one to every ask. */
  answers: z.record(id, z.unknown()),
  /** His sum, a line each. */
  sum: z.array(text).min(1),
});

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
  mark: z.int().min(1).max(100),
  /** Asks that must hold whatever the rest. */
  critical: z.array(id),
  /** In the order in which they are drawn: moving one changes every draw. */
  parameters: z.record(name, parameter),
  text: texts,
  words: z.record(name, z.record(id, texts)).default({}),
  givens: z.array(given).min(1),
  asks: z.array(ask).min(1),
  mistakes: z.array(mistake),
  worked,
});

type Add = (path: readonly PropertyKey[], message: string, todo: string) => void;

export const familyShape = shape.superRefine((family, context) => {
  const add: Add = (path, message, todo) =>
    context.addIssue({ code: 'custom', path: [...path], message, params: { todo } });
  twice(family.asks, ['asks'], add);
  twice(family.mistakes, ['mistakes'], add);
  twice(family.givens, ['givens'], add);
  const asks = family.asks.map((a) => a.id);
  const known = (path: readonly PropertyKey[], ids: readonly string[]) => {
    for (const [i, one] of ids.entries())
      if (!asks.includes(one)) add([...path, i], 'no such ask here', `name one of ${asks.join(', ')}`);
  };
  known(['critical'], family.critical);
  for (const [i, { asks: on }] of family.mistakes.entries()) known(['mistakes', i, 'asks'], on);
  for (const one of asks)
    if (!(one in family.worked.answers))
      add(['worked', 'answers', one], 'no answer worked by hand', 'work it and write it');
  for (const [i, one] of family.asks.entries()) {
    if ('options' in one) twice(one.options, ['asks', i, 'options'], add);
    if (one.kind === 'faults') twice(one.rules, ['asks', i, 'rules'], add);
    if (one.kind === 'job') twice(one.parts, ['asks', i, 'parts'], add);
    if (one.kind === 'order') {
      twice(one.items, ['asks', i, 'items'], add);
      precedenceHolds(one, ['asks', i, 'precedence'], add);
    }
  }
  const model = models.get(family.model);
  if (model === undefined)
    add(['model'], 'there is no such model', `name one of ${[...models.keys()].join(', ')}`);
  else modelFits(family, model, add);
});

function twice(list: readonly { readonly id: string }[], path: readonly PropertyKey[], add: Add): void {
  for (const [i, { id: one }] of list.entries())
    if (list.findIndex((o) => o.id === one) < i)
      add([...path, i, 'id'], 'this id stands twice', 'give it another');
}

/** Every pair names items, and the items stand in an order that keeps to it; so no pair can bite another's tail. */
function precedenceHolds(
  { items, precedence }: Pick<OrderAsk, 'items' | 'precedence'>,
  path: readonly PropertyKey[],
  add: Add,
): void {
  const place = (item: string) => items.findIndex((one) => one.id === item);
  for (const [i, pair] of precedence.entries()) {
    const unknown = pair.flatMap((item, k) => (place(item) === -1 ? [k] : []));
    for (const k of unknown)
      add([...path, i, k], 'no such item here', `name one of ${items.map((o) => o.id).join(', ')}`);
    if (unknown.length === 0 && place(pair[0]) >= place(pair[1]))
      add(
        [...path, i],
        'the items above stand in another order',
        'exchange the two, or move the item in the list',
      );
  }
}

/** Holds a family against the model it names: asks, slips, parameters. */
function modelFits(family: z.output<typeof shape>, model: AnyModel, add: Add): void {
  const slips = Object.keys(model.slips);
  for (const [i, { slip }] of family.mistakes.entries())
    if (![slip].flat().every((one) => slips.includes(one)))
      add(['mistakes', i, 'slip'], 'the model knows no such slip', `name one of ${slips.join(', ')}`);
  for (const [i, { id: one, kind }] of family.asks.entries()) {
    const wanted = model.asks[one];
    if (wanted === undefined)
      add(
        ['asks', i, 'id'],
        'the model answers no such ask',
        `name one of ${Object.keys(model.asks).join(', ')}`,
      );
    else if (wanted.kind !== kind)
      add(['asks', i, 'kind'], `the model answers a ${wanted.kind}`, `write ${wanted.kind}`);
  }
  for (const one of Object.keys(model.asks))
    if (!family.asks.some((a) => a.id === one)) add(['asks'], `the model's ask ${one} is missing`, 'add it');
  parametersFit(family.parameters, model.wants, ['parameters'], add);
}

function parametersFit(
  parameters: Readonly<Record<string, Parameter>>,
  wants: Readonly<Record<string, Want>>,
  path: readonly PropertyKey[],
  add: Add,
): void {
  for (const [key, want] of Object.entries(wants)) {
    const found = parameters[key];
    if (found === undefined) add([...path, key], 'the model needs this parameter', `draw ${wantText(want)}`);
    else parameterFits(found, want, [...path, key], add);
  }
  for (const key of Object.keys(parameters))
    if (!(key in wants))
      add([...path, key], 'the model takes no such parameter', `it takes ${Object.keys(wants).join(', ')}`);
}

function parameterFits(found: Parameter, want: Want, path: readonly PropertyKey[], add: Add): void {
  const bad = () => add(path, 'the model takes another kind of parameter here', `draw ${wantText(want)}`);
  if (typeof want === 'string') {
    if (!(want in found)) bad();
    else rangeFits(found, path, add);
  } else if ('rows' in want) {
    if ('list' in found) parametersFit(found.list.of, want.rows, [...path, 'list', 'of'], add);
    else bad();
  } else if (!('choice' in found)) bad();
  else
    for (const [i, word] of found.choice.entries())
      if (!want.includes(word))
        add([...path, 'choice', i], 'the model knows no such word', `use ${want.join(', ')}`);
}

function rangeFits(found: Parameter, path: readonly PropertyKey[], add: Add): void {
  const [kind, { from, to }] = Object.entries(found)[0] as [string, { from: number; to: number }];
  if (from > to) add([...path, kind, 'to'], 'this is below from', 'exchange the two');
  if ('some' in found && (to > found.some.of.length || from < found.some.always.length))
    add([...path, 'some'], 'so many there are not', 'let from and to lie between the needed ones and all');
}

function wantText(want: Want): string {
  if (typeof want === 'string') return `${want}: { … }`;
  return 'rows' in want
    ? `list: { of: { ${Object.keys(want.rows).join(', ')} } }`
    : `choice: [${want.join(', ')}]`;
}

/** A family as the core takes it; the compiler holds the two against each other. */
export type FamilyFile = z.output<typeof familyShape>;
const asFamily = (file: FamilyFile): AuthoredFamily => file;
void asFamily;
