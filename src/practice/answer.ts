/** Reads the answers a person gave: every ask of the family, in the form its kind takes. */
import type { Fault } from '../trade/given.ts';
import { GivenError } from '../trade/given.ts';
import { inches, lengthRefusal, tryLength } from '../trade/length.ts';
import type { ChoiceAsk, Family, NumberAsk } from './family.ts';
import type { Answer, Answers } from './model.ts';

type Read = { readonly answer: Answer | null } | { readonly message: string; readonly todo: string };

/**
 * The answers that were given, by ask. An ask without one, and an order without an item, is blank and left out.
 *
 * @param shown  for each order ask, the items this draw shows
 * @throws {GivenError} every answer that cannot be read, and every one to an ask that the family does not have
 */
export function readAnswers(
  family: Family,
  shown: Readonly<Record<string, readonly string[]>>,
  given: Readonly<Record<string, unknown>>,
): Answers {
  const faults: Fault[] = [];
  const answers: Record<string, Answer> = {};
  for (const [id, value] of Object.entries(given)) {
    const ask = family.asks.find((a) => a.id === id);
    const read =
      ask === undefined
        ? {
            message: 'this is not asked here',
            todo: `the asks are ${family.asks.map((a) => a.id).join(', ')}`,
          }
        : ask.kind === 'number'
          ? readNumber(ask, value)
          : ask.kind === 'choice'
            ? readChoice(ask, value)
            : readOrder(shown[id] ?? [], value);
    if ('message' in read) faults.push({ field: `answers.${id}`, value, ...read });
    else if (read.answer !== null) answers[id] = read.answer;
  }
  if (faults.length > 0) throw new GivenError(faults);
  return answers;
}

function readNumber(ask: NumberAsk, value: unknown): Read {
  const isLength = ask.unit === 'in';
  if (isLength && (typeof value === 'number' || typeof value === 'string')) {
    const length = tryLength(value, { signed: true });
    if (typeof length !== 'number') return lengthRefusal(length);
    return { answer: typeof value === 'number' ? value : inches(length) };
  }
  if (typeof value === 'number' && Number.isFinite(value)) return { answer: value };
  return isLength
    ? { message: 'this is no length', todo: 'write inches as a number, or a text as 7\'-3 5/8"' }
    : { message: 'this is no number', todo: 'write a number of square inches, as 1.25' };
}

function readChoice(ask: ChoiceAsk, value: unknown): Read {
  const ids = ask.options.map((o) => o.id);
  return typeof value === 'string' && ids.includes(value)
    ? { answer: value }
    : { message: 'this is none of the options', todo: `write one of ${ids.join(', ')}` };
}

function readOrder(shown: readonly string[], value: unknown): Read {
  const todo = `write a list of the items, each once: ${shown.join(', ')}`;
  if (!Array.isArray(value)) return { message: 'this is no list of items', todo };
  const unknown = value.filter((item) => !shown.includes(item));
  if (unknown.length > 0) return { message: `no such item here: ${unknown.map(String).join(', ')}`, todo };
  const twice = value.filter((item, i) => value.indexOf(item) < i);
  if (twice.length > 0) return { message: `named twice: ${[...new Set(twice)].join(', ')}`, todo };
  return { answer: value.length === 0 ? null : (value as string[]) };
}
