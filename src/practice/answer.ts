/** Reads the answers a person gave: every ask of the family, in the form its kind takes. */
import type { Fault } from '../trade/given.ts';
import { GivenError } from '../trade/given.ts';
import { inches } from '../trade/length.ts';
import { askOf, type Draw } from './draw.ts';
import { kindOf } from './kinds/index.ts';
import { type Asked, unread } from './kinds/kind.ts';
import type { Answer, Answers, World } from './model.ts';

/** What a draw shows for an ask. */
export function askedIn({ model, plan }: Pick<Draw, 'model' | 'plan'>, ask: string, world: World): Asked {
  const { order, on, sticks } = askOf(model, ask);
  return {
    items: order?.(plan).shown ?? [],
    legs: new Map((on?.(plan, world).legs ?? []).map((leg) => [leg.leg, inches(leg.length)])),
    sticks: sticks?.(plan, world),
  };
}

/**
 * The answers that were given, by ask. An ask without one, and a list without a row, is blank and left out.
 *
 * @throws {GivenError} every answer that cannot be read, and every one to an ask that the family does not have
 */
export function readAnswers(draw: Draw, given: Readonly<Record<string, unknown>>, world: World): Answers {
  const { asks } = draw.family;
  const faults: Fault[] = [];
  const answers: Record<string, Answer> = {};
  for (const [id, value] of Object.entries(given)) {
    const ask = asks.find((a) => a.id === id);
    const read =
      ask === undefined
        ? unread(value, 'this is not asked here', `the asks are ${asks.map((a) => a.id).join(', ')}`)
        : kindOf(ask).read(ask, value, askedIn(draw, id, world));
    if ('unread' in read)
      faults.push(...read.unread.map(({ at, ...one }) => ({ field: `answers.${id}${at}`, ...one })));
    else if (read.answer !== null) answers[id] = read.answer;
  }
  if (faults.length > 0) throw new GivenError(faults);
  return answers;
}
