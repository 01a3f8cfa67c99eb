/** How a verb answers what it is given: one thing, one answer; a list, a list of answers, each with its own faults. */
import type { Answered } from '../trade/answer.ts';
import { GivenError } from '../trade/given.ts';
import type { Speak } from '../trade/say.ts';
import { bad, type Envelope, good } from './envelope.ts';
import type { Call, Verb } from './verb.ts';

/** Options of the call, as written. */
export type Options = Pick<Call, 'text' | 'has'>;

/**
 * Reads the options once a call, and hands back what answers each thing given.
 * @throws {GivenError} an option that cannot be used, said before any input is read; then, what is wrong with the given
 */
export type Work<Given, Content> = (options: Options) => (given: Given, content: Content) => Answered<object>;

/** @param content  read once a call, after the input */
export function answering<Content extends { readonly speak: Speak }>(
  work: Work<unknown, Content>,
  content: () => Content,
): Verb['run'] {
  return async (call) => {
    const one = work(call);
    const input = await call.input();
    const read = content();
    const answer = (given: unknown) => answerOf(() => one(given, read), read.speak);
    const answers = Array.isArray(input) ? input.map(answer) : [answer(input)];
    return { json: Array.isArray(input) ? answers : answers[0], exit: answers.every((a) => a.ok) ? 0 : 2 };
  };
}

/** One answer in words, or every fault of what was given. */
export function answerOf(answer: () => Answered<object>, speak: Speak): Envelope {
  try {
    const answered = answer();
    return beyondNumbers(answered.result) ? bad([TOO_LARGE]) : good(answered, speak);
  } catch (cause) {
    if (cause instanceof GivenError) return bad(cause.faults);
    throw cause;
  }
}

const TOO_LARGE = {
  field: '',
  message: 'these numbers are too large to be worked with',
  todo: 'check the numbers and their units',
};

const beyondNumbers = (value: unknown): boolean =>
  typeof value === 'number'
    ? !Number.isFinite(value)
    : typeof value === 'object' && value !== null && Object.values(value).some(beyondNumbers);
