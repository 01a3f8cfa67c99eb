/** A file of answers or tries that a trainer brings in, read. Pure. */
import { type Brought, readBrought } from '../practice/statistics/rawTries.ts';
import { GivenError } from '../trade/given.ts';
import type { Tell } from './speak.ts';
import { type Attempt, tried } from './tried.ts';

/** @param text  `undefined` for a file that is too large to be one of ours */
export const broughtFile = (name: string, text: string | undefined, tell: Tell): Attempt<Brought> =>
  tried(() => {
    const refuse = (message: 'tooLarge' | 'noJson', todo: 'giveOther' | 'giveSaved') =>
      new GivenError([
        { field: '', message: tell(`answersPage.${message}`), todo: tell(`answersPage.${todo}`) },
      ]);
    if (text === undefined) throw refuse('tooLarge', 'giveOther');
    let given: unknown;
    try {
      given = JSON.parse(text);
    } catch {
      throw refuse('noJson', 'giveSaved');
    }
    return { name, file: readBrought(given) };
  });
